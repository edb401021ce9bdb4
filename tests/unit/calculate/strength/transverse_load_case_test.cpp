#include "calculate/strength/transverse_load_case.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <vector>

namespace sheerpole::transverse_load_case_test {
namespace {

Length metres(double value) {
  return Length::metres(value);
}

// The shares are inputs from memory of the method, so what follows checks arithmetic and statics only.
constexpr ReefedMain reefed{
    .head_share = 0.40, .boom_share = 0.33, .luff_left = 0.6, .centre_up_luff = 1.0 / 3.0};

// Worked by hand: an invented masthead rig of 30 000 N m, hounds 12.9 m above a deck of 1.2 m freeboard,
// luff 11.5 m, boom 1.3 m above the deck.
TEST(TransverseLoadCase, MastheadRig) {
  EXPECT_NEAR(side_force_at(30'000, metres(12.9 + 1.2))->newtons(), 2127.66, 0.005);
  const auto main = reefed_main_load(30'000, metres(11.5), metres(1.3), metres(1.2), reefed);
  ASSERT_TRUE(main);
  EXPECT_NEAR(main->total.newtons(), 6250.0, 1e-9);
  EXPECT_NEAR(main->head.newtons(), 2500.0, 1e-9);
  EXPECT_NEAR(main->boom.newtons(), 2062.5, 1e-9);
  EXPECT_NEAR(main->head_height.metres(), 8.20, 1e-12);
  const std::array levels{metres(6.6), metres(12.9)};
  const auto head = *share_between_levels(levels, main->head, main->head_height);
  const auto boom = *share_between_levels(levels, main->boom, main->boom_height);
  EXPECT_NEAR((head[0] + boom[0]).newtons(), 2271.3, 0.05);
  EXPECT_NEAR((head[1] + boom[1]).newtons(), 634.9, 0.05);
}

// Worked by hand: an invented fractional rig of 62 000 N m with two pairs of spreaders.
TEST(TransverseLoadCase, FractionalRig) {
  EXPECT_NEAR(side_force_at(62'000, metres(14.9 + 1.3))->newtons(), 3827.2, 0.05);
  const auto main = reefed_main_load(62'000, metres(15.6), metres(1.4), metres(1.3), reefed);
  ASSERT_TRUE(main);
  EXPECT_NEAR(main->total.newtons(), 10'652.9, 0.05);
  EXPECT_NEAR(main->head.newtons(), 4261.2, 0.05);
  EXPECT_NEAR(main->boom.newtons(), 3515.5, 0.05);
  EXPECT_NEAR(main->head_height.metres(), 10.76, 1e-9);
}

TEST(TransverseLoadCase, AForceAtALevelIsOfThatLevel) {
  const std::array levels{metres(5), metres(10)};
  const Force force = Force::newtons(100);
  EXPECT_EQ(share_between_levels(levels, force, metres(10))->at(1), force);
  EXPECT_EQ(share_between_levels(levels, force, metres(5))->at(0), force);
  EXPECT_EQ(share_between_levels(levels, force, metres(5))->at(1), Force());
  EXPECT_EQ(share_between_levels(levels, force, metres(0))->at(0), Force());
}

TEST(TransverseLoadCase, IsNothingOutOfRange) {
  const std::array levels{metres(5), metres(10)};
  const std::array falling{metres(10), metres(5)};
  const Force force = Force::newtons(100);
  EXPECT_FALSE(share_between_levels(levels, force, metres(10.1)));
  EXPECT_FALSE(share_between_levels(levels, force, metres(-0.1)));
  EXPECT_FALSE(share_between_levels(falling, force, metres(1)));
  EXPECT_FALSE(share_between_levels({}, force, metres(1)));
  EXPECT_FALSE(side_force_at(0, metres(1)));
  EXPECT_FALSE(side_force_at(1, metres(0)));
  EXPECT_FALSE(reefed_main_load(1, metres(0), metres(1), metres(1), reefed));
  EXPECT_FALSE(reefed_main_load(1, metres(1), metres(-1), metres(1), reefed));
  EXPECT_FALSE(reefed_main_load(1, metres(1), metres(1), metres(-9), reefed));
  ReefedMain wrong = reefed;
  wrong.head_share = 1.1;
  EXPECT_FALSE(reefed_main_load(1, metres(1), metres(1), metres(1), wrong));
}

// Statics: sharing a force between two supports keeps its moment about the deck, and its sum but for what
// the deck takes.
RC_GTEST_PROP(TransverseLoadCase, SharingKeepsTheMoment, ()) {
  std::vector<Length> levels;
  double height = 0;
  const int count = *rc::gen::inRange(1, 6);
  for (int i = 0; i < count; ++i)
    levels.push_back(metres(height += *rc::gen::inRange(1, 8000) / 1000.0));
  const double at = height * *rc::gen::inRange(0, 1001) / 1000.0;
  const auto shares = share_between_levels(levels, Force::newtons(1000), metres(std::min(at, height)));
  RC_ASSERT(shares.has_value());
  double moment = 0;
  double sum = 0;
  for (std::size_t i = 0; i < levels.size(); ++i) {
    RC_ASSERT((*shares)[i] >= Force());
    moment += (*shares)[i].newtons() * levels[i].metres();
    sum += (*shares)[i].newtons();
  }
  RC_ASSERT(std::abs(moment - 1000 * at) <= 1e-9 * 1000 * height);
  RC_ASSERT(sum <= 1000 * (1 + 1e-12));
  RC_ASSERT(at < levels.front().metres() || std::abs(sum - 1000) < 1e-9);
}

} // namespace
} // namespace sheerpole::transverse_load_case_test
