#include "unit/rules/rule_fixture.hpp"

#include <gtest/gtest.h>

namespace sheerpole::negative_body_test {
namespace {

using namespace build;

// Hand sum: 445 - 16 - 38 - 400 = -9.
RigBuilder too_short(Length pin_to_pin) {
  RigBuilder builder;
  StackItem lashing = set(builder.add(adjuster("lashing", "lashing-9", mm(60), mm(460))), mm(400));
  lashing.place = at(33);
  add_pair(builder, stay("lower-shroud", pin_to_pin, builder.add(rope("hmpe-9", mm(9))),
                         {item(builder.add(fixed("thimble-9", mm(16)))), line(),
                          item(builder.add(fixed("deadeye-9", mm(38)))), lashing}));
  return builder;
}

TEST(NegativeBody, NamesTheStayTheAmountAndTheLongestPart) {
  const auto found = found_by("negative-body", too_short(mm(445)).rig);
  ASSERT_EQ(found.size(), 1u) << "both sides are alike: said once";
  EXPECT_EQ(found[0].slug, "negative-body");
  EXPECT_EQ(found[0].severity, Severity::error);
  EXPECT_EQ(found[0].subject, "lower-shroud");
  EXPECT_EQ(found[0].message,
            "lower-shroud: the stack takes 454 mm of a pin-to-pin length of 445 mm; 9 mm too much, "
            "nothing is left for the line");
  EXPECT_EQ(found[0].primary->span, at(900));
  ASSERT_EQ(found[0].others.size(), 1u);
  EXPECT_EQ(found[0].others[0].span, at(33));
  EXPECT_EQ(found[0].others[0].text, "the longest part: lashing-9, 400 mm");
}

TEST(NegativeBody, NothingLeftIsTooLittleAndOneMillimetreIsEnough) {
  EXPECT_EQ(found_by("negative-body", too_short(mm(454)).rig).size(), 1u);
  EXPECT_TRUE(found_by("negative-body", too_short(mm(455)).rig).empty());
}

TEST(NegativeBody, CountsLinesWithALengthOfTheirOwn) {
  RigBuilder builder;
  StackItem own = line(mm(1200));
  own.place = at(44);
  builder.add(stay("backstay", mm(1300), builder.add(wire("wire", mm(8))),
                   {line(), item(builder.add(fixed("insulator", mm(150)))), own}));
  const auto found = found_by("negative-body", builder.rig);
  ASSERT_EQ(found.size(), 1u);
  EXPECT_NE(found[0].message.find("50 mm too much"), std::string::npos) << found[0].message;
  EXPECT_EQ(found[0].others[0].span, at(44));
}

TEST(NegativeBody, SaysNothingOfAnUnknownLength) {
  RigBuilder builder;
  builder.add(stay("shroud", builder.add(rope("hmpe-9", mm(9))),
                   {line(), item(builder.add(fixed("toggle", mm(600))))}));
  EXPECT_TRUE(found_by("negative-body", builder.rig).empty());
}

} // namespace
} // namespace sheerpole::negative_body_test
