#include "calculate/joints/joint_comparison.hpp"

#include <gtest/gtest.h>

#include <string>

namespace sheerpole::split_pin_test {
namespace {

std::optional<SplitPin> for_pin(const std::string& size) {
  return split_pin_for(parse_named_size(size).value());
}

// IS 549, which is equal to ISO 1234: split pin by the diameter of the clevis pin, over one bound up to and
// with the next. The page that was read prints 1.8 in place of 1.6; a table of split pins has 1.6.
TEST(SplitPin, OfAMetricPinIsThatOfIso1234) {
  const struct {
    const char* to;
    const char* just_over;
    double split_pin;
  } rows[] = {{"3 mm", "2.1 mm", 0.8},   {"4 mm", "3.1 mm", 1.0},   {"5 mm", "4.1 mm", 1.2},
              {"6 mm", "5.1 mm", 1.6},   {"8 mm", "6.1 mm", 2.0},   {"9 mm", "8.1 mm", 2.5},
              {"12 mm", "9.1 mm", 3.2},  {"17 mm", "12.1 mm", 4.0}, {"23 mm", "17.1 mm", 5.0},
              {"29 mm", "23.1 mm", 6.3}, {"44 mm", "29.1 mm", 8.0}};
  for (const auto& row : rows)
    for (const char* pin : {row.to, row.just_over}) {
      const auto found = for_pin(pin);
      ASSERT_TRUE(found) << pin;
      EXPECT_DOUBLE_EQ(found->diameter.millimetres(), row.split_pin) << pin;
      EXPECT_EQ(found->standard, "ISO 1234");
    }
  EXPECT_EQ(for_pin("12 mm")->name, "3.2 mm");
  EXPECT_EQ(for_pin("12.1 mm")->name, "4 mm");
  EXPECT_FALSE(for_pin("2 mm"));
  EXPECT_FALSE(for_pin("45 mm"));
}

// ASME B18.8.1-1994, cotter by nominal pin size.
TEST(SplitPin, OfAnInchPinIsThatOfAsmeB1881) {
  const struct {
    const char* pin;
    const char* cotter;
    double inches;
  } rows[] = {{"3/16 in", "1/16 in", 1.0 / 16}, {"1/4 in", "1/16 in", 1.0 / 16},
              {"5/16 in", "3/32 in", 3.0 / 32}, {"3/8 in", "3/32 in", 3.0 / 32},
              {"7/16 in", "3/32 in", 3.0 / 32}, {"1/2 in", "1/8 in", 1.0 / 8},
              {"5/8 in", "1/8 in", 1.0 / 8},    {"3/4 in", "5/32 in", 5.0 / 32},
              {"7/8 in", "5/32 in", 5.0 / 32},  {"1 in", "5/32 in", 5.0 / 32}};
  for (const auto& row : rows) {
    const auto found = for_pin(row.pin);
    ASSERT_TRUE(found) << row.pin;
    EXPECT_EQ(found->name, row.cotter);
    EXPECT_DOUBLE_EQ(found->diameter.inches(), row.inches) << row.pin;
    EXPECT_EQ(found->standard, "ASME B18.8.1");
  }
  EXPECT_FALSE(for_pin("9/16 in"));
}

} // namespace
} // namespace sheerpole::split_pin_test
