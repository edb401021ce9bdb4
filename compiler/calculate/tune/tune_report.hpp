#pragma once

#include "calculate/tune/tune_later.hpp"
#include "calculate/tune/tune_slips.hpp"
#include "calculate/tune/tuned_rig.hpp"
#include "calculate/tune/turn_effects.hpp"
#include "calculate/tune/turn_planning.hpp"

#include <vector>

namespace sheerpole {

/// All that the tune sheet says. Of a rig that does not stand the rig alone is filled in.
struct TuneReport {
  TunedRig tuned;
  std::vector<TurnEffect> effects;
  TuneDoubt doubt;
  std::vector<TuneSlip> slips;
  std::vector<TuneLater> later;
  TurnPlanning planning;
};

TuneReport tune_report(const Rig& rig, const Derived& derived);

} // namespace sheerpole
