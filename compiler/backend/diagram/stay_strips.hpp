#pragma once

#include "backend/backend.hpp"
#include "backend/diagram/strips/strip_content.hpp"
#include "backend/drawing/drawing.hpp"

#include <string>
#include <vector>

namespace sheerpole {

/// A run of cells that stands in one row of a strip, and how wide each is drawn.
struct StripRow {
  std::size_t first = 0; ///< of Strip::cells
  std::vector<double> widths;
};

/// A strip cut into rows that fit the sheet. All sizes are millimetres.
struct StripLayout {
  std::vector<StripRow> rows;
  double height = 0.0;
};

/// Room at both ends of a row for the words aloft and deck.
inline constexpr double row_end_room = 14.0;

StripLayout lay_out_strip(const Strip& strip, double width);

/// Draws the strip with its upper left corner at `at`.
void draw_strip(const Strip& strip, const StripLayout& layout, PaperPoint at, double width,
                ShapeGroup& into);

/// One strip on a sheet of its own, this wide and as high as it needs, millimetres; with a word above it
/// that says when it holds: "WAS".
Drawing strip_drawing(const Strip& strip, double width, const std::string& word = {});

/// The strip of a stay, or of the pair that it belongs to; null when there is none.
const Strip* find_strip(const std::vector<Strip>& strips, const Stay& stay);

/// The strips of all stays, as many to a sheet as it holds; at least one sheet. A pair whose printed
/// numbers are all the same shares a strip.
std::vector<Drawing> stay_strips(const CheckedRig& checked);

} // namespace sheerpole
