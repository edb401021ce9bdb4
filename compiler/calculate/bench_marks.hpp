#pragma once

#include "calculate/derived.hpp"
#include "calculate/end_use.hpp"

namespace sheerpole {

/// The marks of a piece, laid out straight and cut, from one zero and from the other end: what is trimmed,
/// where the taper begins, where the tail goes into the standing part, where the standing part begins; of a
/// wire the depth in its terminals. An eye's loop is the allowance plus crown to throat; where the throat
/// of the seat is not stated the mark beyond the loop is not known, and said so. `piece.cut` and
/// `piece.body` must be there. Source: arithmetic of the terms of the cut.
BenchMarks bench_marks(const Piece& piece, const LaidEnd& aloft, const LaidEnd& below);

} // namespace sheerpole
