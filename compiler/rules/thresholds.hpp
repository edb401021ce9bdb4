#pragma once

#include "units/length.hpp"

/// Where the checks draw the line. Each is a choice with its class; docs/calculations/thresholds.md lists
/// them.
namespace sheerpole::threshold {

/// Two ways to one length may differ by this much: about what a tape and a list of points agree to on a
/// boat. Choice of the project, no source.
inline constexpr Length routes_apart = Length::millimetres(5.0);

/// Share of an adjuster's range that should be left either way. Choice of the project, no source.
inline constexpr double adjuster_reserve = 0.10;

/// A path that ends this much higher than it begins is taken for one that was written from deck to aloft,
/// or for a slip in a height. Choice of the project, no source.
inline constexpr Length path_rise = Length::millimetres(100.0);

/// Smaller than anything that can be set or measured on a boat; keeps the rounding of a sum from being
/// called a fault. Choice of the project, no source.
inline constexpr Length negligible = Length::millimetres(0.001);

} // namespace sheerpole::threshold
