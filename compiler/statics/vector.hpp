#pragma once

#include <array>
#include <cmath>

namespace sheerpole::statics {

/// A place, a displacement, a direction or a force: three numbers along x, y and z, in the unit that its
/// name says. Any right-handed axes will do; spars and supports name their directions themselves.
struct Vector {
  double x = 0.0, y = 0.0, z = 0.0;

  friend constexpr Vector operator+(Vector a, Vector b) { return {a.x + b.x, a.y + b.y, a.z + b.z}; }
  friend constexpr Vector operator-(Vector a, Vector b) { return {a.x - b.x, a.y - b.y, a.z - b.z}; }
  friend constexpr Vector operator-(Vector a) { return {-a.x, -a.y, -a.z}; }
  friend constexpr Vector operator*(double s, Vector a) { return {s * a.x, s * a.y, s * a.z}; }
  friend constexpr bool operator==(Vector, Vector) = default;
};

constexpr double dot(Vector a, Vector b) {
  return a.x * b.x + a.y * b.y + a.z * b.z;
}

constexpr Vector cross(Vector a, Vector b) {
  return {a.y * b.z - a.z * b.y, a.z * b.x - a.x * b.z, a.x * b.y - a.y * b.x};
}

inline double length(Vector a) {
  return std::sqrt(dot(a, a));
}

inline bool is_finite(Vector a) {
  return std::isfinite(a.x) && std::isfinite(a.y) && std::isfinite(a.z);
}

/// The part of a that is square to the unit vector n.
constexpr Vector square_to(Vector n, Vector a) {
  return a - dot(n, a) * n;
}

/// A vector as three numbers by place, for loops over the axes.
constexpr std::array<double, 3> by_axis(Vector a) {
  return {a.x, a.y, a.z};
}
constexpr Vector from_axes(const std::array<double, 3>& a) {
  return {a[0], a[1], a[2]};
}

/// How a joint has turned: where the three axes have gone. Orthonormal to rounding.
struct Rotation {
  Vector x{1.0, 0.0, 0.0}, y{0.0, 1.0, 0.0}, z{0.0, 0.0, 1.0};

  constexpr Vector of(Vector a) const { return a.x * x + a.y * y + a.z * z; }
};

/// `before`, turned further about the direction of `spin` by its length in radians. Source: Rodrigues'
/// formula; the axes are made orthonormal again, since a long search would lose that.
inline Rotation turned_further(const Rotation& before, Vector spin) {
  const double angle = length(spin);
  // sin(a)/a and (1 - cos(a))/a^2; the second by the half angle, which loses no digits.
  const double half = 0.5 * angle;
  const double sinc = angle > 1e-8 ? std::sin(angle) / angle : 1.0;
  const double half_sinc = angle > 1e-8 ? std::sin(half) / half : 1.0;
  const double versine = 0.5 * half_sinc * half_sinc;
  const auto turn = [&](Vector a) {
    const Vector once = cross(spin, a);
    return a + sinc * once + versine * cross(spin, once);
  };
  Rotation after{turn(before.x), turn(before.y), turn(before.z)};
  after.x = (1.0 / length(after.x)) * after.x;
  after.y = square_to(after.x, after.y);
  after.y = (1.0 / length(after.y)) * after.y;
  after.z = cross(after.x, after.y);
  return after;
}

} // namespace sheerpole::statics
