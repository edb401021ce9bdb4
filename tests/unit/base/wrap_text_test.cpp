#include "base/code_point.hpp"

#include <gmock/gmock.h>

namespace sheerpole::wrap_text_test {
namespace {

using testing::ElementsAre;

TEST(WrapText, BreaksAtBlanks) {
  EXPECT_THAT(wrap_text("one stay at a time", 8), ElementsAre("one stay", "at a", "time"));
  EXPECT_THAT(wrap_text("one stay", 8), ElementsAre("one stay"));
  EXPECT_THAT(wrap_text("one  stay\nat", 20), ElementsAre("one stay at"));
}

TEST(WrapText, LeavesALongWordWhole) {
  EXPECT_THAT(wrap_text("a quick-release-lever here", 8), ElementsAre("a", "quick-release-lever", "here"));
}

TEST(WrapText, GivesOneLineForNothing) {
  EXPECT_THAT(wrap_text("", 8), ElementsAre(""));
}

TEST(WrapText, CountsColumnsAndNotBytes) {
  EXPECT_THAT(wrap_text("\xC3\xA9\xC3\xA9\xC3\xA9 \xC3\xA9\xC3\xA9\xC3\xA9", 7),
              ElementsAre("\xC3\xA9\xC3\xA9\xC3\xA9 \xC3\xA9\xC3\xA9\xC3\xA9"));
}

} // namespace
} // namespace sheerpole::wrap_text_test
