#include "unit/calculate/compiled_rig.hpp"

#include <gtest/gtest.h>

#include <string>

namespace sheerpole::estimate_short_test {
namespace {

/// A stay on a cord with 600 mm of hardware, its cord 40 mm longer than the pins are apart.
bool found_with(const std::string& estimate, const std::string& offset) {
  return test::found(
      test::compiled("language 1\nwire wire-6 {\n  construction: \"1x19\"\n  size: \"6 mm\"\n}\n"
                     "link strop {\n  length: 600 mm\n}\ncord white { }\n"
                     "stay fore {\n  line: wire-6\n  estimate: " +
                     estimate +
                     "\n  stack {\n    line\n    strop\n  }\n}\n"
                     "reading of fore {\n  method: messenger\n  cord: white\n  knots: 3\n  offset: " +
                     offset + "\n}\n"),
      "estimate-short");
}

TEST(EstimateShort, IsOneThatItsHardwareTakesWhole) {
  for (const char* offset : {"0 mm", "40 mm"}) { // what is taken off X is not in the estimate
    EXPECT_TRUE(found_with("14 in", offset)) << offset;
    EXPECT_TRUE(found_with("600 mm", offset)) << offset;
    EXPECT_FALSE(found_with("601 mm", offset)) << offset;
  }
}

std::string stay_of(const std::string& estimate, const std::string& length,
                    const std::string& limits = "") {
  return "language 1\nwire wire-6 {\n  construction: \"1x19\"\n  size: \"6 mm\"\n}\n"
         "cord white { }\nstay fore {\n  line: wire-6\n  estimate: " +
         estimate +
         "\n  stack {\n    line\n  }\n}\n"
         "reading of fore {\n  method: messenger\n  cord: white\n  knots: 3\n" +
         length + "}\n" + limits;
}

// 10 % of the longer: 1.2 m of 12 m.
TEST(EstimateFar, IsMoreThanATenthOfTheLonger) {
  const auto far = [](const std::string& estimate, const std::string& length) {
    return test::found(test::compiled(stay_of(estimate, length)), "estimate-far");
  };
  EXPECT_FALSE(far("12 m", "  cord-length: 10.8 m\n"));
  EXPECT_TRUE(far("12 m", "  cord-length: 10.79 m\n"));
  EXPECT_FALSE(far("10.8 m", "  cord-length: 12 m\n"));
  EXPECT_TRUE(far("10.79 m", "  cord-length: 12 m\n"));
  EXPECT_TRUE(far("38 ft", "  cord-length: 38 m\n"));
  EXPECT_FALSE(far("38 ft", ""));                                           // X has no number
  EXPECT_FALSE(far("10.9 m", "  cord-length: 12.1 m\n  offset: 100 mm\n")); // pin to pin 12 m
}

TEST(EstimateFar, IsMovedAndSwitchedOffByItsLimit) {
  const auto far = [](const std::string& limit) {
    return test::found(test::compiled(stay_of("12 m", "  cord-length: 10 m\n",
                                              "limits {\n  estimate-apart: " + limit + "\n}\n")),
                       "estimate-far");
  };
  EXPECT_TRUE(far("10 %"));
  EXPECT_FALSE(far("20 %"));
  EXPECT_FALSE(far("off"));
}

TEST(EstimateFar, OffersTheLengthRoundedUp) {
  const std::string text = stay_of("8 m", "  cord-length: 11.64 m\n");
  for (const Diagnostic& finding : test::compiled(text).findings)
    if (finding.slug == "estimate-far") {
      ASSERT_TRUE(finding.edit);
      EXPECT_EQ(text.substr(finding.edit->span.begin, finding.edit->span.end - finding.edit->span.begin),
                "8 m");
      EXPECT_EQ(finding.edit->replacement, "11.7 m");
      return;
    }
  FAIL();
}

} // namespace
} // namespace sheerpole::estimate_short_test
