#include "calculate/physics/tape_correction.hpp"

#include "calculate/physics/physical_values.hpp"

#include <cmath>
#include <numbers>

namespace sheerpole {

namespace {

bool is_slope(double radians) {
  return std::abs(radians) <= std::numbers::pi / 2.0;
}

} // namespace

std::optional<Length> tape_standardisation_correction(Length reading, Length nominal, Length true_length) {
  if (nominal <= Length() || true_length <= Length())
    return std::nullopt;
  return finite_length(reading.metres() * ((true_length - nominal) / nominal));
}

std::optional<Length> tape_temperature_correction(Length reading, double expansion_per_kelvin,
                                                  double above_standard_kelvin) {
  const double strain = expansion_per_kelvin * above_standard_kelvin;
  if (!(strain > -1.0))
    return std::nullopt;
  return finite_length(reading.metres() * strain);
}

std::optional<Length> tape_pull_correction(Length reading, Force pull, Force standard_pull,
                                           Force axial_stiffness) {
  if (pull < Force() || standard_pull < Force() || axial_stiffness <= Force())
    return std::nullopt;
  return finite_length(reading.metres() * ((pull - standard_pull) / axial_stiffness));
}

std::optional<Length> tape_sag_correction(Length span, double weight_newtons_per_metre, Force pull,
                                          double slope_radians) {
  if (span < Length() || !(weight_newtons_per_metre >= 0.0) || pull <= Force() || !is_slope(slope_radians))
    return std::nullopt;
  const double weight_over_pull = weight_newtons_per_metre * span.metres() / pull.newtons();
  if (!(weight_over_pull / 8.0 <= tape_sag_over_span_limit))
    return std::nullopt;
  const double level = weight_over_pull * std::cos(slope_radians);
  return finite_length(-span.metres() * level * level / 24.0);
}

std::optional<Length> tape_slope_correction(Length along_slope, double slope_radians) {
  if (along_slope < Length() || !is_slope(slope_radians))
    return std::nullopt;
  // 1 - cos(a) = 2 sin^2(a/2), which keeps its digits for the small angles of a tape out of line.
  const double half_sine = std::sin(slope_radians / 2.0);
  return finite_length(-2.0 * along_slope.metres() * half_sine * half_sine);
}

} // namespace sheerpole
