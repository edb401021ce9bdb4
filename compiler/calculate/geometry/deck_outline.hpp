#pragma once

#include "calculate/geometry/near_lines.hpp"
#include "model/rig.hpp"

#include <optional>
#include <vector>

namespace sheerpole {

/// One place on the edge of the deck.
struct DeckStation {
  double x_metres = 0.0;
  double half_beam_metres = 0.0;
  double z_metres = 0.0;
};

/// The edge of the deck from the bow aft, the same on both sides, straight from place to place.
using DeckOutline = std::vector<DeckStation>;

/// The boat's `deck-edge`; nothing when it is not stated or has less than two places. A mirrored point
/// counts once.
std::optional<DeckOutline> deck_outline(const Rig& rig);

/// Where a straight piece has gone through the deck.
struct ThroughDeck {
  Length below;     ///< how far below the edge of the deck it gets at most
  SpacePoint place; ///< where it goes through
};

/// Of a piece that stands above the edge of the deck somewhere inside its outline, and below it elsewhere
/// inside it, more than `spared` from both of its ends. What comes in from outside the outline (a bobstay
/// under the bow) and what lies below deck altogether is not meant. The deck is taken for as high across as
/// its edge. Source: intersection of straight lines, exact.
std::optional<ThroughDeck> through_deck(const SpaceSegment& piece, const DeckOutline& outline,
                                        Length spared);

} // namespace sheerpole
