#include "calculate/calculate.hpp"
#include "calculate/uncertainty/random_numbers.hpp"
#include "calculate/uncertainty/rig_uncertainty.hpp"
#include "unit/calculate/compiled_rig.hpp"
#include "unit/calculate/rig_builder.hpp"
#include "wording/say.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <set>
#include <string>

namespace sheerpole::rig_uncertainty_test {
namespace {

using test::compiled;

std::string rig_with(const std::string& parts, const std::string& stay) {
  return "language 1\n"
         "rope hmpe-9 {\n  construction: \"12-strand HMPE heat-set\"\n  size: \"9 mm\"\n}\n"
         "splice long-bury {\n  bury: 72 d\n  eye-allowance: 12 d\n  contraction: 8 %\n}\n"
         "thimble thimble-16 {\n  length: 16 mm\n}\n"
         "lashing cord-4 {\n  shortest: 60 mm\n  longest: 260 mm\n}\n" +
         parts + "stay runner {\n  line: hmpe-9\n" + stay + "}\n";
}

const Uncertainty& of(const Compilation& rig) {
  EXPECT_TRUE(rig.derived && rig.derived->stays[0].uncertainty);
  return *rig.derived->stays[0].uncertainty;
}

const UncertaintyShare* share(const Compilation& rig, std::string_view input) {
  for (const UncertaintyShare& one : of(rig).shares)
    if (say(*rig.rig, rig.derived->inputs[one.input].name) == input)
      return &one;
  return nullptr;
}

// A part that stands in the stack three times is stated once: three times its bound, not sqrt(3) times. If
// a term were counted twice the numbers here would be other ones.
TEST(RigUncertainty, WhatIsStatedOnceMovesTogether) {
  const Compilation rig =
      compiled(rig_with("toggle toggle-82 {\n  length: 82 mm ± 1 mm\n}\n",
                        "  pin-to-pin: 10 m ± 4 mm\n  stack {\n    3 x toggle-82\n    line\n  }\n"));
  const Uncertainty& found = of(rig);
  EXPECT_NEAR(found.worst_high.millimetres(), 4.0 + 3.0, 1e-6);
  EXPECT_NEAR(found.worst_low.millimetres(), -7.0, 1e-6);
  EXPECT_NEAR(found.standard.millimetres(), std::sqrt((16.0 + 9.0) / 3.0), 1e-6);
  ASSERT_EQ(found.shares.size(), 2u);
  EXPECT_EQ(say(*rig.rig, rig.derived->inputs[found.shares[0].input].name), "pin-to-pin of runner");
  EXPECT_NEAR(found.shares[0].share, 16.0 / 25.0, 1e-9);
  EXPECT_NEAR(found.shares[1].per_bound.millimetres(), -3.0, 1e-6); // a longer toggle, a shorter rope
}

TEST(RigUncertainty, ANameThatIsUsedTwiceIsOneInput) {
  // a + 7 mm less a is 7 mm, whatever a is off by.
  const Compilation rig = compiled(rig_with("let a = 40 mm ± 5 mm\n"
                                            "toggle toggle-82 {\n  length: a + 7 mm\n}\n"
                                            "toggle toggle-2 {\n  length: a\n}\n",
                                            "  pin-to-pin: 10 m + 2 * a\n  stack {\n    toggle-82\n"
                                            "    toggle-2\n    line\n  }\n"));
  ASSERT_TRUE(rig.derived);
  EXPECT_FALSE(rig.derived->stays[0].uncertainty); // the cut does not follow it
  const Compilation other = compiled(rig_with("let a = 40 mm ± 5 mm\n"
                                              "toggle toggle-82 {\n  length: a\n}\n",
                                              "  pin-to-pin: 10 m - a\n  stack {\n    toggle-82\n    line\n"
                                              "  }\n"));
  EXPECT_NEAR(of(other).worst_high.millimetres(), 10.0, 1e-6);
}

// The path 3-4-5: a point that is off by 3 mm each way moves the length by 3/5 and 4/5 of it.
TEST(RigUncertainty, PointsMoveThePath) {
  const Compilation rig =
      compiled(rig_with("points {\n  tang: (0, 0, 8) m ± 3 mm\n  plate: (6, 0, 0) m\n}\n",
                        "  path: tang > plate\n  stack {\n    line\n  }\n"));
  const Uncertainty& found = of(rig);
  EXPECT_NEAR(found.worst_high.millimetres(), 3 * 0.6 + 3 * 0.8, 2e-3); // second order: 1e-3 mm
  EXPECT_NEAR(found.standard.millimetres(), std::sqrt(3.0), 1e-6);      // 3 / sqrt(3) x 1
  EXPECT_EQ(found.without_bound.size(), 2u);                            // x and z of the plate
}

// Depth of the eye, bury and contraction all follow one diameter; contraction is a product of two inputs.
// The law of propagation and Monte Carlo agree within 2 % when the inputs are normal, and the worst case
// holds both.
TEST(RigUncertainty, TheThreeWaysAgree) {
  const Compilation rig = compiled(rig_with(
      "splice tried {\n  bury: 72 d ± 2 d\n  eye-allowance: 12 d ± 0.5 d\n  contraction: 8 % ± 2 %\n}\n"
      "uncertainty {\n  distribution: normal-at-two\n}\n",
      "  pin-to-pin: 10 m ± 4 mm\n  stack {\n    thimble-16 (splice: tried)\n    line\n"
      "    thimble-16 (splice: tried)\n    cord-4 (gap: 160 mm ± 1 mm, passes: 6)\n  }\n"));
  const Uncertainty& found = of(rig);
  EXPECT_NEAR(found.drawn_standard / found.standard, 1.0, 0.02);
  EXPECT_NEAR(found.drawn_high / found.expanded, 1.0, 0.02);
  EXPECT_LT(found.worst_low, found.drawn_low);
  EXPECT_GT(found.worst_high, found.drawn_high);
  EXPECT_LT(found.worst_low, -found.expanded);
  ASSERT_TRUE(found.reaches);
  EXPECT_GT(*found.reaches, 0.99); // 100 mm either way
}

TEST(RigUncertainty, SaysHowOftenTheAdjusterReaches) {
  // Rectangular, 200 mm either way, of an adjuster that has 100 mm either way: half of the draws.
  const Compilation rig = compiled(
      rig_with("", "  pin-to-pin: 10 m ± 200 mm\n  stack {\n    line\n    cord-4 (gap: 160 mm, passes: 6)\n"
                   "  }\n"));
  EXPECT_NEAR(*of(rig).reaches, 0.5, 0.01);
}

// Runs 1 mm and 3 mm off their mean either way: s = sqrt(20/3) mm, over sqrt(4): 1.29099 mm, 3 degrees.
TEST(RigUncertainty, RepeatedReadingsScatter) {
  const Compilation rig =
      compiled(rig_with("tape band {\n  error: 2 mm\n}\n", "  stack {\n    line\n  }\n") +
               "reading of runner {\n  runs: 9_997 mm, 9_999 mm, 10_001 mm, 10_003 mm\n  with: band\n}\n");
  const UncertaintyShare* scatter = share(rig, "scatter of the runs of runner");
  ASSERT_NE(scatter, nullptr);
  EXPECT_NEAR(scatter->standard.millimetres(), 1.29099, 1e-5);
  EXPECT_EQ(rig.derived->inputs[scatter->input].freedom, 3u);
  const UncertaintyShare* tape = share(rig, "error of the tape band");
  ASSERT_NE(tape, nullptr);
  EXPECT_NEAR(tape->standard.millimetres(), 2.0 / std::sqrt(3.0), 1e-9);
}

// How far a wire goes into its terminal is a dimension of the terminal's end.
TEST(RigUncertainty, OfAnInsertionDepth) {
  const Compilation rig = compiled(
      "language 1\n"
      "wire wire-6 {\n  construction: \"1x19\"\n  size: \"6 mm\"\n}\n"
      "terminal eye-62 {\n  length: 62 mm\n"
      "  lower: wire-socket (inserted: 50 mm ± 1 mm)\n}\n"
      "stay runner {\n  line: wire-6\n  pin-to-pin: 10 m\n  stack {\n    eye-62\n    line\n    eye-62\n"
      "  }\n}\n");
  EXPECT_NEAR(of(rig).worst_high.millimetres(), 2.0, 1e-6);
}

TEST(RigUncertainty, OfATestSpliceGoesThroughTheContraction) {
  const Compilation rig = compiled(
      "language 1\n"
      "rope hmpe-9 {\n  construction: \"12-strand HMPE heat-set\"\n  size: \"9 mm\"\n}\n"
      "splice long-bury {\n  bury: 648 mm\n  eye-allowance: 12 d\n}\n"
      "test-splice of hmpe-9 {\n  bury: 648 mm\n  before: 2_000 mm ± 1 mm\n  after: 1_950 mm\n}\n"
      "thimble thimble-16 {\n  length: 16 mm\n}\n"
      "stay runner {\n  line: hmpe-9\n  pin-to-pin: 10 m\n  stack {\n    thimble-16 (splice: long-bury)\n"
      "    line\n    thimble-16 (splice: long-bury)\n  }\n}\n");
  EXPECT_NEAR(of(rig).worst_high.millimetres(), 2.0, 1e-6); // both ends
}

// Readings with an error that is known: the truth is to lie within the stated 95 % range in 93 to 97 of 100
// trials. Five runs scatter normally by 3 mm and the tape is off by up to 2 mm, alike for all runs.
double share_of_trials_that_hold(std::uint64_t from, std::size_t trials) {
  using namespace build;
  constexpr double truth = 12'000.0;
  std::size_t held = 0;
  for (std::size_t trial = 0; trial < trials; ++trial) {
    RandomStream stream(from + trial, 0, 0);
    const double tape = 2.0 * (2.0 * stream.uniform() - 1.0);
    RigBuilder builder;
    builder.add(stay("runner", mm(1), builder.add(rope("hmpe-9", mm(9))), {line()}));
    builder.rig.stays[0].stated_pin_to_pin = std::nullopt;
    Record band;
    band.kind = RecordKind::tape;
    band.name = "band";
    Particular error;
    error.name = "error";
    error.value.value = {0.002, dimension::length};
    band.facts.push_back(error);
    builder.rig.records.push_back(band);
    Reading reading;
    reading.tape = "band";
    for (int run = 0; run < 5; ++run)
      reading.runs.push_back(sourced(mm(truth + tape + 3.0 * normal_quantile(stream.uniform()))));
    builder.rig.stays[0].readings.push_back(reading);
    Record settings; // few draws: the range by the law of propagation is what is looked at
    settings.kind = RecordKind::uncertainty;
    settings.name = "uncertainty";
    Particular draws;
    draws.name = "draws";
    draws.value.value = {1000.0, dimension::number};
    settings.facts.push_back(draws);
    builder.rig.records.push_back(settings);
    const Derived derived = calculate(builder.rig);
    const double off = derived.stays[0].pin_to_pin.known().millimetres() - truth;
    held += std::fabs(off) <= derived.stays[0].uncertainty->expanded.millimetres() ? 1U : 0U;
  }
  return static_cast<double>(held) / static_cast<double>(trials);
}

TEST(Coverage, OfSyntheticReadings) {
  const double hundred = share_of_trials_that_hold(1, 100);
  EXPECT_GE(hundred, 0.93);
  EXPECT_LE(hundred, 0.97);
  // A hundred trials may come out right by luck; of fifteen hundred the share is known to 0.6 %.
  const double many = share_of_trials_that_hold(1000, 1500);
  EXPECT_GE(many, 0.93);
  EXPECT_LE(many, 0.97);
}

/// The names of all that a stay rests on.
std::set<std::string> names_of_fields(const build::RigBuilder& builder) {
  Rig rig = builder.rig;
  std::set<std::string> names;
  for (const StayField& field : stay_fields(rig, StayId{0}))
    names.insert(say(rig, field.name));
  return names;
}

// Whatever is stated of a reading, of a splice and of the places in the stack is met, each once, without
// being listed anywhere but in the model.
TEST(StayFields, AreAllNumbersThatMayMoveALength) {
  using namespace build;
  RigBuilder builder;
  const MaterialId rope_9 = builder.add(rope("hmpe-9", mm(9)));
  Splice splice;
  splice.name = "long-bury";
  splice.bury.value = {72.0, true};
  splice.eye_allowance = Sourced<RopeMeasure>{.value = {12.0, true}, .provenance = {}, .tolerance = {}};
  splice.tail_to_trim = splice.eye_allowance;
  splice.contraction = Sourced<double>{.value = 0.08, .provenance = {}, .tolerance = {}};
  splice.recovered = splice.contraction;
  builder.rig.splices.push_back(splice);
  Part lashing = fixed("lashing-4", mm(0));
  lashing.shortest = sourced(mm(60));
  lashing.longest = sourced(mm(260));
  lashing.wrap = sourced(mm(120));
  StackItem seat = item(builder.add(lashing));
  seat.splice = SpliceId{0};
  seat.set_length = sourced(mm(160));
  seat.spare_bury = sourced(mm(40));
  builder.add(stay("runner", mm(1), rope_9, {seat, line()}));
  Reading reading;
  reading.runs = {sourced(mm(10'000)), sourced(mm(10'004))};
  reading.offset = sourced(mm(12));
  reading.hoist_offset = sourced(mm(60));
  builder.rig.stays[0].readings.push_back(reading);
  const std::set<std::string> expected{"pin-to-pin of runner",
                                       "run 1 of the reading of runner",
                                       "run 2 of the reading of runner",
                                       "offset of the reading of runner",
                                       "hoist offset of the reading of runner",
                                       "diameter of hmpe-9",
                                       "length of lashing-4",
                                       "shortest of lashing-4",
                                       "longest of lashing-4",
                                       "wrap of lashing-4",
                                       "setting of lashing-4",
                                       "spare bury at lashing-4",
                                       "bury of long-bury",
                                       "eye allowance of long-bury",
                                       "tail to trim of long-bury",
                                       "contraction of long-bury",
                                       "recovered of long-bury"};
  EXPECT_EQ(names_of_fields(builder), expected);
}

} // namespace
} // namespace sheerpole::rig_uncertainty_test
