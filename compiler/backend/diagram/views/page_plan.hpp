#pragma once

#include "backend/diagram/views/view_block.hpp"

#include <memory>
#include <string>
#include <vector>

namespace sheerpole {

inline constexpr double smallest_denominator = 10.0;
inline constexpr double largest_denominator = 1e7;

/// The usual denominators of scales, 1:10 first.
std::vector<double> usual_denominators();

/// The view of one mast from astern, with what of the rig it shows.
struct MastView {
  std::shared_ptr<const Rig> rig;
  ViewBlock block;
};

/// Sheet, scale and the views of a rig diagram.
struct PagePlan {
  std::string paper; ///< "A3"; empty when the sheet is of no usual size
  double width = 420.0;
  double height = 297.0;
  double scale = 50.0; ///< the denominator: 1:50
  ViewBlock side;
  std::vector<MastView> fronts; ///< from astern: one for each mast, one of all where there is one or none
  ViewBlock deck;
};

/// Room that the sheet keeps for things other than views, millimetres.
struct PageRoom {
  double head = 30.0;       ///< above the views, from the edge
  double foot = 15.0;       ///< below the captions, from the edge
  double key_height = 45.0; ///< below the deck view
  double key_width = 80.0;
};

/// Clear distance between two views.
inline constexpr double view_gap = 5.0;

/// The largest usual scale at which the views fit a landscape A3 sheet; where the labels leave less than 90
/// mm to the longest dimension of the rig, a larger sheet. Past A0 the sheet is as large as need be. Where
/// the deck view fits only without the port labels that say what starboard ones say, it goes without them.
PagePlan plan_page(const Rig& rig, const PageRoom& room);

} // namespace sheerpole
