#include "calculate/adjust/fit_stack.hpp"
#include "calculate/behaviour/creep.hpp"
#include "unit/calculate/compiled_rig.hpp"
#include "wording/length_words.hpp"
#include "wording/say.hpp"

#include <gtest/gtest.h>

namespace sheerpole::line_behaviour_test {
namespace {

using test::compiled;
using test::found;
using test::term_mm;

std::string rig_with(const std::string& rope, const std::string& stay, const std::string& more = "",
                     const std::string& splice = "  contraction: 8 %\n") {
  return "language 1\n"
         "boat \"Sample\" {\n  reference-temperature: 20 degC\n}\n"
         "rope hmpe-9 {\n  construction: \"12-strand HMPE heat-set\"\n  size: \"9 mm\"\n" +
         rope +
         "}\n"
         "splice long-bury {\n  bury: 72 d\n  eye-allowance: 12 d\n" +
         splice +
         "}\n"
         "thimble thimble-16 {\n  length: 16 mm\n}\n"
         "lashing cord-4 {\n  shortest: 60 mm\n  longest: 260 mm\n}\n"
         "stay runner {\n  pin-to-pin: 10_192 mm\n  line: hmpe-9\n" +
         stay +
         "  stack {\n    thimble-16 (splice: long-bury)\n    line\n    thimble-16 (splice: long-bury)\n"
         "    cord-4 (gap: 160 mm, passes: 6)\n  }\n}\n" +
         more;
} // the body is 10 m

// Common practice, no source: contraction is what a test splice on this rope says. 2000 to 1950 mm over 648
// mm is 7.716 %; set to 1980 mm gives back 60 % of it.
TEST(TestSplice, GivesTheContractionOfItsRope) {
  const Compilation rig =
      compiled(rig_with("", "",
                        "test-splice of hmpe-9 {\n  bury: 648 mm\n  before: 2_000 mm\n  after: 1_950 mm\n"
                        "  set: 1_980 mm\n}\n",
                        ""));
  ASSERT_TRUE(rig.derived);
  const Piece& piece = rig.derived->stays[0].pieces[0];
  EXPECT_TRUE(piece.missing.empty());
  EXPECT_NEAR(term_mm(piece.cut, TermKind::contraction, WhichEnd::upper), 50.0, 1e-9);
  EXPECT_NEAR(term_mm(piece.cut, TermKind::contraction_given_back, WhichEnd::upper), -30.0, 1e-9);
}

TEST(Contraction, NeitherStatedNorChosenIsADraft) {
  EXPECT_FALSE(compiled(rig_with("", "", "", "")).derived->stays[0].pieces[0].missing.empty());
  const Compilation chosen = compiled(rig_with("", "", "", "  contraction-rule: equals-first-creep\n"));
  const Piece& piece = chosen.derived->stays[0].pieces[0];
  EXPECT_TRUE(piece.missing.empty());
  ASSERT_EQ(piece.upper.notes.size(), 1u);
  EXPECT_NE(say(*chosen.rig, piece.upper.notes[0]).find("common practice"), std::string::npos);
  EXPECT_NEAR((piece.cut.known() - piece.body.known()).millimetres(), 2 * (648 + 108), 1e-9);
}

// Hooke's law: 3.2 kN over EA 3200 kN is 0.1 % of strain; 10 m are cut for 10 m / 1.001.
TEST(LineStretch, IsTakenOffTheBody) {
  const Compilation rig = compiled(rig_with("  stiffness: 3_200 kN\n  bedding: 0.3 %\n",
                                            "  dock-tension: 3.4 kN\n  bench-tension: 200 N\n"
                                            "  bedding-from: cut\n"));
  ASSERT_TRUE(rig.derived);
  const LengthSum& cut = rig.derived->stays[0].pieces[0].cut;
  EXPECT_NEAR(term_mm(cut, TermKind::stretch), 10'000.0 / 1.001 - 10'000.0, 1e-9);
  EXPECT_NEAR(10'000.0 + term_mm(cut, TermKind::stretch) + term_mm(cut, TermKind::bedding),
              10'000.0 / (1.001 * 1.003), 1e-9);
}

// Two springs one behind the other, each after Hooke's law: what is cut is the plain part over 1.001 and
// the buried parts, 648 mm at either end, over 1 + 0.6 x 0.001.
TEST(LineStretch, IsLessWhereTheLineIsSpliced) {
  const std::string tensions = "  dock-tension: 3.4 kN\n  bench-tension: 200 N\n";
  const auto piece = [&](const std::string& more) {
    const Compilation rig =
        compiled(rig_with("  stiffness: 3_200 kN\n", tensions, "", "  contraction: 8 %\n" + more));
    return rig.derived->stays[0].pieces[0];
  };
  const Piece stiffer = piece("  stretch-share: 60 %\n");
  const double plain = 10'000.0 / 1.001;
  const double buried = 2 * 648.0 * (0.001 / 1.001 - 0.0006 / 1.0006);
  EXPECT_NEAR(10'000.0 + behaviour(stiffer).millimetres(), plain + buried, 1e-9);
  EXPECT_TRUE(stiffer.not_counted.empty());
  const Piece unstated = piece("");
  EXPECT_NEAR(10'000.0 + behaviour(unstated).millimetres(), plain, 1e-9);
  ASSERT_EQ(unstated.not_counted.size(), 1u); // 0.65 mm at one half
  EXPECT_EQ(piece("  stretch-share: 100 %\n").not_counted.size(), 0u);
}

TEST(LineStretch, OneTensionWithoutTheOtherIsMissing) {
  const Compilation rig = compiled(rig_with("  stiffness: 3_200 kN\n", "  dock-tension: 3.4 kN\n"));
  ASSERT_EQ(rig.derived->stays[0].pieces[0].missing.size(), 1u);
  EXPECT_EQ(say(*rig.rig, rig.derived->stays[0].pieces[0].missing[0].what), "bench-tension of runner");
}

TEST(BenchMarks, RunFromBothEnds) {
  const Compilation rig = compiled(rig_with("", ""));
  const Piece& piece = rig.derived->stays[0].pieces[0];
  const double cut = piece.cut.known().millimetres();
  EXPECT_NEAR(cut, 10'000.0 + 2 * (648 + 108 + 51.84), 1e-9);
  ASSERT_EQ(piece.bench.marks.size(),
            4u); // ends and throats on the tail: the seats' throats are not stated
  for (const BenchMark& mark : piece.bench.marks)
    EXPECT_NEAR((mark.from_upper.known + mark.from_lower.known).millimetres(), cut, 1e-9)
        << mark_name(mark);
  EXPECT_NEAR(piece.bench.marks[1].from_upper.known.millimetres(), 648.0, 1e-9);
  EXPECT_EQ(piece.bench.not_known.size(), 2u);
  // Nothing is buried yet at the dry fit, so the rope still has what the burys will take.
  ASSERT_TRUE(piece.bench.dry_fit);
  EXPECT_NEAR(piece.bench.dry_fit->known.millimetres(), 10'000.0 + 2 * 51.84, 1e-9);
}

TEST(Creep, IsOfTheFirstYearOrOfATable) {
  const auto amount = [](const std::string& rope, const std::string& stay, const std::string& more,
                         double years) {
    const Compilation rig = compiled(rig_with(rope, stay, more));
    return creep(*rig.rig, rig.rig->stays[0], rig.derived->stays[0].pieces[0], years * 365.25 * 86400);
  };
  EXPECT_FALSE(amount("", "", "", 1).amount); // not stated: not checked
  EXPECT_EQ(amount("  creep: 0 %\n", "", "", 5).amount->millimetres(), 0.0);
  EXPECT_NEAR(amount("  creep: 0.1 %\n", "", "", 1).amount->millimetres(), 10.0, 1e-9);
  EXPECT_FALSE(amount("  creep: 0.1 %\n", "", "", 2).amount); // beyond what is stated
  const std::string table = "creep-rate of hmpe-9 {\n  load: 10 %\n  temperature: 20 degC\n"
                            "  stretch: 0.02 %\n  over: 1 year\n}\n"
                            "creep-rate of hmpe-9 {\n  load: 20 %\n  temperature: 20 degC\n"
                            "  stretch: 0.08 %\n  over: 1 year\n}\n";
  const std::string loads = "  break-load: 100 kN\n  stiffness: 3_200 kN\n";
  const auto stay = [](const char* tension) {
    return std::string("  dock-tension: ") + tension + "\n  bench-tension: " + tension + "\n";
  };
  // Log-linear in the load: half way between 0.02 and 0.08 % lies 0.04 %; five years of 10 m are 20 mm.
  EXPECT_NEAR(amount(loads, stay("15 kN"), table, 5).amount->millimetres(), 20.0, 1e-6);
  EXPECT_FALSE(amount(loads, stay("25 kN"), table, 1).amount); // beyond the table
}

// Eyring's form with the energy of O'Connor and Robbins, J. Chem. Phys. 153, 144904 (2020): 10 K from 20 to
// 30 degC make 7.09 times the rate, the sinh term all but alike (the load is small against kT / v).
TEST(Creep, FollowsTemperatureByTheStatedEnergy) {
  const std::string rope = "  break-load: 100 kN\n  stiffness: 3_200 kN\n  creep-energy: 144.7 kJ/mol\n"
                           "  creep-volume: 0.000_001 nm3\n  fibre-section: 50 mm2\n";
  const auto at = [&](const char* temperature) {
    const Compilation rig = compiled(
        rig_with(rope, "  dock-tension: 10 kN\n  bench-tension: 10 kN\n",
                 "creep-rate of hmpe-9 {\n  load: 10 %\n  temperature: 20 degC\n  stretch: 0.02 %\n"
                 "  over: 1 year\n}\ntake-up {\n  creep-temperature: " +
                     std::string(temperature) + "\n}\n"));
    return creep(*rig.rig, rig.rig->stays[0], rig.derived->stays[0].pieces[0], 365.25 * 86400)
        .amount->millimetres();
  };
  EXPECT_NEAR(at("20 degC"), 2.0, 1e-9);
  // The stress term v sigma / kT falls with 293.15 / 303.15.
  EXPECT_NEAR(at("30 degC") / at("20 degC") * 303.15 / 293.15, 7.09, 0.03);
}

TEST(Account, DrawsOnWhatTheAdjusterHas) {
  const Compilation rig = compiled(rig_with("  bedding: 0.3 %\n  creep: 0.1 %\n", "",
                                            "take-up {\n  after: 30 days, 1 year, 2 years\n}\n"));
  const Account& account = rig.derived->stays[0].account;
  EXPECT_NEAR(account.to_tighten.millimetres(), 100.0, 1e-9);
  EXPECT_NEAR(account.to_slacken.millimetres(), 100.0, 1e-9);
  ASSERT_EQ(account.left.size(), 3u);
  EXPECT_EQ(say(*rig.rig, account.left[1].after), "1 year");
  EXPECT_NEAR(account.left[1].to_tighten.millimetres(), 100.0 - 30.0 - 10.0, 1e-9);
  EXPECT_FALSE(account.left[1].complete); // nothing is known of temperature
  EXPECT_FALSE(found(rig, "take-up-spent"));
  EXPECT_TRUE(found(compiled(rig_with("  bedding: 1.1 %\n", "")), "take-up-spent"));
}

TEST(Account, ZeroCreepAndZeroBeddingTakeNothing) {
  const Compilation rig = compiled(rig_with("  bedding: 0 %\n  creep: 0 %\n", ""));
  const Account& account = rig.derived->stays[0].account;
  ASSERT_EQ(account.left.size(), 1u);
  EXPECT_EQ(account.left[0].to_tighten.millimetres(), account.to_tighten.millimetres());
}

// Facts of elementary mechanics: 4 mu L^2 f^2 with 0.305 kg/m, 13 m and 5 Hz is 5.155 kN (Mersenne).
TEST(Tensions, AreReadFromASwingAndAStretch) {
  const Compilation rig =
      compiled(rig_with("  linear-mass: 0.305 kg/m\n  stiffness: 3_039 kN\n  break-load: 28 kN\n", "",
                        "tension-reading of runner {\n  frequency: 5 Hz\n  over: 13 m\n  stretch: 3 mm\n}\n"
                        "tension-reading of runner {\n  pulse: 0.2 s\n}\n"));
  const auto& tensions = rig.derived->stays[0].tensions;
  ASSERT_EQ(tensions.size(), 3u);
  EXPECT_NEAR(tensions[0].tension->kilonewtons(), 5.155, 0.001);
  EXPECT_NEAR(tensions[1].tension->kilonewtons(), 3039.0 * 3.0 / 13'000.0, 1e-9);
  EXPECT_FALSE(tensions[2].tension);
  EXPECT_EQ(say(*rig.rig, tensions[2].not_checked), "over, the free length, is not stated");
}

Length mm(double value) {
  return Length::millimetres(value);
}

TEST(FillGap, TakesTheFewestPartsFirst) {
  // 500 mm to fill; the adjuster goes from 320 to 470 mm; links of 24 mm (5 in hand) and 60 mm (2 in hand).
  const Fillings found = fill_gap(mm(500), mm(320), mm(470), {{mm(24), 5}, {mm(60), 2}}, 3);
  ASSERT_EQ(found.ways.size(), 3u);
  EXPECT_EQ(found.ways[0].counts, (std::vector<int>{0, 1})); // one part: 440 mm
  EXPECT_NEAR(found.ways[0].adjuster.millimetres(), 440.0, 1e-9);
  EXPECT_EQ(found.ways[1].counts,
            (std::vector<int>{0, 2})); // two: 380 mm is nearer the middle than 416, 452
  EXPECT_EQ(found.short_by.millimetres(), 0.0);
}

TEST(FillGap, SaysByHowMuchNoneExists) {
  EXPECT_NEAR(fill_gap(mm(600), mm(320), mm(470), {{mm(24), 2}}, 3).short_by.millimetres(), 82.0, 1e-9);
  EXPECT_NEAR(fill_gap(mm(300), mm(320), mm(470), {{mm(24), 2}}, 3).short_by.millimetres(), -20.0, 1e-9);
  EXPECT_TRUE(fill_gap(mm(600), mm(320), mm(470), {}, 3).ways.empty());
}

} // namespace
} // namespace sheerpole::line_behaviour_test
