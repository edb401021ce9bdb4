#pragma once

#include "calculate/tune/tuned_rig.hpp"

#include <optional>
#include <vector>

namespace sheerpole {

/// One stay by what was read against what is stated of its adjuster.
struct TuneSlip {
  std::size_t stay = 0;      ///< in TuneModel::stays
  double read_newtons = 0.0; ///< the mean of its readings
  std::optional<double>
      by_settings_newtons{}; ///< nothing: the settings alone do not stand, or not all are stated
  std::optional<double> more_taken_mm{}; ///< how much more it took by the readings than is stated
  std::vector<Remark> likeliest{};       ///< what may be the slip; empty: none shows
};

/// What was read against the state by the stated `taken-up` alone. Where the readings are off from it, the
/// slip of one stay that explains them best, by the tangent, and those that are as likely: tensions tell a
/// forestay that is too long from a backstay that is too short badly. A whole number of turns was
/// miscounted; twice what is stated the other way is a thread of the other hand; readings that all are off
/// by one factor are of a gauge for another size. The rig stands.
std::vector<TuneSlip> tune_slips(const Rig& rig, const Derived& derived, const TunedRig& tuned);

} // namespace sheerpole
