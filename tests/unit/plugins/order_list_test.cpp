#include "plugins/order-list/order_list.hpp"

#include "driver/compile.hpp"
#include "source/file_reader.hpp"
#include "unit/calculate/compiled_rig.hpp"
#include "unit/page/page_boxes.hpp"
#include "unit/plugins/example_boat.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <map>

namespace sheerpole::order_list_test {
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
          rig[item.part].kind != PartKind::soft_eye)
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

/// A wire stay with a stud that is screwed into a body, a jaw held by a ring and one held by a split pin,
/// and a lashing of a cord of which some is in stock.
const char* const two_suppliers =
    "language 1\nwire wire-6 {\n  construction: \"1x19\"\n  size: \"1/4 in\"\n  supplier: \"wire "
    "shop\"\n}\n"
    "rope cord-4 {\n  construction: \"12-strand\"\n  size: \"4 mm\"\n  supplier: \"chandler\"\n}\n"
    "stock coil-1 of cord-4 {\n  sort: coil\n  length: 1.25 m\n}\n"
    "terminal stud {\n  length: 62 mm\n  upper: stud (thread: \"M12\", hand: left)\n  lower: wire-socket "
    "(size: \"1/4 in\", inserted: 50 mm)\n}\n"
    "toggle swivel {\n  length: 50 mm\n  upper: jaw (gap: 14 mm, pin: \"1/2 in\")\n  lower: socket "
    "(thread: \"M12\", hand: left)\n"
    "  secured: \"split ring\"\n  supplier: \"wire shop\"\n}\n"
    "terminal fork {\n  length: 70 mm\n  upper: wire-socket (size: \"1/4 in\", inserted: 50 mm)\n"
    "  lower: jaw (gap: 14 mm, pin: \"12 mm\", split-pin: \"3 mm\")\n}\n"
    "lashing tie {\n  shortest: 60 mm\n  longest: 260 mm\n  cord: cord-4\n  upper: eye (hole: 12.5 mm, "
    "thickness: "
    "12 mm)\n}\n"
    "bush sleeve {\n  size: \"12 mm\"\n}\n"
    "stay forestay {\n  pin-to-pin: 11_642 mm\n  line: wire-6\n  stack {\n    swivel\n    stud\n    line\n"
    "    fork\n    sleeve\n    tie (gap: 150 mm, passes: 6)\n  }\n}\n";

TEST(OrderList, GroupsByTheSupplierThatIsStated) {
  const Compilation boat = test::compiled(two_suppliers);
  ASSERT_TRUE(boat.checked);
  const auto items = order_items(*boat.checked);
  EXPECT_THAT(suppliers_of(items), testing::ElementsAre("wire shop", "chandler", ""));
  const auto bundle = OrderList().generate({*boat.checked});
  const std::string& text = bundle.files.front().bytes;
  EXPECT_EQ(bundle.files.front().name, "order-list.txt");
  const std::size_t wire_shop = text.find("From wire shop\n");
  const std::size_t chandler = text.find("From chandler\n");
  const std::size_t nobody = text.find("Supplier not stated\n");
  ASSERT_NE(nobody, std::string::npos);
  EXPECT_LT(wire_shop, text.find("wire-6"));
  EXPECT_LT(text.find("swivel"), chandler);
  EXPECT_LT(chandler, text.find("cord-4"));
  EXPECT_LT(nobody, text.find("fork"));
}

TEST(OrderList, KeepsTheHandOfAStudAndTellsARingFromASplitPin) {
  const Compilation boat = test::compiled(two_suppliers);
  ASSERT_TRUE(boat.checked);
  const auto items = order_items(*boat.checked);
  EXPECT_EQ(named(items, "stud").size, "M12, left hand; wire 1/4 in");
  EXPECT_EQ(named(items, "sleeve").size, "12 mm");
  EXPECT_EQ(named(items, "split pin 3 mm").needed, 1);
  EXPECT_EQ(named(items, "ring for a pin of 1/2 in").needed, 1);
}

// Six passes there and back over 150 mm are 1.8 m; 1.25 m in stock count as 1.2 m.
TEST(OrderList, TakesTheStockOfACordOff) {
  const Compilation boat = test::compiled(two_suppliers);
  ASSERT_TRUE(boat.checked);
  const auto items = order_items(*boat.checked);
  EXPECT_EQ(named(items, "cord-4").needed, 18);
  EXPECT_EQ(named(items, "cord-4").in_hand, 12);
  EXPECT_EQ(named(items, "cord-4").to_order(), 6);
}

TEST(OrderList, HoldsStaysWithLongNamesOfManyAlphabets) {
  const Compilation boat = test::compiled(test::forty_pairs());
  ASSERT_TRUE(boat.checked);
  const auto items = order_items(*boat.checked);
  for (const PaperSize size : {PaperSize::a4, PaperSize::letter})
    expect_well_set(order_pages(*boat.checked, items, boat.checked->rig().boat.title, size));
}

} // namespace
} // namespace sheerpole::order_list_test
