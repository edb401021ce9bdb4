#pragma once

#include "backend/backend.hpp"

namespace sheerpole {

/// One flat table, one row a cut; the columns are described in docs/backends/spool-plan.md.
std::string plan_csv(const SpoolPlan& plan);

} // namespace sheerpole
