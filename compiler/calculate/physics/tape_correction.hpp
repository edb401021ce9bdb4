#pragma once

#include "units/force.hpp"
#include "units/length.hpp"

#include <optional>

namespace sheerpole {

// Corrections of a length that was read off a tape. Each is added to the reading as it is, sign and all;
// they are small and are added to one another. Source of all five: the tape corrections of the surveying
// texts (encyclopaedia article Tape correction (surveying); Mahun, open-access surveying text, taping).

/// For a tape whose graduations are not what they say: reading (true - nominal) / nominal. `true_length` is
/// what the tape's `nominal` length was found to be. Nothing unless both are more than zero.
std::optional<Length> tape_standardisation_correction(Length reading, Length nominal, Length true_length);

/// For a tape that is warmer than the temperature it is marked for: alpha L (t - t0).
/// `expansion_per_kelvin` is 11.5e-6 to 11.6e-6 for steel, and has to be stated; `above_standard_kelvin` is
/// t - t0. Nothing when an input is not finite or the tape would shrink to nothing.
std::optional<Length> tape_temperature_correction(Length reading, double expansion_per_kelvin,
                                                  double above_standard_kelvin);

/// For a tape pulled harder than it is marked for: (P - P0) L / (A E). `axial_stiffness` is A E, the
/// metallic area of the tape times its modulus. Nothing unless the stiffness is more than zero and neither
/// pull is less than zero.
std::optional<Length> tape_pull_correction(Length reading, Force pull, Force standard_pull,
                                           Force axial_stiffness);

/// The largest sag over span for which the sag correction is given. There the formula is 3.5 % below the
/// exact catenary whose ends are pulled with P, at half of it 0.9 %.
inline constexpr double tape_sag_over_span_limit = 1.0 / 16.0;

/// For one unsupported bay of the tape: -w^2 L^3 / (24 P^2) cos^2(slope), never more than zero. `weight` is
/// in newtons for each metre of tape, `slope` in radians from the horizontal. Corrections of several bays
/// are added: L enters with its cube, the whole length in one is not the sum. Nothing when the pull is not
/// more than zero, the span or the weight is less than zero, the slope is steeper than a right angle, or
/// the tape hangs deeper than the limit, w L / (8 P) > 1/16.
std::optional<Length> tape_sag_correction(Length span, double weight_newtons_per_metre, Force pull,
                                          double slope_radians = 0.0);

/// From a length along a slope to its horizontal part: -s (1 - cos(slope)), never more than zero. The same
/// takes a tape that was held out of line. Nothing when the slope is steeper than a right angle.
std::optional<Length> tape_slope_correction(Length along_slope, double slope_radians);

} // namespace sheerpole
