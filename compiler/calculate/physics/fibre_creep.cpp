#include "calculate/physics/fibre_creep.hpp"

#include "calculate/physics/physical_values.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <vector>

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

namespace {

/// Far below what a thermometer tells apart, far above the last digit of 20 degC and 68 degF.
constexpr double same_temperature_kelvin = 1e-6;

bool is_one_temperature(double a, double b) {
  return std::abs(a - b) <= same_temperature_kelvin;
}

double between(double at, double x0, double y0, double x1, double y1) {
  return x0 == x1 ? y0 : y0 + (y1 - y0) * ((at - x0) / (x1 - x0));
}

/// Logarithm of the rate at one of the table's temperatures; nothing when its points do not reach the load.
std::optional<double> log_rate_at(std::span<const CreepPoint> points, double temperature, double share) {
  const CreepPoint* below = nullptr;
  const CreepPoint* above = nullptr;
  for (const CreepPoint& point : points) {
    if (!is_one_temperature(point.temperature_kelvin, temperature))
      continue;
    if (point.share_of_break <= share && (!below || point.share_of_break > below->share_of_break))
      below = &point;
    if (point.share_of_break >= share && (!above || point.share_of_break < above->share_of_break))
      above = &point;
  }
  if (!below || !above)
    return std::nullopt;
  return between(share, below->share_of_break, std::log(below->rate), above->share_of_break,
                 std::log(above->rate));
}

} // namespace

bool is_creep_table(std::span<const CreepPoint> points) {
  for (std::size_t i = 0; i < points.size(); ++i) {
    const CreepPoint& point = points[i];
    if (!is_more_than_zero(point.share_of_break) || !is_more_than_zero(point.temperature_kelvin) ||
        !is_more_than_zero(point.rate))
      return false;
    for (const CreepPoint& earlier : points.first(i))
      if (earlier.share_of_break == point.share_of_break &&
          is_one_temperature(earlier.temperature_kelvin, point.temperature_kelvin))
        return false;
  }
  return !points.empty();
}

std::optional<double> creep_rate_from_table(std::span<const CreepPoint> points, double share_of_break,
                                            double temperature_kelvin) {
  if (!is_creep_table(points) || !(share_of_break >= 0.0) || !is_more_than_zero(temperature_kelvin))
    return std::nullopt;
  if (share_of_break == 0.0)
    return 0.0;

  struct Curve {
    double temperature, log_rate;
  };
  std::optional<Curve> colder;
  std::optional<Curve> warmer;
  for (const CreepPoint& point : points) {
    const double temperature = point.temperature_kelvin;
    const auto log_rate = log_rate_at(points, temperature, share_of_break);
    if (!log_rate)
      continue;
    if (is_one_temperature(temperature, temperature_kelvin))
      return finite_value(std::exp(*log_rate));
    if (temperature < temperature_kelvin && (!colder || temperature > colder->temperature))
      colder = Curve{temperature, *log_rate};
    if (temperature > temperature_kelvin && (!warmer || temperature < warmer->temperature))
      warmer = Curve{temperature, *log_rate};
  }
  if (!colder || !warmer)
    return std::nullopt;
  return finite_value(std::exp(between(1.0 / temperature_kelvin, 1.0 / colder->temperature,
                                       colder->log_rate, 1.0 / warmer->temperature, warmer->log_rate)));
}

} // namespace sheerpole
