#pragma once

#include "model/sourced.hpp"
#include "units/quantity_text.hpp"

#include <string>

namespace sheerpole {

/// A force with where it is from: "18 kN (assumed, from the designer's sheet)".
std::string force_text(const Sourced<Force>& force);

/// Whether a number is below a bound, and not just by the rounding of a sum or a product.
constexpr bool is_below(double value, double bound) {
  constexpr double rounding = 1e-9; // of the bound; far below anything that is measured
  return value < bound - rounding * (bound < 0.0 ? -bound : bound);
}

} // namespace sheerpole
