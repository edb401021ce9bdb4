#pragma once

#include "model/sourced.hpp"
#include "units/quantity.hpp"

#include <string>

namespace sheerpole {

/// One fact that is kept as written: a particular of the boat, the mass of a part, the batch of a rope.
struct Particular {
  std::string name;
  Sourced<Quantity> value; ///< zero when it is a text, a word, a date or a name
  std::string text;        ///< as written
};

} // namespace sheerpole
