#include "calculate/geometry/near_lines.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>

namespace sheerpole::near_lines_test {
namespace {

SpacePoint at(double x, double y, double z) {
  return {Length::metres(x), Length::metres(y), Length::metres(z)};
}

// Solid geometry: opposite edges of a regular tetrahedron of edge a are a / sqrt 2 apart, middle to middle.
TEST(SegmentDistance, OppositeEdgesOfATetrahedron) {
  const SpaceSegment a{at(1, 1, 1), at(1, -1, -1)};
  const SpaceSegment b{at(-1, 1, -1), at(-1, -1, 1)};
  const NearestPlaces near = nearest_places(a, b);
  EXPECT_NEAR(near.distance.metres(), std::sqrt(8.0) / std::sqrt(2.0), 1e-12);
  EXPECT_NEAR(near.first, 0.5, 1e-12);
  EXPECT_NEAR(near.second, 0.5, 1e-12);
}

// Solid geometry: the diagonal of a cube and an edge that it does not meet are a / sqrt 2 apart.
TEST(SegmentDistance, DiagonalAndEdgeOfACube) {
  const NearestPlaces near = nearest_places({at(0, 0, 0), at(1, 1, 1)}, {at(1, 0, 0), at(1, 0, 1)});
  EXPECT_NEAR(near.distance.metres(), std::sqrt(0.5), 1e-12);
}

TEST(SegmentDistance, KeepsWithinTheEnds) {
  // Endless they would cross at the origin.
  EXPECT_NEAR(nearest_places({at(1, 0, 0), at(2, 0, 0)}, {at(0, 3, 0), at(0, 4, 0)}).distance.metres(),
              std::sqrt(10.0), 1e-12);
  EXPECT_NEAR(nearest_places({at(0, 0, 0), at(0, 0, 10)}, {at(1, 0, 5), at(9, 0, 5)}).distance.metres(),
              1.0, 1e-12);
}

TEST(SegmentDistance, OfParallelPiecesAndOfPlaces) {
  EXPECT_NEAR(nearest_places({at(0, 0, 0), at(0, 0, 2)}, {at(3, 0, 1), at(3, 0, 5)}).distance.metres(), 3.0,
              1e-12);
  EXPECT_NEAR(nearest_places({at(0, 0, 0), at(0, 0, 2)}, {at(3, 0, 6), at(3, 0, 5)}).distance.metres(),
              std::hypot(3, 3), 1e-12);
  EXPECT_NEAR(nearest_places({at(1, 1, 1), at(1, 1, 1)}, {at(0, 0, 1), at(2, 0, 1)}).distance.metres(), 1.0,
              1e-12);
  EXPECT_NEAR(nearest_places({at(0, 0, 1), at(2, 0, 1)}, {at(1, 1, 1), at(1, 1, 1)}).distance.metres(), 1.0,
              1e-12);
}

LinePiece random_piece(std::size_t line) {
  const auto metre = [] { return *rc::gen::inRange(-4000, 4000) / 1000.0; };
  return {{at(metre(), metre(), metre()), at(metre(), metre(), metre())}, line, line};
}

// No two places of two straight pieces are nearer than said; sampled.
RC_GTEST_PROP(SegmentDistance, IsTheLeast, ()) {
  const SpaceSegment a = random_piece(0).segment;
  const SpaceSegment b = random_piece(1).segment;
  const NearestPlaces near = nearest_places(a, b);
  const auto between = [&](double s, double t) {
    return magnitude(vector_between(place_along(a, s), place_along(b, t)));
  };
  RC_ASSERT(std::abs(between(near.first, near.second) - near.distance.metres()) < 1e-9);
  for (int i = 0; i <= 20; ++i)
    for (int k = 0; k <= 20; ++k)
      RC_ASSERT(between(i / 20.0, k / 20.0) > near.distance.metres() - 1e-9);
}

// Against every pair: nothing nearer than the reach is missed, whether each two are looked at or cells.
RC_GTEST_PROP(NearLines, MissesNoPairWithinReach, (bool by_cells)) {
  const auto count = *rc::gen::inRange<std::size_t>(2, 12);
  std::vector<LinePiece> pieces;
  for (std::size_t i = 0; i < count; ++i)
    pieces.push_back(random_piece(i / 2));
  const Length reach = Length::millimetres(*rc::gen::inRange(1, 400));
  const PiecePairs found = by_cells ? near_pieces(pieces, reach, count - 1) : near_pieces(pieces, reach);
  RC_PRE(found.complete || !by_cells);
  RC_ASSERT(found.complete);
  for (std::size_t i = 0; i < count; ++i)
    for (std::size_t k = i + 1; k < count; ++k) {
      const bool listed = std::any_of(found.pairs.begin(), found.pairs.end(), [&](const PiecePair& pair) {
        return pair.first == i && pair.second == k;
      });
      if (pieces[i].line == pieces[k].line)
        RC_ASSERT(!listed);
      else if (nearest_places(pieces[i].segment, pieces[k].segment).distance < reach)
        RC_ASSERT(listed);
    }
}

TEST(NearLines, DoesNotHoldLinesOfOneGroupAgainstEachOther) {
  const SpaceSegment same{at(0, 0, 0), at(0, 0, 9)};
  EXPECT_EQ(near_pieces({{same, 0, 5}, {same, 1, 5}}, Length::millimetres(10)).pairs.size(), 0u);
  EXPECT_EQ(near_pieces({{same, 0, 5}, {same, 1, 6}}, Length::millimetres(10)).pairs.size(), 1u);
}

// A thousand stays side by side, 0.2 m apart: each has some ten neighbours within a cell or two.
TEST(NearLines, LooksAtNeighboursOnly) {
  std::vector<LinePiece> pieces;
  for (std::size_t i = 0; i < 1000; ++i)
    pieces.push_back(
        {{at(0.2 * static_cast<double>(i), 0, 0), at(0.2 * static_cast<double>(i), 1, 12)}, i, i});
  const PiecePairs found = near_pieces(pieces, Length::millimetres(10));
  EXPECT_TRUE(found.complete);
  EXPECT_LT(found.pairs.size(), 10'000u);
}

TEST(NearLines, SaysWhenTooManyLieInOnePlace) {
  std::vector<LinePiece> pieces;
  for (std::size_t i = 0; i < 100; ++i)
    pieces.push_back({{at(0.5, 0.5, 0.5), at(0.5, 0.5, 0.6)}, i, i});
  EXPECT_FALSE(near_pieces(pieces, Length::millimetres(10), 10).complete);
  EXPECT_TRUE(near_pieces(pieces, Length::millimetres(10), 100).complete);
}

TEST(NearLines, LeavesOutWhatIsFarBeyondAnyBoat) {
  const SpaceSegment endless{at(0, 0, 0), at(1e11, 0, 0)};
  EXPECT_TRUE(near_pieces({{endless, 0, 0}, {endless, 1, 1}}, Length::millimetres(10)).pairs.empty());
}

} // namespace
} // namespace sheerpole::near_lines_test
