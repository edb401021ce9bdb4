#pragma once

#include "calculate/tune/tuned_rig.hpp"

#include <vector>

namespace sheerpole {

/// The rig at another time, nothing turned meanwhile.
struct TuneLater {
  Remark when;                     ///< "coldest day, -10 degC", "1 year"
  std::vector<double> longer_mm{}; ///< by stay of the model: how much longer than its way it has got
  struct NotChecked {
    StayId stay;
    std::vector<Remark> why;
  };
  std::vector<NotChecked> not_checked{}; ///< of which it is not known; they count as they are
  std::vector<Remark> trouble{};         ///< not empty: the rig does not stand then
  statics::State state{};
  std::vector<double> values{}; ///< by quantity of the rig
};

/// The coldest and the warmest day of the `take-up` record, -10 and +40 degC without it; then each of its
/// times, one year without it, by which lines have bedded in and crept. A stay is longer by what its line
/// grows beyond its way (thermal_table.hpp), or by what its account has of lasting stretch; its legs share
/// that by their lengths. The rig stands.
std::vector<TuneLater> tune_later(const Rig& rig, const Derived& derived, const TunedRig& tuned);

} // namespace sheerpole
