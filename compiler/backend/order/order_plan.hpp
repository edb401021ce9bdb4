#pragma once

#include "backend/order/lengths_in_stock.hpp"
#include "calculate/spool_plan/spool_order.hpp"
#include "results/checked_rig.hpp"

#include <cstdint>
#include <map>
#include <set>
#include <string>

namespace sheerpole {

/// The boat as the plan of its stock takes it, with the title that its file states and without keys of its
/// files. Points into the rig.
SpoolBoat spool_boat(const CheckedRig& checked);

/// What the spool plan of one boat says to her order: which pieces it cuts from stock, and what is left of
/// the stock then. It is the plan that is printed, so that the two papers never ask for different things.
class OrderPlan {
public:
  /// Without `ask_stock` no plan is searched for and no piece is in stock: for papers that say what is
  /// needed and not what is to be bought.
  OrderPlan(const CheckedRig& checked, bool ask_stock);

  bool in_stock(const std::string& piece) const { return in_stock_.contains(piece); }
  /// An earlier plan has taken it from stock, by the marks of `cutting`.
  bool taken_before(const std::string& piece) const { return taken_before_.contains(piece); }
  /// With spare, without kerf; nothing at all for a piece of which the plan knows no length.
  std::int64_t length_mm(const std::string& piece) const;
  std::int64_t kerf_mm(const std::string& line) const;
  /// What the plan leaves of a line, without waste and without what is kept back. Lines that are one to the
  /// plan share it.
  LengthsInStock& left_of(const std::string& line);

private:
  std::set<std::string> in_stock_;
  std::set<std::string> taken_before_;
  std::map<std::string, std::int64_t> lengths_mm_;   ///< by piece
  std::map<std::string, std::size_t> place_of_line_; ///< by the name of the line, in the two below
  std::vector<std::int64_t> kerfs_mm_;
  std::vector<LengthsInStock> left_;
  LengthsInStock nothing_left_;
};

} // namespace sheerpole
