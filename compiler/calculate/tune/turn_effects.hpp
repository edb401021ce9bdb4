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

/// How far a number may be off by what has a bound, in three ways, as lengths are (uncertainty.hpp). N or
/// mm.
struct TuneRange {
  double worst_low = 0.0, worst_high = 0.0; ///< every input at its worst together: not over 0, not below 0
  double expanded = 0.0;                    ///< half of the 95 % range by the law of propagation
  double drawn_low = 0.0, drawn_high = 0.0; ///< 95 % range of draws, less the number as worked out
};

/// How far each quantity, and its change by each turn, may be off by what has a bound.
struct TuneDoubt {
  std::size_t inputs = 0;                        ///< how many bounds move anything
  std::size_t draws = 0;                         ///< of the Monte Carlo method
  std::vector<TuneRange> of_value;               ///< by quantity
  std::vector<std::vector<TuneRange>> of_change; ///< [effect][quantity]
  std::vector<Remark> trouble;                   ///< bounds with which the rig does not stand
};

/// Each stated bound of a stiffness, a tension read and what was taken up is put in upwards and downwards,
/// the rig fitted and worked out anew each time; what is stated once moves together. That is the first
/// order of each input and the second of each by itself, and what two do together beyond that is not in it;
/// changes by a turn are those of the tangent. Of it the worst case, the law of propagation and draws are
/// made with the distribution and the seed of the lengths, and a tenth of their draws. Bounds of places and
/// lengths are not in it. Source: JCGM 100:2008, 5.1.2 and JCGM 101:2008, 7.
TuneDoubt tune_doubt(const Rig& rig, const Derived& derived, const TunedRig& tuned,
                     const std::vector<TurnEffect>& effects);

} // namespace sheerpole
