#pragma once

#include "backend/backend.hpp"

namespace sheerpole {

/// Gives back the request that it receives, for tests and for writers of back ends who want to see it.
class Echo final : public Backend {
public:
  BackendDescription describe() const override;
  OutputBundle generate(const BackendRequest& request) const override;
};

} // namespace sheerpole
