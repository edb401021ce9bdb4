#pragma once

#include "model/sourced.hpp"
#include "units/length.hpp"
#include "units/quantity.hpp"

#include <optional>
#include <string>
#include <vector>

namespace sheerpole {

/// One of the boat's particulars, shown as written.
struct Particular {
  std::string name;
  Sourced<Quantity> value; ///< zero when it is a text only
  std::string text;        ///< as written
};

struct Boat {
  std::string title;
  std::vector<Particular> particulars;
  std::optional<Sourced<Length>> pair_tolerance; ///< port and starboard within this are one cut
};

} // namespace sheerpole
