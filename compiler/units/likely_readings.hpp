#pragma once

#include "units/parse_quantity.hpp"

#include <string_view>

namespace sheerpole {

enum class Expected { quantity, number };

/// Turns a refusal of `text` into an error with the readings that were possibly meant. Every suggestion is
/// tried before it is given: it is accepted as written. Slow next to reading; called for refused texts
/// only.
QuantityError explain_refusal(std::string_view text, Refusal refusal, Expected expected);

} // namespace sheerpole
