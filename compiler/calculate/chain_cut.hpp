#pragma once

#include "calculate/derived.hpp"

namespace sheerpole {

/// The cut of a chain: its body, pin centre to pin centre. It can
/// only be cut at a whole link, which the note of its lower end says; the rest is for the adjuster to take
/// up. Common practice, no source.
void chain_cut(const Rig& rig, const Stay& stay, std::size_t line, Piece& piece);

} // namespace sheerpole
