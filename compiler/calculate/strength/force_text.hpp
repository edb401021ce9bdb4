#pragma once

#include "model/sourced.hpp"
#include "units/force.hpp"

#include <string>

namespace sheerpole {

/// A force inside a sentence: kilonewtons with two decimals at most and no idle zeros, "45 kN", "67.86 kN";
/// below one kilonewton in whole newtons, "850 N".
std::string force_text(Force force);

/// The same with where it is from: "18 kN (assumed, from the designer's sheet)".
std::string force_text(const Sourced<Force>& force);

/// A ratio inside a sentence, two decimals: "2.31".
std::string times_text(double ratio);

/// Whether a number is below a bound, and not just by the rounding of a sum or a product.
constexpr bool is_below(double value, double bound) {
  constexpr double rounding = 1e-9; // of the bound; far below anything that is measured
  return value < bound - rounding * (bound < 0.0 ? -bound : bound);
}

} // namespace sheerpole
