#include "units/named_size.hpp"

#include <gtest/gtest.h>

namespace sheerpole::named_size_test {
namespace {

NamedSize size(std::string_view text) {
  auto parsed = parse_named_size(text);
  EXPECT_TRUE(parsed.ok()) << text;
  return parsed.ok() ? parsed.value() : NamedSize{};
}

TEST(NamedSizes, KeepTheirNameAndTheirSystem) {
  EXPECT_EQ(size("8 mm").name, "8 mm");
  EXPECT_EQ(size("8 mm").system, NamedSize::System::metric);
  EXPECT_DOUBLE_EQ(size("8 mm").diameter.millimetres(), 8.0);
  EXPECT_EQ(size("5/16 in").name, "5/16 in");
  EXPECT_EQ(size("5/16 in").system, NamedSize::System::inch);
  EXPECT_DOUBLE_EQ(size("5/16 in").diameter.millimetres(), 7.9375); // 25.4 * 5/16
  EXPECT_DOUBLE_EQ(size("5/16\"").diameter.millimetres(), 7.9375);
  EXPECT_DOUBLE_EQ(size("1 1/8 in").diameter.millimetres(), 28.575);
  EXPECT_DOUBLE_EQ(size("1-1/8\u2033").diameter.millimetres(), 28.575);
  EXPECT_DOUBLE_EQ(size("3/8''").diameter.millimetres(), 9.525);
  EXPECT_DOUBLE_EQ(size("0.5 in").diameter.millimetres(), 12.7);
}

TEST(NamedSizes, TheSameNumberInTwoSystemsIsNotTheSameSize) {
  EXPECT_FALSE(same_size(size("5/16 in"), size("8 mm"))); // 0.06 mm apart
  EXPECT_FALSE(same_size(size("1 in"), size("25.4 mm"))); // equal, and still not the same part
  EXPECT_FALSE(same_size(size("8 mm"), size("8.01 mm")));
  EXPECT_TRUE(same_size(size("8 mm"), size("8.0 mm")));
  EXPECT_TRUE(same_size(size("5/16 in"), size("5/16\"")));
  EXPECT_TRUE(same_size(size("1/2 in"), size("0.5 in")));
  EXPECT_FALSE(same_size(size("1/2 in"), size("7/16 in")));
}

TEST(NamedSizes, ARefusalOffersASizeWhereOneIsMeant) {
  const auto suggestion = [](std::string_view text) {
    const auto parsed = parse_named_size(text);
    return parsed.ok() ? "read as " + parsed.value().name : parsed.error();
  };
  EXPECT_EQ(suggestion("5/16"), "5/16 in");
  EXPECT_EQ(suggestion("8"), "8 mm");
  EXPECT_EQ(suggestion("8 MM"), "8 mm");
  EXPECT_EQ(suggestion("5/16 inch"), "5/16 in");
  EXPECT_EQ(suggestion("9,5 mm"), "9.5 mm");
  EXPECT_EQ(suggestion("-8 mm"), "");
  EXPECT_EQ(suggestion("0 mm"), "");
  EXPECT_EQ(suggestion("8 kg"), "");
  EXPECT_EQ(suggestion("4' 2\""), "");
  EXPECT_EQ(suggestion(""), "");
  EXPECT_EQ(suggestion("large"), "");
}

} // namespace
} // namespace sheerpole::named_size_test
