#pragma once

#include "backend/diagram/views/view_frame.hpp"
#include "backend/drawing/label_text.hpp"

namespace sheerpole {

/// The labels that want to stand beside one view.
struct ViewLabels {
  std::vector<LabelRequest> left;
  std::vector<LabelRequest> right;
  bool port_left_out = false; ///< port labels whose starboard twin says the same were left out
  bool crowded = false;       ///< points too close together to be told apart here were left without a label
  bool too_many = false;      ///< more stays and points than any sheet holds names for; none is named
};

/// Exact: the label of a stay points to where it is best told from the others, which takes time. Rough: to
/// its middle. Text and column of a label are the same either way.
enum class LabelSites { rough, exact };

/// Stays by title, points by name, the waterline. In the views that show both sides port labels stand on
/// the left and starboard labels on the right, without the side in their text, and what is amidships goes
/// where there is more room. Without `both_sides` a port label is left out where a starboard label says the
/// same. In the side view a label goes to the nearer column while that holds less than three fifths of
/// them.
ViewLabels view_labels(const Rig& rig, const ViewFrame& frame, const ViewExtent& extent, bool both_sides,
                       LabelSites sites);

} // namespace sheerpole
