#include "unit/rules/rule_fixture.hpp"

#include <gtest/gtest.h>

namespace sheerpole::pair_differs_test {
namespace {

using namespace build;

Rig pair(double port, double starboard, std::optional<double> tolerance) {
  RigBuilder builder;
  const MaterialId line_material = builder.add(wire("wire", mm(8)));
  builder.add(stay("aft-lower", mm(port), line_material, {line()}, Side::port));
  builder.add(stay("aft-lower", mm(starboard), line_material, {line()}, Side::starboard));
  if (tolerance)
    builder.rig.boat.pair_tolerance = sourced(mm(*tolerance), from(SourceClass::practice, 5));
  return builder.rig;
}

TEST(PairDiffers, TellsWhichIsLongerByHowMuch) {
  const auto found = found_by("pair-differs", pair(5278, 5292, 2));
  ASSERT_EQ(found.size(), 1u);
  EXPECT_EQ(found[0].severity, Severity::note);
  EXPECT_EQ(found[0].subject, "aft-lower");
  EXPECT_EQ(found[0].message,
            "aft-lower: the starboard body is 14 mm longer than the port one (5292 mm and 5278 mm); "
            "they may differ by 2 mm");
  EXPECT_EQ(found[0].others.at(0).span, at(5));
  const auto swapped = found_by("pair-differs", pair(5292, 5278, 2));
  ASSERT_EQ(swapped.size(), 1u);
  EXPECT_NE(swapped[0].message.find("the port body is 14 mm longer"), std::string::npos);
}

TEST(PairDiffers, IsSilentWithinTheTolerance) {
  EXPECT_TRUE(found_by("pair-differs", pair(5278, 5280, 2)).empty());
}

TEST(PairDiffers, TakesTheLimitWhereTheBoatStatesNoTolerance) {
  EXPECT_EQ(found_by("pair-differs", pair(5278, 5292, std::nullopt)).size(), 1u);
  EXPECT_TRUE(found_by("pair-differs", pair(5278, 5281, std::nullopt)).empty()) << "3 mm";
  Rig off = pair(5278, 5292, std::nullopt);
  off.limits.state({.limit = Limit::pair_apart, .value = {}, .provenance = {}, .place = {}});
  off.limits.state({.limit = Limit::pair_apart_share, .value = {}, .provenance = {}, .place = {}});
  EXPECT_TRUE(found_by("pair-differs", off).empty());
}

} // namespace
} // namespace sheerpole::pair_differs_test
