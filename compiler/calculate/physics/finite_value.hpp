#pragma once

#include "units/force.hpp"
#include "units/length.hpp"

#include <cmath>
#include <optional>

namespace sheerpole {

/// A number that was calculated; nothing when it ran out of range or has no meaning, so that no formula
/// hands on an infinity or a NaN.
inline std::optional<double> finite_value(double value) {
  return std::isfinite(value) ? std::optional(value) : std::nullopt;
}

/// The same as a length, of metres.
inline std::optional<Length> finite_length(double metres) {
  return std::isfinite(metres) ? std::optional(Length::metres(metres)) : std::nullopt;
}

/// The same as a force, of newtons.
inline std::optional<Force> finite_force(double newtons) {
  return std::isfinite(newtons) ? std::optional(Force::newtons(newtons)) : std::nullopt;
}

/// Whether a number is finite and more than nothing.
inline bool is_more_than_zero(double value) {
  return value > 0.0 && std::isfinite(value);
}

} // namespace sheerpole
