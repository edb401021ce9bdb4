#pragma once

#include "backend/drawing/drawing.hpp"
#include "units/length.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace sheerpole::rig_drawing {

/// Whole millimetres with a blank before each three digits: "12 700", "-620".
std::string drawn_millimetres(Length length);

/// A level dimension between two uprights: arrows from `left` to `right` at the height `y`, thin lines down
/// to it from `from`, words and number above it or, where it is too short for them, behind it.
struct LevelDimension {
  double left = 0.0, right = 0.0; ///< millimetres of the sheet
  double from = 0.0;              ///< where the thin lines begin
  double y = 0.0;
  std::string words; ///< "length overall 9 750"
  std::string id;
  std::vector<double> crossed = {}; ///< by thin lines of other dimensions, here: no words are set on them
};
void draw(const LevelDimension& dimension, ShapeGroup& into);
/// Several, one below the other. The thin lines of the lower ones pass those above them.
void draw(std::vector<LevelDimension> dimensions, ShapeGroup& into);

/// An upright one, its words beside it near its upper end, one below the other.
struct UprightDimension {
  double top = 0.0, bottom = 0.0;
  double from = 0.0; ///< where the thin lines begin
  double x = 0.0;
  std::vector<std::string> words;
  bool words_on_the_left = false;
  std::string id;
};
void draw(const UprightDimension& dimension, ShapeGroup& into);

/// A height above the waterline beside a view.
struct HeightMark {
  double y = 0.0;     ///< of the place
  std::string number; ///< "12 700"
  std::string name;   ///< "cap-tang"
};
/// Width that a ladder of these heights takes.
double ladder_width(const std::vector<HeightMark>& marks);
/// Height that it takes at least.
double ladder_height(const std::vector<HeightMark>& marks);
/// Draws the marks from top to bottom at `x`, pushed apart between `top` and `bottom`, leaders bent.
void draw_ladder(std::vector<HeightMark> marks, double x, double top, double bottom, std::string_view id,
                 ShapeGroup& into);

} // namespace sheerpole::rig_drawing
