#include "unit/rules/rule_fixture.hpp"

#include <gtest/gtest.h>

#include <utility>

namespace sheerpole::routes_differ_test {
namespace {

using namespace build;

/// 3 m by the points; stated as given.
Rig stated(double millimetres) {
  RigBuilder builder;
  Stay made = stay("forestay", mm(millimetres), builder.add(wire("wire", mm(6))), {line()});
  made.path = path({builder.point("tang", 0, 0, 3000), builder.point("stem", 0, 0, 0)});
  builder.add(std::move(made));
  return builder.rig;
}

TEST(RoutesDiffer, ShowsBothNumbersTheDifferenceAndBothPlaces) {
  const auto found = found_by("routes-differ", stated(3090));
  ASSERT_EQ(found.size(), 1u);
  EXPECT_EQ(found[0].severity, Severity::warning);
  EXPECT_EQ(found[0].message,
            "forestay: pin-to-pin is 3090 mm as stated and 3000 mm through the points, 90 mm apart");
  EXPECT_EQ(found[0].primary->span, at(901));
  EXPECT_EQ(found[0].primary->text, "3090 mm as stated");
  ASSERT_EQ(found[0].others.size(), 1u);
  EXPECT_EQ(found[0].others[0].span, (Span{SourceId{0}, 910, 912}));
}

TEST(RoutesDiffer, LetsFiveMillimetresPassEitherWay) {
  EXPECT_TRUE(found_by("routes-differ", stated(3005)).empty());
  EXPECT_TRUE(found_by("routes-differ", stated(2995)).empty());
  EXPECT_EQ(found_by("routes-differ", stated(3005.1)).size(), 1u);
  EXPECT_EQ(found_by("routes-differ", stated(2994.9)).size(), 1u);
}

TEST(RoutesDiffer, AnOlderReadingIsNoContradiction) {
  Rig rig = stated(3000);
  Reading older, newer;
  older.runs = {sourced(mm(3060))};
  newer.runs = {sourced(mm(3002))};
  older.date = "2026-05-02";
  newer.date = "2026-05-09";
  rig.stays[0].readings = {older, newer};
  EXPECT_TRUE(found_by("routes-differ", rig).empty());
  std::swap(rig.stays[0].readings[0].date, rig.stays[0].readings[1].date);
  const auto found = found_by("routes-differ", rig);
  ASSERT_EQ(found.size(), 2u) << "against the stated length and against the points";
  EXPECT_NE(found[0].message.find("3060 mm by the reading and 3000 mm as stated"), std::string::npos);
}

} // namespace
} // namespace sheerpole::routes_differ_test
