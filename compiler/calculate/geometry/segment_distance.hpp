#pragma once

#include "calculate/strength/space_point.hpp"

namespace sheerpole {

/// A straight piece of a line in space.
struct SpaceSegment {
  SpacePoint from, to;
};

/// Where two straight pieces come nearest to each other.
struct NearestPlaces {
  double first = 0.0;  ///< share of the first piece from its beginning, 0 to 1
  double second = 0.0; ///< the same of the second one
  Length distance;
};

/// Of two parallel pieces any nearest places. Source: least distance of two points on two straight pieces,
/// each kept within its ends; exact geometry.
NearestPlaces nearest_places(const SpaceSegment& a, const SpaceSegment& b);

/// The place at a share of a piece.
SpacePoint place_along(const SpaceSegment& segment, double share);

Length length_of(const SpaceSegment& segment);

} // namespace sheerpole
