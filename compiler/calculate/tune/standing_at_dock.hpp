#pragma once

#include "calculate/derived.hpp"
#include "model/ids.hpp"
#include "model/remark.hpp"
#include "model/rig.hpp"
#include "source/span.hpp"

#include <optional>
#include <string>
#include <vector>

namespace sheerpole {

/// How a boat that states something of her tune stands at the dock, for checks and for editors. N and mm.
struct StandingAtDock {
  /// Something that the balance asks for and nobody states.
  struct Missing {
    Remark of;            ///< empty: see `words`
    std::string property; ///< a property, by its name
    Remark words;         ///< what else is in the way
    Span place;           ///< of what it is missing of
    /// Of a spar whose stations do not reach its heel or its head: where the nearest of them says how far
    /// it is from the heel, and how far that end is.
    std::optional<Span> station{};
    double station_ought_mm = 0.0;
  };
  struct Stay {
    StayId stay;
    double newtons = 0.0; ///< at the deck, 0 when slack
    double slack_mm = 0.0;
    double most_newtons = 0.0;           ///< in any of its legs
    std::optional<double> break_newtons; ///< of its line
  };
  std::vector<Missing> missing;
  std::vector<Remark> trouble; ///< why it does not stand, though all is stated
  std::vector<Stay> stays;     ///< empty unless it stands
  std::optional<double> softest_newtons_per_mm;
  std::string softest_at; ///< name of the point that gives way first

  bool stands() const { return missing.empty() && trouble.empty(); }
};

/// Whether the file says that the boat is to be tuned by it: a wish, what an adjuster has taken, EA of a
/// spar or a spreader, a station of a spar. Tensions that are read, dock tensions and the stretch of a line
/// serve other checks as well, and say nothing of that.
bool states_tune(const Rig& rig);

/// Nothing unless `states_tune`. One search for the state, a few milliseconds.
std::optional<StandingAtDock> standing_at_dock(const Rig& rig, const Derived& derived);

} // namespace sheerpole
