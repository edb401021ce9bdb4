#include "model/stated.hpp"

#include <gtest/gtest.h>

namespace sheerpole::stated_test {

TEST(Stated, NoneAndItsLikeSayThatThereIsNothing) {
  for (const char* text : {"none", "None", "NONE", " no ", "nothing", "Nil.", "not secured"})
    EXPECT_EQ(read_stated(text).answer, Answer::nothing) << text;
}

TEST(Stated, AWordThatTellsNoWayIsNotStated) {
  for (const char* text : {"", "?", "yes", "OK", "unknown", "n/a", " to be checked ", "."})
    EXPECT_EQ(read_stated(text).answer, Answer::unstated) << text;
  EXPECT_FALSE(says_nothing("")); // nothing is written, so no word of it is odd
  EXPECT_TRUE(says_nothing("yes"));
  EXPECT_TRUE(says_nothing(" . "));
}

TEST(Stated, AWayIsKeptAsWritten) {
  const Stated stated = read_stated("Split pin, no tape");
  EXPECT_EQ(stated.answer, Answer::stated);
  EXPECT_EQ(stated.text, "Split pin, no tape");
  EXPECT_FALSE(says_nothing("none"));
}

} // namespace sheerpole::stated_test
