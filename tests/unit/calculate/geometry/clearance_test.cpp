#include "calculate/geometry/deck_outline.hpp"
#include "calculate/geometry/junctions.hpp"
#include "calculate/geometry/stay_clearance.hpp"
#include "calculate/geometry/stay_leads.hpp"
#include "unit/calculate/example_rig.hpp"
#include "unit/calculate/rig_builder.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

namespace sheerpole::clearance_test {
namespace {

using namespace build;

SpacePoint place(double x_mm, double y_mm, double z_mm) {
  return {mm(x_mm), mm(y_mm), mm(z_mm)};
}

struct Way {
  std::string stay;
  std::vector<PointId> points;
};

Rig rig_of(RigBuilder& builder, const std::vector<Way>& ways, double diameter = 6) {
  const MaterialId line_material = builder.add(wire("wire", mm(diameter)));
  for (const Way& way : ways) {
    Stay one = stay(way.stay, line_material, {line()});
    for (const PointId point : way.points)
      one.path.push_back({point, Passage::end, at(1)});
    builder.add(std::move(one));
  }
  return builder.rig;
}

/// Two stays that pass each other at half height with this much between them.
Rig crossing(double apart, double diameter = 6) {
  RigBuilder builder;
  const PointId a = builder.point("a", -500, 0, 4'000);
  const PointId b = builder.point("b", 500, 0, 0);
  const PointId c = builder.point("c", 500, apart, 4'000);
  const PointId d = builder.point("d", -500, apart, 0);
  return rig_of(builder, {{"first", {a, b}}, {"second", {c, d}}}, diameter);
}

TEST(CrossingStays, AreFoundWithDistanceAndPlace) {
  const NearMisses misses = neighbouring_stays(crossing(15.9), mm(10), mm(10));
  ASSERT_EQ(misses.found.size(), 1u);
  EXPECT_NEAR(misses.found[0].clear.millimetres(), 9.9, 1e-9); // 15.9 less two halves of 6
  EXPECT_NEAR(misses.found[0].place.z.millimetres(), 2'000, 1e-6);
  EXPECT_TRUE(neighbouring_stays(crossing(16.1), mm(10), mm(10)).found.empty());
}

TEST(CrossingStays, ThickLinesTouchFromFartherOff) {
  const NearMisses thick = neighbouring_stays(crossing(13.0, 14), mm(10), mm(10));
  ASSERT_EQ(thick.found.size(), 1u);
  EXPECT_NEAR(thick.found[0].clear.millimetres(), -1.0, 1e-9); // they run into each other
  EXPECT_TRUE(neighbouring_stays(crossing(25.0, 14), mm(10), mm(10)).found.empty());
}

TEST(CrossingStays, NeighboursAreToldBeyondTheLimitToo) {
  const NearMisses misses = neighbouring_stays(crossing(300, 10), neighbours_within, mm(10));
  ASSERT_EQ(misses.found.size(), 1u);
  EXPECT_NEAR(misses.found[0].clear.millimetres(), 290.0, 1e-9);
  EXPECT_TRUE(neighbouring_stays(crossing(511, 10), neighbours_within, mm(10)).found.empty());
}

TEST(CrossingStays, MayMeetAtAnEndOrATip) {
  RigBuilder builder;
  const PointId top = builder.point("top", 0, 0, 9'000);
  const PointId again = builder.point("same-place", 0, 0, 9'000);
  const PointId tip = builder.point("tip", 0, 900, 5'000);
  const PointId foot = builder.point("foot", 0, 1'200, 0);
  const PointId aft = builder.point("aft", -5, 1'195, 0);
  Rig rig = rig_of(builder, {{"first", {top, foot}}, {"second", {again, aft}}});
  EXPECT_TRUE(neighbouring_stays(rig, mm(10), mm(10)).found.empty());
  RigBuilder other;
  other.rig.points = builder.rig.points;
  const PointId tang = other.point("tang", 0, 60, 6'000);
  rig = rig_of(other, {{"first", {top, tip, foot}}, {"second", {tang, tip, aft}}});
  EXPECT_TRUE(neighbouring_stays(rig, mm(10), mm(10)).found.empty());
}

TEST(SpreaderClearance, ForeignSpreadersOnly) {
  RigBuilder builder;
  const PointId root = builder.point("root", 0, 60, 5'000);
  const PointId tip = builder.point("tip", 0, 1'000, 5'000);
  const PointId tang = builder.point("tang", 4, 500, 9'000);
  const PointId foot = builder.point("foot", 4, 500, 0);
  builder.rig.spreaders.push_back({.name = "spreader", .title = "", .root = root, .tip = tip, .place = {}});
  const Rig rig = rig_of(builder, {{"through", {tang, foot}}, {"over", {tang, tip, foot}}});
  const NearMisses misses = stays_on_spreaders(rig, mm(10));
  ASSERT_EQ(misses.found.size(), 1u);
  EXPECT_EQ(rig[misses.found[0].stay].name, "through");
  EXPECT_NEAR(misses.found[0].clear.millimetres(), 1.0, 1e-9);
}

/// An upright mast of 200 mm diameter, 10 m high.
Spar mast() {
  Spar spar;
  spar.name = "mast";
  spar.sort = SparSort::mast;
  spar.axes = {{{1, 0, 0}, {0, 1, 0}, {0, 0, 1}}};
  for (const auto& [name, value] : {std::pair{"girth", 0.2 * std::numbers::pi}, {"length", 10.0}}) {
    Particular fact;
    fact.name = name;
    fact.value.value.si = value;
    spar.particulars.push_back(fact);
  }
  return spar;
}

SparClearance through_mast(SpacePoint from, SpacePoint to, std::string on = "") {
  RigBuilder builder;
  const PointId a = builder.point("a", from.x.millimetres(), from.y.millimetres(), from.z.millimetres());
  builder.rig.points.back().spar = std::move(on);
  const PointId b = builder.point("b", to.x.millimetres(), to.y.millimetres(), to.z.millimetres());
  const Rig rig = rig_of(builder, {{"stay", {a, b}}});
  return spar_clearance(rig, rig.stays[0], mast(), *spar_body(mast()), mm(10));
}

TEST(SparClearance, OfAStayThatPasses) {
  EXPECT_FALSE(through_mast(place(-2'000, 111, 5'000), place(2'000, 111, 5'000)).hit);
  const SparClearance close = through_mast(place(-2'000, 109, 5'000), place(2'000, 109, 5'000));
  EXPECT_TRUE(close.hit);
  EXPECT_NEAR(close.clear.millimetres(), 9.0, 1e-9);
  EXPECT_NEAR(through_mast(place(-2'000, 40, 5'000), place(2'000, 40, 5'000)).clear.millimetres(), -60,
              1e-9);
  EXPECT_FALSE(through_mast(place(-2'000, 0, 10'200), place(2'000, 0, 10'200)).hit) << "above its end";
}

TEST(SparClearance, OfAStayThatEndsAtTheMast) {
  // From the starboard side outwards, and across the mast to port.
  EXPECT_FALSE(through_mast(place(0, 90, 9'000), place(0, 2'000, 0), "mast").hit);
  EXPECT_TRUE(through_mast(place(0, 90, 9'000), place(0, -2'000, 0), "mast").hit);
  // From the fore side aft.
  EXPECT_TRUE(through_mast(place(100, 0, 9'000), place(-5'000, 0, 0)).hit);
  EXPECT_FALSE(through_mast(place(-100, 0, 9'000), place(-5'000, 0, 0)).hit);
}

TEST(SparBody, NeedsGirthAndLength) {
  Spar bare = mast();
  EXPECT_NEAR(spar_body(bare)->radius.millimetres(), 100, 1e-9);
  bare.particulars.pop_back();
  EXPECT_FALSE(spar_body(bare));
}

// A deck 3 m wide, level at 1 m, from 4 m before to 4 m behind the origin, pointed at the bow.
const DeckOutline deck{{4.0, 0.0, 1.0}, {0.0, 1.5, 1.0}, {-4.0, 1.5, 1.0}};

TEST(ThroughDeck, FindsWhatGoesThroughIt) {
  const auto through = through_deck({place(0, 0, 9'000), place(-1'000, 1'000, 500)}, deck, mm(200));
  ASSERT_TRUE(through);
  EXPECT_NEAR(through->place.z.millimetres(), 1'000, 1e-6);
  // 200 mm of the end are spared: their share of the height is 200 x 8500 / 8617.
  EXPECT_NEAR(through->below.millimetres(), 500 - 200 * 8'500 / std::hypot(1'000, 1'000, 8'500), 1e-6);
}

TEST(ThroughDeck, SparesTheEnds) {
  EXPECT_FALSE(through_deck({place(0, 0, 9'000), place(0, 0, 801)}, deck, mm(200)));
  EXPECT_TRUE(through_deck({place(0, 0, 9'000), place(0, 0, 799)}, deck, mm(200)));
}

TEST(ThroughDeck, DoesNotMeanWhatIsOutsideOrBelowAltogether) {
  EXPECT_FALSE(through_deck({place(0, 0, 9'000), place(-1'000, 1'700, 300)}, deck, mm(200))) << "outside";
  EXPECT_FALSE(through_deck({place(0, 0, 900), place(0, 0, 0)}, deck, mm(200))) << "a tie-rod below deck";
  EXPECT_FALSE(through_deck({place(6'000, 0, 1'500), place(3'000, 0, 200)}, deck, mm(200)))
      << "a bobstay comes in from outside";
  EXPECT_FALSE(through_deck({place(-5'000, 0, 9'000), place(-5'000, 0, 0)}, deck, mm(200))) << "astern";
}

TEST(ThroughDeck, FollowsTheSheer) {
  const DeckOutline sheer{{4.0, 0.0, 2.0}, {-4.0, 1.5, 1.0}};
  // At x = 0 the edge is 1.5 m high and 0.75 m from the centreline.
  EXPECT_TRUE(through_deck({place(0, 0, 9'000), place(0, 0, 1'200)}, sheer, mm(200)));
  EXPECT_FALSE(through_deck({place(0, 0, 9'000), place(0, 0, 1'400)}, sheer, mm(200)));
  EXPECT_FALSE(through_deck({place(0, 760, 9'000), place(0, 760, 1'000)}, sheer, mm(200)));
}

struct Pull {
  double x, y;
};
HeldDirections held_by(const std::vector<Pull>& pulls, double height = 9'000) {
  RigBuilder builder;
  builder.rig.spars.push_back(mast());
  std::vector<Way> ways;
  for (const Pull& pull : pulls) {
    const PointId top = builder.point("top", 0, 0, height);
    ways.push_back(
        {"stay-" + std::to_string(ways.size()), {top, builder.point("foot", pull.x, pull.y, 0)}});
  }
  const auto held = held_directions(rig_of(builder, ways));
  EXPECT_EQ(held.size(), 1u);
  return held.front();
}

TEST(HeldDirections, CountsWhatPullsEachWay) {
  const HeldDirections held = held_by({{3'000, 0}, {-500, 2'000}, {-500, -2'000}});
  EXPECT_EQ(held.by_direction[0].size(), 1u);
  EXPECT_EQ(held.by_direction[1].size(), 2u) << "swept shrouds pull aft";
  EXPECT_EQ(held.by_direction[2].size(), 1u);
  EXPECT_EQ(held.by_direction[3].size(), 1u);
}

TEST(HeldDirections, NeedsALeanAndHalfTheHeight) {
  EXPECT_TRUE(held_by({{0, 2'000}, {80, -2'000}}).by_direction[0].empty()) << "80 in 9220 is no lean";
  EXPECT_TRUE(held_by({{3'000, 0}}, 4'900).by_direction[0].empty());
  EXPECT_FALSE(held_by({{3'000, 0}}, 5'100).by_direction[0].empty());
}

TEST(HeldDirections, AStayBetweenTwoMastsPullsOnBoth) {
  RigBuilder builder;
  builder.rig.spars.push_back(mast());
  builder.rig.spars.push_back(mast());
  builder.rig.spars.back().name = "foremast";
  builder.rig.spars.back().heel = {mm(5'000), mm(0), mm(0)};
  const PointId main = builder.point("main", 0, 0, 9'000);
  const PointId fore = builder.point("fore", 5'000, 0, 9'000);
  const auto held = held_directions(rig_of(builder, {{"triatic", {main, fore}}}));
  ASSERT_EQ(held.size(), 2u);
  EXPECT_EQ(held[0].by_direction[0].size(), 1u);
  EXPECT_EQ(held[1].by_direction[1].size(), 1u);
}

// The main leans on the foremast by the triatic alone; the foremast has a forestay and, aft, the triatic.
TEST(AfterParting, WhatLeansOnAMastFallsWithIt) {
  RigBuilder builder;
  builder.rig.spars.push_back(mast());
  builder.rig.spars.push_back(mast());
  builder.rig.spars.back().name = "foremast";
  builder.rig.spars.back().sort = SparSort::mizzen; // whatever it is called, it stands
  builder.rig.spars.back().heel = {mm(5'000), mm(0), mm(0)};
  const PointId main = builder.point("main", 0, 0, 9'000);
  const PointId fore = builder.point("fore", 5'000, 0, 9'000);
  const Rig rig = rig_of(builder, {{"triatic", {main, fore}},
                                   {"forestay", {fore, builder.point("stem", 8'000, 0, 0)}},
                                   {"backstay", {main, builder.point("stern", -3'000, 0, 0)}}});
  EXPECT_EQ(rests_on(rig, rig.stays[0], rig.spars[0]), &rig.spars[1]);
  EXPECT_EQ(rests_on(rig, rig.stays[1], rig.spars[1]), nullptr);
  // Without the forestay the foremast falls aft, and the main has nothing forward any more.
  const auto after = after_parting(rig, StayId{1});
  ASSERT_EQ(after.size(), 2u);
  EXPECT_EQ(after[0].spar, 1u);
  EXPECT_EQ(after[0].way, PullDirection::forward);
  EXPECT_TRUE(after[0].left.empty() && after[0].at_once);
  EXPECT_EQ(after[1].spar, 0u);
  EXPECT_EQ(after[1].way, PullDirection::forward);
  EXPECT_TRUE(after[1].left.empty() && !after[1].at_once);
}

// What is left lower down holds the mast no higher than it is made fast.
TEST(AfterParting, HoldsAsHighAsWhatIsLeft) {
  RigBuilder builder;
  builder.rig.spars.push_back(mast());
  const PointId head = builder.point("head", 0, 0, 9'000);
  const PointId inner = builder.point("inner", 0, 0, 6'000);
  const Rig rig = rig_of(builder, {{"forestay", {head, builder.point("stem", 3'000, 0, 0)}},
                                   {"inner-stay", {inner, builder.point("deck", 2'000, 0, 0)}}});
  const auto without_forestay = after_parting(rig, StayId{0});
  ASSERT_EQ(without_forestay.size(), 1u);
  EXPECT_EQ(without_forestay[0].left, std::vector<std::string>{"inner-stay"});
  ASSERT_TRUE(without_forestay[0].up_to.has_value());
  EXPECT_NEAR(without_forestay[0].up_to->millimetres(), 6'000.0, 1e-6);
  const auto without_inner = after_parting(rig, StayId{1});
  ASSERT_EQ(without_inner.size(), 1u);
  EXPECT_EQ(without_inner[0].left, std::vector<std::string>{"forestay"});
  EXPECT_FALSE(without_inner[0].up_to.has_value());
}

// A shroud whose plate is 0.3 m aft of a head 9 m up leads 1 in 30 aft, a backstay 3 m aft 1 in 3.2.
TEST(AfterParting, ALeadAlongTheMastHoldsLittle) {
  RigBuilder builder;
  builder.rig.spars.push_back(mast());
  const PointId head = builder.point("head", 0, 0, 9'000);
  const PointId stern = builder.point("stern", -3'000, 0, 0);
  const Rig rig = rig_of(
      builder, {{"backstay", {head, stern}}, {"shroud", {head, builder.point("plate", -300, 1'300, 0)}}});
  const auto shroud_left = after_parting(rig, StayId{0});
  ASSERT_EQ(shroud_left.size(), 1u);
  EXPECT_EQ(shroud_left[0].left, std::vector<std::string>{"shroud"});
  EXPECT_TRUE(shroud_left[0].weakly);
  const auto backstay_left = after_parting(rig, StayId{1});
  ASSERT_FALSE(backstay_left.empty());
  EXPECT_EQ(backstay_left[0].left, std::vector<std::string>{"backstay"});
  EXPECT_FALSE(backstay_left[0].weakly);
}

struct Triangle {
  std::string boat, forestay;
  double height, base; ///< m
};
// The four invented boats: as their particulars state them, and as was worked out outside the project from
// their points.
const Triangle triangles[] = {{"grisolde", "forestay", 15.350, 5.050},
                              {"pellimoor", "forestay", 11.580, 3.450},
                              {"smidgeon", "forestay", 5.520, 1.900},
                              {"oddnys-wager", "jib-stay", 10.150, 5.470}};

TEST(ForetriangleOfPoints, AgreesWithTheExamples) {
  for (const Triangle& expected : triangles) {
    SCOPED_TRACE(expected.boat);
    const Compilation compilation =
        test::compiled_example(expected.boat, {expected.forestay + ".duty=carries-sail"});
    ASSERT_TRUE(compilation.rig);
    const auto triangle = foretriangle(*compilation.rig);
    ASSERT_TRUE(triangle);
    EXPECT_EQ((*compilation.rig)[triangle->forestay].name, expected.forestay);
    ASSERT_TRUE(triangle->height && triangle->base);
    EXPECT_NEAR(triangle->height->metres(), expected.height, 0.0005);
    EXPECT_NEAR(triangle->base->metres(), expected.base, 0.0005);
  }
}

TEST(ForetriangleOfPoints, FollowsARakedMastDown) {
  RigBuilder builder;
  Spar raked = mast();
  const double rake = std::numbers::pi / 60.0; // 3 degrees
  raked.axes = {{{std::cos(rake), 0, std::sin(rake)}, {0, 1, 0}, {-std::sin(rake), 0, std::cos(rake)}}};
  builder.rig.spars.push_back(raked);
  // 100 mm before the axis of the mast, 9 m up along it.
  const PointId top = builder.point("top", -9'000 * std::sin(rake) + 100, 0, 9'000 * std::cos(rake));
  builder.rig.points.back().spar = "mast";
  Rig rig = rig_of(builder, {{"forestay", {top, builder.point("stem", 3'000, 0, 0)}}});
  rig.stays[0].duties = {"carries-sail"};
  EXPECT_NEAR(foretriangle(rig)->base->millimetres(), 2'900, 1e-6);
  EXPECT_FALSE(foretriangle(rig)->height) << "the sheer is not stated";
  rig.stays[0].duties.clear();
  EXPECT_NEAR(foretriangle(rig)->base->millimetres(), 2'900, 1e-6) << "no stay is said to carry a sail";
  rig.stays[0].duties = {"removable"};
  EXPECT_FALSE(foretriangle(rig));
}

} // namespace
} // namespace sheerpole::clearance_test
