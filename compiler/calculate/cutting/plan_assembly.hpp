#pragma once

#include "calculate/cutting/cutting_order.hpp"
#include "calculate/cutting/cutting_plan.hpp"
#include "calculate/cutting/order_problem.hpp"

namespace sheerpole::cutting {

/// The packing in the words of the order: stocks, positions, kerf, leftovers, what is uncut, and the sums.
/// Stocks: longest first, then those with the longer pieces; pieces of one length by name.
CuttingPlan assemble(const CuttingOrder& order, const OrderProblem& source, const Packing& packing);

} // namespace sheerpole::cutting
