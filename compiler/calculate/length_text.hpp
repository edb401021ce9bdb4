#pragma once

#include "calculate/length_sum.hpp"
#include "units/quantity_text.hpp"

#include <string>

namespace sheerpole {

/// The value of a sum: "11381.73 mm"; with an unknown length "X", "X + 1003.3 mm", "X - 609.6 mm".
std::string sum_text(const LengthSum& sum);

} // namespace sheerpole
