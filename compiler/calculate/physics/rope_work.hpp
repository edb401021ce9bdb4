#pragma once

#include "units/length.hpp"

#include <numbers>
#include <optional>

namespace sheerpole {

/// A full fid is 21 rope diameters: 7 circumferences, with the trade's circumference of 3 diameters.
/// Source: public table of fid sizes. Some tools have 22.
inline constexpr double diameters_in_a_fid = 21.0;

/// One full fid: n d. Nothing unless the diameter and n are more than zero.
std::optional<Length> fid_length(Length rope_diameter, double diameters_per_fid = diameters_in_a_fid);

/// A length counted in full fids of this rope. Nothing as above.
std::optional<double> length_in_fids(Length length, Length rope_diameter,
                                     double diameters_per_fid = diameters_in_a_fid);

/// Share of the full fid at which the short section is marked: 3/8 for ropes of 1/4 to 1/2 in, 0.30 for
/// 9/16 to 3/4 in, 1/4 for 7/8 in and more. Source: public table of fid sizes. A size in between takes the
/// share of the nearer one of the table. Nothing below the table, from 7/32 in down.
std::optional<double> short_section_share(Length rope_diameter);

/// Marks of a plain eye splice in single braid, from the mark at the throat.
struct PlainSpliceMarks {
  Length tail; ///< rope to be buried: 2 fids, 42 d
  Length exit; ///< where the tail comes out again, down the standing part: 3 fids, 63 d
};

/// The marks for this rope. Source: common practice, no source. Nothing unless both inputs are more than
/// zero.
std::optional<PlainSpliceMarks> plain_splice_marks(Length rope_diameter,
                                                   double diameters_per_fid = diameters_in_a_fid);

/// An eye whose two legs come off a round bearing and cross at the throat.
struct EyeLoop {
  Length tangent;                  ///< t: from the bearing to the throat along one leg
  double half_angle_radians = 0.0; ///< alpha: between a leg and the line of pull
  Length loop;                     ///< L_loop: centreline from the throat round the bearing and back
  double leg_share = 0.0;          ///< tension of one leg over the pull on the eye
};

/// The centreline of a rope round a bare pin or a thimble, with the throat taken as one point on the line
/// of pull, h from the centre of the bearing. With R = (D + d) / 2: t = sqrt(h^2 - R^2), alpha = asin(R /
/// h), L_loop = 2 t + R (pi + 2 alpha), leg share = 1 / (2 cos alpha). Source: plane geometry of a taut
/// line round a circle, and equilibrium at the throat. Friction on the bearing, which makes the legs
/// unequal, is not in it.
///
/// It is the eye of calculate/cut/eye_allowance.hpp but for the throat: there the legs end side by side,
/// half a rope off the line of pull, (d/2) / sin(alpha) short of where they would cross.
///
/// Nothing when a diameter is less than zero, both are zero, or the throat lies within the rope on the
/// bearing (h <= R).
std::optional<EyeLoop> eye_loop(Length bearing_diameter, Length rope_diameter, Length centre_to_throat);

/// What a lashing between two eyes carries, over what it would if all its legs pulled alike. Of N turns 2N
/// legs stand between the eyes; the first is hauled to the full tension and each eye on the way takes its
/// friction from the next: mean of r^i for i = 0 to 2N - 1, with r = exp(-mu theta) and theta the angle
/// round an eye, half a turn unless stated. Source: the capstan law, summed over the legs. It is the low
/// value, of a lashing hauled from one end and never worked in. `friction` is the coefficient of the cord
/// on the eye.
///
/// Nothing when the friction or the angle is less than zero or not finite, or the turns are not 1 to 1000.
std::optional<double> lashing_share(double friction, int turns, double wrap_radians = std::numbers::pi);

} // namespace sheerpole
