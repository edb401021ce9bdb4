#pragma once

#include "calculate/end_use.hpp"
#include "calculate/line_end.hpp"

namespace sheerpole {

/// What a spliced end uses beyond the bearing: eye allowance, bury, spare bury, tail to trim, contraction
/// less what pre-tensioning gives back. An allowance that nothing states is missing, never zero. A bare end
/// uses nothing. Source: the sum is common practice, no source; check: 72 d of 9 mm is 648 mm.
EndUse splice_allowance(const Rig& rig, const LineMaterial& material, const LineEnd& end);

} // namespace sheerpole
