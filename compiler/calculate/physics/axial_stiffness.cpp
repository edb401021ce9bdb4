#include "calculate/physics/axial_stiffness.hpp"

#include "calculate/physics/finite_value.hpp"

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

} // namespace sheerpole
