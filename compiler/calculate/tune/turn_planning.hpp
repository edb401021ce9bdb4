#pragma once

#include "calculate/tune/turn_effects.hpp"
#include "statics/turn_plan.hpp"

#include <optional>
#include <vector>

namespace sheerpole {

/// What was wished for, as far as it can be told.
struct TuneWish {
  const Record* record = nullptr;
  std::size_t quantity = 0; ///< in TunedRig::quantities
  double value = 0.0;       ///< N or mm, as told by that quantity
  double within = 0.0;
};

/// The turns that bring what is wished for.
struct TurnPlanning {
  std::vector<TuneWish> wishes;
  std::vector<Remark>
      not_understood; ///< wishes that speak of what is not in the model, or that another takes the place of
  std::vector<TurnedStays> screws; ///< what is turned: pairs, or each by itself
  statics::TurnPlan plan;          ///< by wish and screw of these
  std::vector<double> now;         ///< by quantity of the rig
  std::vector<double> after;
  /// In an order that can be followed; nothing when on the way some state does not stand.
  std::optional<std::vector<statics::PlannedTurn>> steps;
  double least_newtons = 0.0; ///< which every stay that pulls before and after is to keep meanwhile
};

/// A plan for all `tension-wish` and `mast-wish` records, in whole or half turns, whole holes, or
/// millimetres where nothing is turned, within what is left of each adjuster. Pairs are turned alike,
/// unless a wish is of one side or the sides are not alike now. The order keeps at least half of the least
/// tension that a stay has before or after. The rig stands. See statics/turn_plan.hpp.
TurnPlanning turn_planning(const Rig& rig, const TunedRig& tuned);

} // namespace sheerpole
