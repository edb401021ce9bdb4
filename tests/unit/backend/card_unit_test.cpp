#include "backend/card/card_unit.hpp"

#include "calculate/cut/cut_phrase.hpp"
#include "unit/plugins/example_boat.hpp"
#include "wording/say.hpp"

#include <gtest/gtest.h>

namespace sheerpole::card_unit_test {
namespace {

CardUnit unit_with(const std::string& shops, const std::string& chosen = {}) {
  const Compilation boat = test::example_with("smallest", shops, chosen);
  EXPECT_TRUE(boat.rig);
  return boat.rig ? card_unit(*boat.rig) : CardUnit{};
}

std::string shop(const std::string& name, const std::string& facts) {
  return "shop " + name + " {\n  delivered-open: 50 %\n" + facts + "}\n";
}

TEST(CardUnit, IsTheMillimetreWhereNoShopIsStated) {
  const CardUnit unit = unit_with("");
  EXPECT_EQ(unit.kind, CardUnit::Kind::millimetres);
  EXPECT_EQ(unit_words(unit), "millimetres to 1 mm");
  EXPECT_EQ(unit.remark, "");
  EXPECT_EQ(unit_with(shop("loft", "")).shop, "");
}

TEST(CardUnit, IsThatOfTheOnlyShop) {
  EXPECT_EQ(unit_words(unit_with(shop("loft", "  unit: inches\n"))), "inches to 1/16\" (shop loft)");
  EXPECT_EQ(unit_words(unit_with(shop("loft", "  unit: feet-and-inches\n  round-to: 1/8 in\n"))),
            "feet and inches to 1/8\" (shop loft)");
  EXPECT_EQ(unit_words(unit_with(shop("loft", "  round-to: 5 mm\n"))), "millimetres to 5 mm (shop loft)");
}

TEST(CardUnit, OfSeveralShopsIsThatOfTheOneThatIsNamed) {
  const std::string two = shop("loft", "  unit: inches\n") + shop("yard", "  unit: millimetres\n");
  EXPECT_EQ(unit_with(two, "loft").kind, CardUnit::Kind::inches);
  EXPECT_EQ(unit_with(two, "yard").kind, CardUnit::Kind::millimetres);
  EXPECT_EQ(unit_with(two, "yard").remark, "");
  const CardUnit nobody_said = unit_with(two);
  EXPECT_EQ(nobody_said.kind, CardUnit::Kind::millimetres);
  EXPECT_EQ(nobody_said.shop, "");
  EXPECT_NE(nobody_said.remark.find("Several shops"), std::string::npos);
  // The one that is named states no unit; the other's is not taken for it.
  EXPECT_EQ(unit_with(shop("loft", "  unit: inches\n") + shop("yard", ""), "yard").kind,
            CardUnit::Kind::millimetres);
}

TEST(CardUnit, TakesNoStepThatItCanNotPrint) {
  const CardUnit unit = unit_with(shop("loft", "  unit: inches\n  round-to: 1 mm\n"));
  EXPECT_EQ(unit_words(unit), "inches to 1/16\" (shop loft)");
  EXPECT_EQ(unit.remark, "The shop loft rounds to 1 mm, which is no step of this unit.");
  EXPECT_NE(unit_with(shop("loft", "  round-to: 1/16 in\n")).remark, "");
}

// 25.4 mm to the inch, exact: the international yard and pound agreement of 1959.
TEST(CardUnit, RoundsOnceHalfAwayFromZero) {
  CardUnit inches;
  inches.kind = CardUnit::Kind::inches;
  inches.step = 4;
  EXPECT_EQ(card_amount(inches, Length::millimetres(25.4)), "1\"");
  EXPECT_EQ(card_amount(inches, Length::inches(7.0 + 13.0 / 32.0)), "7 7/16\""); // a half of a sixteenth
  EXPECT_EQ(card_amount(inches, -Length::inches(7.0 + 13.0 / 32.0)), "-7 7/16\"");
  EXPECT_EQ(card_amount(inches, Length::millimetres(12'998.0)), "511 3/4\"");
  inches.kind = CardUnit::Kind::feet_and_inches;
  EXPECT_EQ(card_amount(inches, Length::millimetres(12'998.0)), "42' 7 3/4\"");
  EXPECT_EQ(card_text(inches, {true, -4}), "X - 1/16\"");
  EXPECT_EQ(card_text(inches, {true, 0}), "X");
  const CardUnit millimetres;
  EXPECT_EQ(card_amount(millimetres, Length::millimetres(647.5)), "648 mm");
  EXPECT_EQ(card_amount(millimetres, Length::millimetres(-0.4)), "0 mm");
  EXPECT_EQ(card_amount(millimetres, Length::millimetres(12'998.0)), "12\u202f998 mm");
  EXPECT_EQ(card_amount(millimetres, CardLength{true, 0}), "X");
  CardUnit halves;
  halves.step = 5;
  EXPECT_EQ(card_amount(halves, Length::millimetres(647.3)), "647.5 mm");
}

TEST(CardUnit, WhatIsKnownIsNotSaidToBeKnownBetter) {
  const CardUnit unit;
  EXPECT_EQ(card_amount(unit, unit.round_outwards(Length::millimetres(7.1))), "8 mm");
  EXPECT_EQ(card_amount(unit, unit.round_outwards(Length::millimetres(-7.1))), "-8 mm");
  EXPECT_EQ(card_amount(unit, unit.round_outwards(Length::millimetres(8.0))), "8 mm");
}

TEST(CardUnit, SaysANoteInItsUnit) {
  CardUnit inches;
  inches.kind = CardUnit::Kind::inches;
  inches.step = 4;
  const Remark note(CutPhrase::splice_gives_more, {Length::millimetres(127.0), Length::millimetres(6.35)});
  const auto said = [&](const CardUnit& unit) {
    return say(Rig{}, note, [&](Length length) { return note_amount(unit, length); });
  };
  EXPECT_EQ(said(inches), "the allowance of the splice gives 5\", 1/4\" more");
  EXPECT_EQ(said(CardUnit{}), "the allowance of the splice gives 127 mm, 6.35 mm more");
}

} // namespace
} // namespace sheerpole::card_unit_test
