#pragma once

#include "plugins/spool-plan/fleet_boats.hpp"

namespace sheerpole {

/// The records of one file of stock when the plan has been carried out, as a file to be used in its place;
/// what the boats state of cutting these lines goes with them.
std::string new_stock_text(const FleetBoats& fleet, const SpoolPlan& plan, std::size_t file);

} // namespace sheerpole
