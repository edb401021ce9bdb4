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

/// How much longer a line becomes for this change of its tension: dL = T L / EA. L is the unloaded length;
/// a drop of tension shortens. Source: Hooke's law. Holds while the line is elastic and stays taut;
/// bedding-in, creep and the first stretch of a new line are not in it. Nothing when the length is less
/// than zero or the stiffness is not more than zero.
std::optional<Length> elastic_stretch(Length length, Force change_of_tension, Force axial_stiffness);

/// The change of tension that goes with a stretch, the other way round: T = EA dL / L. This is also what
/// the turn of a screw does to a line between ends that do not give, dL being the travel. Nothing unless
/// length and stiffness are more than zero.
std::optional<Force> tension_from_stretch(Length length, Length stretch, Force axial_stiffness);

/// Share of the break load from the stretch over a marked length, by a rule of thumb: (stretch / marked
/// length) / strain at break. The rule "1 mm over 2 m is 5 % of the break load" for 1x19 (common practice,
/// no source; within 20 %) is a strain at break of 0.01; it is stated by the caller. Where the stiffness
/// and the break load are known, tension_from_stretch is better. Nothing unless marked length and strain
/// are more than zero.
std::optional<double> share_of_break_from_stretch(Length marked_length, Length stretch,
                                                  double nominal_strain_at_break);

/// How much longer something becomes when it is warmed: dL = a L dT, `a` being the mean coefficient over
/// that range of temperature, less than zero for fibres that shorten. Source: linear thermal expansion.
/// Nothing when the length is less than zero, an input is not finite, or a dT is -1 or less.
std::optional<Length> thermal_growth(Length length, double expansion_per_kelvin, double warming_kelvin);

/// A spar or a line with its own length and its own coefficient.
struct ThermalMember {
  Length length;
  double expansion_per_kelvin = 0.0;
};

/// How much more the spar grows than the line along it: a_spar L_spar dT - a_line L_line dT. More than
/// zero: the line becomes tighter, less than zero: slacker. Source and range as of thermal_growth, for
/// both.
std::optional<Length> spar_growth_beyond_line(const ThermalMember& spar, const ThermalMember& line,
                                              double warming_kelvin);

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
