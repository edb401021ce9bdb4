#pragma once

#include "units/length.hpp"

/// Where the comparisons at a joint draw the line; docs/calculations/thresholds.md lists them. All are
/// common practice, no source, but where another class is named.
namespace sheerpole::joint_limit {

/// A pin may play by this, or by the share of its diameter below, whichever is more.
inline constexpr Length pin_play = Length::millimetres(0.5);
inline constexpr double pin_play_share = 0.05;

/// A plate may play sideways by this in a jaw, both sides together.
inline constexpr Length side_play = Length::millimetres(3.0);

/// From the centre of a hole to the end of its plate, in diameters of the hole.
inline constexpr double edge_least = 1.25;
inline constexpr double edge_usual = 1.5;

/// Diameter of a seat over that of the rope on it.
inline constexpr double seat_least = 1.0;
inline constexpr double seat_usual = 2.0;

} // namespace sheerpole::joint_limit
