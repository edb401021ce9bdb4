#pragma once

#include "calculate/derived.hpp"
#include "calculate/end_use.hpp"
#include "calculate/line_stretch.hpp"

namespace sheerpole {

/// Puts what the line does and what the two ends use onto the body: fills cut, both ends, what is missing
/// and the marks of `piece`, whose body is known already. The same input missing twice is said once.
void add_ends(Piece& piece, EndUse aloft, EndUse below, LineStretch stretch = {});

} // namespace sheerpole
