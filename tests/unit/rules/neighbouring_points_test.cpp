#include "unit/rules/rule_fixture.hpp"

#include <gtest/gtest.h>

#include <array>
#include <string>
#include <utility>
#include <vector>

/// Points held against those beside them. The bounds are common practice without a source; the tests hold
/// that a slip is told, once, at its place, and that what is right is not.
namespace sheerpole::neighbouring_points_test {
namespace {

using namespace build;

using Place = std::array<double, 3>; // millimetres

/// A boat of 10 m, her mast at the origin, with shrouds on the starboard side down to these plates, each
/// named and stated on a line of its own from 11 on, and a forestay to the stem on line 10.
struct Boat {
  RigBuilder builder;
  MaterialId wire_6;

  explicit Boat(const std::vector<std::pair<std::string, Place>>& plates,
                const Place& stem = {4000, 0, 1200}) {
    wire_6 = builder.add(wire("wire", mm(6)));
    Spar mast;
    mast.name = "mast";
    mast.sort = SparSort::mast;
    mast.axes = {{{1, 0, 0}, {0, 1, 0}, {0, 0, 1}}};
    builder.rig.spars.push_back(mast);
    builder.rig.boat.particulars = {number_fact("length-overall", 10), number_fact("beam", 3),
                                    number_fact("sheer-at-mast", 1)};
    lead("forestay", point("tang", {80, 0, 12'000}, Side::centre, 1, "mast"),
         point("stem", stem, Side::centre, 10));
    std::uint32_t place = 11;
    for (const auto& [name, at] : plates)
      lead("to-" + name, point(name + "-tang", {0, 60, 9000}, Side::starboard, 2, "mast"),
           point(name, at, Side::starboard, place++));
  }

  PointId point(const std::string& name, const Place& at, Side side, std::uint32_t place,
                const char* spar = "") {
    const PointId id = builder.point(name, at[0], at[1], at[2], from(SourceClass::drawn, place), side);
    builder.rig.points.back().spar = spar;
    return id;
  }
  void lead(const std::string& name, PointId upper, PointId lower) {
    Stay made = stay(name, wire_6, {line()}, builder.rig[upper].side);
    made.path = path({upper, lower});
    builder.add(std::move(made));
  }
  std::vector<Diagnostic> found() const { return found_by("point-out-of-place", builder.rig); }
};

TEST(NeighbouringPoints, TheOddOneOfANumberedRowIsTold) {
  const auto row = [](double x1, double x2, double y2, double x3) {
    return Boat({{"channel-1", {x1, 1470, 1020}},
                 {"channel-2", {x2, y2, 1020}},
                 {"channel-3", {x3, 1460, 1010}}})
        .found();
  };
  EXPECT_TRUE(row(150, -350, 1480, -900).empty());
  EXPECT_TRUE(row(150, -500, 1480, -900).empty());
  for (const auto& [found, line] :
       {std::pair(row(1500, -350, 1480, -900), 11u), std::pair(row(150, -3500, 1480, -900), 12u),
        std::pair(row(150, -350, 148, -900), 12u), std::pair(row(150, -350, 1480, -9000), 13u)}) {
    ASSERT_EQ(found.size(), 1u) << line;
    EXPECT_EQ(found[0].primary->span, at(line));
  }
}

TEST(NeighbouringPoints, PlatesBesideEachOtherAreAsHigh) {
  const auto heights = [](double first, double second, double third) {
    return Boat({{"fore", {500, 1400, first}}, {"cap", {0, 1450, second}}, {"aft", {-450, 1400, third}}})
        .found();
  };
  EXPECT_TRUE(heights(1020, 1010, 990).empty());
  EXPECT_TRUE(heights(1020, 1010, 1090).empty());
  const auto high = heights(1020, 1010, 1100);
  ASSERT_EQ(high.size(), 1u);
  EXPECT_EQ(high[0].primary->span, at(13));
  // Of two alone nobody knows which is odd; one that is well below the sheer is told.
  EXPECT_TRUE(Boat({{"fore", {500, 1400, 1020}}, {"aft", {-450, 1400, 1200}}}).found().empty());
  EXPECT_EQ(Boat({{"fore", {500, 1400, 1020}}, {"aft", {-450, 1400, 790}}}).found().size(), 1u);
}

TEST(NeighbouringPoints, NothingIsAheadOfTheStemOrAsternOfTheHull) {
  EXPECT_TRUE(Boat({{"quarter", {-5900, 1000, 1000}}}).found().empty());
  EXPECT_EQ(Boat({{"quarter", {-6200, 1000, 1000}}}).found().size(), 1u);
  EXPECT_EQ(Boat({{"plate", {4300, 900, 1000}}}).found().size(), 1u);
  Boat catamaran({{"bow", {4300, 2000, 1000}}});
  catamaran.builder.rig.boat.particulars[1] = number_fact("beam", 5.5);
  EXPECT_TRUE(catamaran.found().empty());
}

TEST(NeighbouringPoints, TheForeDeckRisesToTheStem) {
  const auto inner = [](double height) {
    Boat boat({});
    boat.lead("inner", boat.point("inner-tang", {80, 0, 9000}, Side::centre, 3, "mast"),
              boat.point("pad", {2000, 0, height}, Side::centre, 11));
    return boat.found();
  };
  EXPECT_TRUE(inner(1100).empty()); // half way from 1.000 m to 1.200 m
  EXPECT_TRUE(inner(860).empty());
  EXPECT_EQ(inner(840).size(), 1u);
  EXPECT_EQ(Boat({}, {4000, 0, 940}).found().size(), 1u); // the stem under the sheer
}

TEST(NeighbouringPoints, ABobstayGoesDownToTheStem) {
  const auto foot_at = [](double height) {
    Boat boat({});
    Spar sprit;
    sprit.name = "bowsprit";
    sprit.sort = SparSort::bowsprit;
    sprit.heel = {mm(4000), mm(0), mm(1200)};
    sprit.axes = {{{1, 0, 0}, {0, 1, 0}, {0, 0, 1}}};
    boat.builder.rig.spars.push_back(sprit);
    boat.lead("bobstay", boat.point("sprit-end", {6000, 0, 1300}, Side::centre, 3, "bowsprit"),
              boat.point("foot", {3950, 0, height}, Side::centre, 11));
    return boat.found();
  };
  EXPECT_TRUE(foot_at(300).empty());
  EXPECT_EQ(foot_at(800).size(), 1u);
}

TEST(NeighbouringPoints, TangsOnTheForeSideOfAMastAreAlike) {
  const auto inner_at = [](double x) {
    Boat boat({});
    boat.lead("inner", boat.point("inner-tang", {x, 0, 9000}, Side::centre, 3, "mast"),
              boat.point("pad", {2000, 0, 1100}, Side::centre, 11));
    return boat.found();
  };
  EXPECT_TRUE(inner_at(60).empty());
  EXPECT_TRUE(inner_at(0).empty()); // on the line: nothing is said of the mast's face
  const auto found = inner_at(8);
  ASSERT_EQ(found.size(), 1u);
  EXPECT_EQ(found[0].primary->span, at(3));
}

TEST(NeighbouringPoints, AShroudOverASpreaderThatSweepsAftEndsBehindTheMast) {
  const auto plate_at = [](double plate_x, double tip_x) {
    Boat boat({});
    const PointId root = boat.point("root", {0, 60, 5000}, Side::starboard, 4, "mast");
    const PointId tip = boat.point("tip", {tip_x, 1000, 5050}, Side::starboard, 5);
    Spreader spreader;
    spreader.name = "spreader";
    spreader.side = Side::starboard;
    spreader.root = root;
    spreader.tip = tip;
    boat.builder.rig.spreaders.push_back(spreader);
    Stay cap = stay("cap", boat.wire_6, {line()}, Side::starboard);
    cap.path = path({boat.point("cap-tang", {0, 60, 12'000}, Side::starboard, 6, "mast"), tip,
                     boat.point("plate", {plate_x, 1400, 1000}, Side::starboard, 11)});
    boat.builder.add(std::move(cap));
    return boat.found();
  };
  EXPECT_TRUE(plate_at(-600, -400).empty());
  EXPECT_TRUE(plate_at(200, -100).empty()); // hardly swept
  EXPECT_EQ(plate_at(600, -400).size(), 1u);
  EXPECT_EQ(plate_at(-600, 400).size(), 1u);
}

TEST(NeighbouringPoints, PointsOfOneFittingLieTogether) {
  const auto at_height = [](double z) {
    Boat boat({});
    const auto add = [&](const std::string& name, const std::string& title, double height,
                         std::uint32_t place) {
      const PointId upper = boat.point(name, {0, 0, height}, Side::centre, place, "mast");
      boat.builder.rig.points.back().title = title;
      boat.lead("to-" + name, upper, boat.point(name + "-end", {-2000, 0, 1000}, Side::centre, 20));
    };
    add("aft", "Masthead crane, aft", 12'000, 11);
    add("fore", "Masthead crane, fore", 12'050, 12);
    add("light", "Masthead crane, light", z, 13);
    return boat.found();
  };
  EXPECT_TRUE(at_height(12'100).empty());
  EXPECT_EQ(at_height(11'400).size(), 1u);
}

TEST(NeighbouringPoints, ASideThatIsStatedApartIsHeldAgainstTheOther) {
  const auto starboard_at = [](double x) {
    Boat boat({{"plate", {-300, 1400, 1000}}});
    const PointId plate = boat.builder.rig.stays.back().path.back().point;
    const PointId other = boat.point("plate.port", {-300, -1400, 1000}, Side::port, 12);
    boat.lead("port", boat.point("port-tang", {0, -60, 9000}, Side::port, 2, "mast"), other);
    std::vector<Point>& points = boat.builder.rig.points;
    points[plate.index()].position.x = mm(x);
    points[plate.index()].overridden = true;
    points[plate.index()].twin = other;
    points[other.index()].twin = plate;
    return boat.found();
  };
  EXPECT_TRUE(starboard_at(-360).empty());
  const auto found = starboard_at(-420);
  ASSERT_EQ(found.size(), 1u);
  EXPECT_EQ(found[0].primary->span, at(11));
}

TEST(NeighbouringPoints, OneNeighbourAndTheSheerAreEnoughForAPlateThatStandsHigh) {
  const auto aft_at = [](double height) {
    return Boat({{"fore", {500, 1400, 1020}}, {"aft", {-450, 1400, height}}}).found();
  };
  EXPECT_TRUE(aft_at(1260).empty());
  ASSERT_EQ(aft_at(1290).size(), 1u);
  EXPECT_EQ(aft_at(1290)[0].primary->span, at(12));
}

TEST(NeighbouringPoints, ATangIsOnTheOutsideOfAMast) {
  const auto aft_tang_at = [](double x) {
    Boat boat({{"plate", {-300, 1400, 1000}}}); // its tang is 60 mm to the side
    boat.lead("backstay", boat.point("aft-tang", {x, 0, 12'000}, Side::centre, 3, "mast"),
              boat.point("transom", {-5000, 0, 1000}, Side::centre, 11));
    return boat.found();
  };
  EXPECT_TRUE(aft_tang_at(-60).empty());
  EXPECT_TRUE(aft_tang_at(0).empty());
  EXPECT_EQ(aft_tang_at(-6).size(), 1u);
}

TEST(NeighbouringPoints, AStayBetweenMastsEndsNearTheHead) {
  const auto triatic_to = [](double height) {
    Boat boat({});
    Spar mizzen = boat.builder.rig.spars[0];
    mizzen.name = "mizzen";
    mizzen.sort = SparSort::mizzen;
    mizzen.heel = {mm(-5000), mm(0), mm(1000)};
    boat.builder.rig.spars.push_back(mizzen);
    boat.lead("mizzen-cap", boat.point("mizzen-tang", {-5000, 60, 9000}, Side::starboard, 4, "mizzen"),
              boat.point("mizzen-plate", {-5300, 1300, 1000}, Side::starboard, 12));
    boat.lead("triatic", boat.point("main-aft", {-80, 0, 12'000}, Side::centre, 3, "mast"),
              boat.point("mizzen-head", {-4920, 0, height}, Side::centre, 5, "mizzen"));
    return boat.found();
  };
  EXPECT_TRUE(triatic_to(9000).empty());
  EXPECT_TRUE(triatic_to(5200).empty()); // 4.2 m of 8.0 m above the heel
  const auto low = triatic_to(4800);
  ASSERT_EQ(low.size(), 1u);
  EXPECT_EQ(low[0].primary->span, at(5));
}

TEST(NeighbouringPoints, AMastThatIsSteppedOnDeckIsNotStatedBelowIt) {
  const auto heel_at = [](double height) {
    Boat boat({});
    boat.builder.rig.spars[0].heel.z = mm(height);
    Particular step;
    step.name = "step";
    step.text = "deck";
    boat.builder.rig.spars[0].particulars.push_back(step);
    return boat.found().size();
  };
  EXPECT_EQ(heel_at(1400), 0u);
  EXPECT_EQ(heel_at(620), 0u);
  EXPECT_EQ(heel_at(580), 1u);
}

TEST(NeighbouringPoints, OfTwoPointsOfOneFittingTheLaterIsToldWhenTheyAreFarApart) {
  const auto fore_at = [](double z) {
    Boat boat({});
    const auto add = [&](const std::string& name, const std::string& title, double height,
                         std::uint32_t place) {
      const PointId upper = boat.point(name, {0, 0, height}, Side::centre, place, "mast");
      boat.builder.rig.points.back().title = title;
      boat.lead("to-" + name, upper, boat.point(name + "-end", {-2000, 0, 1000}, Side::centre, 20));
    };
    add("aft", "Masthead, aft", 12'000, 11);
    add("fore", "Masthead, fore", z, 12);
    return boat.found();
  };
  EXPECT_TRUE(fore_at(11'300).empty());
  const auto found = fore_at(11'100);
  ASSERT_EQ(found.size(), 1u);
  EXPECT_EQ(found[0].primary->span, at(12));
}

TEST(NeighbouringPoints, WhatStandsAloneIsNotChecked) {
  RigBuilder builder;
  const MaterialId line_material = builder.add(wire("wire", mm(6)));
  Stay made = stay("shroud", line_material, {line()}, Side::starboard);
  made.path = path({builder.point("tang", 0, 60, 9000, from(SourceClass::drawn), Side::starboard),
                    builder.point("plate", 0, 1400, 1000, from(SourceClass::drawn), Side::starboard)});
  builder.add(std::move(made));
  for (const CheckResult& result : results_of("point-out-of-place", builder.rig))
    EXPECT_EQ(result.outcome, CheckOutcome::not_checked) << result.subject;
}

} // namespace
} // namespace sheerpole::neighbouring_points_test
