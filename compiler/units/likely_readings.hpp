#pragma once

#include "units/parse_quantity.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace sheerpole {

enum class Expected { quantity, number };

/// Turns a refusal of `text` into an error with the readings that were possibly meant. Every suggestion is
/// tried before it is given: it is accepted as written. Slow next to reading; called for refused texts
/// only.
QuantityError explain_refusal(std::string_view text, Refusal refusal, Expected expected);

/// The readings in a row: "11.815 m, 11_815 m or 11, 815 m".
std::string alternatives(const std::vector<std::string>& readings);

} // namespace sheerpole
