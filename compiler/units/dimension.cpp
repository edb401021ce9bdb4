#include "units/dimension.hpp"

#include <array>
#include <string_view>

namespace sheerpole {

namespace {

struct NamedDimension {
  Dimension dimension;
  std::string_view words;
};

constexpr std::array named_dimensions{
    NamedDimension{dimension::number, "a plain number"},
    NamedDimension{dimension::length, "a length"},
    NamedDimension{dimension::area, "an area"},
    NamedDimension{dimension::mass, "a mass"},
    NamedDimension{dimension::time, "a time"},
    NamedDimension{dimension::force, "a force"},
    NamedDimension{dimension::moment, "a moment"},
    NamedDimension{dimension::stress, "a stress"},
    NamedDimension{dimension::linear_mass, "a mass per length"},
    NamedDimension{dimension::angle, "an angle"},
    NamedDimension{dimension::temperature_difference, "a temperature difference"},
    NamedDimension{dimension::temperature_point, "a temperature"},
    NamedDimension{dimension::per_kelvin, "a coefficient per kelvin"},
    NamedDimension{dimension::rope_diameters, "a number of rope diameters"},
    NamedDimension{dimension::volume, "a volume"},
    NamedDimension{dimension::frequency, "a frequency"},
    NamedDimension{dimension::molar_energy, "an energy per amount of substance"},
    NamedDimension{dimension::turns, "a number of turns"},
    NamedDimension{dimension::give, "a length for each unit of force"},
    NamedDimension{dimension::bending_stiffness, "a bending stiffness"},
};

} // namespace

std::string describe(Dimension dimension) {
  for (const NamedDimension& named : named_dimensions)
    if (named.dimension == dimension)
      return std::string(named.words);

  struct Factor {
    std::string_view unit;
    int exponent;
  };
  const std::array factors{
      Factor{"m", dimension.length},    Factor{"kg", dimension.mass},
      Factor{"s", dimension.time},      Factor{"K", dimension.temperature},
      Factor{"rad", dimension.angle},   Factor{"d", dimension.rope_diameters},
      Factor{"turns", dimension.turns}, Factor{"degC", dimension.temperature_point},
      Factor{"mol", dimension.moles},
  };
  std::string text = "a quantity in";
  for (const Factor& factor : factors) {
    if (factor.exponent == 0)
      continue;
    text += ' ';
    text += factor.unit;
    if (factor.exponent != 1)
      text += std::to_string(factor.exponent);
  }
  return text;
}

} // namespace sheerpole
