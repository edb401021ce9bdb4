#pragma once

#include "units/force.hpp"
#include "units/length.hpp"

#include <optional>

namespace sheerpole {

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
