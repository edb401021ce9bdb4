#pragma once

#include "calculate/derived.hpp"

namespace sheerpole {

/// The cut of a chain: its body, pin centre to pin centre. Whole links are counted when it is cut; the
/// nearest link is for the adjuster to take up. Common practice, no source.
void chain_cut(const Rig& rig, const Stay& stay, std::size_t line, Piece& piece);

} // namespace sheerpole
