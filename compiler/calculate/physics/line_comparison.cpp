#include "calculate/physics/line_comparison.hpp"

#include "calculate/physics/finite_value.hpp"

#include <cmath>

namespace sheerpole {

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
