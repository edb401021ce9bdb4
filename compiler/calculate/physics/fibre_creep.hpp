#pragma once

#include <optional>
#include <span>

namespace sheerpole {

/// What makes a fibre creep faster with heat and load. Both belong to the material and have a source of
/// their own.
struct CreepActivation {
  double energy_joules_per_mole = 0.0; ///< U, more than 0
  double volume_cubic_metres = 0.0;    ///< v, more than 0; 1 cubic angstrom is 1e-30 m3
};

/// A state of the fibre.
struct CreepState {
  double temperature_kelvin = 0.0; ///< more than 0
  double stress_pascals = 0.0;     ///< on the fibre, 0 or more
};

/// How much faster steady creep is at `at` than at `reference`: exp(-U/R (1/T - 1/T_ref)) sinh(s v/(k T)) /
/// sinh(s_ref v/(k T_ref)). Source: Eyring's form of thermally activated creep; from memory of Govaert,
/// Bastiaansen and Leblans, Polymer 34 (1993), and Jacobs, Creep of gel-spun polyethylene fibres (TU
/// Eindhoven, 1999). It is the plateau after the first stretch and before the final run to break, of one
/// process only. No load: 0. Nothing when an input is outside the range beside it, the reference carries no
/// load, or the ratio is too large for a number.
std::optional<double> creep_rate_ratio(const CreepActivation& activation, const CreepState& at,
                                       const CreepState& reference);

/// Steady creep in strain a second, from the rate measured at the reference state. The unit is that of
/// `reference_rate`, which is 0 or more. Nothing where creep_rate_ratio has nothing.
std::optional<double> creep_rate(double reference_rate, const CreepActivation& activation,
                                 const CreepState& at, const CreepState& reference);

/// The part of the ratio that comes from temperature alone, exp(-U/R (1/T - 1/T_ref)). Source: Arrhenius's
/// law. Nothing unless the energy and both temperatures are more than zero.
std::optional<double> thermal_rate_factor(double energy_joules_per_mole, double temperature_kelvin,
                                          double reference_kelvin);

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
