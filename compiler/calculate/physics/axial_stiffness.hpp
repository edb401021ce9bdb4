#pragma once

#include "units/force.hpp"
#include "units/length.hpp"

#include <optional>
#include <span>

namespace sheerpole {

/// Area in m2 of the circle round a line: pi d^2 / 4. Nothing for a diameter less than zero. Source: plane
/// geometry.
std::optional<double> gross_area(Length diameter);

/// Area in m2 of the metal in a wire: fill pi d^2 / 4. `fill` is the metallic share of the circle, more
/// than 0 and at most 1; nothing outside that. Source: plane geometry.
std::optional<double> metallic_area(Length diameter, double fill);

/// Metallic share of 1x19: nineteen equal wires of a fifth of the diameter, 19/25. Source: plane geometry.
inline constexpr double fill_of_one_by_nineteen = 19.0 / 25.0;

/// The modulus to be used with the metallic area, from one that belongs to the gross area: E / fill. A
/// modulus and an area that do not belong together are wrong by the fill: the 107.5 GPa of the trade for
/// 1x19 is of the gross area and is 141 GPa of the metallic. Nothing unless the modulus is more than zero
/// and the fill more than 0 and at most 1.
std::optional<double> modulus_on_metallic_area(double modulus_on_gross_area_pascals, double fill);

/// EA of a line. Modulus in pascals, area in m2, both of the same area, gross or metallic. Nothing unless
/// both are more than zero. Source: Hooke's law.
std::optional<Force> axial_stiffness(double modulus_pascals, double area_square_metres);

/// One piece of several that hang on each other.
struct StretchedPiece {
  Length length;         ///< unloaded
  Force axial_stiffness; ///< EA
};

/// EA of one even line that stretches as much as the pieces together: (L1 + L2 + ...) / (L1/EA1 + L2/EA2 +
/// ...). Nothing for no piece, or one whose length or stiffness is not more than zero. Source: Hooke's law,
/// springs in series.
std::optional<Force> axial_stiffness_in_series(std::span<const StretchedPiece> pieces);

} // namespace sheerpole
