#pragma once

#include <optional>

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

} // namespace sheerpole
