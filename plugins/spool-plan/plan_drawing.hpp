#pragma once

#include "backend/drawing/drawing.hpp"
#include "plugins/spool-plan/fleet_boats.hpp"

namespace sheerpole {

/// Sheets on which every stock that is begun lies as a bar, all to one scale.
std::vector<Drawing> plan_drawing(const FleetBoats& fleet, const SpoolPlan& plan);

} // namespace sheerpole
