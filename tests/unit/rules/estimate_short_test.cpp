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

} // namespace
} // namespace sheerpole::estimate_short_test
