#pragma once

#include "backend/backend.hpp"
#include "backend/order/order_items.hpp"
#include "backend/page/page_flow.hpp"

#include <string>
#include <vector>

namespace sheerpole {

/// The order to hand over a counter: one table a group, with room for a supplier's number.
std::vector<Drawing> order_pages(const CheckedRig& checked, const std::vector<OrderItem>& items,
                                 const std::string& boat, PaperSize size);

/// What is to be bought: lines, hardware and small parts, less what is in hand.
struct OrderList final : Backend {
  BackendDescription describe() const override;
  OutputBundle generate(const BackendRequest& request) const override;
};

} // namespace sheerpole
