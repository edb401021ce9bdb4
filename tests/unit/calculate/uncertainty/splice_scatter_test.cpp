#include "calculate/calculate.hpp"
#include "calculate/uncertainty/random_numbers.hpp"
#include "unit/calculate/compiled_rig.hpp"
#include "unit/calculate/rig_builder.hpp"
#include "wording/say.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

namespace sheerpole::splice_scatter_test {
namespace {

using namespace build;

Particular length_fact(const char* name, double millimetres) {
  Particular fact;
  fact.name = name;
  fact.value.value = {millimetres / 1000.0, dimension::length};
  return fact;
}

Record test_splice(double contraction) {
  Record record;
  record.kind = RecordKind::test_splice;
  record.of = "hmpe-9";
  record.facts = {length_fact("bury", 648.0), length_fact("before", 2000.0),
                  length_fact("after", 2000.0 - 648.0 * contraction)};
  return record;
}

/// A part with its own test wrap, known to two standard deviations.
Part thimble(RigBuilder& builder, std::string name, double wrap_mm, double bound_mm) {
  Part part = fixed(std::move(name), mm(0));
  part.wrap = sourced(mm(wrap_mm));
  part.wrap->tolerance = mm(bound_mm);
  builder.rig.bounds.push_back({"wrap", bound_mm / 1000.0, dimension::length, at(700)});
  part.wrap->influences = {
      {BoundId{static_cast<std::uint32_t>(builder.rig.bounds.size() - 1)}, bound_mm / 1000.0}};
  return part;
}

struct Shares {
  double drawn = 0.0;      ///< of the 95 % range by Monte Carlo
  double propagated = 0.0; ///< of that by the law of propagation
};

// A truth that is known: splices of 648 mm contract by 8 % with a scatter of a tenth of it from one to the
// next, and each eye comes out with a scatter of 3 mm about its wrap. The rigger makes three test splices
// and then the two of the stay.
Shares trials_that_hold(std::uint64_t from, std::size_t trials) {
  constexpr double share = 0.08;
  constexpr double scatter = 0.1 * share;
  constexpr double eye = 3.0;
  Shares held;
  for (std::size_t trial = 0; trial < trials; ++trial) {
    RandomStream stream(from + trial, 0, 0);
    const auto normal = [&] { return normal_quantile(stream.uniform()); };
    RigBuilder builder;
    Splice splice;
    splice.name = "long-bury";
    splice.bury = as_length(mm(648));
    const SpliceId made = builder.add(splice);
    const PartId upper = builder.add(thimble(builder, "thimble-a", 159.0, 2.0 * eye));
    const PartId lower = builder.add(thimble(builder, "thimble-b", 159.0, 2.0 * eye));
    builder.add(stay("runner", mm(10'000), builder.add(rope("hmpe-9", mm(9))),
                     {spliced(upper, made), line(), spliced(lower, made)}));
    for (int test = 0; test < 3; ++test)
      builder.rig.records.push_back(test_splice(share + scatter * normal()));
    Record settings;
    settings.kind = RecordKind::uncertainty;
    settings.name = "uncertainty";
    Particular distribution;
    distribution.name = "distribution";
    distribution.text = "normal-at-two";
    Particular draws;
    draws.name = "draws";
    draws.value.value.si = 2000.0;
    settings.facts = {distribution, draws};
    builder.rig.records.push_back(settings);
    const Derived derived = calculate(builder.rig, 1);
    const DerivedStay& runner = derived.stays[0];
    if (!runner.uncertainty)
      return {};
    // What the cut ought to have been, so that the stay comes out right.
    double wanted = 10'000.0;
    for (int end = 0; end < 2; ++end)
      wanted += 648.0 + 159.0 + eye * normal() + 648.0 * (share + scatter * normal());
    const double off = wanted - runner.pieces[0].cut.known().millimetres();
    const Uncertainty& known = *runner.uncertainty;
    held.drawn += off >= known.drawn_low.millimetres() && off <= known.drawn_high.millimetres() ? 1.0 : 0.0;
    held.propagated += std::fabs(off) <= known.expanded.millimetres() ? 1.0 : 0.0;
  }
  held.drawn /= static_cast<double>(trials);
  held.propagated /= static_cast<double>(trials);
  return held;
}

TEST(SpliceScatter, TheTruthLiesInTheRangeAsOftenAsItSays) {
  const Shares held = trials_that_hold(7'000, 1500);
  EXPECT_GE(held.drawn, 0.93);
  EXPECT_LE(held.drawn, 0.97);
  // With so few tests the effective degrees of freedom of Welch and Satterthwaite are an estimate as well.
  EXPECT_GE(held.propagated, 0.92);
  EXPECT_LE(held.propagated, 0.97);
}

std::string rig_with(const std::string& splice, const std::string& more) {
  return "language 1\n"
         "rope hmpe-9 {\n  construction: \"12-strand HMPE heat-set\"\n  size: \"9 mm\"\n}\n"
         "splice long-bury {\n  bury: 648 mm ± 0 mm\n  eye-allowance: 108 mm ± 0 mm\n" +
         splice +
         "}\n"
         "thimble thimble-16 {\n  length: 16 mm ± 0 mm\n}\n"
         "stay runner {\n  line: hmpe-9\n  pin-to-pin: 10 m ± 1 mm\n  stack {\n"
         "    thimble-16 (splice: long-bury)\n    line\n    thimble-16 (splice: long-bury)\n  }\n}\n" +
         more;
}

std::string one_test(const char* after) {
  return std::string("test-splice of hmpe-9 {\n  bury: 648 mm\n  before: 2_000 mm\n  after: ") + after +
         "\n}\n";
}

std::vector<std::string> unknown(const Compilation& rig) {
  return say_each(*rig.rig, rig.derived->stays[0].uncertainty->without_bound);
}

TEST(SpliceScatter, OfOneTestIsNamedAsNotKnown) {
  const Compilation rig = test::compiled(rig_with("", one_test("1_950 mm")));
  const auto named = unknown(rig);
  EXPECT_NE(std::find(named.begin(), named.end(),
                      "by how much the splices of hmpe-9 differ from its one test splice"),
            named.end());
}

// Arithmetic: 65 and 40 mm have the standard deviation 25 / sqrt(2) = 17.68 mm. Two splices off the mean of
// two: sqrt(4 / 2 + 2) = 2 times that, 35.36 mm, with one degree of freedom.
TEST(SpliceScatter, OfTwoTestsIsOneInputForBothEnds) {
  const Compilation rig = test::compiled(rig_with("", one_test("1_935 mm") + one_test("1_960 mm")));
  const Uncertainty& found = *rig.derived->stays[0].uncertainty;
  ASSERT_FALSE(found.shares.empty());
  const UncertainInput& input = rig.derived->inputs[found.shares[0].input];
  EXPECT_EQ(say(*rig.rig, input.name), "scatter of the test splices of hmpe-9");
  EXPECT_EQ(input.freedom, 1u);
  EXPECT_NEAR(found.shares[0].standard.millimetres(), 2.0 * 25.0 / std::sqrt(2.0), 1e-6);
  EXPECT_TRUE(unknown(rig).empty()) << unknown(rig).front();
}

TEST(SpliceScatter, EqualTestsAreNoBetterThanTheirMarks) {
  const Compilation rig = test::compiled(rig_with("", one_test("1_950 mm") + one_test("1_950 mm")));
  const Uncertainty& found = *rig.derived->stays[0].uncertainty;
  // Half of 1 mm, rectangular, at two marks: 0.408 mm a splice; two splices off the mean of two: twice
  // that.
  double standard = 0.0;
  for (const UncertaintyShare& share : found.shares)
    if (rig.derived->inputs[share.input].freedom == 1)
      standard = share.standard.millimetres();
  EXPECT_NEAR(standard, 2.0 * 0.5 / std::sqrt(3.0) * std::sqrt(2.0), 1e-6);
}

TEST(SpliceScatter, EqualRunsAreNoBetterThanTheirScale) {
  const auto known = [](const char* runs, const char* more) {
    std::string text = rig_with("  contraction: 8 % ± 0 % measured\n", "");
    text.replace(text.find("  pin-to-pin: 10 m ± 1 mm\n"),
                 std::string("  pin-to-pin: 10 m ± 1 mm\n").size(), "");
    const Compilation rig =
        test::compiled(text + "reading of runner {\n  method: tape\n  runs: " + runs + "\n" + more + "}\n");
    const auto& found = rig.derived->stays[0].uncertainty;
    return found ? found->worst_high.millimetres() : 0.0;
  };
  EXPECT_NEAR(known("10_000 mm, 10_000 mm", ""), 0.5, 1e-6);
  EXPECT_NEAR(known("10.00 m, 10.00 m", ""), 5.0, 1e-6);
  EXPECT_NEAR(known("10_000 mm, 10_000 mm", "  resolution: 2 mm\n"), 2.0, 1e-6);
  EXPECT_NEAR(known("10_000 mm ± 3 mm", ""), 3.0, 1e-6) << "what it is off by is stated";
}

} // namespace
} // namespace sheerpole::splice_scatter_test
