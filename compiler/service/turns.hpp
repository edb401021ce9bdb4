#pragma once

#include "calculate/tune/tuned_rig.hpp"
#include "calculate/tune/turn_effects.hpp"
#include "service/open_boat.hpp"

#include <cstddef>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace sheerpole::service {

/// By name of a stay, turns tighter than now (holes, or millimetres where nothing is turned).
using TurnsByStay = std::map<std::string, double>;

/// What can be turned, and how far.
struct TurnedAdjuster {
  std::size_t stay = 0;                       ///< in TuneModel::stays
  double least_turns = 0.0, most_turns = 0.0; ///< what is left of its thread, from now
  double turns = 0.0;                         ///< those of this trial
  bool beyond_thread = false;                 ///< more than is left
};

/// A turned stay whose setting is not written, and why.
struct NotWritten {
  std::size_t stay = 0;
  std::string why;
};

/// How a rig stands with turns that nobody has made.
struct TurnTrial {
  std::vector<TurnedAdjuster> adjusters;
  std::vector<std::string> unknown; ///< names in the request of which nothing is turned
  std::vector<Remark> trouble;      ///< not empty: the rig does not stand with these turns
  std::vector<double> now,
      with;             ///< by quantity of the rig, N or mm; `with` is empty when it does not stand
  statics::State state; ///< with the turns
  std::vector<std::size_t> went_slack;
  std::vector<TextEdit> edits; ///< what makes the turns those that are stated, as `taken-up`
  std::vector<NotWritten> not_written;
};

/// The rig, which stands, with these turns: one search from the state that it is in. Beyond the thread that
/// is left it is worked out too, and said. The edits put what each adjuster has taken with the turns in the
/// place of what it had taken; a stay whose tension was read is to be read again instead. Takes a
/// millisecond or two of a boat with fifteen stays.
TurnTrial try_turns(const OpenBoat& boat, const TunedRig& tuned, const TurnsByStay& turns);

/// By stay "4.78 kN at the dock" or "slack by 3.1 mm at the dock"; empty when the boat states nothing of
/// her tune, or does not stand. A search for the state, some milliseconds.
std::map<StayId, std::string> pull_words(const OpenBoat& boat);

} // namespace sheerpole::service
