#include "calculate/geometry/segment_distance.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

SpaceVector at(const SpacePoint& from, SpaceVector way, double share) {
  return SpaceVector{from.x.metres(), from.y.metres(), from.z.metres()} + share * way;
}

} // namespace

NearestPlaces nearest_places(const SpaceSegment& a, const SpaceSegment& b) {
  const SpaceVector along_a = vector_between(a.from, a.to);
  const SpaceVector along_b = vector_between(b.from, b.to);
  const SpaceVector between = vector_between(b.from, a.from);
  const double aa = dot_product(along_a, along_a);
  const double bb = dot_product(along_b, along_b);
  const double ab = dot_product(along_a, along_b);
  const double a_between = dot_product(along_a, between);
  const double b_between = dot_product(along_b, between);
  const double cross = aa * bb - ab * ab;
  NearestPlaces result;
  // The nearest place of the endless lines, then each one kept within its piece in turn.
  if (aa > 0.0 && bb > 0.0 && cross > 1e-12 * aa * bb)
    result.first = std::clamp((ab * b_between - a_between * bb) / cross, 0.0, 1.0);
  result.second = bb > 0.0 ? (ab * result.first + b_between) / bb : 0.0;
  if (result.second < 0.0 || result.second > 1.0) {
    result.second = std::clamp(result.second, 0.0, 1.0);
    result.first = aa > 0.0 ? std::clamp((ab * result.second - a_between) / aa, 0.0, 1.0) : 0.0;
  } else if (!(bb > 0.0)) {
    result.first = aa > 0.0 ? std::clamp(-a_between / aa, 0.0, 1.0) : 0.0;
  }
  result.distance =
      Length::metres(magnitude(at(a.from, along_a, result.first) - at(b.from, along_b, result.second)));
  return result;
}

SpacePoint place_along(const SpaceSegment& segment, double share) {
  const SpaceVector place = at(segment.from, vector_between(segment.from, segment.to), share);
  return {Length::metres(place.x), Length::metres(place.y), Length::metres(place.z)};
}

Length length_of(const SpaceSegment& segment) {
  return Length::metres(magnitude(vector_between(segment.from, segment.to)));
}

} // namespace sheerpole
