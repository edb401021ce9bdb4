#include "unit/rules/rule_fixture.hpp"
#include "units/si_factors.hpp"

#include <gtest/gtest.h>

#include <cmath>

namespace sheerpole::geometry_rules_test {
namespace {

using namespace build;

Particular word_fact(std::string name, std::string word) {
  Particular fact;
  fact.name = std::move(name);
  fact.text = std::move(word);
  return fact;
}

void switch_off(Rig& rig, Limit limit) {
  rig.limits.state({.limit = limit, .value = {}, .provenance = {}, .place = {}});
}

/// A shroud on both sides that comes off an upright mast at this angle, with a chainplate of this lean.
Rig shrouds(double degrees, std::optional<double> lean_degrees = std::nullopt) {
  RigBuilder builder;
  const MaterialId line_material = builder.add(wire("wire", mm(8)));
  Part plate = fitting("plate-12");
  if (lean_degrees)
    plate.particulars.push_back(number_fact("plane-lean", *lean_degrees * degree));
  const PartId plate_id = builder.add(std::move(plate));
  for (const Side side : {Side::port, Side::starboard}) {
    const double out = side == Side::port ? -1.0 : 1.0;
    const PointId tang = builder.point("tang", 0, 0, 10'000, from(SourceClass::drawn), side);
    const PointId foot = builder.point("plate", 0, out * 10'000 * std::tan(degrees * degree), 0,
                                       from(SourceClass::drawn), side);
    Stay one = stay("shroud", line_material, {line(), item(plate_id)}, side);
    one.path = path({tang, foot});
    builder.add(std::move(one));
  }
  return builder.rig;
}

TEST(StayAngle, OneOfTwoChecksSpeaks) {
  EXPECT_EQ(found_by("stay-angle-small", shrouds(9.9)).size(), 1u);
  EXPECT_TRUE(results_of("stay-angle-below-usual", shrouds(9.9)).empty());
  EXPECT_TRUE(found_by("stay-angle-small", shrouds(10.0)).empty());
  EXPECT_EQ(found_by("stay-angle-below-usual", shrouds(10.0)).size(), 1u);
  EXPECT_TRUE(found_by("stay-angle-below-usual", shrouds(12.0)).empty());
}

TEST(StayAngle, WithTheLeastSwitchedOffTheUsualOneSpeaks) {
  Rig rig = shrouds(8.0);
  switch_off(rig, Limit::stay_angle_least);
  EXPECT_EQ(found_by("stay-angle-below-usual", rig).size(), 1u);
}

// 1 / sin: 5.76 at 10 degrees, 4.81 at 12.
TEST(StayAngle, SaysHowHardItPulls) {
  const auto found = found_by("stay-angle-below-usual", shrouds(10.0));
  ASSERT_EQ(found.size(), 1u);
  EXPECT_EQ(found[0].message,
            "shroud: it comes off the mast at 10 deg (upright, no mast is stated), 12 deg is "
            "usual: it pulls 5.8 times the side force that it holds");
}

TEST(PlateOffLead, OneOfTwoChecksSpeaksAndAnUnknownLeanIsNotChecked) {
  EXPECT_TRUE(found_by("plate-off-lead", shrouds(12.0, 10.0)).empty()) << "2 degrees";
  EXPECT_EQ(found_by("plate-off-lead", shrouds(12.0, 9.9)).size(), 1u);
  EXPECT_TRUE(found_by("plate-far-off-lead", shrouds(12.0, 7.0)).empty()) << "5 degrees";
  EXPECT_EQ(found_by("plate-far-off-lead", shrouds(12.0, 17.1)).size(), 1u);
  EXPECT_TRUE(results_of("plate-off-lead", shrouds(12.0, 17.1)).empty());
  const auto unknown = results_of("plate-off-lead", shrouds(12.0));
  ASSERT_EQ(unknown.size(), 1u);
  EXPECT_EQ(unknown[0].outcome, CheckOutcome::not_checked);
  EXPECT_EQ(unknown[0].words, "plane-lean of plate-12 is not stated");
}

/// Two stays on each side that pass each other with this much between them.
Rig crossing(double apart) {
  RigBuilder builder;
  const MaterialId line_material = builder.add(wire("wire", mm(8)));
  for (const std::string base : {"fore", "aft"})
    for (const Side side : {Side::port, Side::starboard}) {
      const double out = side == Side::port ? -1.0 : 1.0;
      const double way = base == "fore" ? 1.0 : -1.0;
      const double y = out * (1'000 + (base == "fore" ? 0 : apart));
      const PointId top = builder.point(base + "-top", -way * 50, y, 6'000, from(SourceClass::drawn), side);
      const PointId foot = builder.point(base + "-foot", way * 900, y, 0, from(SourceClass::drawn), side);
      Stay one = stay(base, line_material, {line()}, side);
      one.path = path({top, foot});
      builder.add(std::move(one));
    }
  return builder.rig;
}

TEST(StaysCross, IsSaidOnceForBothSidesAndAtTheThresholdNot) {
  const auto found = found_by("stays-cross", crossing(12.0));
  ASSERT_EQ(found.size(), 1u);
  EXPECT_EQ(found[0].subject, "fore");
  EXPECT_EQ(found[0].message,
            "fore: it passes aft at 4.0 mm, 5.68 m above the waterline; at least 10 mm is asked for "
            "from surface to surface");
  EXPECT_TRUE(found_by("stays-cross", crossing(18.0)).empty());
}

TEST(StaysCross, AStayWithoutAPathIsNotChecked) {
  Rig rig = crossing(500);
  rig.stays[0].path.clear();
  rig.stays[1].path.clear();
  const auto results = results_of("stays-cross", rig);
  ASSERT_EQ(results.size(), 2u);
  EXPECT_EQ(results[0].outcome, CheckOutcome::not_checked);
  EXPECT_EQ(results[1].outcome, CheckOutcome::pass);
}

TEST(StayThroughSpar, AnUnmeasuredSparIsNotChecked) {
  Rig rig = crossing(500);
  Spar spar;
  spar.name = "mast";
  spar.sort = SparSort::mast;
  spar.axes = {{{1, 0, 0}, {0, 1, 0}, {0, 0, 1}}};
  rig.spars.push_back(spar);
  const auto results = results_of("stay-through-spar", rig);
  ASSERT_EQ(results.size(), 1u);
  EXPECT_EQ(results[0].subject, "mast");
  EXPECT_EQ(results[0].words, "its girth and its length are not stated");
  rig.spars[0].particulars = {number_fact("girth", 0.565)};
  EXPECT_EQ(results_of("stay-through-spar", rig)[0].words, "its length is not stated");
  rig.spars[0].particulars.push_back(number_fact("length", 12.0));
  for (const CheckResult& result : results_of("stay-through-spar", rig))
    EXPECT_EQ(result.outcome, CheckOutcome::pass) << result.words;
}

TEST(StayThroughDeck, IsNotCheckedOnceForARigWithoutAnEdge) {
  const auto results = results_of("stay-through-deck", crossing(500));
  ASSERT_EQ(results.size(), 1u);
  EXPECT_EQ(results[0].outcome, CheckOutcome::not_checked);
}

/// A mast with shrouds swept by this much and nothing else.
Rig mast_with_shrouds(double swept, bool whole_rig) {
  Rig rig = shrouds(12.0);
  for (Point& point : rig.points)
    if (point.base == "plate")
      point.position.x = mm(-swept);
  Spar spar;
  spar.name = "mast";
  spar.sort = SparSort::mast;
  spar.axes = {{{1, 0, 0}, {0, 1, 0}, {0, 0, 1}}};
  rig.spars.push_back(spar);
  if (whole_rig)
    rig.boat.particulars.push_back(word_fact("covers", "whole-rig"));
  return rig;
}

TEST(DirectionNotHeld, NeedsTheWordOfTheBoat) {
  const auto results = results_of("direction-not-held", mast_with_shrouds(500, false));
  ASSERT_EQ(results.size(), 1u);
  EXPECT_EQ(results[0].outcome, CheckOutcome::not_checked);
}

TEST(DirectionNotHeld, NamesEachDirection) {
  const auto swept = found_by("direction-not-held", mast_with_shrouds(500, true));
  ASSERT_EQ(swept.size(), 1u);
  EXPECT_EQ(swept[0].severity, Severity::error);
  EXPECT_EQ(swept[0].message,
            "mast: nothing holds it forward above half of its height (5.00 m from its heel)");
  const auto straight = found_by("direction-not-held", mast_with_shrouds(0, true));
  EXPECT_NE(straight[0].message.find("forward or aft"), std::string::npos);
}

Rig with_triangle(double stated_metres, bool carries_sail = true) {
  RigBuilder builder;
  const MaterialId line_material = builder.add(wire("wire", mm(8)));
  const PointId top = builder.point("tang", 90, 0, 12'700);
  const PointId foot = builder.point("stem", 3'540, 0, 1'400);
  Stay one = stay("forestay", line_material, {line()});
  one.path = path({top, foot});
  if (carries_sail)
    one.duties = {"carries-sail"};
  builder.add(std::move(one));
  builder.rig.boat.particulars = {number_fact("foretriangle-height", stated_metres),
                                  number_fact("sheer-at-mast", 1.120)};
  return builder.rig;
}

TEST(ForetriangleDiffers, BeyondTheThresholdOnly) {
  EXPECT_EQ(found_by("foretriangle-differs", with_triangle(11.601)).size(), 1u);
  EXPECT_TRUE(found_by("foretriangle-differs", with_triangle(11.600)).empty());
  EXPECT_EQ(found_by("foretriangle-differs", with_triangle(11.559)).size(), 1u);
}

TEST(ForetriangleDiffers, InDoubtIsNotChecked) {
  const auto outcome = [](const Rig& rig) {
    const auto results = results_of("foretriangle-differs", rig);
    EXPECT_EQ(results.size(), 1u);
    return results.front().outcome;
  };
  EXPECT_EQ(outcome(with_triangle(11.58)), CheckOutcome::pass);
  EXPECT_EQ(outcome(with_triangle(11.58, false)), CheckOutcome::not_checked);
  Rig no_sheer = with_triangle(11.58);
  no_sheer.boat.particulars.pop_back();
  EXPECT_EQ(outcome(no_sheer), CheckOutcome::not_checked);
  Rig base = with_triangle(11.58);
  base.boat.particulars[0].name = "foretriangle-base";
  EXPECT_EQ(outcome(base), CheckOutcome::not_checked) << "no mast is stated";
  base.boat.particulars.clear();
  EXPECT_TRUE(results_of("foretriangle-differs", base).empty());
}

} // namespace
} // namespace sheerpole::geometry_rules_test
