#include "calculate/adjust/take_up.hpp"

#include "calculate/calculate.hpp"
#include "unit/calculate/rig_builder.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace sheerpole::take_up_test {
namespace {

using namespace build;

Screw screw(const char* designation, bool pair = true) {
  const auto thread = parse_thread(designation);
  EXPECT_TRUE(thread.ok()) << designation;
  return {thread.value(), pair, {}};
}

// Pitches from memory of ASME B1.1 and ISO 261: 1/2-20 UNF 1.27 mm, M12 1.75 mm, M16 2.0 mm, 3/8-24 1.0583
// mm. A pair moves two pitches a turn.
TEST(TakeUp, TravelOfOneTurn) {
  EXPECT_NEAR(travel_per_turn(screw("1/2-20 UNF")).millimetres(), 2.54, 1e-9);
  EXPECT_NEAR(travel_per_turn(screw("M12")).millimetres(), 3.5, 1e-9);
  EXPECT_NEAR(travel_per_turn(screw("M16")).millimetres(), 4.0, 1e-9);
  EXPECT_NEAR(travel_per_turn(screw("3/8-24 UNF")).millimetres(), 2.117, 0.001);
  EXPECT_NEAR(travel_per_turn(screw("M12", false)).millimetres(), 1.75, 1e-9);
}

TakeUp with_setting(Part part, Length setting) {
  RigBuilder builder;
  const PartId id = builder.add(std::move(part));
  builder.add(stay("shroud", mm(9000), builder.add(wire("wire", mm(8))), {line(), set(id, setting)}));
  const Derived derived = calculate(builder.rig);
  return derived.stays[0].adjusters.at(0);
}

// Hand sums: 345 - 265 = 80 to tighten, 395 - 345 = 50 to slacken; 1/2-20 UNF pair 2.54 mm a turn: 31.5
// and 19.7 turns; thread engaged 14 + 50 / 2 = 39; single: 14 + 50 = 64.
TEST(TakeUp, BothWaysTurnsAndThreadEngaged) {
  Part bottle = adjuster("turnbuckle", "turnbuckle-12", mm(265), mm(395));
  bottle.screw = screw("1/2-20 UNF");
  bottle.engaged_at_longest = sourced(mm(14));
  const TakeUp pair = with_setting(bottle, mm(345));
  EXPECT_EQ(pair.item, 1u);
  EXPECT_NEAR(pair.to_tighten.millimetres(), 80, 1e-9);
  EXPECT_NEAR(pair.to_slacken.millimetres(), 50, 1e-9);
  ASSERT_TRUE(pair.travel_per_turn && pair.engaged && pair.least_engagement);
  EXPECT_NEAR(turns(pair.to_tighten, *pair.travel_per_turn), 31.496, 0.001);
  EXPECT_NEAR(turns(pair.to_slacken, *pair.travel_per_turn), 19.685, 0.001);
  EXPECT_NEAR(pair.engaged->millimetres(), 39, 1e-9);
  // One diameter of thread: common practice, no source.
  EXPECT_NEAR(pair.least_engagement->inches(), 0.5, 1e-9);

  bottle.screw->pair = false;
  EXPECT_NEAR(with_setting(bottle, mm(345)).engaged->millimetres(), 64, 1e-9);
}

// One diameter of steel in steel, 1.25 to 1.5 of stainless or bronze, two of aluminium: common practice, no
// source. 1/2 in x 1.25 = 5/8 in; x 2 = 1 in.
TEST(TakeUp, AsksForMoreThreadInSofterMetal) {
  Part bottle = adjuster("turnbuckle", "turnbuckle-12", mm(265), mm(395));
  bottle.screw = screw("1/2-20 UNF");
  for (const auto& [metal, inches] :
       {std::pair("stainless", 0.625), std::pair("bronze", 0.625), std::pair("titanium", 0.625),
        std::pair("aluminium", 1.0), std::pair("galvanised-steel", 0.5)}) {
    bottle.particulars = {{.name = "metal", .value = {}, .text = metal}};
    EXPECT_NEAR(with_setting(bottle, mm(345)).least_engagement->inches(), inches, 1e-9) << metal;
  }
}

// Common practice, no source: 5 in of throw and two removable toggles of 2 1/4 in make about 9 1/2 in of
// play.
TEST(TakeUp, ThrowAndTwoTogglesMakeNineAndAHalfInches) {
  const TakeUp closed = with_setting(adjuster("turnbuckle", "screw", inches(10), inches(15)), inches(10));
  RigBuilder builder;
  const PartId toggle = builder.add(fixed("toggle", inches(2.25)));
  builder.add(stay("with", mm(9000), builder.add(wire("wire", mm(8))), {line(), item(toggle, 2)}));
  builder.add(stay("without", mm(9000), MaterialId{0}, {line()}));
  const Derived derived = calculate(builder.rig);
  const Length toggles = derived.stays[1].body.known() - derived.stays[0].body.known();
  EXPECT_NEAR((closed.to_tighten + closed.to_slacken + toggles).inches(), 9.5, 1e-9);
}

TEST(TakeUp, BeyondTheRangeIsNegative) {
  const Part part = adjuster("lashing", "lashing-9", mm(60), mm(260));
  EXPECT_NEAR(with_setting(part, mm(280)).to_slacken.millimetres(), -20, 1e-9);
  EXPECT_NEAR(with_setting(part, mm(45)).to_tighten.millimetres(), -15, 1e-9);
  EXPECT_FALSE(with_setting(part, mm(100)).travel_per_turn);
  EXPECT_FALSE(with_setting(part, mm(100)).engaged);
}

TEST(TakeUp, IsNothingForOtherItems) {
  RigBuilder builder;
  const PartId toggle = builder.add(fixed("toggle", mm(80)));
  const PartId bottle = builder.add(adjuster("turnbuckle", "screw", mm(265), mm(395)));
  builder.add(
      stay("shroud", mm(9000), builder.add(wire("wire", mm(8))), {item(toggle), line(), item(bottle)}));
  const Stay& made = builder.rig.stays[0];
  EXPECT_FALSE(take_up(builder.rig, made, 0));
  EXPECT_FALSE(take_up(builder.rig, made, 1));
  EXPECT_FALSE(take_up(builder.rig, made, 2)); // no setting
}

RC_GTEST_PROP(TakeUp, BothWaysTogetherAreTheRange, ()) {
  const double shortest = *rc::gen::inRange(50, 2000);
  const double range = *rc::gen::inRange(1, 2000);
  const double share = *rc::gen::inRange(0, 101) / 100.0;
  const TakeUp result = with_setting(adjuster("tackle", "tackle", mm(shortest), mm(shortest + range)),
                                     mm(shortest + share * range));
  RC_ASSERT(std::abs((result.to_tighten + result.to_slacken).millimetres() - range) < 1e-9);
}

} // namespace
} // namespace sheerpole::take_up_test
