#pragma once

#include "backend/backend.hpp"

namespace sheerpole {

/// The warnings and notes about the rig, as text and as JSON. Errors stop the outputs before this.
struct Findings final : Backend {
  BackendDescription describe() const override;
  OutputBundle generate(const BackendRequest& request) const override;
};

} // namespace sheerpole
