#pragma once

#include "units/parse_quantity.hpp"

#include <cstddef>
#include <string_view>
#include <variant>

namespace sheerpole {

/// Why a text was refused, and the byte at which it was noticed; for a unit, its first byte.
struct Refusal {
  QuantityError::Kind kind = QuantityError::Kind::malformed;
  std::size_t at = 0;
};

/// Reads a text without blanks round it as a quantity. Says no more than where it stopped: texts are tried
/// as possible suggestions too, so no suggestion is looked for here.
std::variant<Quantity, Refusal> scan_quantity(std::string_view text);

/// The same for a number without unit.
std::variant<double, Refusal> scan_plain_number(std::string_view text);

} // namespace sheerpole
