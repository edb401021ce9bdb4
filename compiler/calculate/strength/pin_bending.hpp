#pragma once

#include "units/force.hpp"
#include "units/length.hpp"

#include <optional>

namespace sheerpole {

/// A pin through two cheeks with one plate between them.
struct PinStack {
  Length cheek;  ///< a: thickness of each outer plate, more than 0
  Length middle; ///< b: thickness of the plate between, more than 0
  Length gap;    ///< c: clear distance from the middle plate to each cheek, 0 or more
};

/// Greatest bending moment of the pin, in newton metres: F/8 (b + 4 c + 2 a), in the middle. It is the
/// statics of a pin on which each plate presses evenly over its thickness, exact for that; also EN
/// 1993-1-8, fig. 3.11, from memory. Nothing when the force is less than zero or the stack out of range.
std::optional<double> pin_bending_moment(Force force, const PinStack& stack);

/// Stress at the edge of the pin in pascals, by the elastic section: M / (pi d^3 / 32). Source: beam theory
/// of a round bar. A pin that is no longer than thick hardly bends as a beam does; this is then the high
/// value. Nothing unless the diameter is more than zero, or as above.
std::optional<double> pin_bending_stress(Force force, const PinStack& stack, Length diameter);

/// The force at which the pin reaches factor x stress at its edge. From memory of EN 1993-1-8, table 3.10:
/// factor 1.5 with the yield stress, which was not read; factor 1 is the elastic section. Nothing unless
/// stress, factor and diameter are more than zero and the stack is in range.
std::optional<Force> pin_bending_strength(const PinStack& stack, Length diameter, double stress_pascals,
                                          double factor);

} // namespace sheerpole
