#pragma once

#include "units/force.hpp"
#include "units/length.hpp"

#include <optional>

namespace sheerpole {

// Stresses in pascals. Nothing unless every input is more than zero.

/// What a pin carries in `planes` planes of shear: planes (pi/4) d^2 tau. A pin between two cheeks has 2.
/// Source: mean stress on the sheared areas. At break tau is about 0.6 of the tensile strength (common
/// practice, no source), which is for the caller to say.
std::optional<Force> pin_shear_strength(Length diameter, double shear_stress_pascals, int planes = 2);

/// What a plate carries at the edge of its hole: factor d t f, d the pin's diameter, t the thickness and f
/// the plate's stress. Source: mean stress on the projected area; factor 1 with the tensile strength, or
/// 1.5 with the yield stress from memory of EN 1993-1-8, table 3.10, which was not read.
std::optional<Force> bearing_strength(Length pin_diameter, Length plate_thickness, double stress_pascals,
                                      double factor);

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

/// Distance from the centre of a hole to the edge of the plate, counted in hole diameters. Source:
/// arithmetic; 1.5 as a rule, 1.25 at the very least and 2 with reserve are common practice, no source.
/// Nothing unless both are more than zero.
std::optional<double> edge_distance_ratio(Length centre_to_edge, Length hole_diameter);

/// What is left of the plate on the pull's side of the hole over the hole: ratio - 1/2. Less than zero: the
/// hole runs out of the plate. Source: arithmetic. Nothing as above.
std::optional<double> ligament_ratio(Length centre_to_edge, Length hole_diameter);

/// How much a pin has in its hole.
struct HoleClearance {
  Length clearance;    ///< hole - pin; less than zero: it does not enter
  double of_pin = 0.0; ///< clearance over the pin's diameter
};

/// Source: arithmetic. 0.2 to 0.4 mm for pins up to 12 mm and 0.5 to 0.8 mm above are common practice, no
/// source. Nothing unless both diameters are more than zero.
std::optional<HoleClearance> hole_clearance(Length hole_diameter, Length pin_diameter);

/// How many pitches the stress diameter of an inch thread is below the nominal one. Source: ASME B1.1, from
/// memory.
inline constexpr double inch_stress_diameter_pitches = 0.9743;
/// The same of a metric thread. Source: ISO 898-1, from memory.
inline constexpr double metric_stress_diameter_pitches = 0.9382;

/// Tensile stress area of a thread in m2: pi/4 (d - k p)^2, k being one of the two above. Source: the
/// standards named there. Nothing unless diameter and pitch are more than zero, k is not less than zero and
/// k p is less than the diameter.
std::optional<double> thread_stress_area(Length diameter, Length pitch, double pitches);

/// What the threaded part carries: area x stress, in pascals. Source: mean stress on the stress area.
/// Nothing unless both are more than zero. Stripping is another matter.
std::optional<Force> thread_strength(double stress_area_square_metres, double stress_pascals);

} // namespace sheerpole
