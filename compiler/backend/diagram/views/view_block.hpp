#pragma once

#include "backend/diagram/views/view_labels.hpp"

#include <string>
#include <vector>

namespace sheerpole {

/// One view with a column of labels on each side, headings above and a caption below. All sizes are
/// millimetres.
struct ViewBlock {
  ViewKind kind = ViewKind::side;
  double millimetres_per_metre = 10.0;
  std::string mast = {};       ///< of a view of one mast alone: its name
  std::string mast_words = {}; ///< and what it is called
  ViewExtent extent;
  double left_width = 0.0; ///< of the label columns
  double right_width = 0.0;
  double view_width = 0.0;    ///< between the columns, with the room in which leaders fan out
  double view_height = 0.0;   ///< of the rig alone
  double column_height = 0.0; ///< of the higher column, or of the view
  ViewLabels labels;          ///< their sites as if the boat's axes met at the corner of the sheet

  double width() const { return left_width + view_width + right_width; }
};

/// Room above the view for headings, and below for the caption.
inline constexpr double heading_height = 9.0;
inline constexpr double caption_height = 15.0;

/// What the view takes at this scale, and its labels; see view_labels().
ViewBlock measure_view(const Rig& rig, ViewKind kind, double millimetres_per_metre, bool both_sides,
                       LabelSites sites, const Spar* mast = nullptr);

/// Draws the block with the upper left corner of its headings at `at`.
void draw_view(const Rig& rig, const ViewBlock& block, PaperPoint at, ShapeGroup& into);

/// Words above a view: over the left column, over the centreline and over the right column. May be empty.
struct ViewHeadings {
  std::string left;
  std::string middle;
  std::string right;
};

ViewHeadings view_headings(ViewKind kind);

/// First from where the view is seen, then what a reader must know of it.
std::vector<std::string> view_caption(const Rig& rig, const ViewBlock& block);

} // namespace sheerpole
