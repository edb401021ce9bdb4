#include "unit/rules/rule_fixture.hpp"

#include <gtest/gtest.h>

#include <tuple>
#include <utility>

/// Numbers with a digit too many, a lost sign or two digits exchanged, held against what else is stated.
/// The ranges are common practice without a source, so that the tests hold the factors, which are the
/// project's own.
namespace sheerpole::likely_slips_test {
namespace {

using namespace build;

Rig with_toggle(double length_mm, const std::string& name = "toggle") {
  RigBuilder builder;
  const MaterialId line_material = builder.add(wire("wire", mm(6)));
  const PartId toggle = builder.add(fixed(name, mm(length_mm)));
  builder.add(stay("forestay", mm(11'000), line_material, {item(toggle), line()}));
  return builder.rig;
}

TEST(UsualSizes, TwiceAndFiveTimesOutsideTheRange) {
  // 3 to 16 times the 6 mm of the wire are usual: 18 to 96 mm.
  EXPECT_TRUE(found_by("size-unusual", with_toggle(192)).empty());
  EXPECT_EQ(found_by("size-unusual", with_toggle(192.1)).size(), 1u);
  EXPECT_TRUE(found_by("size-far-off", with_toggle(480)).empty());
  EXPECT_EQ(found_by("size-far-off", with_toggle(480.1)).size(), 1u);
  EXPECT_TRUE(found_by("size-unusual", with_toggle(480.1)).empty());
  EXPECT_TRUE(found_by("size-unusual", with_toggle(9)).empty());
  EXPECT_EQ(found_by("size-unusual", with_toggle(8.9)).size(), 1u);
  EXPECT_EQ(found_by("size-far-off", with_toggle(3.5)).size(), 1u);
}

// A wire of 10 mm that goes round the hounds and back: 300 to 2000 mm are usual, and a slip of inches for
// millimetres lies 17 times beyond.
TEST(UsualSizes, AWireRoundAMastIsHeldAgainstItsDiameter) {
  const auto with_eye = [](double inserted_mm) {
    RigBuilder builder;
    const MaterialId wire_10 = builder.add(wire("wire", mm(10)));
    Part eye = fixed("hounds-eye", mm(0));
    eye.kind = PartKind::soft_eye;
    eye.lower.type = EndType::wire_socket;
    EndDimension depth;
    depth.name = EndDimensionName::inserted;
    depth.length.value = mm(inserted_mm);
    eye.lower.dimensions.push_back(depth);
    builder.add(stay("shroud", mm(7'000), wire_10, {item(builder.add(std::move(eye))), line()}));
    return builder.rig;
  };
  EXPECT_TRUE(found_by("size-unusual", with_eye(1'000)).empty());
  EXPECT_EQ(found_by("size-unusual", with_eye(100)).size(), 1u);
  EXPECT_EQ(found_by("size-far-off", with_eye(25'400)).size(), 1u);
}

TEST(UsualSizes, APartOnTwoLinesIsUsualWhenItIsOnOne) {
  Rig rig = with_toggle(200);
  rig.materials.push_back(wire("thick", mm(12)));
  Stay other = rig.stays[0];
  other.name = other.base = "backstay";
  other.material = MaterialId{1};
  rig.stays.push_back(std::move(other));
  EXPECT_TRUE(found_by("size-unusual", rig).empty());
}

// Hooke's law: 92 kN over EA 3300 kN is 2.8 % of stretch when it breaks, over 330 kN 28 %, over 33 000 kN
// 0.28 %; of a wire 0.6 to 3.5 % are usual.
TEST(UsualSizes, AStiffnessIsHeldAgainstTheBreakLoad) {
  const auto found = [](double stiffness_kn, const char* check) {
    Rig rig = with_toggle(60);
    rig.materials[0].break_load.emplace().value = Force::kilonewtons(92);
    rig.materials[0].particulars.push_back(number_fact("stiffness", 1000.0 * stiffness_kn));
    return found_by(check, rig).size();
  };
  EXPECT_EQ(found(3300, "size-unusual"), 0u);
  EXPECT_EQ(found(330, "size-far-off"), 1u);
  EXPECT_EQ(found(33'000, "size-unusual"), 1u);
  EXPECT_EQ(found(1000, "size-unusual"), 1u); // 9.2 %, as a rope may have
  EXPECT_EQ(found(33, "size-far-off"), 1u);
}

// A screw of two studs in one body never opens to twice its shortest.
TEST(UsualSizes, AScrewIsNeverTwiceAsLong) {
  const auto found = [](double longest_mm) {
    RigBuilder builder;
    builder.add(adjuster("turnbuckle", "screw", mm(230), mm(longest_mm)));
    return found_by("size-unusual", builder.rig).size();
  };
  EXPECT_EQ(found(460), 0u);
  EXPECT_EQ(found(470), 1u);
}

TEST(SizeAgainstName, ADigitTooManyTooFewOrInAnotherOrder) {
  for (const double slipped : {580.0, 5.8, 85.0})
    EXPECT_EQ(found_by("size-against-name", with_toggle(slipped, "toggle-58")).size(), 1u) << slipped;
  for (const double other : {58.0, 60.0, 116.0})
    EXPECT_TRUE(found_by("size-against-name", with_toggle(other, "toggle-58")).empty()) << other;
  // The number is that of the wire.
  EXPECT_TRUE(found_by("size-against-name", with_toggle(60.0, "toggle-6")).empty());
}

/// 3 m by the points; stated as given.
Rig stated(double millimetres) {
  RigBuilder builder;
  Stay made = stay("forestay", mm(millimetres), builder.add(wire("wire", mm(6))), {line()});
  made.path = path({builder.point("tang", 0, 0, 3000), builder.point("stem", 0, 0, 0)});
  builder.add(std::move(made));
  return builder.rig;
}

TEST(RoutesFarApart, BeyondFivePerCentOfTheLonger) {
  EXPECT_TRUE(found_by("routes-far-apart", stated(3157.8)).empty());
  EXPECT_EQ(found_by("routes-far-apart", stated(3158.0)).size(), 1u);
  EXPECT_TRUE(found_by("routes-differ", stated(3158.0)).empty());
  EXPECT_TRUE(found_by("routes-far-apart", stated(2850.1)).empty());
  EXPECT_EQ(found_by("routes-far-apart", stated(2849.9)).size(), 1u);
}

TEST(RoutesFarApart, NamesTheFactor) {
  const std::pair<double, const char*> slips[] = {
      {300.0, "factor of 10"}, {76'200.0, "factor of 25.4"}, {7620.0, "factor of 2.54"}, {914.4, "0.3048"},
      {250.0, "factor of 12"}, {4000.0, "a metre was"},      {3304.8, "a foot was"}};
  for (const auto& [length, words] : slips) {
    const auto found = found_by("routes-far-apart", stated(length));
    ASSERT_EQ(found.size(), 1u) << length;
    EXPECT_NE(found[0].why.find(words), std::string::npos) << found[0].why;
  }
}

TEST(RoutesFarApart, TheCutIsADraft) {
  EXPECT_FALSE(calculate(stated(300)).stays[0].pieces[0].blocked.empty());
  EXPECT_TRUE(calculate(stated(3002)).stays[0].pieces[0].blocked.empty());
  Rig guessed = stated(300);
  for (Point& point : guessed.points)
    point.provenance = assumed("where the tang is");
  EXPECT_TRUE(calculate(guessed).stays[0].pieces[0].blocked.empty())
      << "points that nobody measured are no witness against a length that somebody did";
}

/// A shroud down to here, on a boat of 10 m with a beam of 3 m and a sheer of 1 m, her mast at the origin.
Rig shroud_to(double x_mm, double y_mm, double z_mm) {
  RigBuilder builder;
  Spar mast;
  mast.name = "mast";
  mast.sort = SparSort::mast;
  mast.axes = {{{1, 0, 0}, {0, 1, 0}, {0, 0, 1}}};
  builder.rig.spars.push_back(mast);
  builder.rig.boat.particulars = {number_fact("length-overall", 10), number_fact("beam", 3),
                                  number_fact("sheer-at-mast", 1)};
  const PointId tang = builder.point("tang", 0, 60, 9000, from(SourceClass::drawn), Side::starboard);
  builder.rig.points.back().spar = "mast";
  const PointId plate =
      builder.point("plate", x_mm, y_mm, z_mm, from(SourceClass::drawn, 7), Side::starboard);
  Stay made = stay("shroud", builder.add(wire("wire", mm(6))), {line()}, Side::starboard);
  made.path = path({tang, plate});
  builder.add(std::move(made));
  return builder.rig;
}

TEST(BoatEnvelope, APlateByBeamSheerAndLength) {
  EXPECT_TRUE(found_by("point-outside", shroud_to(-300, 1400, 1000)).empty());
  EXPECT_TRUE(found_by("point-unlikely", shroud_to(-300, 1400, 1000)).empty());
  for (const auto& [x, y, z] : {std::tuple(-300.0, 14'000.0, 1000.0), std::tuple(-300.0, 1400.0, 10'000.0),
                                std::tuple(-300.0, 1400.0, 100.0), std::tuple(-8000.0, 1400.0, 1000.0)}) {
    const auto found = found_by("point-outside", shroud_to(x, y, z));
    ASSERT_EQ(found.size(), 1u) << x << " " << y << " " << z;
    EXPECT_EQ(found[0].primary->span, at(7));
    EXPECT_FALSE(found[0].others.empty());
    EXPECT_TRUE(found_by("point-unlikely", shroud_to(x, y, z)).empty());
  }
  EXPECT_EQ(found_by("point-unlikely", shroud_to(-300, 1400, 400)).size(), 1u);
}

TEST(BoatEnvelope, APlaceInBoatAxesAmongThePointsOfAMast) {
  Rig rig = shroud_to(-6500, 1300, 1000);
  rig.spars[0].heel = {mm(-6200), mm(0), mm(1000)};
  rig.points[0].position = {mm(-12'400), mm(60), mm(9000)};
  const auto found = found_by("point-outside", rig);
  ASSERT_EQ(found.size(), 1u);
  EXPECT_NE(found[0].message.find("boat axes"), std::string::npos) << found[0].message;
}

TEST(BoatEnvelope, AStayEndsWellAboveTheHeelAndLeadsNoFartherThanHalfARightAngle) {
  const auto tang_at = [](double height) {
    Rig rig = shroud_to(-300, 1400, 1000);
    rig.points[0].position.z = mm(height);
    Point head = rig.points[0]; // the mast is as high as before
    head.name = head.base = "head";
    head.position.z = mm(9000);
    rig.points.push_back(head);
    return found_by("point-unlikely", rig).size() + found_by("point-outside", rig).size();
  };
  EXPECT_EQ(tang_at(9000), 0u);
  EXPECT_GE(tang_at(200), 1u);            // 2 % of 9 m
  Rig low = shroud_to(-4200, 1400, 1000); // 8 m up: 28 degrees
  EXPECT_TRUE(found_by("point-unlikely", low).empty());
  low.points[0].position.z = mm(5000); // 4 m up: more than 45 degrees
  EXPECT_EQ(found_by("point-unlikely", low).size(), 1u);
}

TEST(BoatEnvelope, FittingsOfABoatWithTwoHullsAreOnHerHulls) {
  const auto bow_at = [](double y) {
    Rig rig = shroud_to(3500, y, 1000);
    rig.boat.particulars[1] = number_fact("beam", 6);
    return found_by("point-unlikely", rig).size();
  };
  EXPECT_EQ(bow_at(2700), 0u);
  EXPECT_EQ(bow_at(600), 0u); // the middle one of three
  EXPECT_EQ(bow_at(270), 1u);
}

TEST(BoatEnvelope, WithoutParticularsNothingIsSaid) {
  Rig rig = shroud_to(-300, 14'000, 1000);
  rig.boat.particulars.clear();
  EXPECT_TRUE(found_by("point-outside", rig).empty());
}

} // namespace
} // namespace sheerpole::likely_slips_test
