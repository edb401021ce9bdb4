#pragma once

#include "units/force.hpp"
#include "units/length.hpp"

#include <optional>

namespace sheerpole {

// Screening of the shrouds from the righting moment: a total load, the share of one shroud, and a factor on
// its break load. It screens, it does not size a rig. Nothing unless every input is more than zero.

/// Total transverse load on the shrouds of one side: P = factor RM30 / b, `righting_moment` in newton
/// metres at 30 degrees of heel and b the half beam at the chainplates. Source: Kinney, Skene's Elements of
/// Yacht Design, 8th ed., as worked in Toss, The Complete Rigger's Apprentice, fig. 5-25 (read in worked
/// examples), with a factor of 1.5 for a mast that carries the headsails; 0.5 in one example of a mizzen.
std::optional<Force> transverse_shroud_load(double righting_moment_newton_metres, Length half_beam,
                                            double factor);

/// What one shroud carries of it: share x P. Source of the method as above. Shares read: with one spreader
/// and double lowers 0.45 for the upper and 0.325 for each lower. From memory of Skene's: 0.60 for a single
/// lower (0.55 was used in a worked example), and for two spreaders 0.30, 0.30 and 0.25 each of two lowers
/// or 0.48 of one; these were not read. The share is at most 1.
std::optional<Force> shroud_load(Force transverse_load, double share);

/// The break load that the shroud has to have: factor x load. Source: arithmetic. Factors read in worked
/// examples: 2.25 to 2.75; 2 inshore, 3 coastal and 4 offshore are common practice, no source.
std::optional<Force> required_break_load(Force load, double factor);

} // namespace sheerpole
