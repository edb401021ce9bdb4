#pragma once

#include "units/force.hpp"

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

namespace sheerpole {

/// What is left of a break load by one reduction after another, of a splice, a terminal or a bend: the
/// product. Source: common practice, no source; reductions at different places do not add up in truth, the
/// worst governs. Nothing when the load is not more than zero or a factor not more than 0 and at most 1.
std::optional<Force> reduced_break_load(Force break_load, std::span<const double> factors);

/// The weakest of parts that hang on each other.
struct WeakestLink {
  std::optional<std::size_t> weakest_known; ///< the first of the lowest; nothing when none is known
  std::vector<std::size_t> unknown;         ///< the parts that nobody has stated, in their order
  /// Of the chain; nothing while a part is unknown, as that may be the weakest.
  std::optional<Force> strength;
  /// What the chain carries at most: the lowest known. Nothing when none is known.
  std::optional<Force> at_most;
};

/// The chain carries no more than its weakest part; a part without a break load never counts as strong.
/// Source: statics. Nothing for no part, or one whose break load is less than zero.
std::optional<WeakestLink> weakest_link(std::span<const std::optional<Force>> break_loads);

} // namespace sheerpole
