#pragma once

#include "units/length.hpp"

#include <cmath>
#include <optional>

namespace sheerpole {

/// A place in boat axes: x forward, y to starboard, z up.
struct SpacePoint {
  Length x, y, z;
};

/// A vector in boat axes without a unit, or of newtons where the name says so.
struct SpaceVector {
  double x = 0.0, y = 0.0, z = 0.0;

  friend SpaceVector operator+(SpaceVector a, SpaceVector b) { return {a.x + b.x, a.y + b.y, a.z + b.z}; }
  friend SpaceVector operator-(SpaceVector a, SpaceVector b) { return {a.x - b.x, a.y - b.y, a.z - b.z}; }
  friend SpaceVector operator*(double factor, SpaceVector a) {
    return {factor * a.x, factor * a.y, factor * a.z};
  }
};

inline double dot_product(SpaceVector a, SpaceVector b) {
  return a.x * b.x + a.y * b.y + a.z * b.z;
}

inline SpaceVector cross_product(SpaceVector a, SpaceVector b) {
  return {a.y * b.z - a.z * b.y, a.z * b.x - a.x * b.z, a.x * b.y - a.y * b.x};
}

inline double magnitude(SpaceVector a) {
  return std::hypot(a.x, a.y, a.z);
}

/// In metres.
inline SpaceVector vector_between(const SpacePoint& from, const SpacePoint& to) {
  return {to.x.metres() - from.x.metres(), to.y.metres() - from.y.metres(),
          to.z.metres() - from.z.metres()};
}

/// Of length 1, from one place to the other. Nothing when they are one place.
inline std::optional<SpaceVector> direction_between(const SpacePoint& from, const SpacePoint& to) {
  const SpaceVector way = vector_between(from, to);
  const double length = magnitude(way);
  if (!(length > 0.0) || !std::isfinite(length))
    return std::nullopt;
  return (1.0 / length) * way;
}

/// Between 0 and pi, exact to the last digits for small angles too. Source: atan2(|a x b|, a . b).
inline double angle_between(SpaceVector a, SpaceVector b) {
  return std::atan2(magnitude(cross_product(a, b)), dot_product(a, b));
}

} // namespace sheerpole
