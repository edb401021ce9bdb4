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

/// Source: SI Brochure, 9th edition, 2.2: exact by definition.
inline constexpr double boltzmann_joules_per_kelvin = 1.380649e-23;
/// Source: SI Brochure, 9th edition, 2.2: exact by definition.
inline constexpr double avogadro_per_mole = 6.02214076e23;
/// R = N_A k, exact since both are.
inline constexpr double gas_constant_joules_per_mole_kelvin =
    avogadro_per_mole * boltzmann_joules_per_kelvin;
/// Weight in newtons of one kilogram. Source: 3rd General Conference on Weights and Measures (1901), exact
/// by definition; real gravity differs from it by less than 0.3 %.
inline constexpr double standard_gravity_metres_per_second_squared = 9.80665;

} // namespace sheerpole
