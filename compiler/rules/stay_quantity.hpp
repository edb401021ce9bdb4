#pragma once

#include "calculate/derived.hpp"

#include <optional>
#include <string_view>
#include <vector>

namespace sheerpole {

/// The values of one quantity of a stay by its word: pin-to-pin, body, cut (one a piece), to-tighten,
/// to-slacken, engaged (one an adjuster). Empty where the stay has none, or its length is X.
std::vector<Length> stay_quantity(const DerivedStay& stay, std::string_view quantity);

} // namespace sheerpole
