#pragma once

#include <optional>
#include <span>

namespace sheerpole {

/// One line of a maker's table of steady creep.
struct CreepPoint {
  double share_of_break = 0.0;     ///< load over break load, more than 0
  double temperature_kelvin = 0.0; ///< more than 0
  double rate = 0.0; ///< strain for each unit of time, more than 0; one unit in the whole table
};

/// True when the points can be interpolated: at least one, each number finite and more than zero, no load
/// twice at one temperature. Temperatures within 1e-6 K of each other are one.
bool is_creep_table(std::span<const CreepPoint> points);

/// The rate at a load and a temperature, between the points: the logarithm of the rate is taken as linear
/// in the load at each temperature, then as linear in 1/T between the nearest temperature below and above
/// that have the load within their own points. That is how the Eyring form runs over a short range at high
/// load. Never beyond the points, whether in load or in temperature: nothing there, and the rate is not
/// known. A table of one temperature answers at that temperature only. No load: 0 at any temperature.
/// Nothing when is_creep_table is false or an input is less than zero. The order of the points is of no
/// account.
std::optional<double> creep_rate_from_table(std::span<const CreepPoint> points, double share_of_break,
                                            double temperature_kelvin);

} // namespace sheerpole
