#pragma once

#include "units/length.hpp"

#include <optional>

namespace sheerpole {

/// How much longer something becomes when it is warmed: dL = a L dT, `a` being the mean coefficient over
/// that range of temperature, less than zero for fibres that shorten. Source: linear thermal expansion.
/// Nothing when the length is less than zero, an input is not finite, or a dT is -1 or less.
std::optional<Length> thermal_growth(Length length, double expansion_per_kelvin, double warming_kelvin);

/// A spar or a line with its own length and its own coefficient.
struct ThermalMember {
  Length length;
  double expansion_per_kelvin = 0.0;
};

/// How much more the spar grows than the line along it: a_spar L_spar dT - a_line L_line dT. More than
/// zero: the line becomes tighter, less than zero: slacker. Source and range as of thermal_growth, for
/// both.
std::optional<Length> spar_growth_beyond_line(const ThermalMember& spar, const ThermalMember& line,
                                              double warming_kelvin);

} // namespace sheerpole
