#include "base/code_point.hpp"

#include <gtest/gtest.h>

namespace sheerpole::code_point_test {
namespace {

// Widths by Unicode Standard Annex 11, EastAsianWidth.txt: U+4E2D is W, U+FF21 is F, U+FF71 is H, U+00E9 is
// A or N; U+0301 is a combining mark (general category Mn).
TEST(CodePoint, CountsTheColumnsOfAScreen) {
  EXPECT_EQ(screen_columns(""), 0u);
  EXPECT_EQ(screen_columns("plate-a"), 7u);
  EXPECT_EQ(screen_columns("caf\xC3\xA9"), 4u);
  EXPECT_EQ(screen_columns("cafe\xCC\x81"), 4u);
  EXPECT_EQ(screen_columns("\xE4\xB8\xAD"), 2u);
  EXPECT_EQ(screen_columns("\xEF\xBC\xA1"), 2u);
  EXPECT_EQ(screen_columns("\xEF\xBD\xB1"), 1u);
  EXPECT_EQ(screen_columns("\xE2\x80\xB3"), 1u); // double prime
}

TEST(CodePoint, ReadsOneToFourBytes) {
  EXPECT_EQ(first_code_point("a").value, U'a');
  EXPECT_EQ(first_code_point("\xC2\xBD").value, 0xBDu);
  EXPECT_EQ(first_code_point("\xE2\x82\xAC").value, 0x20ACu);
  EXPECT_EQ(first_code_point("\xF0\x9F\x9A\xA2").value, 0x1F6A2u);
  EXPECT_EQ(first_code_point("\xF0\x9F\x9A\xA2").bytes, 4u);
}

TEST(CodePoint, IsWrittenAsItIsRead) {
  for (const char32_t sign :
       {0x0, 0x41, 0x7F, 0x80, 0x7FF, 0x800, 0x4E2D, 0xFFFD, 0x10000, 0x1F980, 0x10FFFF}) {
    const std::string bytes = utf8_of(sign);
    EXPECT_EQ(first_code_point(bytes).value, sign);
    EXPECT_EQ(first_code_point(bytes).bytes, bytes.size());
  }
}

TEST(CodePoint, TakesABadByteAlone) {
  for (const std::string_view bad :
       {"\xFFz", "\xC3", "\xC3(", "\xE2\x82", "\xC0\x80", "\xF5\x80\x80\x80"}) {
    EXPECT_EQ(first_code_point(bad).value, 0xFFFDu);
    EXPECT_EQ(first_code_point(bad).bytes, 1u);
  }
}

} // namespace
} // namespace sheerpole::code_point_test
