#include "calculate/physics/hanging_line.hpp"

#include "calculate/physics/physical_values.hpp"

#include <cmath>

namespace sheerpole {

namespace {

/// Deeper than any line hangs; from here on the steps would become many.
constexpr double largest_sag_over_span = 1e6;

/// cosh(u) - 1, with all its digits where u is small.
double cosh_less_one(double u) {
  const double half = std::sinh(u / 2.0);
  return 2.0 * half * half;
}

} // namespace

std::optional<Length> catenary_parameter(Length span, Length sag) {
  if (span <= Length() || sag <= Length() || sag / span > largest_sag_over_span)
    return std::nullopt;
  // With u = L / 2a the sag ratio is (cosh u - 1) / (2 u), which rises with u and is convex: from a start
  // above the root Newton's steps come down to it and never pass it, until the last digit. Both starts are
  // above: the ratio at u is at least u / 4, and from u = 4 on more than e^(u/2) / 8.
  const double ratio = sag / span;
  double u = ratio < 1.0 ? 4.0 * ratio : 2.0 * std::log(8.0 * ratio);
  for (int step = 0; step < 100; ++step) {
    const double miss = cosh_less_one(u) / (2.0 * u) - ratio;
    const double slope = (std::sinh(u) - cosh_less_one(u) / u) / (2.0 * u);
    const double next = u - miss / slope;
    if (!(next < u))
      return finite_length(span.metres() / (2.0 * u));
    u = next;
  }
  return std::nullopt;
}

std::optional<Length> catenary_sag(Length span, Length parameter) {
  if (span <= Length() || parameter <= Length())
    return std::nullopt;
  return finite_length(parameter.metres() * cosh_less_one(span / parameter / 2.0));
}

std::optional<Length> catenary_length(Length span, Length parameter) {
  if (span <= Length() || parameter <= Length())
    return std::nullopt;
  return finite_length(2.0 * parameter.metres() * std::sinh(span / parameter / 2.0));
}

std::optional<Length> parabola_sag(Length span, double weight_newtons_per_metre, Force tension) {
  if (span <= Length() || !(weight_newtons_per_metre >= 0.0) || tension <= Force())
    return std::nullopt;
  const double ratio = weight_newtons_per_metre * span.metres() / (8.0 * tension.newtons());
  if (!(ratio <= parabola_sag_over_span_limit))
    return std::nullopt;
  return finite_length(ratio * span.metres());
}

std::optional<Length> parabola_extra_length(Length span, Length sag) {
  if (span <= Length() || sag < Length() || sag / span > parabola_sag_over_span_limit)
    return std::nullopt;
  return finite_length(8.0 * sag.metres() * (sag / span) / 3.0);
}

std::optional<Force> tension_from_frequency(double linear_mass_kilograms_per_metre, Length free_length,
                                            double frequency_hertz) {
  if (!(linear_mass_kilograms_per_metre > 0.0) || free_length <= Length() || !(frequency_hertz > 0.0))
    return std::nullopt;
  const double speed = 2.0 * free_length.metres() * frequency_hertz;
  return finite_force(linear_mass_kilograms_per_metre * speed * speed);
}

std::optional<double> first_mode_frequency(double linear_mass_kilograms_per_metre, Length free_length,
                                           Force tension) {
  if (!(linear_mass_kilograms_per_metre > 0.0) || free_length <= Length() || tension <= Force())
    return std::nullopt;
  return finite_value(std::sqrt(tension.newtons() / linear_mass_kilograms_per_metre) /
                      (2.0 * free_length.metres()));
}

std::optional<Force> tension_from_pulse(double linear_mass_kilograms_per_metre, Length free_length,
                                        double return_time_seconds) {
  if (!(return_time_seconds > 0.0))
    return std::nullopt;
  // A wave comes back once in every swing of the first mode.
  return tension_from_frequency(linear_mass_kilograms_per_metre, free_length, 1.0 / return_time_seconds);
}

} // namespace sheerpole
