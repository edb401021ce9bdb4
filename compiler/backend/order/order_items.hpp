#pragma once

#include "results/checked_rig.hpp"

#include <string>
#include <utility>
#include <vector>

namespace sheerpole {

/// One line of an order. Counts are pieces; lengths are whole tenths of a metre, rounded up.
struct OrderItem {
  std::string group;         ///< "Lines", "Hardware", "Small parts"
  std::string name;          ///< as the file calls it
  std::string what;          ///< title, construction
  std::string size;          ///< with its system: "5/16 in", "M12, right and left hand"
  std::string supplier = {}; ///< who is asked for it; empty: not stated
  bool in_metres = false;
  long needed = 0;
  long in_hand = 0;
  std::vector<std::pair<std::string, long>> stays; ///< what each stay needs of it; they make up `needed`
  std::vector<std::string> notes = {};             ///< what is not in the sum, or is an estimate

  long to_order() const { return needed > in_hand ? needed - in_hand : 0; }
};

/// Everything that the stays are made of, by group, each once, in the order in which the stays meet it.
/// What belongs to the boat, tangs and chainplates, is not ordered.
std::vector<OrderItem> order_items(const CheckedRig& checked);

/// "12.9 m", or a number of pieces.
std::string amount_text(const OrderItem& item, long amount);

/// The suppliers in the order in which the items name them; those whose supplier is not stated last, as an
/// empty name.
std::vector<std::string> suppliers_of(const std::vector<OrderItem>& items);

} // namespace sheerpole
