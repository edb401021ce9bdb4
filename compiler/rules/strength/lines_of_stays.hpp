#pragma once

#include "calculate/derived.hpp"
#include "model/rig.hpp"
#include "rules/by_side.hpp"

#include <optional>
#include <vector>

namespace sheerpole {

/// What a stay's pieces are made of, each once, from aloft to deck.
std::vector<MaterialId> lines_of(const DerivedStay& stay);

/// Every line that a stay of the rig is made of, or that lashes one, or hung there before, in the order of
/// the files. What a library has beyond that is no business of this boat.
std::vector<MaterialId> lines_in_use(const Rig& rig, const Derived& derived);

/// The dock tension of a stay over the break load of one of its lines.
struct DockShare {
  double share = 0.0;
  Span place;   ///< where the tension is stated
  Remark words; ///< "dock tension 12 kN is 15 % of the 80 kN of wire-8"
};

/// Nothing when the tension or the break load is not stated, which is reported.
std::optional<DockShare> dock_share(const Stay& stay, const LineMaterial& line, StayReport& report);

/// Whether a rope is of HMPE by the word in its construction.
bool is_hmpe(const LineMaterial& material);

} // namespace sheerpole
