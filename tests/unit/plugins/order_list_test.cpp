#include "plugins/order-list/order_pages.hpp"

#include "driver/compile.hpp"
#include "source/file_reader.hpp"
#include "unit/page/page_boxes.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <map>

namespace sheerpole {
namespace {

Compilation example(const std::string& name) {
  DiskFileReader reader;
  return compile(std::string(SHEERPOLE_EXAMPLES_DIR) + "/" + name + ".rig", reader);
}

const OrderItem& named(const std::vector<OrderItem>& items, const std::string& name) {
  const auto found =
      std::find_if(items.begin(), items.end(), [&](const OrderItem& item) { return item.name == name; });
  EXPECT_NE(found, items.end()) << name;
  return *found;
}

class OrderLists : public testing::TestWithParam<const char*> {};
INSTANTIATE_TEST_SUITE_P(Boats, OrderLists,
                         testing::Values("pellimoor", "grisolde", "smidgeon", "oddnys-wager", "sallow"));

/// Counted here from the stacks, item by item, and in the order stay by stay.
TEST_P(OrderLists, TheSumByItemIsTheSumByStay) {
  const Compilation boat = example(GetParam());
  ASSERT_TRUE(boat.checked);
  const Rig& rig = boat.checked->rig();
  std::map<std::string, long> counted;
  for (const Stay& stay : rig.stays)
    for (const StackItem& item : stay.stack)
      if (item.kind == StackItem::Kind::part && rig[item.part].role != Part::Role::boat_fitting &&
          rig[item.part].kind != "soft-eye")
        counted[rig[item.part].name] += item.count;
  const std::vector<OrderItem> items = order_items(*boat.checked);
  std::size_t hardware = 0;
  for (const OrderItem& item : items) {
    long by_stay = 0;
    for (const auto& [stay, amount] : item.stays)
      by_stay += amount;
    EXPECT_EQ(by_stay, item.needed) << item.name;
    if (item.group != "Hardware")
      continue;
    ++hardware;
    EXPECT_EQ(item.needed, counted[item.name]) << item.name;
  }
  EXPECT_EQ(hardware, counted.size());
}

TEST_P(OrderLists, AreWellSetOnBothSheets) {
  const Compilation boat = example(GetParam());
  ASSERT_TRUE(boat.checked);
  const auto items = order_items(*boat.checked);
  for (const PaperSize size : {PaperSize::a4, PaperSize::letter})
    expect_well_set(order_pages(*boat.checked, items, boat.checked->rig().boat.title, size));
}

// 13 m of cut for each of two caps and 5.8 m for each of two lowers, by the numbers worked for this boat:
// 12 998 and 5809 mm, each rounded up to a tenth of a metre.
TEST(OrderList, RoundsEachPieceOfLineUp) {
  const Compilation boat = example("pellimoor");
  ASSERT_TRUE(boat.checked);
  const auto items = order_items(*boat.checked);
  EXPECT_EQ(named(items, "hmpe-9").needed, 2 * 130 + 2 * 59);
  EXPECT_EQ(amount_text(named(items, "hmpe-9"), named(items, "hmpe-9").needed), "37.8 m");
  // Six passes there and back over 160 mm, twice on each side: 1.92 m each, 2.0 m ordered.
  EXPECT_EQ(named(items, "cord-4").needed, 4 * 20 + 2 * 18);
}

TEST(OrderList, KeepsInchSizesAndBothHands) {
  const Compilation boat = example("grisolde");
  ASSERT_TRUE(boat.checked);
  const auto items = order_items(*boat.checked);
  EXPECT_EQ(named(items, "turnbuckle-half").size,
            "wire 5/16 in; pin 1/2 in; 1/2-20 UNF, right and left hand");
  EXPECT_EQ(named(items, "wire-five-sixteenths").size, "5/16 in");
}

} // namespace
} // namespace sheerpole
