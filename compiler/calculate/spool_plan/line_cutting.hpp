#pragma once

#include "calculate/cutting/cutting_order.hpp"
#include "calculate/spool_plan/spool_plan.hpp"

namespace sheerpole {

/// The plan of one line, without names for the rests.
LinePlan plan_line(LineOrder order, const std::vector<StockFile>& files, const CuttingLimits& limits);

} // namespace sheerpole
