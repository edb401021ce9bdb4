#include "plugins/proof-sheet/proof_sheet.hpp"
#include "unit/backend/measured_shroud.hpp"

#include <gmock/gmock.h>

namespace sheerpole::proof_sheet_test {
namespace {

using testing::HasSubstr;
using testing::Not;

std::string text_of(const SampleRig& sample) {
  const OutputBundle bundle = ProofSheet().generate({sample.checked()});
  EXPECT_EQ(bundle.files.at(0).name, "proof-sheet.txt");
  return bundle.files.at(0).bytes;
}

/// The amounts in their column from a heading down to the first total, in tenths, and that total.
std::pair<long, long> added_up(const std::string& text, const std::string& from, const std::string& total) {
  long sum = 0;
  std::size_t at = text.find(from + "\n") + from.size() + 1;
  while (true) {
    const std::size_t end = text.find('\n', at);
    const std::string line = text.substr(at, end - at);
    at = end + 1;
    if (line.size() < 48 || line.substr(36, 12).find_first_not_of(' ') == std::string::npos)
      continue; // the text goes on
    const std::string amount = line.substr(36, 12);
    const long tenths = std::lround(std::stod(amount) * 10.0);
    if (line.starts_with("  = " + total))
      return {sum, tenths};
    if (!line.starts_with("  = "))
      sum += tenths;
  }
}

TEST(ProofSheet, TotalsAreSumsOfTheRowsAsPrinted) {
  const std::string text = text_of(measured_shroud());
  for (const char* total : {"pin-to-pin", "body", "CUT"}) {
    const auto [sum, printed] = added_up(text, "The sum", total);
    EXPECT_EQ(sum, printed) << total;
  }
  EXPECT_EQ(added_up(text, "The sum", "CUT").second, 129976);
}

TEST(ProofSheet, SetsTheWaysSideBySide) {
  const std::string text = text_of(measured_shroud());
  EXPECT_THAT(text, HasSubstr("by the stated length                   11642.0   used: there is no reading; "
                              "what is stated counts\n"));
  EXPECT_THAT(text, HasSubstr("by the points of its path              11725.0   not used; the one used "
                              "differs by -83.0 mm;\n"));
  EXPECT_THAT(text, HasSubstr("toggle-12, 82 mm, was left out: explains it to"));
  EXPECT_THAT(text, HasSubstr("tape pull: pull of the reading is not"));
  EXPECT_THAT(text, HasSubstr("not counted"));
}

TEST(ProofSheet, SaysHowWellItIsKnownInThreeWays) {
  const std::string text = text_of(measured_shroud());
  EXPECT_THAT(text, HasSubstr("at worst                          -13.3     +13.2   every input"));
  EXPECT_THAT(text, HasSubstr("law of propagation, 95 %           -7.3      +7.3   1.96 times a"));
  EXPECT_THAT(text,
              HasSubstr("Monte Carlo, 95 %                  -6.8      +6.9   of 100 000 draws, seed 1"));
  EXPECT_THAT(text, HasSubstr("the adjuster reaches in all of 100 000 draws"));
  EXPECT_THAT(text, Not(HasSubstr("100 %")));
  EXPECT_THAT(text,
              HasSubstr("1.      86.4 %   eye-allowance of long-bury, which moves it by +6.0 mm at its"));
  EXPECT_THAT(text, HasSubstr("  length of thimble-9; setting of lashing-4\n"));
}

TEST(ProofSheet, SaysWhenNothingIsKnown) {
  SampleRig sample;
  sample.add_unknown_stay(20.0);
  const std::string text = text_of(sample);
  EXPECT_THAT(text, HasSubstr("not known as a number       X(forestay) - 20.0   used; there is no other"));
  EXPECT_THAT(text, HasSubstr("= CUT                       X(forestay) + 32.0   = X(forestay) + 1 1/4\""));
  EXPECT_THAT(text, HasSubstr("not checked: no bounds given"));
}

TEST(ProofSheet, ListsTensionsAndTheLineBefore) {
  const std::string text = text_of(measured_shroud());
  EXPECT_THAT(text,
              HasSubstr("by a swing                             3.15 kN   4 m L2 f2; 3.4 % of the break "
                        "load; owner,"));
  EXPECT_THAT(text, HasSubstr("not checked   linear-mass of hmpe-9 is not stated"));
  EXPECT_THAT(text,
              HasSubstr("hmpe-9 in place of wire-6\n  stiffness                                 1.56   "
                        "times that of the old line"));
}

TEST(ProofSheet, IsNotWiderThanThePage) {
  const std::string text = text_of(measured_shroud());
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t end = text.find('\n', at);
    EXPECT_LE(end - at, 100u) << text.substr(at, end - at);
    at = end + 1;
  }
}

} // namespace
} // namespace sheerpole::proof_sheet_test
