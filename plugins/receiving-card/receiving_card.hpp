#pragma once

#include "backend/backend.hpp"

namespace sheerpole {

/// What comes in is held against what the rig file asks for, before it is paid for or cut into.
class ReceivingCard final : public Backend {
public:
  BackendDescription describe() const override;
  OutputBundle generate(const BackendRequest& request) const override;
};

} // namespace sheerpole
