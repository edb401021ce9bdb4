#include "calculate/cut/contraction.hpp"

#include "calculate/calculate.hpp"
#include "unit/calculate/compiled_rig.hpp"
#include "wording/say.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <string>
#include <vector>

namespace sheerpole::contraction_test {
namespace {

using test::compiled;
using test::found;
using test::term_mm;

/// A test splice of 648 mm in which 2000 mm became so many.
std::string test_splice(const char* after, const char* date, const std::string& more = "") {
  return std::string("test-splice of hmpe-9 {\n  bury: 648 mm\n  before: 2_000 mm\n  after: ") + after +
         "\n  date: " + date + "\n" + more + "}\n";
}

std::string rig_with(const std::string& splice, const std::string& tests,
                     const std::string& settings = "") {
  return "language 1\n"
         "rope hmpe-9 {\n  construction: \"12-strand HMPE heat-set\"\n  size: \"9 mm\"\n}\n"
         "splice long-bury {\n  bury: 648 mm\n  eye-allowance: 12 d\n" +
         splice +
         "}\n"
         "splice short-bury {\n  bury: 648 mm\n  eye-allowance: 12 d\n}\n"
         "thimble thimble-16 {\n  length: 16 mm\n}\n"
         "turnbuckle bottle-12 {\n  shortest: 300 mm\n  longest: 450 mm\n"
         "  upper: jaw (gap: 14 mm, pin: \"12 mm\")\n  lower: jaw (gap: 14 mm, pin: \"12 mm\")\n}\n" +
         tests + "stay runner {\n  line: hmpe-9\n  pin-to-pin: 10 m\n" + settings +
         "  stack {\n    thimble-16 (splice: long-bury)\n    line\n    thimble-16 (splice: long-bury)\n"
         "    bottle-12 (length: 380 mm)\n  }\n}\n";
}

const Piece& piece_of(const Compilation& rig) {
  return rig.derived->stays[0].pieces[0];
}

double contraction_mm(const Compilation& rig) {
  return term_mm(piece_of(rig).cut, TermKind::contraction, WhichEnd::upper);
}

// Arithmetic: 65, 40 and 48 mm over a bury of 648 mm have the mean 51 mm.
TEST(Contraction, IsTheMeanOfAllTestSplicesInAnyOrder) {
  std::vector<std::string> tests{test_splice("1_935 mm", "2026-04-11"),
                                 test_splice("1_960 mm", "2026-04-13"),
                                 test_splice("1_952 mm", "2026-04-12")};
  std::sort(tests.begin(), tests.end());
  std::optional<double> first;
  do {
    const Compilation rig = compiled(rig_with("", tests[0] + tests[1] + tests[2]));
    ASSERT_TRUE(rig.derived);
    const double cut = piece_of(rig).cut.known().metres();
    EXPECT_NEAR(contraction_mm(rig), 51.0, 1e-9);
    EXPECT_EQ(cut, first.value_or(cut)) << "to the last bit";
    first = cut;
  } while (std::next_permutation(tests.begin(), tests.end()));
}

TEST(Contraction, ATestSpliceGoesBeforeWhatIsNotMeasured) {
  const std::string test = test_splice("1_935 mm", "2026-04-11");
  for (const char* source : {"practice", "assumed", "maker", ""})
    EXPECT_NEAR(
        contraction_mm(compiled(rig_with(std::string("  contraction: 3 % ") + source + "\n", test))), 65.0,
        1e-9)
        << source;
  const Compilation measured = compiled(rig_with("  contraction: 9.5 % measured\n", test));
  EXPECT_NEAR(contraction_mm(measured), 0.095 * 648, 1e-9);
  EXPECT_FALSE(found(measured, "contraction-differs")) << "9.5 % and 10.03 % are one rope";
  EXPECT_TRUE(found(compiled(rig_with("  contraction: 3 % practice\n", test)), "contraction-differs"));
}

TEST(Contraction, DifferenceBeyondTheScatterIsFound) {
  const auto differ = [](const char* one, const char* other) {
    return found(compiled(rig_with("", test_splice(one, "2026-04-11") + test_splice(other, "2026-04-12"))),
                 "test-splices-differ");
  };
  EXPECT_TRUE(differ("1_935 mm", "1_960 mm")) << "65 and 40 mm: 25 of 52.5 are 48 %";
  EXPECT_FALSE(differ("1_945 mm", "1_955 mm")) << "55 and 45 mm: 20 %";
  EXPECT_TRUE(differ("1_942.3 mm", "1_957.5 mm")) << "57.7 and 42.5 mm: 30.3 %";
}

TEST(Contraction, ATestOfOneSpliceCountsForThatAlone) {
  const std::string of_other = test_splice("1_900 mm", "2026-04-12", "  splice: short-bury\n");
  EXPECT_NEAR(contraction_mm(compiled(rig_with("", test_splice("1_950 mm", "2026-04-11") + of_other))),
              50.0, 1e-9);
  EXPECT_FALSE(piece_of(compiled(rig_with("", of_other))).missing.empty())
      << "nothing is known of long-bury";
}

// Common practice, no source: by the rule the cut counts no contraction, and until the splices have set the
// stay is short by it: 2 x 52 mm over 648 mm. The screw gives out 70 mm, set to 340 mm 110 mm.
TEST(FirstFit, IsShortByTheContractionAndNeedsRoom) {
  const std::string rule = "  contraction-rule: equals-first-creep\n";
  const std::string test = test_splice("1_948 mm", "2026-04-11");
  const Compilation tight = compiled(rig_with(rule, test));
  ASSERT_TRUE(tight.derived);
  const DerivedStay& stay = tight.derived->stays[0];
  ASSERT_TRUE(stay.first_fit && stay.first_fit->short_by);
  EXPECT_NEAR(stay.first_fit->short_by->millimetres(), 104.0, 1e-9);
  EXPECT_NEAR(stay.first_fit->to_slacken.millimetres(), 70.0, 1e-9);
  EXPECT_TRUE(piece_of(tight).missing.empty());
  EXPECT_FALSE(piece_of(tight).blocked.empty());
  EXPECT_TRUE(found(tight, "first-fit-no-room"));
  EXPECT_NEAR((piece_of(tight).cut.known() - piece_of(tight).body.known()).millimetres(), 2 * (648 + 108),
              1e-9);
  ASSERT_TRUE(stay.account.at_first_fit);
  EXPECT_NEAR(stay.account.at_first_fit->to_slacken.millimetres(), 70.0 - 104.0, 1e-9);
  std::string closed = rig_with(rule, test);
  closed.replace(closed.find("380 mm"), 6, "340 mm");
  const Compilation room = compiled(closed);
  EXPECT_TRUE(piece_of(room).blocked.empty());
  EXPECT_FALSE(found(room, "first-fit-no-room"));
}

TEST(FirstFit, TheRuleGivesWayToWhatIsMeasuredOfSetting) {
  const Compilation rig = compiled(rig_with("  contraction-rule: equals-first-creep\n",
                                            test_splice("1_948 mm", "2026-04-11", "  set: 1_974 mm\n")));
  EXPECT_FALSE(rig.derived->stays[0].first_fit);
  EXPECT_NEAR(contraction_mm(rig), 52.0, 1e-9);
  EXPECT_NEAR(term_mm(piece_of(rig).cut, TermKind::contraction_given_back, WhichEnd::upper), -26.0, 1e-9);
}

} // namespace
} // namespace sheerpole::contraction_test
