#pragma once

#include "plugins/spool-plan/fleet_boats.hpp"

namespace sheerpole {

/// For people, at most 100 columns wide as long as no single name is wider.
std::string plan_text(const FleetBoats& fleet, const SpoolPlan& plan);

} // namespace sheerpole
