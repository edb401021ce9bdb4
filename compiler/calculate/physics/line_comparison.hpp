#pragma once

#include "units/force.hpp"
#include "units/length.hpp"

#include <optional>

namespace sheerpole {

/// What is compared of a line.
struct LineProperties {
  Force axial_stiffness; ///< EA
  Force break_load;
  double linear_mass_kilograms_per_metre = 0.0;
};

/// One line over another.
struct LineRatios {
  double stiffness = 0.0;
  double strength = 0.0;
  double mass = 0.0;
};

/// The first line over the second. Source: arithmetic. Nothing unless every property of both is more than
/// zero.
std::optional<LineRatios> line_ratios(const LineProperties& line, const LineProperties& other);

/// The mass of a stay and its moment about the deck.
struct MassAloft {
  double mass_kilograms = 0.0;
  Length centre_height;                ///< of the centre of mass above the deck
  double moment_kilogram_metres = 0.0; ///< mass x height; less than zero below the deck
};

/// Of a straight stay with its ends at two heights above the deck: m = mu L at the mean of the heights.
/// Source: statics of a straight even rod. Nothing unless mass and length are more than zero, or when the
/// heights are further apart than the stay is long.
std::optional<MassAloft> mass_aloft(double linear_mass_kilograms_per_metre, Length length,
                                    Length one_height, Length other_height);

} // namespace sheerpole
