#include "calculate/adjust/state_lengths.hpp"

#include "unit/calculate/compiled_rig.hpp"
#include "units/si_factors.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <string>

namespace sheerpole::state_lengths_test {
namespace {

/// A mast of 6 m above its pin, a forestay, a backstay, and shrouds whose plates lie by so much before the
/// pin and above it.
std::string boat_with(const std::string& plate, const std::string& state) {
  return R"(language 1
spar mast { sort: mast
heel: (0, 0, 1.200) m measured }
points on mast {
  fore-tang: (0.100, 0, 6.000) m measured
  aft-tang: (-0.100, 0, 6.000) m measured
  tang: (0, 0.060, 5.000) m mirrored measured
}
points {
  stem: (2.600, 0, 0.900) m measured
  stern: (-3.000, 0, 1.000) m measured
  pulpit: (3.000, 0, 1.600) m measured
  plate: )" +
         plate + R"( mirrored measured
}
wire wire-5 { construction: "1x19"
size: "5 mm" }
turnbuckle bottle { shortest: 200 mm
longest: 300 mm }
stay forestay { path: fore-tang > stem
line: wire-5
stack {
    line
    bottle (length: 250 mm)
  } }
stay backstay { path: aft-tang > stern
line: wire-5
stack {
    line
  } }
stay shroud { sides: port, starboard
path: tang > plate
line: wire-5
stack {
    line
  } }
)" + state;
}

const LoweredStay* find(const Compilation& boat, const std::vector<LoweredStay>& all,
                        const std::string& stay) {
  for (const LoweredStay& one : all)
    if ((*boat.rig)[one.stay].name == stay)
      return &one;
  return nullptr;
}

const std::string lowering = "state lowering { lowers: mast\nby: 90 deg\ntowards: aft }\n";

// By hand: at 90 degrees aft what stood 6 m above the pin and 0.1 m before it lies 6 m abaft it and 0.1 m
// above.
TEST(StateLengths, GivesWhatEachStayLacksOrHasOverWhenTheMastLies) {
  const Compilation boat = test::compiled(boat_with("(0, 1.000, 1.200) m", lowering));
  ASSERT_TRUE(boat.checked);
  const auto all = lowered_stays(*boat.rig, *boat.derived);
  ASSERT_EQ(all.size(), 4U);
  const double fore_stood = std::hypot(2.6 - 0.1, 7.2 - 0.9);
  const double fore_lies = std::hypot(2.6 + 6.0, 1.3 - 0.9);
  const LoweredStay* fore = find(boat, all, "forestay");
  ASSERT_NE(fore, nullptr);
  EXPECT_NEAR(fore->slack.metres(), fore_stood - fore_lies, 1e-9); // too short by 1.8 m
  // On its way the stem is furthest when the tang points straight away from it, at 84 of 90 degrees.
  double furthest = 0.0;
  for (int angle = 0; angle <= 90; ++angle) {
    const double a = angle * degree;
    furthest = std::max(furthest, std::hypot(2.6 - (0.1 * std::cos(a) - 6.0 * std::sin(a)),
                                             1.2 + 0.1 * std::sin(a) + 6.0 * std::cos(a) - 0.9));
  }
  EXPECT_NEAR(fore->tightest.metres(), furthest - fore_stood, 1e-9);
  EXPECT_GT(fore->tightest, -fore->slack);
  const LoweredStay* aft = find(boat, all, "backstay");
  ASSERT_NE(aft, nullptr);
  EXPECT_NEAR(aft->slack.metres(), std::hypot(2.9, 6.2) - std::hypot(3.0, 0.1), 1e-9);
  EXPECT_EQ(aft->tightest, Length{});
  EXPECT_EQ(aft->slack_from, 0.0);
  // A plate abreast of the pin and as high keeps its distance from every place of the mast.
  const LoweredStay* shroud = find(boat, all, "shroud.starboard");
  ASSERT_NE(shroud, nullptr);
  EXPECT_NEAR(shroud->slack.millimetres(), 0.0, 1e-6);
  EXPECT_EQ(shroud->tightest, Length{});
}

// Plates below the pin: the way is longest when the mast lies, by the law of cosines.
TEST(StateLengths, FindsWhereAShroudIsTightest) {
  const Compilation boat = test::compiled(boat_with("(0.200, 1.000, 0.700) m", lowering));
  const auto all = lowered_stays(*boat.rig, *boat.derived);
  const LoweredStay* shroud = find(boat, all, "shroud.port");
  ASSERT_NE(shroud, nullptr);
  double longest = 0.0;
  int at = 0;
  const auto way = [](int angle) {
    const double a = angle * degree;
    return std::hypot(-5.0 * std::sin(a) - 0.2, 0.94, 5.0 * std::cos(a) + 0.5);
  };
  for (int angle = 0; angle <= 90; ++angle)
    if (way(angle) - way(0) > longest + 5e-5) {
      longest = way(angle) - way(0);
      at = angle;
    }
  EXPECT_NEAR(shroud->tightest.metres(), longest, 1e-9);
  EXPECT_NEAR(shroud->tightest_at, at * degree, 1e-9);
  EXPECT_TRUE(test::found(boat, "lowered-tight"));
}

TEST(StateLengths, CountsHowTheAdjustersAreSetInTheState) {
  const Compilation boat = test::compiled(boat_with("(0, 1.000, 1.200) m", R"(
state lowering { lowers: mast
by: 2 deg
towards: forward
  position of forestay {
    bottle (length: 270 mm)
  }
}
)"));
  const auto all = lowered_stays(*boat.rig, *boat.derived);
  const LoweredStay* fore = find(boat, all, "forestay");
  ASSERT_NE(fore, nullptr);
  const double a = 2.0 * degree;
  const double lies = std::hypot(2.6 - (0.1 * std::cos(a) + 6.0 * std::sin(a)),
                                 1.2 + 6.0 * std::cos(a) - 0.1 * std::sin(a) - 0.9);
  EXPECT_NEAR(fore->slack.metres(), std::hypot(2.5, 6.3) + 0.020 - lies, 1e-9);
}

TEST(StateLengths, SaysWhatAStowedStayNeedsAndWhatHangsLoose) {
  const Compilation boat = test::compiled(boat_with("(0, 1.000, 1.200) m", R"(
state away {
  position of forestay {
    stowed-at: pulpit
    bottle (length: 300 mm)
  }
}
)"));
  const auto all = stowed_stays(*boat.rig, *boat.derived);
  ASSERT_EQ(all.size(), 1U);
  EXPECT_NEAR(all[0].needs.metres(), std::hypot(2.9, 5.6), 1e-9);
  EXPECT_NEAR(all[0].left()->metres(), std::hypot(2.5, 6.3) + 0.050 - std::hypot(2.9, 5.6), 1e-9);
}

} // namespace
} // namespace sheerpole::state_lengths_test
