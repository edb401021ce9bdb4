#pragma once

#include "backend/diagram/strips/strip_content.hpp"
#include "backend/drawing/drawing.hpp"

#include <string>
#include <vector>

namespace sheerpole {

/// One strip on a sheet of its own, this wide and as high as it needs, millimetres.
Drawing strip_drawing(const Strip& strip, double width);

/// The same stay before and after, one strip below the other. Either may be null.
Drawing changed_strip_drawing(const Strip* was, const Strip* is, double width);

/// The strip of a stay, or of the pair that it belongs to; null when there is none.
const Strip* find_strip(const std::vector<Strip>& strips, const Stay& stay);

} // namespace sheerpole
