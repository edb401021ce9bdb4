#include "base/calendar_day.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace sheerpole::calendar_day_test {
namespace {

// Day numbers of POSIX, seconds since the Epoch over 86 400 (IEEE Std 1003.1, 4.16): 946 684 800 s is
// 2000-01-01, 1 000 000 000 s falls on 2001-09-09.
TEST(CalendarDay, CountsAsPosixDoes) {
  EXPECT_EQ(parse_day("1970-01-01")->count, 0);
  EXPECT_EQ(parse_day("2000-01-01")->count, 946684800 / 86400);
  EXPECT_EQ(parse_day("2001-09-09")->count, 1000000000 / 86400);
}

TEST(CalendarDay, KnowsLeapYears) {
  EXPECT_EQ(parse_day("2024-03-01")->count - parse_day("2024-02-28")->count, 2);
  EXPECT_EQ(parse_day("2100-03-01")->count - parse_day("2100-02-28")->count, 1);
  EXPECT_FALSE(parse_day("2023-02-29"));
}

TEST(CalendarDay, TakesNothingElse) {
  for (const char* text :
       {"", "2026-5-2", "26-05-02", "2026/05/02", "2026-13-01", "2026-00-10", "2026-05-0x", "2026-05-021"})
    EXPECT_FALSE(parse_day(text)) << text;
}

RC_GTEST_PROP(CalendarDay, IsReadBackAsWritten, ()) {
  const long count = *rc::gen::inRange(-20000L, 100000L);
  const auto read = parse_day(format_day({count}));
  RC_ASSERT(read.has_value());
  RC_ASSERT(read->count == count);
}

} // namespace
} // namespace sheerpole::calendar_day_test
