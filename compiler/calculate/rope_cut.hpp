#pragma once

#include "calculate/derived.hpp"

namespace sheerpole {

/// Rope to cut for the piece at stack[line]: body plus, per end, eye allowance, bury, spare bury, tail to
/// trim and contraction not given back. The piece must have its body already. Check (common practice, no
/// source): 9 mm rope, two burys of 25 1/2 in, two wraps of 6 1/4 in, 24 in of screw and toggles: cut X +
/// 39 1/2 in, body X - 24 in.
void rope_cut(const Rig& rig, const Stay& stay, std::size_t line, Piece& piece);

} // namespace sheerpole
