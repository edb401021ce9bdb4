#pragma once

#include "calculate/cutting/problem.hpp"

#include <cstdint>
#include <vector>

namespace sheerpole::cutting {

/// Which totals the costs of stocks can add up to at all: two coils of 30 m and 50 m make no 70 m. So a
/// bound that falls between two such totals may be raised to the upper one.
class ReachableCost {
public:
  /// upper: the cost of a known packing; totals above it do not matter.
  ReachableCost(const Problem& problem, RankedCost upper);

  /// The least ranked cost of a packing that is not below `bound`; never above `upper`.
  RankedCost at_least(RankedCost bound) const;

private:
  std::int64_t rank_;
  RankedCost upper_;
  std::int64_t step_ = 1; ///< mm; divides every total
  std::vector<std::int32_t>
      fewest_stocks_; ///< for the total i * step_, or `never`; empty when there are too many
};

} // namespace sheerpole::cutting
