#include "unit/rules/rule_fixture.hpp"
#include "units/si_factors.hpp"

#include <gtest/gtest.h>

#include <cmath>

namespace sheerpole::spreader_rules_test {
namespace {

using namespace build;

/// A pair of spreaders whose rise is this much off what halves the angle, with lines over their tips.
Rig spreaders(double off_degrees, std::vector<Passage> lines, std::string hold = "") {
  RigBuilder builder;
  const MaterialId line_material = builder.add(wire("wire", mm(8)));
  const double halving = (std::atan(1.0 / 5.9) + std::atan(0.25 / 5.5)) / 2.0;
  const double root_z = 5'500 - 1'000 * std::tan(halving + off_degrees * degree);
  for (const Side side : {Side::port, Side::starboard}) {
    const double out = side == Side::port ? -1.0 : 1.0;
    const std::string suffix = "." + std::string(name_of(side));
    const PointId tang = builder.point("tang", 0, 0, 11'400, from(SourceClass::drawn), side);
    const PointId tip = builder.point("tip", 0, out * 1'000, 5'500, from(SourceClass::drawn), side);
    const PointId root = builder.point("root", 0, 0, root_z, from(SourceClass::drawn), side);
    const PointId plate = builder.point("plate", 0, out * 1'250, 0, from(SourceClass::drawn), side);
    builder.rig.spreaders.push_back({.name = "spreader" + suffix,
                                     .title = "",
                                     .side = side,
                                     .root = root,
                                     .tip = tip,
                                     .place = at(7),
                                     .hold = hold});
    for (std::size_t i = 0; i < lines.size(); ++i) {
      Stay one = stay(i == 0 ? "cap" : "intermediate", line_material, {line()}, side);
      one.path = path({tang, tip, plate});
      one.path[1].passage = lines[i];
      builder.add(std::move(one));
    }
  }
  // The sides of a stay stand one behind the other.
  std::stable_sort(builder.rig.stays.begin(), builder.rig.stays.end(),
                   [](const Stay& a, const Stay& b) { return a.base < b.base; });
  return builder.rig;
}

TEST(SpreaderBisector, OneOfTwoChecksSpeaksAndOnceForBothSides) {
  for (const double off : {-3.0, 3.0}) {
    const Rig rig = spreaders(off, {Passage::clamped});
    const auto found = found_by("spreader-off-bisector", rig);
    ASSERT_EQ(found.size(), 1u);
    EXPECT_EQ(found[0].severity, Severity::note);
    EXPECT_EQ(found[0].subject, "cap");
    EXPECT_NE(found[0].message.find(off < 0 ? "3 deg too low" : "3 deg too high"), std::string::npos);
    EXPECT_TRUE(found_by("spreader-far-off-bisector", rig).empty());
    EXPECT_EQ(results_of("spreader-far-off-bisector", rig).front().outcome, CheckOutcome::pass);
  }
  const Rig far = spreaders(-6.0, {Passage::clamped});
  EXPECT_TRUE(results_of("spreader-off-bisector", far).empty());
  ASSERT_EQ(found_by("spreader-far-off-bisector", far).size(), 1u);
  EXPECT_EQ(found_by("spreader-far-off-bisector", far)[0].severity, Severity::warning);
}

TEST(SpreaderBisector, IsSilentAtTheThreshold) {
  EXPECT_TRUE(found_by("spreader-off-bisector", spreaders(2.0, {Passage::clamped})).empty());
  EXPECT_TRUE(found_by("spreader-far-off-bisector", spreaders(5.0, {Passage::clamped})).empty());
  EXPECT_EQ(found_by("spreader-off-bisector", spreaders(2.01, {Passage::clamped})).size(), 1u);
}

TEST(SpreaderBisector, WithOneThresholdOffTheOtherOneSpeaks) {
  Rig rig = spreaders(-6.0, {Passage::clamped});
  rig.limits.state({.limit = Limit::bisector_most, .value = {}, .provenance = {}, .place = {}});
  EXPECT_EQ(found_by("spreader-off-bisector", rig).size(), 1u);
  Rig other = spreaders(-6.0, {Passage::clamped});
  other.limits.state({.limit = Limit::bisector_usual, .value = {}, .provenance = {}, .place = {}});
  EXPECT_EQ(found_by("spreader-far-off-bisector", other).size(), 1u);
}

TEST(TipPulledOut, PassesWithTheShareAndFindsAStraightLine) {
  const auto passed = results_of("tip-pulled-out", spreaders(0.0, {Passage::free}));
  ASSERT_EQ(passed.size(), 1u);
  EXPECT_EQ(passed[0].outcome, CheckOutcome::pass);
  Rig straight = spreaders(0.0, {Passage::free});
  for (Point& point : straight.points)
    if (point.base == "tip")
      point.position.y = (point.side == Side::port ? -1.0 : 1.0) * mm(1'250 * 5.9 / 11.4);
  const auto found = found_by("tip-pulled-out", straight);
  ASSERT_EQ(found.size(), 1u);
  EXPECT_NE(found[0].message.find("without bending"), std::string::npos);
}

TEST(TipNotHeld, SaysWhoCarriesTheTip) {
  const auto outcome = [](const Rig& rig) {
    const auto results = results_of("tip-not-held", rig);
    EXPECT_EQ(results.size(), 1u) << "port and starboard are said once";
    return results.front();
  };
  EXPECT_EQ(outcome(spreaders(0, {Passage::free}, "swinging")).outcome, CheckOutcome::finding);
  EXPECT_EQ(outcome(spreaders(0, {}, "swinging")).outcome, CheckOutcome::finding);
  EXPECT_EQ(outcome(spreaders(0, {Passage::free}, "fixed")).outcome, CheckOutcome::pass);
  EXPECT_EQ(outcome(spreaders(0, {Passage::free})).outcome, CheckOutcome::not_checked);
  const CheckResult held = outcome(spreaders(0, {Passage::clamped, Passage::free}));
  EXPECT_EQ(held.outcome, CheckOutcome::pass);
  EXPECT_EQ(held.subject, "spreader");
  EXPECT_EQ(held.words, "cap is clamped to it; intermediate runs free over it");
}

TEST(TipNotHeld, ALineThatEndsAtTheTipHoldsIt) {
  Rig rig = spreaders(0, {Passage::free}, "swinging");
  for (Stay& one : rig.stays)
    one.path.pop_back();
  EXPECT_TRUE(found_by("tip-not-held", rig).empty());
}

TEST(TipHeldTwice, NeedsTwoClamps) {
  EXPECT_EQ(found_by("tip-held-twice", spreaders(0, {Passage::clamped, Passage::clamped})).size(), 1u);
  EXPECT_TRUE(found_by("tip-held-twice", spreaders(0, {Passage::clamped, Passage::free})).empty());
  EXPECT_TRUE(results_of("tip-held-twice", spreaders(0, {Passage::clamped})).empty());
}

} // namespace
} // namespace sheerpole::spreader_rules_test
