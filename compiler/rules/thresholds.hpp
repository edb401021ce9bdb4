#pragma once

#include "units/length.hpp"

/// What the checks take for nothing. The thresholds proper are in model/limits.hpp and can be set in a rig
/// file.
namespace sheerpole::threshold {

/// Smaller than anything that can be set or measured on a boat; keeps the rounding of a sum from being
/// called a fault. Choice of the project, no source.
inline constexpr Length negligible = Length::millimetres(0.001);

/// The same for angles. Choice of the project, no source.
inline constexpr double negligible_radians = 1e-9;

} // namespace sheerpole::threshold
