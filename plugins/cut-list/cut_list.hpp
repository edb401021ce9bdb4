#pragma once

#include "backend/backend.hpp"

namespace sheerpole {

/// The pieces to cut, each with its worked sum: as text for the bench, as a flat table and as JSON.
class CutList final : public Backend {
public:
  BackendDescription describe() const override;
  OutputBundle generate(const BackendRequest& request) const override;
};

} // namespace sheerpole
