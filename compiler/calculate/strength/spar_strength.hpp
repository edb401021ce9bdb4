#pragma once

#include "units/force.hpp"
#include "units/length.hpp"

#include <numbers>
#include <optional>

namespace sheerpole {

/// Compression of the mast at the step: factor x P, P being the transverse load on the shrouds
/// (shroud_load_share.hpp). The factor of 1.85 for what stays, halyards and sheets add, 2.78 RM30 / b in
/// all, is from memory of Kinney, Skene's Elements of Yacht Design, 8th ed.; it was not read. Nothing
/// unless both inputs are more than zero.
std::optional<Force> mast_compression(Force transverse_load, double factor);

// A straight even column under a load along its axis. `end_coefficient` is P L^2 / (E I) at buckling and
// stands for how the ends are held; modulus in pascals, second moment of area in m^4. Nothing unless every
// input is more than zero.

/// pi^2, both ends pinned. Source: Euler's column, exact.
inline constexpr double pinned_column = std::numbers::pi * std::numbers::pi;

/// The load at which the column buckles: P = c E I / L^2. Source: Euler's column. Exact for a column that
/// is straight and elastic; a spar that is bent, eccentrically loaded or short carries less.
std::optional<Force> column_buckling_load(double modulus_pascals, double second_moment_metres4,
                                          Length length, double end_coefficient = pinned_column);

/// The second moment of area, m^4, at which it just buckles: I = P L^2 / (c E). Source as above.
std::optional<double> column_second_moment(Force load, Length length, double modulus_pascals,
                                           double end_coefficient = pinned_column);

/// The second moment of area, m^4, by the rule I = C L^2 P / 1e8 of the handbooks in which L is in inches,
/// P in pounds and I in inches^4, the coefficient being C as printed there. From memory of Kinney, Skene's
/// Elements of Yacht Design, 8th ed.: C transverse 0.94 for aluminium and 6.78 for spruce, longitudinal
/// 0.54 and 4.00; the coefficients were not read. A smaller C is of a stiffer material or counts on some
/// fixing of the ends.
std::optional<double> second_moment_by_coefficient(double coefficient, Length length, Force load);

/// The coefficient of that rule which is Euler's column: C = 1e8 / (c E), with E in pounds per square inch.
/// Source as of Euler's column: 1.013 for 10 million psi and pinned ends.
std::optional<double> coefficient_of_column(double modulus_pascals, double end_coefficient = pinned_column);

/// A round section with a round hole in it.
struct RoundSection {
  double second_moment_metres4 = 0.0;   ///< I = pi/64 (D^4 - d^4)
  double section_modulus_metres3 = 0.0; ///< Z = I / (D/2)
};

/// Source: strength of materials, exact. `inner_diameter` 0 is a solid bar. Nothing unless 0 <= inner <
/// outer.
std::optional<RoundSection> round_section(Length outer_diameter, Length inner_diameter);

/// A spar that stands without stays, held at the partners and pressed at one height.
struct SparBending {
  Force force;                    ///< F = M / L
  double stress_pascals = 0.0;    ///< M / Z at the partners
  double rupture_over_stress = 0; ///< how many times the stress the material has
  Length deflection;              ///< F L^3 / (3 E I) at the height of the force, of an even spar
};

/// What the bending moment is spread over.
struct UnstayedSpar {
  RoundSection section;         ///< at the partners
  Length arm;                   ///< L: from there to the centre of the sail
  double modulus_pascals = 0.0; ///< E
  double rupture_pascals = 0.0; ///< modulus of rupture
};

/// `moment` is the righting moment in newton metres, of 30 degrees or of the boat on her side. Source:
/// cantilever of beam theory, as in public naval-architecture notes on unstayed spars (read). A spar that
/// tapers bends more than this. Nothing unless every input is more than zero.
std::optional<SparBending> unstayed_spar_bending(const UnstayedSpar& spar, double moment_newton_metres);

} // namespace sheerpole
