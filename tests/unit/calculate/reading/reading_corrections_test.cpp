#include "unit/calculate/compiled_rig.hpp"
#include "wording/say.hpp"

#include <gtest/gtest.h>

namespace sheerpole::reading_corrections_test {
namespace {

using test::compiled;
using test::found;
using test::term_mm;

std::string stay_of_rope(const std::string& more) {
  return "language 1\n"
         "rope hmpe-9 {\n  construction: \"12-strand HMPE heat-set\"\n  size: \"9 mm\"\n}\n"
         "toggle toggle-82 {\n  length: 82 mm\n}\n" +
         more;
}

const char* const plain_stay = "stay runner {\n  line: hmpe-9\n  stack {\n    line\n  }\n}\n";

double feet(double millimetres) {
  return millimetres / 304.8;
}

// Mahun, open-access surveying text, taping: 436.48 ft read with a tape that is 100.004 ft long where it
// says 100 ft, at 50 degF and 15 lb (standard 70 degF, 23 lb), 0.004 in2, 2.9e7 psi, 2.2 lb over 102 ft,
// two bays of 102 ft... the inputs were read, the result was computed outside the project: 436.234 ft, with
// standard +0.0175, temperature -0.0567, pull -0.0301, sag -0.1765 ft.
TEST(ReadingCorrections, AWorkedExampleOfSurveying) {
  const Compilation rig = compiled(
      stay_of_rope("tape band {\n"
                   "  nominal-length: 100 ft\n  true-length: 100.004 ft\n"
                   "  standard-temperature: 70 degF\n  standard-pull: 23 lbf\n"
                   "  thermal: 11.7 ppm/K\n  section: 0.004 * 645.16 mm2\n  modulus: 29_000_000 psi\n"
                   "  linear-mass: 2.2 / 102 * 1 lb/ft\n}\n"
                   "let l = 436.48 ft\n"
                   "stay runner {\n  line: hmpe-9\n  stack {\n    line\n  }\n}\n"
                   "reading of runner {\n  method: tape\n  runs: l\n  with: band\n  pull: 15 lbf\n"
                   "  temperature: 50 degF\n  spans: 100 ft, 100 ft, 36.48 ft\n  slope: 0 deg\n}\n"));
  ASSERT_TRUE(rig.derived);
  const LengthSum& sum = rig.derived->stays[0].pin_to_pin;
  EXPECT_NEAR(feet(term_mm(sum, TermKind::tape_standard)), 0.0175, 0.00005);
  EXPECT_NEAR(feet(term_mm(sum, TermKind::tape_temperature)), -0.0567, 0.0001);
  EXPECT_NEAR(feet(term_mm(sum, TermKind::tape_pull)), -0.0301, 0.00005);
  EXPECT_NEAR(feet(term_mm(sum, TermKind::tape_sag)), -0.1765, 0.00005);
  EXPECT_NEAR(feet(sum.known().millimetres()), 436.234, 0.001);
  EXPECT_TRUE(rig.derived->stays[0].not_corrected.empty());
}

// A tape that hung along a stay is steep; without its slope no sag is taken off.
TEST(ReadingCorrections, SagNeedsTheSlope) {
  const std::string tape = "tape band {\n  linear-mass: 20 g/m\n}\n";
  const auto sag = [&](const char* slope) {
    const Compilation rig = compiled(stay_of_rope(
        tape + plain_stay +
        "reading of runner {\n  runs: 15 m\n  with: band\n  pull: 20 N\n  spans: 15 m\n" + slope + "}\n"));
    const DerivedStay& stay = rig.derived->stays[0];
    return std::pair(stay.pin_to_pin.known().millimetres() - 15'000.0,
                     say_each(*rig.rig, stay.not_corrected));
  };
  EXPECT_EQ(sag("").first, 0.0);
  EXPECT_EQ(sag("").second, std::vector<std::string>{"tape sag: slope of the reading is not stated"});
  // w^2 L^3 / (24 P^2) with 0.02 kg/m x 9.80665: 13.524 mm, worked by hand; plumb it is nothing.
  EXPECT_NEAR(sag("  slope: 0 deg\n").first, -13.524, 0.001);
  EXPECT_NEAR(sag("  slope: 90 deg\n").first, 0.0, 1e-9);
}

TEST(ReadingCorrections, WhatIsMissingIsSaid) {
  const Compilation rig = compiled(stay_of_rope(
      "tape band {\n  standard-temperature: 20 degC\n  standard-pull: 50 N\n"
      "  thermal: 11.5 ppm/K\n  true-length: 30.002 m\n}\n" +
      std::string(plain_stay) + "reading of runner {\n  runs: 12 m\n  with: band\n  spans: 12 m\n}\n"));
  ASSERT_TRUE(rig.derived);
  const std::vector<std::string> lacking = say_each(*rig.rig, rig.derived->stays[0].not_corrected);
  EXPECT_EQ(lacking, (std::vector<std::string>{"tape standard: nominal-length of band is not stated",
                                               "tape temperature: temperature of the reading is not stated",
                                               "tape pull: pull of the reading is not stated",
                                               "tape sag: linear-mass of band is not stated"}));
  EXPECT_NEAR(rig.derived->stays[0].pin_to_pin.known().millimetres(), 12000.0, 1e-9);
}

// Elementary: 6 mm 1x19 of EA 3.039 MN stretches by 16.58 mm over 12 m under 4.2 kN (common practice for
// the modulus, arithmetic for the rest).
TEST(ReadingCorrections, AnOldStayStretchesToTheDockTension) {
  const Compilation rig = compiled(stay_of_rope(
      "wire wire-6 {\n  construction: \"1x19\"\n  size: \"6 mm\"\n  stiffness: 3_039 kN\n}\n"
      "stay runner {\n  line: hmpe-9\n  dock-tension: 4.3 kN\n  bench-tension: 4.3 kN\n  stack {\n    "
      "line\n"
      "  }\n}\n"
      "reading of runner {\n  method: old-stay\n  runs: 12 m\n  pull: 100 N\n  old-line: wire-6\n"
      "  hoist-offset: 60 mm\n  offset: 35 mm\n}\n"));
  ASSERT_TRUE(rig.derived);
  const LengthSum& sum = rig.derived->stays[0].pin_to_pin;
  EXPECT_NEAR(term_mm(sum, TermKind::old_stretch), 16.58, 0.005);
  EXPECT_NEAR(sum.known().millimetres(), 12000.0 + 16.58 + 60.0 - 35.0, 0.005);
}

/// What each slip is said to be, and what it leaves unexplained.
struct SaidSlip {
  std::string words;
  Length unexplained;
};

std::vector<SaidSlip> slips_of(const std::string& reading) {
  const Compilation rig = compiled(stay_of_rope(
      "points {\n  tang: (0, 0.1, 12) m mirrored\n  plate: (-0.6, 1.4, 1) m mirrored\n"
      "  plate-aft: (-0.66, 1.4, 1) m mirrored\n}\n"
      "stay shroud {\n  sides: starboard\n  path: tang > plate\n  line: hmpe-9\n  stack {\n    toggle-82\n"
      "    line\n  }\n}\n" +
      reading));
  EXPECT_TRUE(found(rig, "routes-differ"));
  std::vector<SaidSlip> said;
  for (const LikelySlip& slip : rig.derived->stays[0].other_routes.at(0).slips)
    said.push_back({say(*rig.rig, slip.words), slip.unexplained});
  return said;
}

// The path is 11 092.790 mm long: sqrt(0.6^2 + 1.3^2 + 11^2) m.
TEST(LikelySlips, AreNamed) {
  const auto toggle = slips_of("reading of shroud.starboard {\n  runs: 11_174 mm\n}\n");
  ASSERT_FALSE(toggle.empty());
  EXPECT_EQ(toggle[0].words, "toggle-82, 82 mm, was measured along or counted twice");
  EXPECT_NEAR(toggle[0].unexplained.millimetres(), 0.79, 0.01);

  const auto left_out = slips_of("reading of shroud.starboard {\n  runs: 11_011 mm\n}\n");
  ASSERT_FALSE(left_out.empty());
  EXPECT_EQ(left_out[0].words, "toggle-82, 82 mm, was left out");

  const auto decimetre = slips_of("reading of shroud.starboard {\n  runs: 11_193 mm\n}\n");
  ASSERT_FALSE(decimetre.empty());
  EXPECT_EQ(decimetre[0].words, "the tape was held at its first decimetre");

  const auto offset = slips_of("reading of shroud.starboard {\n  runs: 11_093 mm\n  offset: 35 mm\n}\n");
  ASSERT_FALSE(offset.empty());
  EXPECT_EQ(offset[0].words, "the offset of 35 mm had been taken off already");

  const auto hole = slips_of("reading of shroud.starboard {\n  runs: 11_099 mm\n}\n");
  ASSERT_FALSE(hole.empty()); // the next hole makes it 3.405 mm longer, which leaves 2.8 mm
  EXPECT_EQ(hole[0].words, "it was taken to plate-aft in place of plate");

  // 36.4 ft is 36 ft 4.8 in; 36 ft 4 in written as 36.4 ft comes out 20.3 mm too long.
  const auto nothing = slips_of("reading of shroud.starboard {\n  runs: 11_120 mm\n}\n");
  EXPECT_TRUE(nothing.empty());
}

} // namespace
} // namespace sheerpole::reading_corrections_test
