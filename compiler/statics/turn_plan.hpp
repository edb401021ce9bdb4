#pragma once

#include "statics/quantity.hpp"
#include "statics/solver.hpp"

#include <cstddef>
#include <limits>
#include <optional>
#include <span>
#include <vector>

namespace sheerpole::statics {

/// What is turned as one: a screw, or a pair that is turned alike on both sides.
struct Screw {
  struct Pull {
    StayId stay;
    double mm_per_turn = 0.0; ///< by which one turn makes the stay shorter
  };
  std::vector<Pull> pulls;
  /// From where it is now: 0 or less, and 0 or more. What thread is left.
  double least_turns = 0.0, most_turns = 0.0;
  double step_turns = 1.0; ///< over 0: whole turns, or half ones where a lock needs only half
};

/// What is wished for: a value from `least` to `most`, either of which may be infinite.
struct Wish {
  Quantity what;
  double least = -std::numeric_limits<double>::infinity();
  double most = std::numeric_limits<double>::infinity();
  double one_off = 1.0; ///< how far beyond is as bad as one of another wish, over 0; N or mm
};

/// A value within so much of one that is wanted.
Wish about(Quantity what, double value, double within);

/// A screw turned, in an order that can be followed.
struct PlannedTurn {
  std::size_t screw = 0;
  double turns = 0.0;
  /// After it: the least tension among the stays that pull both before the first turn and after the last,
  /// and the stay that has it.
  double least_tension_newtons = 0.0;
  std::optional<StayId> slackest;
};

enum class PlanOutcome {
  reached,     ///< every wish is met
  not_reached, ///< the nearest that was found; `unmet` and `at_end` say why
  no_state,    ///< the rig does not stand before the first turn, or a screw or wish is not understood
};

struct TurnPlan {
  PlanOutcome outcome = PlanOutcome::no_state;
  std::vector<double> turns;  ///< by screw, whole numbers of its step
  State state;                ///< worked out with these turns
  std::vector<double> values; ///< by wish, in that state
  struct Unmet {
    std::size_t wish = 0;
    double off = 0.0; ///< by how much: below 0 short of `least`, over 0 beyond `most`
  };
  std::vector<Unmet> unmet;
  /// Screws that are at the end of their thread where more would bring the wishes nearer.
  std::vector<std::size_t> at_end;
  std::size_t states = 0; ///< how many were worked out
};

/// The turns that meet the wishes, the fewest that were found: a pair counts as two. The tangent of a state
/// gives the least of squares of what is off, with a small price on each turn so that what does not help is
/// left alone; that is rounded to the steps and bettered by single steps and by pairs of them; the state is
/// worked out with it, and all is done again from there until nothing better shows, at most 60 times. So
/// what is said of the turns is worked out, never extrapolated; that no fewer would do is not proven, and
/// near slack stays, whose screws seem to do nothing, a plan can be missed. Source: least squares with a
/// price on sizes by coordinate descent, textbooks; the rounding was worked out here.
TurnPlan plan_turns(Solver& solver, const State& now, std::span<const Screw> screws,
                    std::span<const Wish> wishes, const SearchBounds& bounds = {});

/// An order of the turns of a plan: all turns of one screw after the other where every stay that pulls
/// before and after keeps `least_newtons` meanwhile, else a step at a time, the step that leaves the
/// slackest of them tightest. Each place in it is worked out. Nothing when a state on the way does not
/// stand.
std::optional<std::vector<PlannedTurn>> order_turns(Solver& solver, const State& now,
                                                    std::span<const Screw> screws, const TurnPlan& plan,
                                                    double least_newtons, const SearchBounds& bounds = {});

} // namespace sheerpole::statics
