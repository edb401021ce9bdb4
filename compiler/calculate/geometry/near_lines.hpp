#pragma once

#include "calculate/strength/stay_directions.hpp"

#include <cstddef>
#include <vector>

namespace sheerpole {

/// A straight piece of a line in space.
struct SpaceSegment {
  SpacePoint from, to;
};

/// Where two straight pieces come nearest to each other.
struct NearestPlaces {
  double first = 0.0;  ///< share of the first piece from its beginning, 0 to 1
  double second = 0.0; ///< the same of the second one
  Length distance;
};

/// Of two parallel pieces any nearest places. Source: least distance of two points on two straight pieces,
/// each kept within its ends; exact geometry.
NearestPlaces nearest_places(const SpaceSegment& a, const SpaceSegment& b);

/// The place at a share of a piece.
SpacePoint place_along(const SpaceSegment& segment, double share);

Length length_of(const SpaceSegment& segment);

/// A straight piece of one of many lines.
struct LinePiece {
  SpaceSegment segment;
  std::size_t line = 0;
  /// Lines of one group are not held against each other: they meet at one place by design.
  std::size_t group = 0;
};

/// Two pieces of two lines that may come near each other, as indices into the list; the first is less.
struct PiecePair {
  std::size_t first = 0, second = 0;
};

/// What was found in a list of pieces.
struct PiecePairs {
  std::vector<PiecePair> pairs; ///< in order, each once
  bool complete = true;         ///< false: so many lie close together that not all were taken
};

/// The pairs of pieces of different lines and groups that may lie near each other: every pair that comes
/// nearer than `reach` is among them. Near-linear in the number of many pieces as long as they lie spread
/// out; at most `most_pairs_a_piece` pairs are taken for each piece on the whole. Pieces of more than a
/// kilometre are left out.
PiecePairs near_pieces(const std::vector<LinePiece>& pieces, Length reach,
                       std::size_t most_pairs_a_piece = 200);

} // namespace sheerpole
