#pragma once

#include "model/particular.hpp"
#include "model/sourced.hpp"
#include "units/length.hpp"

#include <optional>
#include <string>
#include <vector>

namespace sheerpole {

struct Boat {
  std::string title;
  std::string sister_of = {}; ///< title of the boat that this one is made from; may be empty
  std::vector<Particular> particulars = {};
  std::optional<Sourced<Length>> pair_tolerance; ///< port and starboard within this are one cut
  std::string report_date = {};                  ///< ISO 8601; may be empty
};

} // namespace sheerpole
