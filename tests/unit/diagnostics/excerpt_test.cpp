#include "diagnostics/excerpt.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>

namespace sheerpole::excerpt_test {
namespace {

TEST(Excerpt, LeavesAShortLineAlone) {
  const Excerpt shown = excerpt("  length: 12", 10, 12, 40);
  EXPECT_EQ(shown.text, "  length: 12");
  EXPECT_EQ(shown.mark_begin, 10u);
  EXPECT_EQ(shown.mark_width, 2u);
}

TEST(Excerpt, CoversATabWhole) {
  const Excerpt shown = excerpt("ab\tc", 2, 3, 40);
  EXPECT_EQ(shown.text, "ab  c");
  EXPECT_EQ(shown.mark_begin, 2u);
  EXPECT_EQ(shown.mark_width, 2u);
}

TEST(Excerpt, CutsASpotThatIsLongerThanTheLine) {
  const Excerpt shown = excerpt(std::string(200, 'a'), 10, 190, 40);
  EXPECT_LE(shown.text.size(), 40u);
  EXPECT_LE(shown.mark_begin + shown.mark_width, 40u);
}

RC_GTEST_PROP(Excerpt, MarksTheVerySpotInAnyCrop, ()) {
  const auto before = *rc::gen::inRange(0, 300);
  const auto after = *rc::gen::inRange(0, 300);
  const auto width = *rc::gen::inRange(30, 120);
  const std::string line = std::string(before, 'a') + "SPOT" + std::string(after, 'b');
  const Excerpt shown = excerpt(line, before, before + 4, width);
  RC_ASSERT(shown.text.size() <= static_cast<std::size_t>(width));
  RC_ASSERT(shown.text.substr(shown.mark_begin, shown.mark_width) == "SPOT");
}

} // namespace
} // namespace sheerpole::excerpt_test
