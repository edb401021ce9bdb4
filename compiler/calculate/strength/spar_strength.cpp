#include "calculate/strength/spar_strength.hpp"

#include "calculate/physics/physical_values.hpp"

#include <numbers>

namespace sheerpole {

std::optional<Force> mast_compression(Force transverse_load, double factor) {
  if (transverse_load <= Force() || !(factor > 0.0))
    return std::nullopt;
  return finite_force(factor * transverse_load.newtons());
}

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

std::optional<RoundSection> round_section(Length outer_diameter, Length inner_diameter) {
  if (inner_diameter < Length() || outer_diameter <= inner_diameter)
    return std::nullopt;
  const double outer = outer_diameter.metres() * outer_diameter.metres();
  const double inner = inner_diameter.metres() * inner_diameter.metres();
  const auto second_moment = finite_value(std::numbers::pi / 64.0 * (outer - inner) * (outer + inner));
  const auto modulus =
      second_moment ? finite_value(*second_moment / (outer_diameter.metres() / 2.0)) : std::nullopt;
  if (!modulus)
    return std::nullopt;
  return RoundSection{*second_moment, *modulus};
}

std::optional<SparBending> unstayed_spar_bending(const UnstayedSpar& spar, double moment_newton_metres) {
  const double arm = spar.arm.metres();
  if (!(spar.section.second_moment_metres4 > 0.0) || !(spar.section.section_modulus_metres3 > 0.0) ||
      !(arm > 0.0) || !(spar.modulus_pascals > 0.0) || !(spar.rupture_pascals > 0.0) ||
      !(moment_newton_metres > 0.0))
    return std::nullopt;
  const double stress_value = moment_newton_metres / spar.section.section_modulus_metres3;
  const auto force = finite_force(moment_newton_metres / arm);
  const auto stress = finite_value(stress_value);
  const auto times = finite_value(spar.rupture_pascals / stress_value);
  const auto deflection = finite_length(moment_newton_metres * arm * arm /
                                        (3.0 * spar.modulus_pascals * spar.section.second_moment_metres4));
  if (!force || !stress || !times || !deflection)
    return std::nullopt;
  return SparBending{*force, *stress, *times, *deflection};
}

} // namespace sheerpole
