#pragma once

#include "backend/backend.hpp"

namespace sheerpole {

/// Made ahead and carried aboard with a spare length: how a stay that is lost at sea is replaced.
class EmergencySpliceCard final : public Backend {
public:
  BackendDescription describe() const override;
  OutputBundle generate(const BackendRequest& request) const override;
};

} // namespace sheerpole
