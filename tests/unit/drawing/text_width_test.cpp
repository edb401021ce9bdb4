#include "backend/drawing/label_text.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <string>

namespace sheerpole::text_width_test {
namespace {

// Advance widths in 1/1000 em as printed in the Adobe Helvetica metrics (from memory of the Core 14 AFM
// files): H 722, e 556, l 222, o 556, blank 278, W 944, digits 556, hyphen 333, period 278, m 833, x 500.
TEST(TextWidth, IsNearTheHelveticaMetricsAndNeverBelow) {
  const auto near_above = [](const char* text, double ems, double characters) {
    EXPECT_GE(text_width_in_ems(text), ems) << text;
    EXPECT_LE(text_width_in_ems(text), ems + 0.01 * characters) << text;
  };
  near_above("Hello", 0.722 + 0.556 + 2 * 0.222 + 0.556, 5);
  near_above("WWW", 3 * 0.944, 3);
  near_above("11642 mm", 5 * 0.556 + 0.278 + 2 * 0.833, 8);
  near_above("1x19", 3 * 0.556 + 0.500, 4);
  near_above("tip-2.", 0.278 + 0.222 + 0.556 + 0.333 + 0.556 + 0.278, 6);
}

TEST(TextWidth, CountsAnUnknownCharacterAsTheWidest) {
  double widest = 0;
  for (char c = ' '; c <= '~'; ++c)
    widest = std::max(widest, text_width_in_ems(std::string(1, c)));
  EXPECT_DOUBLE_EQ(text_width_in_ems("\xe8\x88\xb9"), widest); // one Chinese character, three bytes
  EXPECT_DOUBLE_EQ(text_width_in_ems("\xc3\xa5"), widest);     // a with ring: not in the table
}

TEST(LabelBox, GrowsAwayFromTheAnchor) {
  const auto box = [](TextAnchor anchor) {
    return label_box({{100, 50}, "tip-1", 2.0, anchor, false, {}});
  };
  EXPECT_DOUBLE_EQ(box(TextAnchor::start).left, 100);
  EXPECT_DOUBLE_EQ(box(TextAnchor::end).right, 100);
  EXPECT_DOUBLE_EQ((box(TextAnchor::middle).left + box(TextAnchor::middle).right) / 2, 100);
  EXPECT_LT(box(TextAnchor::start).top, 50 - 0.72 * 2.0);    // cap height of Helvetica: 718
  EXPECT_GT(box(TextAnchor::start).bottom, 50 + 0.21 * 2.0); // descender: 207
}

TEST(WrapLabel, KeepsEveryWordAndTheWidth) {
  const std::vector<std::string> lines = wrap_label("long-link plates to the stem pin", 2.5, 20.0);
  ASSERT_GT(lines.size(), 1U);
  std::string joined;
  for (const std::string& line : lines) {
    joined += (joined.empty() ? "" : " ") + line;
    EXPECT_LE(label_box({{}, line, 2.5, TextAnchor::start, false, {}}).width(), 20.0 + 1e-9) << line;
  }
  EXPECT_EQ(joined, "long-link plates to the stem pin");
}

TEST(WrapLabel, BreaksAWordThatIsWiderThanTheLine) {
  const std::vector<std::string> lines = wrap_label("intermediate-tang-of-the-upper-mast", 2.5, 20.0);
  std::string joined;
  for (const std::string& line : lines) {
    joined += line;
    EXPECT_LE(label_box({{}, line, 2.5, TextAnchor::start, false, {}}).width(), 20.0 + 1e-9) << line;
  }
  EXPECT_EQ(joined, "intermediate-tang-of-the-upper-mast");
  EXPECT_EQ(lines.front(), "intermediate-");
}

TEST(WrapLabel, LeavesOneBlankBetweenWordsWhetherTheyFitOrNot) {
  for (const char* text :
       {"pin and eye", " pin and eye", "pin  and eye", "pin and eye ", "  pin and   eye  "}) {
    EXPECT_EQ(wrap_label(text, 2.5, 100.0), std::vector<std::string>{"pin and eye"}) << text;
    EXPECT_EQ(wrap_label(text, 2.5, 12.0), (std::vector<std::string>{"pin and", "eye"})) << text;
  }
}

TEST(WrapLabel, GivesOneLineForNothing) {
  EXPECT_EQ(wrap_label("", 2.5, 10.0), std::vector<std::string>{""});
}

} // namespace
} // namespace sheerpole::text_width_test
