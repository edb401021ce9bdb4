#include "calculate/physics/creep_rate.hpp"

#include "calculate/physics/finite_value.hpp"
#include "calculate/physics/physical_constants.hpp"

#include <cmath>
#include <numbers>

namespace sheerpole {

namespace {

/// ln sinh(x) for x > 0; sinh itself is too large for a number from x = 711 on.
double log_sinh(double x) {
  return x + std::log(-std::expm1(-2.0 * x)) - std::numbers::ln2;
}

double log_thermal_factor(double energy, double temperature, double reference) {
  // 1/T - 1/T_ref as one fraction keeps its digits for temperatures that are near each other.
  return energy / gas_constant_joules_per_mole_kelvin * (temperature - reference) /
         (temperature * reference);
}

double activation_argument(double volume, const CreepState& state) {
  return state.stress_pascals * volume / (boltzmann_joules_per_kelvin * state.temperature_kelvin);
}

} // namespace

std::optional<double> creep_rate_ratio(const CreepActivation& activation, const CreepState& at,
                                       const CreepState& reference) {
  if (!is_more_than_zero(activation.energy_joules_per_mole) ||
      !is_more_than_zero(activation.volume_cubic_metres) || !is_more_than_zero(at.temperature_kelvin) ||
      !is_more_than_zero(reference.temperature_kelvin) || !is_more_than_zero(reference.stress_pascals) ||
      !(at.stress_pascals >= 0.0))
    return std::nullopt;
  if (at.stress_pascals == 0.0)
    return 0.0;
  return finite_value(std::exp(log_thermal_factor(activation.energy_joules_per_mole, at.temperature_kelvin,
                                                  reference.temperature_kelvin) +
                               log_sinh(activation_argument(activation.volume_cubic_metres, at)) -
                               log_sinh(activation_argument(activation.volume_cubic_metres, reference))));
}

std::optional<double> creep_rate(double reference_rate, const CreepActivation& activation,
                                 const CreepState& at, const CreepState& reference) {
  const auto ratio = creep_rate_ratio(activation, at, reference);
  if (!ratio || !(reference_rate >= 0.0))
    return std::nullopt;
  return finite_value(reference_rate * *ratio);
}

std::optional<double> thermal_rate_factor(double energy_joules_per_mole, double temperature_kelvin,
                                          double reference_kelvin) {
  if (!is_more_than_zero(energy_joules_per_mole) || !is_more_than_zero(temperature_kelvin) ||
      !is_more_than_zero(reference_kelvin))
    return std::nullopt;
  return finite_value(
      std::exp(log_thermal_factor(energy_joules_per_mole, temperature_kelvin, reference_kelvin)));
}

} // namespace sheerpole
