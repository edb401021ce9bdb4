#pragma once

#include "backend/drawing/drawing.hpp"

#include <cstddef>
#include <string>
#include <vector>

namespace sheerpole::rig_drawing {

inline constexpr double balloon_radius = 3.4;

/// A line that wants a number beside it.
struct NumberedPath {
  std::size_t number = 0;
  std::vector<PaperPoint> path;
  std::string id;
};

/// What a balloon keeps clear of.
struct Obstacles {
  std::vector<PaperBox> boxes;                          ///< texts and other balloons
  std::vector<std::pair<PaperPoint, PaperPoint>> lines; ///< better not crossed
  PaperBox area;                                        ///< on which balloons may stand
};

/// Draws a balloon for each path: a circle with its number, its leader ending in a dot on the line where it
/// is best told from the others. The balloons never touch each other or a text; where there is no room for
/// one it is left out, and its number is returned.
std::vector<std::size_t> draw_balloons(const std::vector<NumberedPath>& paths, Obstacles obstacles,
                                       ShapeGroup& into);

} // namespace sheerpole::rig_drawing
