#pragma once

#include "calculate/cutting/cutting_order.hpp"
#include "calculate/cutting/cutting_plan.hpp"

namespace sheerpole {

/// Which piece is cut from which stock.
///
/// A piece longer than every stock is set aside first. Then four things are made least, each as far as the
/// ones before leave a choice.
///
/// First, the total length of pieces that stay uncut because there is not enough stock. Where several sets
/// of pieces have that length one of them is taken, and what follows speaks of the pieces that are cut.
///
/// Second, the cost in mm: for each stock begun its `cost_mm`, and, where it counts as cut, the length of
/// its pieces and one kerf for each. With no costs given and every stock counting whole this is the total
/// length of the stocks begun.
///
/// Third, the number of stocks begun. Fourth, the longest single leftover is made as long as possible.
///
/// The first two are exact when the plan says that it is proven. The others are exact for small orders and
/// a best effort for large ones. What is still equal is settled by length, then by name, so the order in
/// which pieces and stocks are listed does not matter.
///
/// Method: bound by column generation over cutting patterns (P. C. Gilmore and R. E. Gomory, "A linear
/// programming approach to the cutting-stock problem", Operations Research 9, 1961), the pricing knapsack
/// by dynamic programming; whole numbers by diving, then by an integer program over every pattern that the
/// bound still allows.
///
/// A length of 0, a negative number and a number over longest_cutting_mm or most_cutting_pieces are faults
/// of the caller; a count, a kerf, a least offcut and a cost of 0 are valid.
CuttingPlan plan_cutting(const CuttingOrder& order, const CuttingLimits& limits = {});

} // namespace sheerpole
