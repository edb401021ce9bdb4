#include "calculate/strength/column_buckling.hpp"

#include "calculate/physics/finite_value.hpp"

namespace sheerpole {

namespace {

/// Exact by definition: the pound of 1959 at standard gravity on a square inch.
constexpr double pascals_per_pound_on_square_inch = 4.4482216152605 / (0.0254 * 0.0254);
/// The scale on which the handbooks print the coefficient.
constexpr double printed_scale = 1e8;

} // namespace

std::optional<Force> column_buckling_load(double modulus_pascals, double second_moment_metres4,
                                          Length length, double end_coefficient) {
  if (!(modulus_pascals > 0.0) || !(second_moment_metres4 > 0.0) || length <= Length() ||
      !(end_coefficient > 0.0))
    return std::nullopt;
  return finite_force(end_coefficient * modulus_pascals * second_moment_metres4 / length.metres() /
                      length.metres());
}

std::optional<double> column_second_moment(Force load, Length length, double modulus_pascals,
                                           double end_coefficient) {
  if (load <= Force() || length <= Length() || !(modulus_pascals > 0.0) || !(end_coefficient > 0.0))
    return std::nullopt;
  return finite_value(load.newtons() * length.metres() * length.metres() /
                      (end_coefficient * modulus_pascals));
}

std::optional<double> second_moment_by_coefficient(double coefficient, Length length, Force load) {
  if (!(coefficient > 0.0) || length <= Length() || load <= Force())
    return std::nullopt;
  return finite_value(coefficient / printed_scale / pascals_per_pound_on_square_inch * length.metres() *
                      length.metres() * load.newtons());
}

std::optional<double> coefficient_of_column(double modulus_pascals, double end_coefficient) {
  if (!(modulus_pascals > 0.0) || !(end_coefficient > 0.0))
    return std::nullopt;
  return finite_value(printed_scale * pascals_per_pound_on_square_inch /
                      (end_coefficient * modulus_pascals));
}

} // namespace sheerpole
