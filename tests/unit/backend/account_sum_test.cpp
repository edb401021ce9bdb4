#include "backend/printed_sums.hpp"

#include <gtest/gtest.h>

namespace sheerpole::account_sum_test {
namespace {

AccountEntry entry(double tightens, double slackens, bool dated = false, bool of_temperature = false) {
  AccountEntry result;
  result.tightens = Length::millimetres(tightens);
  result.slackens = Length::millimetres(slackens);
  result.dated = dated;
  result.of_temperature = of_temperature;
  return result;
}

// By hand: to tighten 110.0 - 21.9 - 7.3 - 5.9 = 74.9 less creep 0.4 or 2.1: 74.5, 72.8; to slacken
// 90.0 - 4.4 - 7.3 = 78.3 both times.
TEST(PrintedLeft, IsTheSumOfThePrintedRowsOfItsDate) {
  Account account;
  account.to_tighten = Length::millimetres(110.0);
  account.to_slacken = Length::millimetres(90.0);
  account.entries = {entry(21.87, 0.0),
                     entry(0.41, 0.0, true),
                     entry(2.07, 0.0, true),
                     entry(5.94, 0.0, false, true),
                     entry(0.0, 4.4, false, true),
                     entry(7.3, 7.3)};
  EXPECT_EQ(format_tenths(printed_left(account, 0).to_tighten), "74.5");
  EXPECT_EQ(format_tenths(printed_left(account, 1).to_tighten), "72.8");
  EXPECT_EQ(format_tenths(printed_left(account, 0).to_slacken), "78.3");
  EXPECT_EQ(format_tenths(printed_left(account, 1).to_slacken), "78.3");
}

// A piece that came out 1.14 mm longer than it was to be has its adjuster so much shorter from the first:
// 110.0 - 1.1 = 108.9 and 90.0 + 1.1 = 91.1 at every date, and at the first fit, where bedding-in has not
// come yet.
TEST(PrintedLeft, GoesByHowThePieceCameOut) {
  Account account;
  account.to_tighten = Length::millimetres(110.0);
  account.to_slacken = Length::millimetres(90.0);
  account.entries = {entry(21.87, 0.0), entry(0.0, 0.0, true), entry(1.14, -1.14)};
  account.entries.back().of_record = true;
  EXPECT_EQ(format_tenths(printed_left(account, 0).to_tighten), "87.0"); // 110.0 - 21.9 - 1.1
  EXPECT_EQ(format_tenths(printed_left(account, 0).to_slacken), "91.1");
  EXPECT_EQ(format_tenths(printed_at_first_fit(account).to_tighten), "108.9");
  EXPECT_EQ(format_tenths(printed_at_first_fit(account).to_slacken), "91.1");
}

// Of two temperatures that both slacken the stay the worse counts, not both.
TEST(PrintedLeft, TakesTheWorseTemperature) {
  Account account;
  account.to_tighten = Length::millimetres(10.0);
  account.entries = {entry(3.0, 0.0, false, true), entry(5.0, 0.0, false, true)};
  EXPECT_EQ(format_tenths(printed_left(account, 0).to_tighten), "5.0");
}

} // namespace
} // namespace sheerpole::account_sum_test
