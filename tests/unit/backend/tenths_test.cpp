#include "backend/tenths.hpp"
#include "backend/text_page.hpp"
#include "units/format_length.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace sheerpole::tenths_test {
namespace {

TEST(Tenths, RoundHalvesAwayFromZero) {
  EXPECT_EQ(Tenths::of(Length::millimetres(51.84)).count, 518);
  EXPECT_EQ(Tenths::of(Length::millimetres(0.25)).count, 3);
  EXPECT_EQ(Tenths::of(Length::millimetres(-0.25)).count, -3);
  EXPECT_EQ(Tenths::of(Length::millimetres(-0.04)).count, 0);
  EXPECT_EQ(Tenths::of(Length::millimetres(4.45)).count, 45);
}

TEST(Tenths, AreWrittenWithOneDecimal) {
  EXPECT_EQ(format_tenths({116417}), "11641.7");
  EXPECT_EQ(format_tenths({-5}), "-0.5");
  EXPECT_EQ(format_tenths({0}), "0.0");
  EXPECT_EQ(format_signed({480}), "+48.0");
  EXPECT_EQ(format_signed({-480}), "-48.0");
}

RC_GTEST_PROP(Tenths, AgreeWithTheWrittenLength, ()) {
  const auto micrometres = *rc::gen::inRange(-40'000'000, 40'000'000);
  const Length length = Length::metres(micrometres * 1e-6);
  RC_ASSERT(format_tenths(Tenths::of(length)) == format_millimetres(length, 1));
}

TEST(Tenths, OfAnUnknownLengthBearTheNameOfItsX) {
  EXPECT_EQ(format_total(true, {-40}), "X - 4.0");
  EXPECT_EQ(format_total(true, {123}, x_of_stay("cap-shroud.port")), "X(cap-shroud.port) + 12.3");
  EXPECT_EQ(format_total(true, {}, x_of_stay("forestay")), "X(forestay)");
  EXPECT_EQ(format_total(false, {123}, x_of_stay("forestay")), "12.3");
}

TEST(NameAndAmount, KeepTheirColumnsAsLongAsTheyCan) {
  EXPECT_EQ(name_and_amount("body", "12.3", 8, 6), "body      12.3");
  EXPECT_EQ(name_and_amount("body", "X - 123.4", 8, 6), "body X - 123.4");
  EXPECT_EQ(name_and_amount("body so far", "X(fore) - 123.4", 8, 6), "body so far X(fore) - 123.4");
}

} // namespace
} // namespace sheerpole::tenths_test
