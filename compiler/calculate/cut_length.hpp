#pragma once

#include "calculate/derived.hpp"
#include "calculate/end_use.hpp"

namespace sheerpole {

/// Puts what the two ends use onto the body: fills cut, both ends and what is missing of `piece`, whose
/// body is known already. The same input missing at both ends is said once.
void add_ends(Piece& piece, EndUse aloft, EndUse below);

} // namespace sheerpole
