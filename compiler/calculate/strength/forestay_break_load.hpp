#pragma once

#include "units/force.hpp"
#include "units/length.hpp"

#include <optional>

namespace sheerpole {

/// Least break load of a forestay: factor RM30 / (I + fs), I being the height of the stay above the sheer
/// and fs the freeboard at the mast, so that their sum is the height above the waterline. From memory of
/// the Nordic Boat Standard as given in Larsson and Eliasson, Principles of Yacht Design, ch. 11: factor 15
/// for the forestay and 12 for an inner one at its own height; the factors were not read. It screens, it
/// does not size a rig. Nothing unless the moment, the factor and the height above the waterline are more
/// than zero.
std::optional<Force> forestay_break_load(double righting_moment_newton_metres, Length height_above_sheer,
                                         Length freeboard_at_mast, double factor);

} // namespace sheerpole
