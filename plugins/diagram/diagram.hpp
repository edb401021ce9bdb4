#pragma once

#include "backend/backend.hpp"

namespace sheerpole {

/// Draws the rig: three views to one scale, and a strip a stay that shows its stack from aloft to deck.
struct DiagramBackend final : Backend {
  BackendDescription describe() const override;
  OutputBundle generate(const BackendRequest& request) const override;
};

} // namespace sheerpole
