#pragma once

#include "calculate/cut/order_length.hpp"
#include "results/checked_rig.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace sheerpole {

/// A length that is X, of which nobody has said about how long it is, and so much.
struct OpenLength {
  std::string of; ///< the stay: `cap-shroud` for both sides alike, `cap-shroud.port` for one
  int times = 1;
  long plus_mm = 0; ///< rounded up
};
/// "X(cap-shroud) + 0.862 m, twice"
std::string open_words(const OpenLength& open);

/// "the estimate of the stay", "the points of its path".
std::string_view estimate_words(EstimateBy by);

/// "X(cap-shroud.port) + 1.004 m: X taken as 11.58 m by the estimate of the stay". `length` is of an
/// unknown X that somebody estimates.
std::string x_taken_words(const std::string& stay, const OrderLength& length);

/// One line of an order. Counts are pieces; lengths are whole tenths of a metre, rounded up.
struct OrderItem {
  std::string group;         ///< "Lines", "Hardware", "Small parts"
  std::string name;          ///< as the file calls it
  std::string what;          ///< title, construction
  std::string size;          ///< with its system: "5/16 in", "M12, right and left hand"
  std::string supplier = {}; ///< who is asked for it; empty: not stated
  bool in_metres = false;
  long needed = 0;
  std::vector<OpenLength> open = {}; ///< what is needed besides, and is no number
  long margin = 0;                   ///< on top of what is needed, by `order-margin`
  double margin_share = 0.0;         ///< the same as a share; also of what is no number
  long test_splice = 0;              ///< rope for a test splice
  long in_hand = 0;
  std::optional<long> not_in_stock = {}; ///< of a line: what no stock holds in one length, all together
  std::vector<std::pair<std::string, long>> stays; ///< what each stay needs of it; they make up `needed`
  std::vector<std::string> notes = {};             ///< what is not in the sum, or is an estimate
  std::vector<PartId> parts = {}; ///< of "Hardware": what it is; several are the holes of one plate

  /// As far as it is a number.
  long wanted() const { return needed + margin + test_splice; }
  /// Lengths are not counted out against each other: two metres here and two there make no four.
  long to_order() const { return not_in_stock.value_or(wanted() > in_hand ? wanted() - in_hand : 0); }
  bool nothing_to_order() const { return to_order() == 0 && open.empty(); }
};

/// Everything that the stays are made of, by group, each once, in the order in which the stays meet it.
/// What belongs to the boat, tangs and chainplates, is not ordered.
/// Of a line, the spool plan of this boat is asked for what no stock holds. The test splice and what the
/// margin adds are lengths of their own: the longest first, each whole on the shortest length that the plan
/// leaves and that still holds it, a kerf behind each.
std::vector<OrderItem> order_items(const CheckedRig& checked);

/// The same for a paper that says what is needed, and not what is to be bought: no plan is searched for, so
/// to_order() of a line says nothing, and what an earlier plan has taken is needed like the rest.
std::vector<OrderItem> needed_items(const CheckedRig& checked);

/// "12.9 m", or a number of pieces.
std::string amount_text(const OrderItem& item, long amount);

/// What is needed, with what is no number: "26.0 m and X(cap-shroud) + 0.862 m, twice".
std::string needed_text(const OrderItem& item);
/// The same of what is to be ordered: more by the margin and the test splice, less by what is in hand.
std::string to_order_text(const OrderItem& item);

/// The suppliers in the order in which the items name them; those whose supplier is not stated last, as an
/// empty name.
std::vector<std::string> suppliers_of(const std::vector<OrderItem>& items);

} // namespace sheerpole
