#include "calculate/physics/elastic_stretch.hpp"

#include "calculate/physics/finite_value.hpp"

namespace sheerpole {

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

} // namespace sheerpole
