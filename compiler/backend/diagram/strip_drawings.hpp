#pragma once

#include "backend/diagram/strips/strip_content.hpp"
#include "backend/drawing/drawing.hpp"

#include <string>
#include <vector>

namespace sheerpole {

/// One strip on a sheet of its own, this wide and as high as it needs, millimetres; with a word above it
/// that says when it holds: "WAS".
Drawing strip_drawing(const Strip& strip, double width, const std::string& word = {});

/// The strip of a stay, or of the pair that it belongs to; null when there is none.
const Strip* find_strip(const std::vector<Strip>& strips, const Stay& stay);

} // namespace sheerpole
