#pragma once

#include "model/rig.hpp"

#include <vector>

namespace sheerpole {

/// A boat wider than this share of her length has several hulls. Common practice, no source.
inline constexpr double multihull_beam = 0.42;

/// What stays and spreaders make of a point. Points into the rig.
struct PointUses {
  std::vector<const Stay*> begins, ends, passes;
  const Spreader* root_of = nullptr;
  const Spreader* tip_of = nullptr;
};

/// One for each point of the rig, in its order. A stay without two places uses none.
std::vector<PointUses> point_uses(const Rig& rig);

} // namespace sheerpole
