#pragma once

#include "backend/drawing/drawing.hpp"

#include <cstddef>
#include <string>
#include <vector>

namespace sheerpole {

/// For each site the index of the port that it is joined to by a straight line, so that no two of the lines
/// cross. Ports all have the same x and different y. Any pair that crosses is exchanged; each exchange
/// makes the sum of the lengths smaller (triangle inequality), so this ends.
std::vector<std::size_t> join_without_crossing(const std::vector<PaperPoint>& sites,
                                               const std::vector<PaperPoint>& ports);

/// Middles of bands of the given heights that lie one below the other without overlap between `top` and
/// `bottom`, each as near as can be to the wanted middle (least squares), in their order.
std::vector<double> spread_apart(const std::vector<double>& wanted, const std::vector<double>& heights,
                                 double top, double bottom);

/// Text that wants to stand beside a view, joined to a site in it.
struct LabelRequest {
  std::vector<std::string> lines; ///< at least one
  PaperPoint site;                ///< what the leader points to
  double size = 2.5;              ///< em, millimetres
  bool bold = false;
  bool ringed = false; ///< a small ring where the leader ends, for a site that has no mark of its own
  std::string id;      ///< of the group that the label becomes; may be empty
};

/// A column of labels at one side of a view.
struct LabelColumn {
  double edge = 0.0;   ///< x of the edge of the text that is nearest to the view
  bool to_left = true; ///< the text lies to the left of the edge, else to the right
  double top = 0.0;    ///< room for the labels; must be at least column_height() of the requests
  double bottom = 0.0;
};

/// Clear distance between the text and its leader, and length of the level piece of a leader, millimetres.
inline constexpr double leader_gap = 0.8;
inline constexpr double leader_stub = 2.5;

/// Height that one label takes with its clearance.
double label_height(const LabelRequest& request);
/// Height that a column of these labels needs.
double column_height(const std::vector<LabelRequest>& requests);
/// Widest label box.
double column_width(const std::vector<LabelRequest>& requests);

/// Draws the labels of a column with their leaders into `into`, one group a label, from top to bottom.
/// Labels never overlap. Leaders of one column do not cross, except where labels of different heights find
/// no such order.
void place_labels(const std::vector<LabelRequest>& requests, const LabelColumn& column, ShapeGroup& into);

} // namespace sheerpole
