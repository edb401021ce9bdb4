#include "unit/elaborate/understood.hpp"

#include <gmock/gmock.h>

namespace sheerpole::point_test {
namespace {

using rig_test::Understood;
using testing::ElementsAre;
using testing::IsEmpty;

Understood points(const std::string& lines) {
  return Understood("language 1\npoints {\n" + lines + "\n}\n");
}

/// "tip.port (0, -1000, 2000)" in whole millimetres.
std::vector<std::string> places(const Understood& rig) {
  std::vector<std::string> result;
  for (const Point& point : rig.rig.points) {
    std::string text = point.name + " (";
    for (const Length length : {point.position.x, point.position.y, point.position.z})
      text += std::to_string(static_cast<long>(std::lround(length.millimetres()))) + ", ";
    result.push_back(text.substr(0, text.size() - 2) + ")");
  }
  return result;
}

TEST(Points, OnePlaceOrOneASide) {
  const Understood rig = points("stem: (4.1, 0, 1.2) m\n"
                                "tip \"Upper tip\": (-0.3 m, 900 mm, 6 m) mirrored drawn \"sail plan\"");
  EXPECT_THAT(rig.findings(), IsEmpty());
  EXPECT_THAT(places(rig), ElementsAre("stem (4100, 0, 1200)", "tip.port (-300, -900, 6000)",
                                       "tip.starboard (-300, 900, 6000)"));
  EXPECT_EQ(rig.rig.points[0].side, Side::centre);
  EXPECT_EQ(rig.rig.points[1].side, Side::port);
  EXPECT_EQ(rig.rig[*rig.rig.points[1].twin].name, "tip.starboard");
  EXPECT_EQ(rig.rig.points[2].title, "Upper tip");
  EXPECT_EQ(rig.rig.points[2].provenance.source_class, SourceClass::drawn);
  EXPECT_EQ(rig.rig.points[2].provenance.note, "sail plan");
}

TEST(Points, MirroredFromThePortSideAreTheSame) {
  EXPECT_EQ(places(points("tip: (-0.3, -0.9, 6) m mirrored")),
            places(points("tip: (-0.3, 0.9, 6) m mirrored")));
}

TEST(Points, OneSideMeasuredApartWinsOnItsSideOnly) {
  for (const char* text :
       {"plate-a: (0.1, 1.4, 1.1) m mirrored drawn\nplate-a.port: (0.1, -1.41, 1.1) m measured",
        "plate-a.port: (0.1, -1.41, 1.1) m measured\nplate-a: (0.1, 1.4, 1.1) m mirrored drawn"}) {
    const Understood rig = points(text);
    EXPECT_THAT(rig.findings(), IsEmpty());
    EXPECT_THAT(places(rig),
                ElementsAre("plate-a.port (100, -1410, 1100)", "plate-a.starboard (100, 1400, 1100)"));
    EXPECT_TRUE(rig.rig.points[0].overridden);
    EXPECT_FALSE(rig.rig.points[1].overridden);
    EXPECT_EQ(rig.rig.points[0].provenance.source_class, SourceClass::measured);
    EXPECT_EQ(rig.rig.points[1].provenance.source_class, SourceClass::drawn);
  }
}

TEST(Points, EachSideGivenApartNeedsNoCommonPlace) {
  const Understood rig = points("plate-a.starboard: (0.1, 1.4, 1.1) m\nplate-a.port: (0.1, -1.41, 1.1) m");
  EXPECT_THAT(rig.findings(), IsEmpty());
  EXPECT_THAT(places(rig),
              ElementsAre("plate-a.starboard (100, 1400, 1100)", "plate-a.port (100, -1410, 1100)"));
  EXPECT_EQ(rig.rig[*rig.rig.points[0].twin].name, "plate-a.port");
}

TEST(Points, InAnExpressionASideIsTheOneThatWasMeasured) {
  const Understood rig = points("plate-a: (0.1, 1.4, 1.1) m mirrored\n"
                                "plate-a.port: (0.1, -1.41, 1.1) m\n"
                                "each.starboard: (0, 2, 0) m\n"
                                "each.port: (0, -3, 0) m\n"
                                "p1: plate-a.port\np2: plate-a.starboard\np3: plate-a\n"
                                "p4: each.port\np5: each.starboard");
  EXPECT_THAT(rig.findings(), IsEmpty());
  std::vector<std::string> shown = places(rig);
  std::vector<std::string> last;
  for (const std::string& text : shown)
    if (text.front() == 'p' && text[1] != 'l')
      last.push_back(text);
  EXPECT_THAT(last, ElementsAre("p1 (100, -1410, 1100)", "p2 (100, 1400, 1100)", "p3 (100, 1400, 1100)",
                                "p4 (0, -3000, 0)", "p5 (0, 2000, 0)"));
}

TEST(Points, InAnExpressionASideThatIsNotThereIsRefused) {
  EXPECT_THAT(
      points("stem: (4.1, 0, 1.2) m\np: stem.port").findings(),
      ElementsAre("4:4 `stem.port` point-not-mirrored: stem has no port side\n  3:1: declared here"));
  EXPECT_THAT(
      points("each.starboard: (0, 2, 0) m\np: each").findings(),
      ElementsAre("4:4 `each` side-needed: each is there on both sides, and this value does not say which "
                  "one\n  3:1: declared here, each side apart"));
}

TEST(PointFindings, OnTheCentrelineNothingIsMirrored) {
  EXPECT_THAT(
      points("masthead: (0 m, 0 m, 12 m) mirrored").findings(),
      ElementsAre(
          "3:28 `mirrored` mirrored-on-centreline: masthead is on the centreline, so its mirror image "
          "is masthead itself"));
}

TEST(PointFindings, ASideMustBeOnItsSide) {
  EXPECT_THAT(
      points("plate-a: (0.1, 1.4, 1.1) m mirrored\nplate-a.port: (0.1, 1.41, 1.1) m").findings(),
      ElementsAre(
          "4:15 `(0.1, 1.41, 1.1) m` point-on-wrong-side: plate-a.port is stated with a place that is "
          "not on the port side"));
}

TEST(PointFindings, ASideOfAPointThatHasNone) {
  EXPECT_THAT(points("plate-a: (0.1, 1.4, 1.1) m\nplate-a.port: (0.1, -1.41, 1.1) m").findings(),
              ElementsAre("4:1 `plate-a` point-not-mirrored: plate-a has no port side\n"
                          "  3:1: declared here, for one place only"));
  EXPECT_THAT(
      points("plate-a.port: (0.1, -1.41, 1.1) m mirrored").findings(),
      ElementsAre("3:35 `mirrored` mirrored-not-here: the place of plate-a.port cannot be mirrored"));
}

TEST(PointFindings, ASideIsStatedOnce) {
  for (const char* base : {"plate-a: (0.1, 1.4, 1.1) m mirrored", "plate-a.starboard: (0.1, 1.4, 1.1) m"})
    EXPECT_THAT(
        points(std::string(base) + "\nplate-a.port: (0.1, -1.41, 1.1) m\nplate-a.port: (0.1, -1.42, 1.1) m")
            .findings(),
        ElementsAre(
            "5:1 `plate-a` property-twice: plate-a.port is stated twice\n  here: stated again here\n"
            "  4:1: stated here first"));
}

TEST(PointFindings, APlaceIsThreeLengths) {
  EXPECT_THAT(
      points("tip: 10.2 m").findings(),
      ElementsAre("3:6 `10.2 m` position-wanted: tip is a place and needs three numbers (x, y, z)"));
  EXPECT_THAT(
      points("tip: (0.1, 0.31, 10.2)").findings(),
      ElementsAre(
          "3:6 `(0.1, 0.31, 10.2)` position-not-lengths: a place is made of three lengths, and a plain "
          "number is in tip\n  if metres are meant, write ` m` behind the parentheses -> "
          "tip: (0.1, 0.31, 10.2) m"));
  EXPECT_THAT(
      points("tip: (0.1 m, 0.31 kg, 10.2 m)").findings(),
      ElementsAre(
          "3:6 `(0.1 m, 0.31 kg, 10.2 m)` position-not-lengths: a place is made of three lengths, and "
          "a mass is in tip"));
}

TEST(Spreaders, AreThereOnBothSides) {
  const Understood rig("language 1\n"
                       "points {\n  root: (0, 0, 6) m\n  tip: (-0.3, 0.9, 6) m mirrored\n}\n"
                       "spreader upper {\n  root: root\n  tip: tip\n}\n");
  EXPECT_THAT(rig.findings(), IsEmpty());
  ASSERT_EQ(rig.rig.spreaders.size(), 2u);
  EXPECT_EQ(rig.rig.spreaders[0].name, "upper.port");
  EXPECT_EQ(rig.rig[rig.rig.spreaders[0].tip].name, "tip.port");
  EXPECT_EQ(rig.rig[rig.rig.spreaders[1].tip].name, "tip.starboard");
}

TEST(Spreaders, NeedATipOnEachSide) {
  EXPECT_THAT(
      Understood("language 1\n"
                 "points {\n  root: (0, 0, 6) m\n  tip: (-0.3, 0.9, 6) m\n}\n"
                 "spreader upper {\n  root: root\n  tip: tip\n}\n")
          .findings(),
      ElementsAre("8:8 `tip` point-on-other-side: upper goes to port as well, and tip is on the starboard "
                  "side only\n  4:3: declared here, without `mirrored`"));
}

TEST(CarriedPoints, TurnWithTheirSparAsThoseInItsFrameDo) {
  // A place 9.25 m above the heel and 0.2 m abaft it, turned by 2 degrees about the heel: worked by hand.
  const std::string spar = "spar mizzen {\n  sort: mizzen\n  heel: (-4, 0, 1.45) m\n  rake: 1 deg\n";
  const std::string raked = "layer fitted {\n  spar mizzen { rake: 3 deg }\n}\n";
  const Understood carried("language 1\n" + spar + "  carries: head, tang, below\n}\npoints {\n" +
                           "head: (-4.2, 0, 10.7) m\ntang: (-4.2, 0.11, 9.7) m mirrored\n" +
                           "below: head + (0, 0, -150) mm\n}\n" + raked);
  // In the frame of a mast at 1 degree: x cos + z sin, z cos - x sin of the place from the heel.
  const Understood framed("language 1\n" + spar + "}\npoints on mizzen {\n" +
                          "head: (-38.534779, 0, 9252.081661) mm\n" +
                          "tang: (-55.987186, 110, 8252.233966) mm mirrored\n" +
                          "below: (-41.152640, 0, 9102.104507) mm\n}\n" + raked);
  EXPECT_THAT(carried.sink.has_errors(), false);
  EXPECT_THAT(places(carried), ElementsAre("head (-4523, 0, 10687)", "tang.port (-4488, -110, 9688)",
                                           "tang.starboard (-4488, 110, 9688)", "below (-4517, 0, 10537)"));
  EXPECT_EQ(places(carried), places(framed));
}

TEST(CarriedPoints, StayWhereTheyAreWhenNothingIsStatedOver) {
  const Understood rig(
      "language 1\nspar mizzen {\n  sort: mizzen\n  heel: (-4, 0, 1.45) m\n  rake: 1 deg\n  carries: "
      "head\n}\npoints {\nhead: (-4.2, 0, 10.7) m\n}\nlayer fitted {\n  spar mizzen { rake: 1 deg }\n}\n");
  EXPECT_EQ(rig.rig.points[0].position.x.millimetres(), -4200.0);
  EXPECT_EQ(rig.rig.points[0].position.z.millimetres(), 10700.0);
}

TEST(CarriedPoints, StatedAnewAfterTheSparAreWhereTheyWereMeasured) {
  const std::string boat =
      "language 1\nspar mizzen {\n  sort: mizzen\n  heel: (-4, 0, 1.45) m\n  rake: 1 deg\n"
      "  carries: head\n}\npoints {\nhead: (-4.2, 0, 10.7) m\n}\n";
  const std::string point = "  points { head: (-4.5, 0, 10.69) m measured }\n";
  const std::string spar = "  spar mizzen { rake: 3 deg measured }\n";
  const Understood together(boat + "layer fitted {\n" + spar + point + "}\n");
  EXPECT_THAT(together.sink.has_errors(), false);
  EXPECT_EQ(together.rig.points[0].position.x.millimetres(), -4500.0);
  const Understood after(boat + "layer made {\n" + point + "}\nlayer fitted {\n" + spar + "}\n");
  EXPECT_THAT(after.slugs(), testing::Contains("carried-not-turned"));
}

} // namespace
} // namespace sheerpole::point_test
