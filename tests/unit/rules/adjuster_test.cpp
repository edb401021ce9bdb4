#include "unit/rules/rule_fixture.hpp"

#include <gtest/gtest.h>

namespace sheerpole::adjuster_test {
namespace {

using namespace build;

Part bottle() {
  Part part = adjuster("turnbuckle", "turnbuckle-58", mm(320), mm(470));
  part.longest->provenance.place = at(20);
  part.longest->provenance.written = "470 mm";
  part.shortest->provenance.place = at(21);
  part.screw = Screw{parse_thread("5/8-18 UNF").value(), true, {}};
  return part;
}

/// A pair of stays with this adjuster set by hand.
Rig set_to(Length setting, Part part = bottle(), std::string written = "") {
  RigBuilder builder;
  StackItem adjusted = set(builder.add(std::move(part)), setting, written);
  adjusted.place = at(50);
  adjusted.set_length->provenance.place =
      Span{SourceId{0}, 60, 60 + static_cast<std::uint32_t>(written.size())};
  add_pair(builder,
           stay("cap-shroud", mm(15443), builder.add(wire("wire-38", mm(9.525))), {line(), adjusted}));
  return builder.rig;
}

TEST(AdjusterOutOfRange, NamesStayPartAmountAndProposesTheNearestEnd) {
  const auto found = found_by("adjuster-out-of-range", set_to(mm(495), bottle(), "495 mm"));
  ASSERT_EQ(found.size(), 1u) << "both sides are alike: said once";
  EXPECT_EQ(found[0].slug, "adjuster-out-of-range");
  EXPECT_EQ(found[0].severity, Severity::error);
  EXPECT_EQ(found[0].message,
            "cap-shroud: turnbuckle-58 is set to 495 mm, 25 mm longer than its longest of 470 mm");
  EXPECT_EQ(found[0].primary->span, (Span{SourceId{0}, 60, 66}));
  ASSERT_EQ(found[0].others.size(), 1u);
  EXPECT_EQ(found[0].others[0].span, at(20));
  ASSERT_TRUE(found[0].edit);
  EXPECT_EQ(found[0].edit->replacement, "470 mm");
  EXPECT_EQ(found[0].edit->title, "write 470 mm");
  EXPECT_EQ(found[0].edit->span, (Span{SourceId{0}, 60, 66}));
}

TEST(AdjusterOutOfRange, BelowTheShortest) {
  const auto found = found_by("adjuster-out-of-range", set_to(mm(300), bottle(), "300 mm"));
  ASSERT_EQ(found.size(), 1u);
  EXPECT_EQ(found[0].message,
            "cap-shroud: turnbuckle-58 is set to 300 mm, 20 mm shorter than its shortest of 320 mm");
  EXPECT_EQ(found[0].edit->replacement, "320 mm");
}

TEST(AdjusterOutOfRange, ProposesTheEndAsItsMakerWroteIt) {
  Part inch = bottle();
  inch.longest = sourced(inches(18.5));
  inch.longest->provenance.written = "18 1/2 in";
  const auto found = found_by("adjuster-out-of-range", set_to(inches(19), inch, "19 in"));
  ASSERT_EQ(found.size(), 1u);
  EXPECT_EQ(found[0].edit->replacement, "18 1/2 in");
  inch.longest->provenance.written = "base-length + 40 mm";
  EXPECT_EQ(found_by("adjuster-out-of-range", set_to(inches(19), inch, "19 in"))[0].edit->replacement,
            "469.9 mm");
}

TEST(AdjusterOutOfRange, ProposesNothingForAShareOrAnExpression) {
  Rig rig = set_to(mm(495), bottle(), "495 mm");
  for (Stay& stay : rig.stays)
    stay.stack[1].open = sourced(1.2);
  EXPECT_FALSE(found_by("adjuster-out-of-range", rig).at(0).edit);
  EXPECT_FALSE(found_by("adjuster-out-of-range", set_to(mm(495))).at(0).edit);
}

TEST(AdjusterOutOfRange, BothEndsOfTheRangeAreInside) {
  EXPECT_TRUE(found_by("adjuster-out-of-range", set_to(mm(470))).empty());
  EXPECT_TRUE(found_by("adjuster-out-of-range", set_to(mm(320))).empty());
}

TEST(AdjusterOutOfRange, SidesThatDifferAreNamed) {
  Rig rig = set_to(mm(400));
  rig.stays[1].stack[1].set_length->value = mm(480);
  const auto found = found_by("adjuster-out-of-range", rig);
  ASSERT_EQ(found.size(), 1u);
  EXPECT_EQ(found[0].subject, "cap-shroud.starboard");
}

// Hand sum: a pair engaged 12 mm at 470 has 12 + 2 / 2 = 13 at 468; one diameter of 5/8 in is 15.875 mm.
TEST(ThreadEngagementLow, WarnsBelowOneDiameter) {
  Part part = bottle();
  part.engaged_at_longest = sourced(mm(12), from(SourceClass::maker, 70));
  const auto found = found_by("thread-engagement-low", set_to(mm(468), part));
  ASSERT_EQ(found.size(), 1u);
  EXPECT_EQ(found[0].severity, Severity::warning);
  EXPECT_EQ(found[0].message,
            "cap-shroud: turnbuckle-58 has 13 mm of thread in the body, 2.88 mm less than one "
            "diameter of its 5/8-18 UNF thread (15.88 mm)");
  EXPECT_EQ(found[0].others.at(0).span, at(70));
  // 12 + 8 / 2 = 16
  EXPECT_TRUE(found_by("thread-engagement-low", set_to(mm(462), part)).empty());
}

TEST(ThreadEngagementLow, LeavesASettingBeyondTheRangeToTheOtherFinding) {
  Part part = bottle();
  part.engaged_at_longest = sourced(mm(12));
  EXPECT_TRUE(found_by("thread-engagement-low", set_to(mm(480), part)).empty());
}

TEST(ThreadEngagementLow, IsNotCheckedWithoutTheNumber) {
  EXPECT_TRUE(found_by("thread-engagement-low", set_to(mm(468))).empty());
}

// Range 150 mm, a tenth of it 15 mm.
TEST(AdjusterNearEnd, WarnsWithinATenthOfTheRange) {
  const auto closed = found_by("adjuster-near-end", set_to(mm(330)));
  ASSERT_EQ(closed.size(), 1u);
  EXPECT_EQ(closed[0].severity, Severity::warning);
  EXPECT_EQ(closed[0].message,
            "cap-shroud: turnbuckle-58 has 10 mm left to tighten of a range of 150 mm; less than 10 %");
  EXPECT_EQ(closed[0].primary->text, "10 mm to tighten, 140 mm to slacken");
  const auto opened = found_by("adjuster-near-end", set_to(mm(460)));
  ASSERT_EQ(opened.size(), 1u);
  EXPECT_NE(opened[0].message.find("10 mm left to slacken"), std::string::npos);
  EXPECT_TRUE(found_by("adjuster-near-end", set_to(mm(335))).empty());
  EXPECT_TRUE(found_by("adjuster-near-end", set_to(mm(455))).empty());
}

TEST(AdjusterNearEnd, LeavesALowThreadToTheOtherFinding) {
  Part part = bottle();
  part.engaged_at_longest = sourced(mm(12));
  EXPECT_TRUE(found_by("adjuster-near-end", set_to(mm(468), part)).empty());
  part.engaged_at_longest = sourced(mm(20));
  EXPECT_EQ(found_by("adjuster-near-end", set_to(mm(468), part)).size(), 1u);
}

TEST(AdjusterNearEnd, LeavesLeversAndSettingsBeyondTheRangeAlone) {
  EXPECT_TRUE(found_by("adjuster-near-end", set_to(mm(480))).empty());
  EXPECT_TRUE(
      found_by("adjuster-near-end", set_to(mm(300), adjuster("lever", "quick-lever", mm(300), mm(410))))
          .empty());
}

} // namespace
} // namespace sheerpole::adjuster_test
