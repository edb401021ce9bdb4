#pragma once

#include "units/length.hpp"

#include <optional>
#include <string_view>

namespace sheerpole {

/// The smallest division that a length is written in: "11_642 mm" is written to 1 mm, "11.64 m" to 10 mm,
/// "37 ft 4 1/8 in" to 1/8 in. Nothing when the text is not one length, such as a sum of two.
std::optional<Length> smallest_division(std::string_view written);

} // namespace sheerpole
