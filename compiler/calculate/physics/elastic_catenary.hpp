#pragma once

#include "units/force.hpp"
#include "units/length.hpp"

#include <optional>

namespace sheerpole {

// A line that sags under its own weight and stretches. Source of all: Irvine, Cable Structures, the elastic
// catenary in closed form; linear elastic, so the stretch has to stay small. Distances below the first end
// are positive downwards.

/// A line as it lies on the bench, without load.
struct ElasticCable {
  Length unstressed_length;
  double weight_newtons_per_metre = 0.0; ///< of unstressed length, more than 0
  Force axial_stiffness;                 ///< EA, more than 0
};

/// What the first end is held with.
struct EndForces {
  Force horizontal; ///< H, more than 0, the same all along the line
  Force vertical;   ///< V, upwards; less than 0 where the line rises from its first end
};

/// A place on the line.
struct CablePlace {
  Length across; ///< horizontally from the first end
  Length below;  ///< vertically below the first end
};

/// Where the line is, `along` of its unstressed length from the first end: x = H s/EA + H/w (asinh(V/H) -
/// asinh((V - w s)/H)), z = s/EA (V - w s/2) + H/w (sqrt(1 + (V/H)^2) - sqrt(1 + ((V - w s)/H)^2)). With
/// `along` the whole length it is the other end. Nothing unless the cable and H are in their range and 0 <=
/// along <= length.
std::optional<CablePlace> elastic_catenary_place(const ElasticCable& cable, const EndForces& forces,
                                                 Length along);

/// The forces at the first end when the other lies `span` across and `drop` below it: the same two
/// equations solved for H and V by Newton's method, each step shortened until the error is less, at most
/// 200 steps. Nothing unless the cable is in its range and the span more than zero, or when the ends are
/// not met to 1e-9 of their distance. The answer may be of a line that would be long broken: compare it
/// with the break load.
std::optional<EndForces> elastic_catenary_forces(const ElasticCable& cable, Length span, Length drop);

/// Largest distance from the chord down to the line, vertically; where the line is parallel to the chord,
/// (V - w s)/H = drop/span. Nothing where elastic_catenary_forces has nothing. Square to the chord it is
/// this times the cosine of the chord's slope.
std::optional<Length> elastic_catenary_sag(const ElasticCable& cable, Length span, Length drop);

} // namespace sheerpole
