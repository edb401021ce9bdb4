#include "plugins/receiving-card/receiving_card.hpp"

#include "calculate/facts.hpp"
#include "service/compile.hpp"
#include "unit/calculate/compiled_rig.hpp"
#include "unit/page/page_boxes.hpp"
#include "unit/plugins/example_boat.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <map>

namespace sheerpole::receiving_card_test {
namespace {

using testing::HasSubstr;

const Goods& named(const std::vector<Goods>& all, const std::string& name) {
  const auto found =
      std::find_if(all.begin(), all.end(), [&](const Goods& one) { return one.name == name; });
  EXPECT_NE(found, all.end()) << name;
  return *found;
}

/// What is wanted; "none" when it is not asked for at all.
std::string wanted(const Goods& goods, const std::string& what) {
  for (const GoodsRow& row : goods.rows)
    if (row.what == what)
      return row.wanted;
  return "none";
}

class ReceivingCards : public testing::TestWithParam<const char*> {};
INSTANTIATE_TEST_SUITE_P(Boats, ReceivingCards,
                         testing::Values("pellimoor", "grisolde", "smidgeon", "oddnys-wager", "sallow"));

/// Counted here from the stacks; the plate of a junction is one for all that meet there.
TEST_P(ReceivingCards, CountEveryPartOfTheStacks) {
  const Compilation boat = test::example_with(GetParam(), "");
  ASSERT_TRUE(boat.checked);
  const Rig& rig = boat.checked->rig();
  std::map<std::string, int> counted;
  for (const Stay& stay : rig.stays)
    for (const StackItem& item : stay.stack)
      if (item.kind == StackItem::Kind::part && rig[item.part].role != Part::Role::boat_fitting &&
          rig[item.part].kind != PartKind::soft_eye && rig[item.part].kind != PartKind::junction)
        counted[rig[item.part].name] += item.count;
  const auto all = goods(*boat.checked);
  std::size_t parts = 0;
  for (const Goods& one : all) {
    if (one.line)
      continue;
    ++parts;
    if (one.name == "plate-upper-30 with plate-lower-35")
      counted[one.name] = 1;
    const std::string count = wanted(one, "count");
    const Record* in_hand = last_record_of(rig, RecordKind::in_hand, one.name);
    if (in_hand == nullptr)
      EXPECT_EQ(count, std::to_string(counted[one.name])) << one.name;
    else
      EXPECT_THAT(count, HasSubstr(std::to_string(counted[one.name]) + " needed")) << one.name;
  }
  EXPECT_LE(parts, counted.size());
  EXPECT_GE(parts, 1u);
}

TEST_P(ReceivingCards, AreWellSetOnBothSheets) {
  const Compilation boat = test::example_with(GetParam(), "");
  ASSERT_TRUE(boat.checked);
  for (const PaperSize size : {PaperSize::a4, PaperSize::letter})
    expect_well_set(goods_pages(*boat.checked, boat.checked->rig().boat.title, size));
}

TEST(ReceivingCard, AsksForWhatTheFileStates) {
  const Compilation boat = test::example_with("grisolde", "");
  ASSERT_TRUE(boat.checked);
  const auto all = goods(*boat.checked);
  const Goods& wire = named(all, "wire-five-sixteenths");
  EXPECT_EQ(wanted(wire, "label: size"), "5/16 in");
  EXPECT_EQ(wanted(wire, "label: construction"), "1x19");
  EXPECT_EQ(wanted(wire, "label: batch"), "");
  EXPECT_EQ(wanted(wire, "diameter, third place, pulled by hand"), "7.94 mm"); // 5/16 x 25.4
  EXPECT_EQ(wanted(wire, "length on the spool or coil"), "at least 47.4 m");
  const Goods& screw = named(all, "turnbuckle-half");
  EXPECT_EQ(wanted(screw, "count"), "8");
  EXPECT_EQ(wanted(screw, "lower end, jaw: pin"), "1/2 in");
  EXPECT_EQ(wanted(screw, "thread"), "1/2-20 UNF");
  EXPECT_EQ(wanted(screw, "hands of the thread"), "right and left");
  EXPECT_EQ(wanted(screw, "upper end, wire-socket: size"), "5/16 in");
  // One plate, of which the file states two parts, one for each of its holes.
  const Goods& plate = named(all, "plate-upper-30 with plate-lower-35");
  EXPECT_EQ(wanted(plate, "count"), "1");
  EXPECT_EQ(wanted(plate, "plate-upper-30, length, bearing to bearing"), "30 mm");
  EXPECT_EQ(wanted(plate, "plate-lower-35, length, bearing to bearing"), "35 mm");
}

TEST(ReceivingCard, WhatIsInHandDoesNotComeIn) {
  const Compilation boat = test::example_with("grisolde", "in-hand of turnbuckle-half {\n  pieces: 3\n}\n"
                                                          "in-hand of insulator-150 {\n  pieces: 2\n}\n");
  ASSERT_TRUE(boat.checked);
  const auto all = goods(*boat.checked);
  EXPECT_EQ(wanted(named(all, "turnbuckle-half"), "count"), "5 (8 needed, 3 in hand)");
  EXPECT_TRUE(
      std::none_of(all.begin(), all.end(), [](const Goods& one) { return one.name == "insulator-150"; }));
}

// 47.4 m are 155.5 ft; 7.9375 mm are 0.3125 in: 25.4 mm to the inch, exact since 1959.
TEST(ReceivingCard, IsInTheUnitOfTheShop) {
  const Compilation boat = test::example_with("grisolde", "shop loft {\n  unit: feet-and-inches\n}\n");
  ASSERT_TRUE(boat.checked);
  const Goods wire = named(goods(*boat.checked), "wire-five-sixteenths");
  EXPECT_EQ(wanted(wire, "length on the spool or coil"), "at least 156 ft");
  EXPECT_EQ(wanted(wire, "diameter, first place, pulled by hand"), "0.313\"");
}

// How deep a wire goes in is measured on a terminal; what an eye round a dead-eye uses is not on the part.
TEST(ReceivingCard, AsksNoDepthOfWhatAWireIsLaidRound) {
  const Compilation boat = test::compiled(
      "language 1\nwire wire-6 {\n  construction: \"7x7\"\n  size: \"6 mm\"\n}\n"
      "deadeye round-100 {\n  length: 60 mm\n  upper: wire-socket (size: \"6 mm\", inserted: 210 mm)\n}\n"
      "terminal eye-70 {\n  length: 70 mm\n  lower: wire-socket (size: \"6 mm\", inserted: 55 mm)\n}\n"
      "stay shroud {\n  pin-to-pin: 5 m\n  line: wire-6\n  stack {\n    eye-70\n    line\n    round-100\n "
      " }\n}\n");
  ASSERT_TRUE(boat.checked);
  const auto all = goods(*boat.checked);
  EXPECT_EQ(wanted(named(all, "round-100"), "upper end, wire-socket: inserted"), "none");
  EXPECT_EQ(wanted(named(all, "round-100"), "upper end, wire-socket: size"), "6 mm");
  EXPECT_EQ(wanted(named(all, "eye-70"), "lower end, wire-socket: inserted"), "55 mm");
}

TEST(ReceivingCard, HoldsNamesOfManyAlphabetsAndARigWithoutStays) {
  for (const std::string& text : {test::forty_pairs(), std::string("language 1\nboat \"Bare\" { }\n")}) {
    const Compilation boat = test::compiled(text);
    ASSERT_TRUE(boat.checked);
    for (const PaperSize size : {PaperSize::a4, PaperSize::letter})
      expect_well_set(goods_pages(*boat.checked, boat.checked->rig().boat.title, size));
  }
}

} // namespace
} // namespace sheerpole::receiving_card_test
