#include "calculate/physics/line_deformation.hpp"

#include "calculate/physics/physical_values.hpp"

#include <cmath>
#include <numbers>

namespace sheerpole {

namespace {

bool is_fill(double fill) {
  return fill > 0.0 && fill <= 1.0;
}

} // namespace

std::optional<double> gross_area(Length diameter) {
  if (diameter < Length())
    return std::nullopt;
  return finite_value(std::numbers::pi / 4.0 * diameter.metres() * diameter.metres());
}

std::optional<double> metallic_area(Length diameter, double fill) {
  const auto gross = gross_area(diameter);
  if (!gross || !is_fill(fill))
    return std::nullopt;
  return *gross * fill;
}

std::optional<double> modulus_on_metallic_area(double modulus_on_gross_area_pascals, double fill) {
  if (!(modulus_on_gross_area_pascals > 0.0) || !is_fill(fill))
    return std::nullopt;
  return finite_value(modulus_on_gross_area_pascals / fill);
}

std::optional<Force> axial_stiffness(double modulus_pascals, double area_square_metres) {
  if (!(modulus_pascals > 0.0) || !(area_square_metres > 0.0))
    return std::nullopt;
  return finite_force(modulus_pascals * area_square_metres);
}

std::optional<Force> axial_stiffness_in_series(std::span<const StretchedPiece> pieces) {
  double length = 0.0;
  double metres_per_newton = 0.0;
  for (const StretchedPiece& piece : pieces) {
    if (piece.length <= Length() || piece.axial_stiffness <= Force())
      return std::nullopt;
    length += piece.length.metres();
    metres_per_newton += piece.length.metres() / piece.axial_stiffness.newtons();
  }
  return pieces.empty() ? std::nullopt : finite_force(length / metres_per_newton);
}

std::optional<Length> elastic_stretch(Length length, Force change_of_tension, Force axial_stiffness) {
  if (length < Length() || axial_stiffness <= Force())
    return std::nullopt;
  return finite_length(length.metres() * (change_of_tension / axial_stiffness));
}

std::optional<Force> tension_from_stretch(Length length, Length stretch, Force axial_stiffness) {
  if (length <= Length() || axial_stiffness <= Force())
    return std::nullopt;
  return finite_force(axial_stiffness.newtons() * (stretch / length));
}

std::optional<double> share_of_break_from_stretch(Length marked_length, Length stretch,
                                                  double nominal_strain_at_break) {
  if (marked_length <= Length() || !(nominal_strain_at_break > 0.0))
    return std::nullopt;
  return finite_value(stretch / marked_length / nominal_strain_at_break);
}

std::optional<Length> thermal_growth(Length length, double expansion_per_kelvin, double warming_kelvin) {
  const double strain = expansion_per_kelvin * warming_kelvin;
  if (length < Length() || !(strain > -1.0))
    return std::nullopt;
  return finite_length(length.metres() * strain);
}

std::optional<Length> spar_growth_beyond_line(const ThermalMember& spar, const ThermalMember& line,
                                              double warming_kelvin) {
  const auto of_spar = thermal_growth(spar.length, spar.expansion_per_kelvin, warming_kelvin);
  const auto of_line = thermal_growth(line.length, line.expansion_per_kelvin, warming_kelvin);
  if (!of_spar || !of_line)
    return std::nullopt;
  return finite_length(of_spar->metres() - of_line->metres());
}

namespace {

bool is_complete(const LineProperties& line) {
  return line.axial_stiffness > Force() && line.break_load > Force() &&
         line.linear_mass_kilograms_per_metre > 0.0;
}

} // namespace

std::optional<LineRatios> line_ratios(const LineProperties& line, const LineProperties& other) {
  if (!is_complete(line) || !is_complete(other))
    return std::nullopt;
  const auto stiffness = finite_value(line.axial_stiffness / other.axial_stiffness);
  const auto strength = finite_value(line.break_load / other.break_load);
  const auto mass =
      finite_value(line.linear_mass_kilograms_per_metre / other.linear_mass_kilograms_per_metre);
  if (!stiffness || !strength || !mass)
    return std::nullopt;
  return LineRatios{*stiffness, *strength, *mass};
}

std::optional<MassAloft> mass_aloft(double linear_mass_kilograms_per_metre, Length length,
                                    Length one_height, Length other_height) {
  if (!(linear_mass_kilograms_per_metre > 0.0) || length <= Length() ||
      std::abs(one_height.metres() - other_height.metres()) > length.metres())
    return std::nullopt;
  const Length centre = one_height / 2.0 + other_height / 2.0; // halved first: no sum is too large
  const auto mass = finite_value(linear_mass_kilograms_per_metre * length.metres());
  const auto moment = finite_value(linear_mass_kilograms_per_metre * length.metres() * centre.metres());
  if (!mass || !moment)
    return std::nullopt;
  return MassAloft{*mass, centre, *moment};
}

} // namespace sheerpole
