#pragma once

#include <optional>

namespace sheerpole {

/// Which block the hauling part comes out of.
enum class HaulingPart {
  from_fixed_block,
  from_moving_block, ///< it is then one of the parts that carry the load
};

/// Load over the hauling pull of a tackle with `parts` parts of rope at the moving block, while the load is
/// being pulled in: each sheave hands on `sheave_efficiency` of the tension. With e for it the parts carry
/// 1, e, e^2 ... of the pull, and e, e^2, ... where the hauling part comes out of the fixed block. Without
/// friction it is the number of parts. Source: equilibrium of the moving block; the efficiency is the
/// caller's. Nothing unless the parts are 1 to 100 and the efficiency more than 0 and at most 1.
std::optional<double> tackle_advantage(int parts, HaulingPart hauling_part, double sheave_efficiency);

} // namespace sheerpole
