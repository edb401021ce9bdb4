#pragma once

#include "model/rig.hpp"

#include <functional>

namespace sheerpole {

struct Derived;

/// Works out what decides the length of one finished stay in a rig that is changed for a trial: the cut of
/// the piece that takes what the others leave, without what is only marked off on it.
using CutOf = std::function<Length(const Rig&, StayId)>;

/// How well the cut of every stay is known: from the bounds that the file states, the scatter of repeated
/// readings and the error of the tapes. Each stay is worked out again with each of its inputs moved both
/// ways by its bound, and with two moved at once where that makes a difference of 0.01 mm; what the file
/// states once is one input, and moves everything that rests on it. Fills Derived::inputs, Derived::draws,
/// Derived::seed and DerivedStay::uncertainty of the stays for which any bound is stated. With very many
/// stays fewer draws are made, so that all of them together are 40 million; Derived::draws says how many.
/// 0 threads: as many as there are processors.
void add_uncertainty(const Rig& rig, const CutOf& cut_of, Derived& derived, unsigned threads = 0);

} // namespace sheerpole
