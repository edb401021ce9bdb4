#pragma once

#include "calculate/tune/tuned_rig.hpp"

#include <cstddef>
#include <optional>
#include <vector>

namespace sheerpole {

/// What is turned as one: one adjuster, or those of both sides alike.
struct TurnedStays {
  std::vector<std::size_t> stays; ///< in TuneModel::stays
};

/// What one turn tighter does, all others as they are; worked out, not extrapolated. Of what has no screw:
/// one hole, or one millimetre.
struct TurnEffect {
  TurnedStays turned;
  std::vector<Remark> trouble;         ///< not empty: the rig does not stand with it
  std::vector<double> change;          ///< by quantity of the rig, N or mm
  std::vector<std::size_t> went_slack; ///< in TuneModel::stays: pull before, and not after
  /// The stay that goes slack first when it is turned on, and about how many turns after now: by the
  /// change that the first turn makes. Nothing when no stay loses tension by it.
  std::optional<std::size_t> first_slack;
  double slack_after_turns = 0.0;
  bool beyond_thread = false; ///< there is no whole turn left to tighten
};

/// Both sides together first, then each adjuster, in the order of the stays. The rig stands.
std::vector<TurnEffect> turn_effects(const Rig& rig, const TunedRig& tuned);

/// The state when these lengths are taken up beyond now, by leg of the structure, in mm.
statics::State state_with(const TunedRig& tuned, const std::vector<double>& shorter_mm);

/// By leg of the structure: what so many turns of these stays take.
std::vector<double> taken_by(const TunedRig& tuned, const TurnedStays& turned, double turns);

/// The turned things of a rig: pairs whose adjusters are alike, then each adjuster by itself.
std::vector<TurnedStays> turned_stays(const Rig& rig, const TuneModel& model);

/// How far each quantity, and its change by each turn, may be off by what has a bound.
struct TuneDoubt {
  std::size_t inputs = 0;                     ///< how many bounds move anything
  std::vector<double> of_value;               ///< by quantity: the root of the sum of squares
  std::vector<double> of_value_at_worst;      ///< by quantity: all bounds at their worst together
  std::vector<std::vector<double>> of_change; ///< [effect][quantity], the root of the sum of squares
  std::vector<Remark> trouble;                ///< bounds with which the rig does not stand
};

/// Each stated bound of a stiffness, a tension read and what was taken up is put in once, upwards, the rig
/// fitted and worked out anew, and what is stated once moves together. To the first order: changes by a
/// turn are those of the tangent. Bounds of places and lengths are not in it.
TuneDoubt tune_doubt(const Rig& rig, const Derived& derived, const TunedRig& tuned,
                     const std::vector<TurnEffect>& effects);

} // namespace sheerpole
