#pragma once

#include "backend/drawing/drawing.hpp"
#include "model/line_material.hpp"

namespace sheerpole::rig_drawing {

// Widths of lines are those of ISO 128-2:2020 (0.18, 0.25, 0.35, 0.5, 0.7), heights of capitals those of
// ISO 3098-1:2015 (2.5, 3.5, 5, 7), millimetres; both from memory of the standards. A line without dashes
// is visible; dashes mean hidden, so that rope is told from wire by its width.

/// Capitals are 0.716 em high in the faces of the papers (Liberation Sans, table OS/2).
inline constexpr double em_of_capital = 1.0 / 0.716;
inline constexpr double plain_size = 2.5 * em_of_capital;
inline constexpr double heading_size = 3.5 * em_of_capital;
inline constexpr double title_size = 5.0 * em_of_capital;

/// From one line of plain text to the next.
inline constexpr double text_row = 1.25 * plain_size;

inline ShapeStyle solid(double width) {
  return {width, 0.0, {}, {}};
}
inline ShapeStyle dimension_style() {
  return solid(0.25);
}
inline ShapeStyle leader_style() {
  return solid(0.18);
}
inline ShapeStyle spar_style() {
  return {0.5, 0.0, {}, 1.0};
}
/// Long dash, one dot: centrelines and the waterline.
inline ShapeStyle axis_style() {
  return {0.25, 0.0, {6.0, 1.0, 0.3, 1.0}, {}};
}
/// Long dash, two dots: the outline of what is no part of the rig.
inline ShapeStyle outline_style() {
  return {0.25, 0.0, {6.0, 1.0, 0.3, 1.0, 0.3, 1.0}, {}};
}
inline ShapeStyle stay_style(LineMaterial::Kind kind) {
  switch (kind) {
  case LineMaterial::Kind::rope:
    return solid(0.7);
  case LineMaterial::Kind::rod:
    return solid(0.5);
  case LineMaterial::Kind::chain:
    return solid(1.0);
  case LineMaterial::Kind::wire:
    break;
  }
  return solid(0.35);
}

} // namespace sheerpole::rig_drawing
