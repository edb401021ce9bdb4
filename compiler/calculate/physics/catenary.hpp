#pragma once

#include "units/force.hpp"
#include "units/length.hpp"

#include <optional>

namespace sheerpole {

// A line that does not stretch, hung between two places at one height. Its shape has one number, the
// parameter a = H / w, horizontal tension over weight for each metre. Source of all three: the catenary, y
// = a cosh(x / a). Nothing unless every length is more than zero and the sag not more than a million spans,
// or when the result is too large for a number.

/// a from what is seen: the root of a (cosh(L / 2a) - 1) = sag, by Newton's method in L / 2a.
std::optional<Length> catenary_parameter(Length span, Length sag);

/// Sag below the chord: a (cosh(L / 2a) - 1).
std::optional<Length> catenary_sag(Length span, Length parameter);

/// Length of the line: 2 a sinh(L / 2a).
std::optional<Length> catenary_length(Length span, Length parameter);

/// The largest sag over span for which the parabola is used. There the parabola hangs 0.5 % less deep than
/// the inextensible catenary of the same horizontal tension and is longer than its chord by 0.3 % less;
/// below, the difference falls with the square of the ratio.
inline constexpr double parabola_sag_over_span_limit = 1.0 / 16.0;

/// Sag at mid-span of a taut line: w L^2 / (8 T). `weight` is the load square to the chord, in newtons for
/// each metre of it: of a stay that leans, its own weight times the cosine of the chord's slope. Source:
/// elementary statics of a parabola. Nothing unless the span and the tension are more than zero and the
/// weight is not less, or when the sag is more than a sixteenth of the span; elastic_catenary.hpp has no
/// such limit.
std::optional<Length> parabola_sag(Length span, double weight_newtons_per_metre, Force tension);

/// Length of the sagging line beyond its chord: 8 y^2 / (3 L). Source: first term of the length of a
/// parabola. Nothing unless the span is more than zero and the sag between zero and a sixteenth of it.
std::optional<Length> parabola_extra_length(Length span, Length sag);

// The tension of a stay from how it swings. Source of all three: Mersenne's law of the taut string; a wave
// runs along it with sqrt(T / mu). Holds for a line that is stretched tight, with little sag, and much
// longer than it is stiff: for L sqrt(T / EI) of 300 clamped ends make the tension read high by about 1.3
// %, for 100 by 4 %. An error of the time or of the frequency counts twice in the tension, and one of the
// length too. Nothing unless every input is more than zero.

/// T = 4 mu L^2 f^2, `frequency` being that of the first mode, in hertz (whole swings a second),
/// `linear_mass` in kg/m and `free_length` between the places where the line is held still.
std::optional<Force> tension_from_frequency(double linear_mass_kilograms_per_metre, Length free_length,
                                            double frequency_hertz);

/// First mode, in hertz: f = sqrt(T / mu) / (2 L).
std::optional<double> first_mode_frequency(double linear_mass_kilograms_per_metre, Length free_length,
                                           Force tension);

/// T = 4 mu L^2 / t^2, `return_time` being the seconds in which a tap at one end runs to the other and
/// back; for more than one return, the time divided by their number. In pounds and feet w L^2 / ((g/4)
/// t^2), with g/4 about 8.04.
std::optional<Force> tension_from_pulse(double linear_mass_kilograms_per_metre, Length free_length,
                                        double return_time_seconds);

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
