#include "model/trade_words.hpp"

#include <gtest/gtest.h>

namespace sheerpole::trade_words_test {
namespace {

/// The suggestion for an odd text, "in order" for one that is not.
std::string odd(TradeSubject of, const char* text) {
  const auto found = odd_text(of, text);
  return found ? found->suggestion : "in order";
}

// Common practice, no source.
TEST(TradeWords, AWayThatIsKnownIsInOrder) {
  for (const char* text : {"split pin", "Split pins, taped over", "split pins through the studs",
                           "seizing wire", "lock nuts", "cotter ring", "moused with wire", ""})
    EXPECT_EQ(odd(TradeSubject::securing, text), "in order") << text;
  for (const char* text :
       {"lock stitch", "Lock-stitched at the throat", "whipped", "parts passed through each other"})
    EXPECT_EQ(odd(TradeSubject::locking, text), "in order") << text;
}

TEST(TradeWords, ThatNothingHoldsIsSaidByTheChecksOfThat) {
  for (const char* text : {"none", "No", "nothing."}) {
    EXPECT_EQ(odd(TradeSubject::securing, text), "in order") << text;
    EXPECT_EQ(odd(TradeSubject::locking, text), "in order") << text;
  }
}

TEST(TradeWords, AnotherWordIsOdd) {
  EXPECT_EQ(odd(TradeSubject::securing, "maybe"), "");
  EXPECT_EQ(odd(TradeSubject::securing, "?"), "");
  EXPECT_EQ(odd(TradeSubject::securing, "spilt pn"), "split pin");
  EXPECT_EQ(odd(TradeSubject::securing, "no split pin yet"), "");
  EXPECT_EQ(odd(TradeSubject::locking, "sitched"), "stitched");
  EXPECT_EQ(odd(TradeSubject::locking, "glue"), "");
}

TEST(TradeWords, AWordOfALineThatIsNearlyOneOfTheTradeIsOdd) {
  for (const char* text :
       {"12-strand HMPE heat-set", "12-strand HMPE, not heat-set", "1x19", "braided", "polyester cord",
        "short link", "solid rod", "braided over a core", "8-plait polyester, standing rigging"})
    EXPECT_EQ(odd(TradeSubject::construction, text), "in order") << text;
  EXPECT_EQ(odd(TradeSubject::construction, "12-stand HMPE"), "12-strand HMPE");
  EXPECT_EQ(odd(TradeSubject::construction, "12-strand HMEP"), "12-strand HMPE");
  EXPECT_EQ(odd(TradeSubject::construction, "polyster"), "polyester");
  EXPECT_EQ(odd(TradeSubject::construction, "as usual"), "");
  for (const char* text : {"316 stainless", "316L", "galvanised", "grade 40"})
    EXPECT_EQ(odd(TradeSubject::grade, text), "in order") << text;
  EXPECT_EQ(odd(TradeSubject::grade, "stainles"), "stainless");
  EXPECT_EQ(odd(TradeSubject::grade, "none"), "");
}

TEST(TradeWords, EveryWordOfTheTableIsInOrder) {
  for (const TradeSubject of :
       {TradeSubject::securing, TradeSubject::locking, TradeSubject::grade, TradeSubject::construction})
    for (const std::string_view word : trade_words(of))
      if (word != "x") { // alone it says nothing; it is that of 1x19
        EXPECT_EQ(odd(of, std::string(word).c_str()), "in order") << word;
      }
}

} // namespace
} // namespace sheerpole::trade_words_test
