#include "base/code_point.hpp"

#include <gtest/gtest.h>

namespace sheerpole::plain_text_test {
namespace {

const std::string replaced = "\xEF\xBF\xBD"; // U+FFFD

// Unicode 15.0: controls are general category Cc, section 23.7 lists the 66 noncharacters, Annex 9 the
// explicit formatting characters.
TEST(PlainText, ReplacesWhatIsNoSign) {
  for (const std::string hidden :
       {"\x01",   "\x0B",   "\x0D",   "\x1B",   "\x7F",       "\u0080",    "\u0085",
        "\u009F", "\u2028", "\u2029", "\u202A", "\u202E",     "\u2066",    "\u2069",
        "\uFDD0", "\uFDEF", "\uFFFE", "\uFFFF", "\U0001FFFE", "\U0010FFFF"})
    EXPECT_EQ(plain_text("a" + hidden + "b"), "a" + replaced + "b");
  EXPECT_EQ(plain_text(std::string(1, '\0')), replaced);
}

TEST(PlainText, LeavesSignsAlone) {
  for (const std::string text :
       {"", "a\tb\nc", " ~", "\u00A0", "\u00D8\u0142", "\u4E2D", "\u05E9\u05DC\u05D5\u05DD", "\u200E\u200F",
        "\u200B", "\u2027", "\u202F", "\u2065", "\u206A", "\uFDCF", "\uFDF0", "\uFFFD", "\U0001F980",
        "\U0010FFFD"})
    EXPECT_EQ(plain_text(text), text);
}

TEST(PlainText, ReplacesBytesThatAreNoUtf8) {
  EXPECT_EQ(plain_text("a\xFFz"), "a" + replaced + "z");
  EXPECT_EQ(plain_text("\xED\xA0\x80"), replaced); // a surrogate
}

} // namespace
} // namespace sheerpole::plain_text_test
