#include "calculate/geometry/spar_lines.hpp"
#include "unit/calculate/compiled_rig.hpp"
#include "unit/calculate/example_rig.hpp"
#include "unit/calculate/rig_builder.hpp"
#include "units/quantity_text.hpp"
#include "units/si_factors.hpp"

#include <gtest/gtest.h>

namespace sheerpole::spreader_lines_test {
namespace {

using namespace build;

struct OneSpreader {
  double tang_y = 0, tang_z = 11'400, tip_y = 1'000, tip_z = 5'500, root_z = 5'500, plate_y = 1'250;
};

Rig one_spreader(const OneSpreader& places) {
  RigBuilder builder;
  const MaterialId line_material = builder.add(wire("wire", mm(8)));
  const PointId tang = builder.point("tang", 0, places.tang_y, places.tang_z);
  const PointId tip = builder.point("tip", 0, places.tip_y, places.tip_z);
  const PointId root = builder.point("root", 0, 0, places.root_z);
  const PointId plate = builder.point("plate", 0, places.plate_y, 0);
  builder.rig.spreaders.push_back({.name = "spreader", .title = "", .root = root, .tip = tip, .place = {}});
  Stay cap = stay("cap", line_material, {line()});
  cap.path = path({tang, tip, plate});
  builder.add(std::move(cap));
  return builder.rig;
}

// Exact statics of a single-spreader rig: masthead 11.4 m and a spreader of 1.0 m at 5.5 m above
// chainplates 1.25 m off the centreline lean by 9.620 and 2.603 degrees; 6.11 degrees up halves them.
TEST(SpreaderLines, HalvingRiseOfTheSingleSpreaderRig) {
  const auto tips = spreader_tips(one_spreader({}));
  ASSERT_EQ(tips.size(), 1u);
  ASSERT_EQ(tips[0].lines.size(), 1u);
  const LineOverTip& over = tips[0].lines[0];
  EXPECT_NEAR(*over.halving_radians / degree, 6.11, 0.005);
  EXPECT_NEAR(over.rise_radians, 0.0, 1e-12);
  EXPECT_NEAR(over.off_bisector() / degree, -6.11, 0.005);
}

// A spreader lifted so that its own rise is the halving one: the resultant lies along it.
TEST(SpreaderLines, ASpreaderThatHalvesTheAngleIsPressedAlongItself) {
  Rig rig = one_spreader({});
  const double halving = *spreader_tips(rig)[0].lines[0].halving_radians;
  const auto lifted = spreader_tips(one_spreader({.root_z = 5'500 - 1'000 * std::tan(halving)}));
  EXPECT_NEAR(lifted[0].lines[0].off_bisector(), 0.0, 1e-12);
  EXPECT_NEAR(lifted[0].lines[0].bend->off_spreader_radians, 0.0, 1e-9);
}

TEST(SpreaderLines, ATipOnTheStraightLineHasNothingToHalve) {
  EXPECT_FALSE(spreader_tips(one_spreader({.tip_y = 1'250 * 5.9 / 11.4}))[0].lines[0].halving_radians);
}

// A strut below a bowsprit: the line leans on it from forward and aft.
TEST(SpreaderLines, AStrutThatHangsDownIsJudgedAlongTheLine) {
  RigBuilder builder;
  const MaterialId line_material = builder.add(wire("wire", mm(8)));
  const PointId before = builder.point("sprit-end", 1'000, 0, 1'000);
  const PointId tip = builder.point("tip", 0, 0, 0);
  const PointId root = builder.point("root", 0, 0, 1'000);
  const PointId behind = builder.point("stem", -1'000, 0, 1'000);
  builder.rig.spreaders.push_back({.name = "striker", .title = "", .root = root, .tip = tip, .place = {}});
  Stay bobstay = stay("bobstay", line_material, {line()});
  bobstay.path = path({before, tip, behind});
  builder.add(std::move(bobstay));
  const LineOverTip over = spreader_tips(builder.rig)[0].lines[0];
  EXPECT_NEAR(*over.halving_radians, 0.0, 1e-12);
  EXPECT_NEAR(over.rise_radians, 0.0, 1e-12);
}

TEST(SpreaderLines, TheClampedLineSetsTheSpreader) {
  SpreaderTip tip;
  const auto over = [](std::uint32_t stay, bool clamped, double halving) {
    LineOverTip result;
    result.stay = StayId{stay};
    result.clamped = clamped;
    result.rise_radians = 0.1;
    result.halving_radians = halving;
    return result;
  };
  const LineOverTip free_line = over(0, false, 0.1);
  const LineOverTip clamped = over(1, true, 0.3);
  const LineOverTip nearer = over(2, true, 0.2);
  tip.lines = {free_line, clamped};
  EXPECT_EQ(line_that_sets(tip)->stay, StayId{1});
  tip.lines = {free_line, clamped, nearer};
  EXPECT_EQ(line_that_sets(tip)->stay, StayId{2});
  tip.lines = {};
  EXPECT_EQ(line_that_sets(tip), nullptr);
}

struct Push {
  std::string boat, stay, spreader, share;
};
// The thrust at each tip of the four invented boats over the tension of the line, worked outside the
// project to the printed digits.
const Push pushes[] = {
    {"grisolde", "cap-shroud.starboard", "upper-spreader.starboard", "0.080"},
    {"grisolde", "cap-shroud.starboard", "lower-spreader.starboard", "0.031"},
    {"grisolde", "intermediate.starboard", "lower-spreader.starboard", "0.204"},
    {"pellimoor", "cap-shroud.starboard", "upper-spreader.starboard", "0.112"},
    {"pellimoor", "cap-shroud.starboard", "lower-spreader.starboard", "0.052"},
    {"pellimoor", "intermediate.starboard", "lower-spreader.starboard", "0.273"},
    {"smidgeon", "upper-shroud.starboard", "spreader.starboard", "0.101"},
    {"smidgeon", "upper-shroud.port", "spreader.port", "0.100"},
};

TEST(SpreaderLines, PushAtTheTipsOfTheExamples) {
  for (const Push& push : pushes) {
    SCOPED_TRACE(push.boat + " " + push.stay);
    const Compilation compilation = test::compiled_example(push.boat);
    ASSERT_TRUE(compilation.rig);
    const Rig& rig = *compilation.rig;
    int met = 0;
    for (const SpreaderTip& tip : spreader_tips(rig))
      for (const LineOverTip& over : tip.lines)
        if (rig.spreaders[tip.spreader].name == push.spreader && rig[over.stay].name == push.stay) {
          ++met;
          EXPECT_EQ(share_text(over.bend->thrust_share), push.share);
          EXPECT_EQ(over.bend->push, TipPush::inwards);
        }
    EXPECT_EQ(met, 1);
  }
}

} // namespace
} // namespace sheerpole::spreader_lines_test
