#pragma once

#include "units/force.hpp"
#include "units/length.hpp"

#include <optional>

namespace sheerpole {

/// How much longer a line becomes for this change of its tension: dL = T L / EA. L is the unloaded length;
/// a drop of tension shortens. Source: Hooke's law. Holds while the line is elastic and stays taut;
/// bedding-in, creep and the first stretch of a new line are not in it. Nothing when the length is less
/// than zero or the stiffness is not more than zero.
std::optional<Length> elastic_stretch(Length length, Force change_of_tension, Force axial_stiffness);

/// The change of tension that goes with a stretch, the other way round: T = EA dL / L. This is also what
/// the turn of a screw does to a line between ends that do not give, dL being the travel. Nothing unless
/// length and stiffness are more than zero.
std::optional<Force> tension_from_stretch(Length length, Length stretch, Force axial_stiffness);

/// Share of the break load from the stretch over a marked length, by a rule of thumb: (stretch / marked
/// length) / strain at break. The rule "1 mm over 2 m is 5 % of the break load" for 1x19 (common practice,
/// no source; within 20 %) is a strain at break of 0.01; it is stated by the caller. Where the stiffness
/// and the break load are known, tension_from_stretch is better. Nothing unless marked length and strain
/// are more than zero.
std::optional<double> share_of_break_from_stretch(Length marked_length, Length stretch,
                                                  double nominal_strain_at_break);

} // namespace sheerpole
