#pragma once

#include "units/force.hpp"
#include "units/length.hpp"

#include <optional>

namespace sheerpole {

// The tension of a stay from how it swings. Source of all three: Mersenne's law of the taut string; a wave
// runs along it with sqrt(T / mu). Holds for a line that is stretched tight, with little sag, and much
// longer than it is stiff: for L sqrt(T / EI) of 300 clamped ends make the tension read high by about 1.3
// %, for 100 by 4 %. An error of the time or of the frequency counts twice in the tension, and one of the
// length too. Nothing unless every input is more than zero.

/// T = 4 mu L^2 f^2, `frequency` being that of the first mode, in hertz (whole swings a second),
/// `linear_mass` in kg/m and `free_length` between the places where the line is held still.
std::optional<Force> tension_from_frequency(double linear_mass_kilograms_per_metre, Length free_length,
                                            double frequency_hertz);

/// First mode, in hertz: f = sqrt(T / mu) / (2 L).
std::optional<double> first_mode_frequency(double linear_mass_kilograms_per_metre, Length free_length,
                                           Force tension);

/// T = 4 mu L^2 / t^2, `return_time` being the seconds in which a tap at one end runs to the other and
/// back; for more than one return, the time divided by their number. In pounds and feet w L^2 / ((g/4)
/// t^2), with g/4 about 8.04.
std::optional<Force> tension_from_pulse(double linear_mass_kilograms_per_metre, Length free_length,
                                        double return_time_seconds);

} // namespace sheerpole
