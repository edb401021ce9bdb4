#pragma once

#include "calculate/length_sum.hpp"
#include "units/length.hpp"

#include <string>

namespace sheerpole {

/// A length inside a sentence: millimetres with two decimals at most and no idle zeros, "57.15 mm", "9 mm".
std::string length_text(Length length);

/// A share inside a sentence, one decimal at most: "50 %", "33.3 %".
std::string percent_text(double share);

/// The value of a sum: "11381.73 mm"; with an unknown length "X", "X + 1003.3 mm", "X - 609.6 mm".
std::string sum_text(const LengthSum& sum);

} // namespace sheerpole
