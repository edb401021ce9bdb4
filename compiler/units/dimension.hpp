#pragma once

#include <cstdint>
#include <string>

namespace sheerpole {

/// Exponents of the base quantities. Angles, rope diameters and turns of a screw are kept apart from plain
/// numbers, so that `72 d` where a length belongs or `3 turns` where an angle belongs is noticed.
struct Dimension {
  std::int8_t length = 0;
  std::int8_t mass = 0;
  std::int8_t time = 0;
  std::int8_t temperature = 0; ///< a difference of temperatures, K
  std::int8_t angle = 0;
  std::int8_t rope_diameters = 0;
  std::int8_t turns = 0;
  std::int8_t temperature_point =
      0;                 ///< 1 for a point on a temperature scale (degC, degF), which only adds differences
  std::int8_t moles = 0; ///< amount of substance

  friend constexpr bool operator==(const Dimension&, const Dimension&) = default;
  constexpr bool is_plain_number() const { return *this == Dimension{}; }
};

constexpr Dimension operator+(Dimension a, Dimension b) {
  const auto sum = [](int x, int y) { return static_cast<std::int8_t>(x + y); };
  return {sum(a.length, b.length), sum(a.mass, b.mass),
          sum(a.time, b.time),     sum(a.temperature, b.temperature),
          sum(a.angle, b.angle),   sum(a.rope_diameters, b.rope_diameters),
          sum(a.turns, b.turns),   sum(a.temperature_point, b.temperature_point),
          sum(a.moles, b.moles)};
}

constexpr Dimension operator-(Dimension a, Dimension b) {
  const auto less = [](int x, int y) { return static_cast<std::int8_t>(x - y); };
  return {less(a.length, b.length), less(a.mass, b.mass),
          less(a.time, b.time),     less(a.temperature, b.temperature),
          less(a.angle, b.angle),   less(a.rope_diameters, b.rope_diameters),
          less(a.turns, b.turns),   less(a.temperature_point, b.temperature_point),
          less(a.moles, b.moles)};
}

namespace dimension {
inline constexpr Dimension number{};
inline constexpr Dimension length{.length = 1};
inline constexpr Dimension area{.length = 2};
inline constexpr Dimension volume{.length = 3};
inline constexpr Dimension frequency{.time = -1};
inline constexpr Dimension molar_energy{.length = 2, .mass = 1, .time = -2, .moles = -1};
inline constexpr Dimension mass{.mass = 1};
inline constexpr Dimension time{.time = 1};
inline constexpr Dimension force{.length = 1, .mass = 1, .time = -2};
inline constexpr Dimension moment{.length = 2, .mass = 1, .time = -2};
inline constexpr Dimension bending_stiffness{.length = 3, .mass = 1, .time = -2};
inline constexpr Dimension stress{.length = -1, .mass = 1, .time = -2};
inline constexpr Dimension linear_mass{.length = -1, .mass = 1};
/// How far something gives for the force on it: a length over a force.
inline constexpr Dimension give{.mass = -1, .time = 2};
inline constexpr Dimension angle{.angle = 1};
inline constexpr Dimension temperature_difference{.temperature = 1};
inline constexpr Dimension temperature_point{.temperature_point = 1};
inline constexpr Dimension per_kelvin{.temperature = -1};
inline constexpr Dimension rope_diameters{.rope_diameters = 1};
inline constexpr Dimension turns{.turns = 1};
} // namespace dimension

/// In a rigger's words: "a length", "a force", "a plain number"; for a product without a name "a quantity
/// in m2 kg".
std::string describe(Dimension dimension);

/// A value whose dimension is known only when the file is read. `si` is in the coherent SI unit (degrees
/// become radians, 50 % becomes 0.5, degC becomes kelvin, 72 d stays 72 rope diameters). Always finite.
struct Quantity {
  double si = 0.0;
  Dimension dimension;
};

} // namespace sheerpole
