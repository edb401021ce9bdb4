#pragma once

#include "units/force.hpp"
#include "units/length.hpp"

#include <optional>

namespace sheerpole {

/// How many pitches the stress diameter of an inch thread is below the nominal one. Source: ASME B1.1, from
/// memory.
inline constexpr double inch_stress_diameter_pitches = 0.9743;
/// The same of a metric thread. Source: ISO 898-1, from memory.
inline constexpr double metric_stress_diameter_pitches = 0.9382;

/// Tensile stress area of a thread in m2: pi/4 (d - k p)^2, k being one of the two above. Source: the
/// standards named there. Nothing unless diameter and pitch are more than zero, k is not less than zero and
/// k p is less than the diameter.
std::optional<double> thread_stress_area(Length diameter, Length pitch, double pitches);

/// What the threaded part carries: area x stress, in pascals. Source: mean stress on the stress area.
/// Nothing unless both are more than zero. Stripping is another matter.
std::optional<Force> thread_strength(double stress_area_square_metres, double stress_pascals);

} // namespace sheerpole
