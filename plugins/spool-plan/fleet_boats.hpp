#pragma once

#include "backend/backend.hpp"

#include <string>
#include <vector>

namespace sheerpole {

/// The boats of a request. Points into it.
struct FleetBoats {
  std::vector<SpoolBoat> boats;
  std::string titles; ///< "Pellimoor, Grisolde"
};

/// Two boats of one name are told apart by their files, then by a number.
FleetBoats fleet_boats(const BackendRequest& request);

} // namespace sheerpole
