#pragma once

#include "backend/backend.hpp"

namespace sheerpole {

/// Gives back the request that it receives, for tests and for writers of back ends who want to see it.
struct Echo final : Backend {
  BackendDescription describe() const override;
  OutputBundle generate(const BackendRequest& request) const override;
};

} // namespace sheerpole
