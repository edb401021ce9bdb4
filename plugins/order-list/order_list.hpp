#pragma once

#include "backend/backend.hpp"

namespace sheerpole {

/// What is to be bought: lines, hardware and small parts, less what is in hand.
class OrderList final : public Backend {
public:
  BackendDescription describe() const override;
  OutputBundle generate(const BackendRequest& request) const override;
};

} // namespace sheerpole
