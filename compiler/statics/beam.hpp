#pragma once

#include "statics/structure.hpp"
#include "statics/vector.hpp"

#include <array>
#include <cstddef>

namespace sheerpole::statics {

/// The six movements of one end of a beam: along x, y, z (mm) and about them (radians, onto the rotation
/// that the end has already).
inline constexpr std::size_t movements_of_end = 6;
/// Of both ends, those of the first before those of the second.
inline constexpr std::size_t movements_of_beam = 2 * movements_of_end;

using BeamForces = std::array<double, movements_of_beam>;
/// By rows.
struct BeamStiffness {
  std::array<double, movements_of_beam * movements_of_beam> values{};
  double& at(std::size_t row, std::size_t column) { return values[row * movements_of_beam + column]; }
};

/// A piece of spar, straight and without load as drawn. Its chord, from end to end, is free to go anywhere;
/// what strains it is how its ends lean from the chord and how its length differs. The lean of an end is
/// the part of the chord along the end's own side: -n.u, n the unit vector of the chord and u the side as
/// it has turned with the end. Between the ends the spar has the cubic shape of those two leans, and its
/// strain is (l - L)/L + (2 a^2 - a b + 2 b^2)/30 for the leans a and b each way, the second part being
/// how much a bowed spar is longer than its chord. Energy: EA L strain^2 / 2 + 2 EI/L (a^2 + a b + b^2)
/// each way + GJ/L twist^2 / 2. Exact for any turning of the whole; the leans of one piece have to stay
/// small (0.1 rad makes 0.2 % in the lean), which more pieces see to. A hinge at the first end lets its
/// lean be -b/2. Source: the corotational idea and the cubic beam of any textbook of finite elements; this
/// form of it was worked out here.
struct BeamElement {
  Vector along_mm;     ///< from end to end as drawn
  double drawn_mm = 0; ///< L, its length
  Vector side, square; ///< unit vectors, square to it and to each other
  Section section;
  RootJoint root; ///< what its first end is free to do

  /// What the element does in a configuration: how its ends have moved from each other (second less first,
  /// mm) and turned.
  struct Ends {
    Vector apart_mm;
    Rotation first, second;
  };
  /// In N mm.
  double energy(const Ends& ends) const;
  /// Adds the first and second derivatives of the energy. Forces in N and N mm on the movements, that is
  /// what the ends have to be held with.
  double add_derivatives(const Ends& ends, BeamForces& forces, BeamStiffness& stiffness) const;

  /// What a section of it carries.
  struct Carried {
    double compression_newtons = 0.0;
    /// At the first and the second end, in N mm, about the chord's own forces: EI times how the slope in
    /// the direction of side, and square to it, changes along the spar.
    std::array<double, 2> bending_in_side{}, bending_square{};
    double torsion_newton_mm = 0.0;
  };
  Carried carried(const Ends& ends) const;
};

} // namespace sheerpole::statics
