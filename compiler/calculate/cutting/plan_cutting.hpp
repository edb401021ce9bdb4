#pragma once

#include "calculate/cutting/cutting_order.hpp"
#include "calculate/cutting/cutting_plan.hpp"

namespace sheerpole {

/// Which piece is cut from which stock.
///
/// Minimised, in this order:
/// 1. the total length of pieces that must stay uncut because there is not enough stock (a piece that is
/// longer
///    than every stock is set aside before);
/// 2. the cost in mm: for each stock begun its `cost_mm`, and, where it counts as cut, the length of its
/// pieces
///    and one kerf for each. With the costs left out and every stock counting whole this is the total
///    length of the stocks begun;
/// 3. the number of stocks begun;
/// 4. the longest single leftover, as long as possible.
/// 1 and 2 are exact when the plan says that it is proven. 3 and 4 are exact for small orders and a best
/// effort for large ones. What is still equal is settled by length, then by name, so the order in which
/// pieces and stocks are listed does not matter.
///
/// Method: bound by column generation over cutting patterns (P. C. Gilmore and R. E. Gomory, "A linear
/// programming approach to the cutting-stock problem", Operations Research 9, 1961), the pricing knapsack
/// by dynamic programming; whole numbers by diving, then by an integer program over every pattern that the
/// bound still allows.
///
/// Counts and lengths that are not positive (0 is a valid count, kerf, least offcut and cost) are faults of
/// the caller.
CuttingPlan plan_cutting(const CuttingOrder& order, const CuttingLimits& limits = {});

} // namespace sheerpole
