#include "calculate/geometry/junctions.hpp"
#include "calculate/geometry/spar_lines.hpp"
#include "calculate/geometry/stay_leads.hpp"
#include "unit/calculate/rig_builder.hpp"
#include "units/si_factors.hpp"
#include "wording/say.hpp"

#include <gtest/gtest.h>

#include <cmath>

namespace sheerpole::stay_geometry_test {
namespace {

using namespace build;

Spar mast(double rake_degrees = 0.0, double heel_x_mm = 0.0) {
  Spar spar;
  spar.name = "mast";
  spar.sort = SparSort::mast;
  spar.heel = {mm(heel_x_mm), mm(0), mm(0)};
  const double c = std::cos(rake_degrees * degree);
  const double s = std::sin(rake_degrees * degree);
  spar.axes = {{{c, 0.0, s}, {0.0, 1.0, 0.0}, {-s, 0.0, c}}};
  return spar;
}

// By hand: 10 m up a mast that leans aft by 10 degrees lies 1.736 m aft of its heel.
TEST(SparLine, FollowsTheRake) {
  const SparLine line = spar_line(mast(10.0));
  const FromSpar place =
      from_spar(line, {mm(-10'000 * std::sin(10 * degree)), mm(300), mm(10'000 * std::cos(10 * degree))});
  EXPECT_NEAR(place.along.millimetres(), 10'000, 1e-6);
  EXPECT_NEAR(place.off.millimetres(), 300, 1e-6);
}

TEST(SparLine, GoesForwardOfABowspritAndAftOfABoomkin) {
  Spar spar = mast();
  spar.sort = SparSort::bowsprit;
  EXPECT_EQ(spar_line(spar).along.x, 1.0);
  spar.sort = SparSort::boomkin;
  EXPECT_EQ(spar_line(spar).along.x, -1.0);
}

struct Shroud {
  double top_y = 0, top_z = 10'000, foot_x = 0, foot_y = 2'125.57, foot_z = 0;
  std::vector<std::string> duties = {};
  Side side = Side::starboard;
};

std::pair<Rig, Stay> rig_with(const Shroud& shroud, std::optional<Spar> spar, std::string on = "") {
  RigBuilder builder;
  if (spar)
    builder.rig.spars.push_back(*spar);
  const MaterialId line_material = builder.add(wire("wire", mm(8)));
  const PointId top = builder.point("tang", 0, shroud.top_y, shroud.top_z);
  builder.rig.points.back().spar = std::move(on);
  const PointId foot = builder.point("plate", shroud.foot_x, shroud.foot_y, shroud.foot_z);
  Stay made = stay("shroud", line_material, {line()}, shroud.side);
  made.path = path({top, foot});
  made.duties = shroud.duties;
  return {builder.rig, made};
}

// tan 12 degrees = 0.21256.
TEST(ShroudAtMast, IsTheAngleFromTheMast) {
  const auto [rig, shroud] = rig_with({}, mast(), "mast");
  const auto at = shroud_at_mast(rig, shroud);
  ASSERT_TRUE(at);
  EXPECT_NEAR(at->radians / degree, 12.0, 1e-4);
  EXPECT_EQ(say(rig, at->against), "mast");
}

TEST(ShroudAtMast, TurnsWithTheMastAndSaysWhichItWasHeldAgainst) {
  // In the plane of a mast that leans aft by 2 degrees the foot lies 2 degrees forward of the mast.
  const auto [rig, shroud] = rig_with({.foot_x = 0}, mast(2.0, 10'000 * std::tan(2 * degree)));
  const auto at = shroud_at_mast(rig, shroud);
  ASSERT_TRUE(at);
  EXPECT_NEAR(std::cos(at->radians), std::cos(12 * degree) * std::cos(2 * degree), 1e-4);
  EXPECT_EQ(say(rig, at->against), "mast, the nearest spar");
  const auto [bare, same] = rig_with({}, std::nullopt);
  EXPECT_EQ(say(bare, shroud_at_mast(bare, same)->against), "upright, no mast is stated");
}

TEST(ShroudAtMast, IsNothingForOtherStays) {
  const auto none = [](const Shroud& shroud, std::string on = "mast") {
    const auto [rig, made] = rig_with(shroud, mast(), std::move(on));
    return !shroud_at_mast(rig, made);
  };
  EXPECT_TRUE(none({.side = Side::centre}));
  EXPECT_FALSE(none({.duties = {"running"}})) << "a runner pulls the mast over as a shroud does";
  EXPECT_TRUE(none({.duties = {"temporary"}}));
  EXPECT_TRUE(none({.foot_y = 100})) << "it comes back to the mast";
  EXPECT_TRUE(none({.foot_z = 12'000})) << "it runs up";
  EXPECT_TRUE(none({.top_y = 900})) << "the top is no fitting of the mast";
  EXPECT_TRUE(none({}, "bowsprit"));
}

// Exact: the legs of the bridle end 4.2 m before an upright mast, wherever their plate is.
TEST(Foretriangle, OfABridleRunsToTheBows) {
  RigBuilder builder;
  const MaterialId line_material = builder.add(wire("wire", mm(8)));
  Part arm = fixed("arm", mm(30));
  arm.kind = PartKind::junction;
  const PartId part = builder.add(std::move(arm));
  builder.rig.spars.push_back(mast());
  const PointId masthead = builder.point("masthead", 0, 0, 12'000);
  const PointId plate = builder.point("plate", 3'500, 0, 3'000);
  const PointId port = builder.point("bow-port", 4'200, -2'000, 1'200);
  const PointId starboard = builder.point("bow-starboard", 4'200, 2'000, 1'200);
  builder.rig.points[masthead.index()].spar = "mast";
  Stay single = stay("forestay", line_material, {line(), item(part)});
  single.path = path({masthead, plate});
  single.duties = {"carries-sail"};
  builder.add(std::move(single));
  for (const PointId bow : {port, starboard}) {
    Stay leg = stay(bow == port ? "leg.port" : "leg.starboard", line_material, {item(part), line()});
    leg.path = path({plate, bow});
    leg.side = bow == port ? Side::port : Side::starboard;
    leg.base = "leg";
    builder.add(std::move(leg));
  }
  const auto triangle = foretriangle(builder.rig);
  ASSERT_TRUE(triangle);
  ASSERT_TRUE(triangle->base);
  EXPECT_NEAR(triangle->base->millimetres(), 4'200, 1e-9);
}

// Exact: a pull straight up is out of a plane by as much as the plane leans.
TEST(PlateLead, AnglesOutOfThePlane) {
  EXPECT_NEAR(off_plate_plane(0, 0, 1, 14 * degree, 1.0) / degree, 14, 1e-9);
  EXPECT_NEAR(off_plate_plane(0, 0, 1, 14 * degree, -1.0) / degree, 14, 1e-9);
  // In the plane: leaning inboard as it does, fore and aft as it likes.
  EXPECT_NEAR(off_plate_plane(0.5, -std::sin(14 * degree), std::cos(14 * degree), 14 * degree, 1.0), 0,
              1e-12);
  EXPECT_NEAR(off_plate_plane(-0.5, std::sin(14 * degree), std::cos(14 * degree), 14 * degree, -1.0), 0,
              1e-12);
  EXPECT_NEAR(off_plate_plane(0, -1, 0, 0, 1.0) / degree, 90, 1e-9);
}

// Exact: across the boat a plate takes a pull to one side, and none fore and aft but for its lean.
TEST(PlateLead, AthwartshipsTheOtherWayRound) {
  EXPECT_NEAR(off_athwartships_plane(0, 0.3, 1, 0), 0, 1e-12);
  EXPECT_NEAR(off_athwartships_plane(std::sin(12 * degree), 0, std::cos(12 * degree), 0) / degree, 12,
              1e-9);
  EXPECT_NEAR(off_athwartships_plane(std::sin(12 * degree), 0.2, std::cos(12 * degree), 12 * degree), 0,
              1e-12);
  EXPECT_NEAR(off_athwartships_plane(1, 0, 0, 0) / degree, 90, 1e-9);
}

TEST(PlateLead, NeedsTheLeanOffTheCentreline) {
  const auto lead = [](double y, std::optional<double> lean) {
    auto [rig, made] = rig_with({.foot_y = y}, std::nullopt);
    Part plate = fitting("plate-12");
    if (lean) {
      Particular fact;
      fact.name = "plane-lean";
      fact.value.value.si = *lean;
      plate.particulars.push_back(fact);
    }
    rig.parts.push_back(plate);
    made.stack.push_back(item(PartId{0}));
    return plate_lead(rig, made);
  };
  EXPECT_FALSE(lead(2'125.57, std::nullopt));
  EXPECT_NEAR(lead(2'125.57, 10 * degree)->off_radians / degree, 2.0, 1e-4);
  EXPECT_NEAR(lead(0, std::nullopt)->off_radians, 0.0, 1e-12);
  EXPECT_NEAR(lead(0, 3 * degree)->off_radians / degree, 3.0, 1e-9);
}

// A foot 2125.57 mm out below a tang 10 m up pulls 12 degrees inboard: in the plane of a plate that stands
// across the boat, and out of it by as much as that plate leans forward.
TEST(PlateLead, OfAPlateAthwartships) {
  const auto lead = [](std::optional<double> lean) {
    auto [rig, made] = rig_with({}, std::nullopt);
    Part plate = fitting("plate-12");
    Particular across;
    across.name = "plane";
    across.text = "athwartships";
    plate.particulars.push_back(across);
    if (lean) {
      Particular fact;
      fact.name = "plane-lean";
      fact.value.value.si = *lean;
      plate.particulars.push_back(fact);
    }
    rig.parts.push_back(plate);
    made.stack.push_back(item(PartId{0}));
    return plate_lead(rig, made);
  };
  EXPECT_FALSE(lead(std::nullopt));
  EXPECT_NEAR(lead(0.0)->off_radians, 0.0, 1e-9);
  EXPECT_TRUE(lead(0.0)->athwartships);
  // sin of the angle is sin 5 degrees times cos 12 degrees.
  EXPECT_NEAR(std::sin(lead(5 * degree)->off_radians), std::sin(5 * degree) * std::cos(12 * degree), 1e-6);
}

struct Bridle {
  double plate_x = -5'105, plate_z = 4'731;
  bool pair = true;
  double second_x = -6'500;
  double plate_y = 0;
};

JunctionBalance balance_of(const Bridle& bridle) {
  RigBuilder builder;
  const MaterialId line_material = builder.add(wire("wire", mm(8)));
  Part arm = fixed("arm", mm(30));
  arm.kind = PartKind::junction;
  const PartId part = builder.add(std::move(arm));
  const PointId masthead = builder.point("masthead", -160, 0, 16'720);
  const PointId plate = builder.point("plate", bridle.plate_x, bridle.plate_y, bridle.plate_z);
  const PointId port = builder.point("quarter", bridle.second_x, -1'050, 1'350);
  const PointId starboard = builder.point("quarter", -6'500, 1'050, 1'350);
  Stay upper = stay("backstay", line_material, {line(), item(part)});
  upper.path = path({masthead, plate});
  builder.add(std::move(upper));
  for (const Side side : {Side::port, Side::starboard}) {
    const bool other = side == Side::port && !bridle.pair;
    Stay leg = stay(other ? "other-leg" : "leg", line_material, {item(part), line()}, side);
    leg.path = path({plate, side == Side::port ? port : starboard});
    builder.add(std::move(leg));
  }
  const auto all = junction_balances(builder.rig);
  EXPECT_EQ(all.size(), 1u);
  return all.front();
}

// The backstay of an invented boat, worked outside the project: 0.3 mm off the line, each leg 0.52.
TEST(JunctionBalance, OfAPlateOnTheLine) {
  const JunctionBalance balance = balance_of({});
  EXPECT_TRUE(balance.legs_are_a_pair);
  EXPECT_NEAR(balance.off.millimetres(), 0.3, 0.05);
  EXPECT_NEAR(*balance.leg_share, 0.52, 0.005);
}

// By hand: the line leans aft by atan(6.34 / 15.37) = 22.42 degrees; 100 mm up are 100 sin 22.42 = 38.1 mm
// off it, 100 mm aft 100 cos 22.42 = 92.4 mm.
TEST(JunctionBalance, OfAPlateThatWasMoved) {
  EXPECT_NEAR(balance_of({.plate_z = 4'831}).off.millimetres(), 38.1, 0.35);
  EXPECT_NEAR(balance_of({.plate_x = -5'205}).off.millimetres(), 92.4, 0.35);
}

// Unlike legs: every place in the plane of the three ends can be in equilibrium.
TEST(JunctionBalance, OfUnlikeLegsIsFromThePlane) {
  const JunctionBalance balance = balance_of({.pair = false, .second_x = -6'500});
  EXPECT_FALSE(balance.legs_are_a_pair);
  EXPECT_NEAR(balance.off.millimetres(), 0.3, 0.05);
}

// A plate that hangs off the middle, since its legs are not alike, is in equilibrium in the plane of its
// ends: the nearer leg carries more. Worked outside the project by the normal equations of t u + s v = -f.
TEST(JunctionBalance, OfAPlateOffTheMiddleIsFromThePlane) {
  const JunctionBalance balance = balance_of({.plate_y = 150});
  EXPECT_TRUE(balance.legs_are_a_pair);
  EXPECT_NEAR(balance.off.millimetres(), 0.3, 0.05);
  EXPECT_NEAR(balance.from_middle.millimetres(), 150.0, 0.1);
  ASSERT_EQ(balance.loaded.size(), 2u);
  EXPECT_NEAR(*balance.loaded[0].share, 0.4298, 0.0005);
  EXPECT_NEAR(*balance.loaded[1].share, 0.6092, 0.0005);
  EXPECT_NEAR(balance.loaded[0].angle_radians / degree, 18.827, 0.01);
  EXPECT_NEAR(balance.loaded[1].angle_radians / degree, 13.162, 0.01);
  EXPECT_NEAR(*balance.leg_share, 0.6092, 0.0005);
}

TEST(JunctionBalance, SaysWhatItCanNotLookAt) {
  RigBuilder builder;
  const MaterialId line_material = builder.add(wire("wire", mm(8)));
  Part arm = fixed("arm", mm(30));
  arm.kind = PartKind::junction;
  const PartId part = builder.add(std::move(arm));
  Stay upper = stay("backstay", line_material, {line(), item(part)});
  const PointId masthead = builder.point("masthead", 0, 0, 10'000);
  upper.path = path({masthead, builder.point("plate", -4'000, 0, 4'000)});
  builder.add(std::move(upper));
  const auto all = junction_balances(builder.rig);
  ASSERT_EQ(all.size(), 1u);
  EXPECT_EQ(say(builder.rig, all[0].not_checked), "no other stay begins at plate");
}

} // namespace
} // namespace sheerpole::stay_geometry_test
