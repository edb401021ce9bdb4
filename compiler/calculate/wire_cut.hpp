#pragma once

#include "calculate/derived.hpp"

namespace sheerpole {

/// Wire to cut for the piece at stack[line]: body plus the insertion depth at each terminal. The piece must
/// have its body already.
void wire_cut(const Rig& rig, const Stay& stay, std::size_t line, Piece& piece);

} // namespace sheerpole
