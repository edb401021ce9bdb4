#include "calculate/strength/transverse_loads.hpp"

#include "calculate/strength/stay_directions.hpp"
#include "units/si_factors.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <array>
#include <cmath>
#include <span>
#include <vector>

namespace sheerpole::transverse_equilibrium_test {
namespace {

MastLevel spreaders(double height, double force, double tip, double rise = 0) {
  return {Length::metres(height), Force::newtons(force), Length::metres(tip), Length::metres(rise)};
}

MastLevel top(double height, double force) {
  return spreaders(height, force, 0);
}

TransverseEquilibrium solved(std::span<const MastLevel> levels, double chainplate) {
  return transverse_equilibrium(levels, Length::metres(chainplate)).value();
}

// Statics by hand, in closed form by Pythagoras: 3200 N at a masthead of 11.4 m, spreaders of 1 m at 5.5 m,
// chainplates 1.25 m out. Printed with as many digits as beside each.
TEST(TransverseEquilibrium, OneSpreaderByHand) {
  const std::array levels{spreaders(5.5, 0, 1.0), top(11.4, 3200)};
  const auto rig = solved(levels, 1.25);
  const LevelEquilibrium& lower = rig.levels[0];
  const LevelEquilibrium& upper = rig.levels[1];
  EXPECT_NEAR(upper.diagonal_to_mast_radians / degree, 9.620, 0.0005);
  EXPECT_NEAR(lower.vertical_lean_radians / degree, 2.603, 0.0005);
  EXPECT_NEAR(lower.diagonal_to_mast_radians / degree, 12.804, 0.0005);
  EXPECT_NEAR(upper.diagonal.newtons(), 19'149, 0.5);
  EXPECT_NEAR(lower.vertical.newtons(), 18'899, 0.5);
  EXPECT_NEAR(lower.spreader_compression.newtons(), 2'342, 0.5);
  EXPECT_NEAR(lower.diagonal.newtons(), 10'567, 0.5);
  EXPECT_NEAR(rig.chainplate_pull.newtons(), 29'184, 1e-6);
  EXPECT_NEAR(lower.mast_compression.newtons(), 29'184, 1e-6);
  EXPECT_NEAR(rig.moment_newton_metres, 36'480, 1e-6);

  const double above = 5.9;                     // of the masthead over the spreaders
  const double up = 3200 * above;               // pull upwards on the tip
  const double thrust = 3200 - up * 0.25 / 5.5; // on the mast
  const auto near = [](Force force, double newtons) { return std::abs(force.newtons() / newtons - 1); };
  EXPECT_LT(near(upper.diagonal, 3200 * std::sqrt(1 + above * above)), 1e-12);
  EXPECT_LT(near(lower.vertical, up * std::sqrt(5.5 * 5.5 + 0.25 * 0.25) / 5.5), 1e-12);
  EXPECT_LT(near(lower.spreader_compression, thrust), 1e-12);
  EXPECT_LT(near(lower.diagonal, thrust * std::sqrt(5.5 * 5.5 + 1.25 * 1.25) / 1.25), 1e-12);
}

// The same rig: a spreader that halves the angle of the cap shroud rises (9.620 + 2.603) / 2 degrees.
TEST(TransverseEquilibrium, BisectingSpreaderByHand) {
  const std::array levels{spreaders(5.5, 0, 1.0), top(11.4, 3200)};
  const auto rig = solved(levels, 1.25);
  EXPECT_NEAR(
      *bisecting_elevation(rig.levels[1].diagonal_to_mast_radians, rig.levels[0].vertical_lean_radians) /
          degree,
      6.11, 0.005);
}

struct Printed {
  double diagonal, vertical, compression;
};

void expect_printed(const TransverseEquilibrium& rig, std::span<const Printed> printed) {
  ASSERT_EQ(rig.levels.size(), printed.size());
  for (std::size_t k = 0; k < printed.size(); ++k) {
    EXPECT_NEAR(rig.levels[k].diagonal.newtons(), printed[k].diagonal, 0.05) << k;
    EXPECT_NEAR(rig.levels[k].vertical.newtons(), printed[k].vertical, 0.05) << k;
    EXPECT_NEAR(rig.levels[k].spreader_compression.newtons(), printed[k].compression, 0.05) << k;
  }
  EXPECT_EQ(rig.levels.back().mast_compression.newtons(),
            rig.levels.back().diagonal.newtons() * std::cos(rig.levels.back().diagonal_to_mast_radians));
}

// Statics by hand of an invented masthead rig; the side forces are those of its two cases.
TEST(TransverseEquilibrium, MastheadRigByHand) {
  const double headsail = 30'000.0 / 14.1;
  const std::array first{spreaders(6.6, 0, 1.05), top(12.9, headsail)};
  const auto one = solved(first, 1.55);
  expect_printed(one, std::array{Printed{5076.1, 12'802.5, 1160.5}, Printed{12'942.0, 0, 0}});
  EXPECT_NEAR(one.moment_newton_metres, 27'446.81, 0.005);
  EXPECT_NEAR(one.chainplate_pull.newtons() * 1.55, 27'446.81, 0.005);
  EXPECT_NEAR(one.levels[0].diagonal_to_mast_radians / degree, 13.216, 0.0005);
  EXPECT_NEAR(one.levels[1].diagonal_to_mast_radians / degree, 9.462, 0.0005);
  EXPECT_NEAR(one.levels[0].vertical_lean_radians / degree, 4.332, 0.0005);

  const double at_top = 2500 * (8.2 - 6.6) / 6.3;
  const double at_spreaders = 2500 - at_top + 2062.5 * 1.3 / 6.6;
  const std::array second{spreaders(6.6, at_spreaders, 1.05), top(12.9, at_top)};
  const auto two = solved(second, 1.55);
  expect_printed(two, std::array{Printed{11'449.4, 3820.4, 346.3}, Printed{3862.1, 0, 0}});
  EXPECT_NEAR(two.moment_newton_metres, 23'181.25, 0.005);
  EXPECT_NEAR(two.chainplate_pull.newtons() * 1.55, 23'181.25, 0.005);
}

// Statics by hand of an invented fractional rig with two pairs of spreaders.
TEST(TransverseEquilibrium, FractionalRigByHand) {
  const std::array first{spreaders(5.1, 0, 1.25), spreaders(10.0, 0, 0.95), top(14.9, 62'000.0 / 16.2)};
  const auto one = solved(first, 1.75);
  expect_printed(one, std::array{Printed{2728.3, 30'148.8, 885.5}, Printed{10'593.6, 19'777.1, 2618.6},
                                 Printed{20'107.7, 0, 0}});
  EXPECT_NEAR(one.moment_newton_metres, 57'024.69, 0.005);
  EXPECT_NEAR(one.chainplate_pull.newtons() * 1.75, 57'024.69, 0.005);

  const double total = 62'000.0 / 5.82;
  const double at_top = 0.40 * total * (10.76 - 10.0) / 4.9;
  const std::array second{spreaders(5.1, 0.33 * total * 1.4 / 5.1, 1.25),
                          spreaders(10.0, 0.40 * total - at_top, 0.95), top(14.9, at_top)};
  const auto two = solved(second, 1.75);
  expect_printed(two, std::array{Printed{10'274.1, 19'387.1, 2369.5}, Printed{16'394.4, 3415.3, 452.2},
                                 Printed{3472.4, 0, 0}});
  EXPECT_NEAR(two.moment_newton_metres, 50'771.82, 0.005);
  EXPECT_NEAR(two.chainplate_pull.newtons() * 1.75, 50'771.82, 0.005);
}

// A straight cap shroud presses no spreader, and a mast without spreaders is one joint.
TEST(TransverseEquilibrium, SimplestRigs) {
  const std::array bare{top(8, 1000)};
  EXPECT_NEAR(solved(bare, 2).levels[0].diagonal.newtons(), 1000 * std::sqrt(68) / 2, 1e-9);
  const std::array straight{spreaders(5, 0, 1), top(10, 1000)};
  EXPECT_NEAR(solved(straight, 2).levels[0].spreader_compression.newtons(), 0, 1e-9);
  EXPECT_NEAR(solved(straight, 2).levels[0].diagonal.newtons(), 0, 1e-9);
}

// Tips within the straight line would be pulled outwards; the lower would have to push the mast.
TEST(TransverseEquilibrium, IsNothingForALineThatWouldPush) {
  const std::array pushed{spreaders(5, 0, 0.9), top(10, 1000)};
  EXPECT_FALSE(transverse_equilibrium(pushed, Length::metres(2)));
  // A spreader that droops more steeply than the line goes on from its tip: both point the same way.
  const std::array drooping{spreaders(5, 0, 1, -2), top(10, 1000)};
  EXPECT_FALSE(transverse_equilibrium(drooping, Length::metres(3.5)));
  EXPECT_TRUE(transverse_equilibrium(drooping, Length::metres(1.2)));
  const std::array held{spreaders(5, 500, 0.9), top(10, 1000)};
  const auto rig = transverse_equilibrium(held, Length::metres(2));
  ASSERT_TRUE(rig);
  EXPECT_LT(rig->levels[0].spreader_compression, Force());
}

TEST(TransverseEquilibrium, IsNothingOutOfRange) {
  const auto nothing = [](std::vector<MastLevel> levels, double chainplate) {
    return !transverse_equilibrium(levels, Length::metres(chainplate)).has_value();
  };
  EXPECT_TRUE(nothing({}, 1));
  EXPECT_TRUE(nothing({top(0, 1)}, 1));
  EXPECT_TRUE(nothing({top(1, -1)}, 1));
  EXPECT_TRUE(nothing({top(1, 1)}, 0));
  EXPECT_TRUE(nothing({spreaders(5, 0, 0), top(10, 1)}, 1));
  EXPECT_TRUE(nothing({spreaders(5, 0, 1), top(5, 1)}, 1));
  EXPECT_TRUE(nothing({spreaders(5, 0, 1, 6), top(10, 1)}, 1));  // the tip is above the masthead
  EXPECT_TRUE(nothing({spreaders(5, 0, 1, -6), top(10, 1)}, 1)); // and here below the chainplates
}

struct AnyRig {
  std::vector<MastLevel> levels;
  double chainplate = 0;
};

AnyRig any_rig() {
  AnyRig rig;
  const int spreader_pairs = *rc::gen::inRange(0, 6);
  double height = 0;
  double out = rig.chainplate = *rc::gen::inRange(500, 3000) / 1000.0;
  for (int k = 0; k <= spreader_pairs; ++k) {
    height += *rc::gen::inRange(2000, 7000) / 1000.0;
    out *= *rc::gen::inRange(600, 1100) / 1000.0;
    const double force = *rc::gen::inRange(0, 20'000);
    const double rise = *rc::gen::inRange(-100, 200) / 1000.0;
    rig.levels.push_back(k == spreader_pairs ? top(height, force) : spreaders(height, force, out, rise));
  }
  return rig;
}

// Statics of the whole: the moment of the side forces is that of the chainplates, and the mast bears on its
// step what the chainplates pull up, whatever the spreaders do.
RC_GTEST_PROP(TransverseEquilibrium, TheWholeIsInBalance, ()) {
  const AnyRig any = any_rig();
  const auto rig = transverse_equilibrium(any.levels, Length::metres(any.chainplate));
  RC_PRE(rig.has_value());
  double moment = 0;
  for (const MastLevel& level : any.levels)
    moment += level.side_force.newtons() * level.height.metres();
  RC_PRE(moment > 0);
  const LevelEquilibrium& lowest = rig->levels.front();
  const double pull = lowest.diagonal.newtons() * std::cos(lowest.diagonal_to_mast_radians) +
                      lowest.vertical.newtons() * std::cos(lowest.vertical_lean_radians);
  RC_ASSERT(std::abs(any.chainplate * pull / moment - 1) < 1e-9);
  RC_ASSERT(std::abs(rig->chainplate_pull.newtons() / pull - 1) < 1e-9);
  RC_ASSERT(std::abs(lowest.mast_compression.newtons() / pull - 1) < 1e-9);
  RC_ASSERT(std::abs(rig->moment_newton_metres / moment - 1) < 1e-9);
}

// A line that slides on the tip without friction has one tension, and then the spreader halves its angle.
RC_GTEST_PROP(TransverseEquilibrium, ABisectingSpreaderMakesBothTensionsEqual, ()) {
  const double tip = *rc::gen::inRange(500, 1500) / 1000.0;
  const double chainplate = tip * *rc::gen::inRange(1000, 1500) / 1000.0;
  const double tip_height = *rc::gen::inRange(4000, 8000) / 1000.0;
  const double over_tip = *rc::gen::inRange(2000, 5000) / 1000.0;
  const auto elevation =
      bisecting_elevation(std::atan2(tip, over_tip), std::atan2(chainplate - tip, tip_height));
  RC_PRE(elevation.has_value());
  const double rise = tip * std::tan(*elevation);
  const std::array levels{spreaders(tip_height - rise, 100, tip, rise), top(tip_height + over_tip, 1000)};
  const auto rig = transverse_equilibrium(levels, Length::metres(chainplate));
  RC_ASSERT(rig.has_value());
  const double tension = rig->levels[1].diagonal.newtons();
  RC_ASSERT(std::abs(rig->levels[0].vertical.newtons() / tension - 1) < 1e-9);
  const double bend = rig->levels[1].diagonal_to_mast_radians - rig->levels[0].vertical_lean_radians;
  RC_ASSERT(std::abs(rig->levels[0].spreader_compression.newtons() /
                         bend_thrust(Force::newtons(tension), bend)->newtons() -
                     1) < 1e-9);
}

} // namespace
} // namespace sheerpole::transverse_equilibrium_test
