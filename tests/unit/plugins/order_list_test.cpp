#include "plugins/order-list/order_list.hpp"

#include "service/compile.hpp"
#include "source/file_reader.hpp"
#include "unit/calculate/compiled_rig.hpp"
#include "unit/page/page_boxes.hpp"
#include "unit/plugins/example_boat.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cstdint>
#include <map>
#include <set>

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

/// Counted here from the stacks, item by item, and in the order stay by stay; of junctions, which are one
/// plate for all that meet there, the places are counted.
TEST_P(OrderLists, TheSumByItemIsTheSumByStay) {
  const Compilation boat = example(GetParam());
  ASSERT_TRUE(boat.checked);
  const Rig& rig = boat.checked->rig();
  std::map<std::string, long> counted;
  std::set<std::uint32_t> plates;
  for (const Stay& stay : rig.stays)
    for (const StackItem& item : stay.stack)
      if (item.kind == StackItem::Kind::part && rig[item.part].role != Part::Role::boat_fitting &&
          rig[item.part].kind == PartKind::junction)
        plates.insert((&item == &stay.stack.front() ? stay.path.front() : stay.path.back()).point.index());
      else if (item.kind == StackItem::Kind::part && rig[item.part].role != Part::Role::boat_fitting &&
               rig[item.part].kind != PartKind::soft_eye &&
               !(rig[item.part].kind == PartKind::lashing && item.passes)) // ordered as its cord
        counted[rig[item.part].name] += item.count;
  const std::vector<OrderItem> items = order_items(*boat.checked);
  std::size_t hardware = 0;
  long ordered_plates = 0;
  for (const OrderItem& item : items) {
    long by_stay = 0;
    for (const auto& [stay, amount] : item.stays)
      by_stay += amount;
    EXPECT_EQ(by_stay, item.needed) << item.name;
    if (item.group != "Hardware")
      continue;
    if (rig[item.parts.at(0)].kind == PartKind::junction) {
      ordered_plates += item.needed;
      continue;
    }
    ++hardware;
    EXPECT_EQ(item.needed, counted[item.name]) << item.name;
  }
  EXPECT_EQ(hardware, counted.size());
  EXPECT_EQ(ordered_plates, static_cast<long>(plates.size()));
}

// Two stacks name two parts for the holes of one plate: what is ordered is both, and counted once.
TEST(OrderLists, CallAJoinedPlateByAllOfItsParts) {
  const std::string eye = "  upper: eye (hole: 12.3 mm, thickness: 12 mm, edge: 20 mm)\n";
  const Compilation boat = test::compiled(
      "language 1\nwire wire-8 {\n  construction: \"1x19\"\n  size: \"8 mm\"\n}\n"
      "junction plate-top \"Triangle plate, hole of the forestay\" {\n  length: 35 mm\n  supplier: "
      "\"Harbour yard\"\n  upper: jaw (gap: 14 mm, pin: \"12 mm\")\n}\n"
      "junction plate-legs \"Triangle plate, holes of the legs\" {\n  length: 30 mm\n  upper: jaw (gap: 14 "
      "mm, pin: \"10 mm\")\n}\n"
      "terminal end-60 {\n  length: 60 mm\n" +
      eye +
      "  lower: wire-socket (inserted: 50 mm)\n}\n"
      "points {\n  tang: (0, 0, 13) m\n  bridle: (3, 0, 3) m\n  bow: (4, -2, 1) m mirrored\n}\n"
      "stay forestay {\n  path: tang > bridle\n  line: wire-8\n  stack {\n    end-60\n    line\n    "
      "plate-top\n  }\n}\n"
      "stay leg {\n  sides: port, starboard\n  path: bridle > bow\n  line: wire-8\n  stack {\n    "
      "plate-legs\n    end-60\n    line\n  }\n}\n"
      "in-hand of plate-legs {\n  pieces: 1\n}\n");
  ASSERT_TRUE(boat.checked);
  const std::vector<OrderItem> items = order_items(*boat.checked);
  const OrderItem& plate = named(items, "plate-top with plate-legs");
  EXPECT_EQ(plate.what, "Triangle plate, hole of the forestay with Triangle plate, holes of the legs");
  EXPECT_EQ(plate.size, "pin 12 mm; pin 10 mm");
  EXPECT_EQ(plate.supplier, "Harbour yard");
  EXPECT_EQ(plate.needed, 1);
  EXPECT_EQ(plate.in_hand, 1);
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

TEST(OrderList, CallsTheEndOfARodByItsRod) {
  const Compilation boat =
      test::compiled("language 1\nrod rod-7 {\n  construction: \"solid\"\n  size: \"7 mm\"\n}\n"
                     "terminal rod-eye {\n  length: 60 mm\n  upper: eye (hole: 13 mm)\n  lower: "
                     "wire-socket (size: \"7 mm\", "
                     "inserted: 40 mm)\n}\n"
                     "stay shroud {\n  pin-to-pin: 5 m\n  line: rod-7\n  stack {\n    rod-eye\n    line\n  "
                     "  rod-eye\n  }\n}\n");
  ASSERT_TRUE(boat.checked);
  std::string sizes;
  for (const OrderItem& item : needed_items(*boat.checked))
    sizes += item.name + ": " + item.size + "\n";
  EXPECT_THAT(sizes, testing::HasSubstr("rod-eye: rod 7 mm\n"));
}

// Six passes there and back over 150 mm are 1.8 m in one length; 1.25 m in stock do not hold it, 1.8 m do.
TEST(OrderList, TakesACordOffStockThatHoldsIt) {
  std::string text = two_suppliers;
  const Compilation boat = test::compiled(text);
  ASSERT_TRUE(boat.checked);
  const OrderItem cord = named(order_items(*boat.checked), "cord-4");
  EXPECT_EQ(cord.needed, 18);
  EXPECT_EQ(cord.in_hand, 12);
  EXPECT_EQ(cord.to_order(), 18);
  EXPECT_THAT(cord.notes,
              testing::Contains(
                  "no length is left in stock for forestay; the longest to buy in one length is 1.8 m"));
  text.replace(text.find("1.25 m"), 6, "1.8 m");
  const Compilation longer = test::compiled(text);
  EXPECT_TRUE(named(order_items(*longer.checked), "cord-4").nothing_to_order());
}

/// A pair that is a mark on a cord: body X - 40 mm, cut X - 40 + 2 x (100 + 648) mm.
std::string on_a_cord(const std::string& of_stay, const std::string& more = "") {
  return "language 1\nrope hmpe-9 {\n  construction: \"12-strand HMPE heat-set\"\n  size: \"9 mm\"\n}\n"
         "splice eye {\n  bury: 72 d measured\n  contraction: 0 % measured\n}\n"
         "thimble ring {\n  length: 20 mm\n  wrap: 100 mm measured\n}\n"
         "points {\n  tang: (0, 0, 13) m\n  plate: (0, 0, 1) m\n}\n"
         "stay shroud {\n  sides: port, starboard\n  line: hmpe-9\n" +
         of_stay +
         "  stack {\n    ring (splice: eye)\n    line\n    ring (splice: eye)\n  }\n}\n"
         "reading of shroud.port {\n  method: messenger\n  mark: \"red\"\n}\n"
         "reading of shroud.starboard {\n  method: messenger\n  mark: \"green\"\n}\n" +
         more;
}

// Twice the longest bury, its eye and half a metre: 1296 + 100 + 500 = 1896 mm, 1.9 m. Common practice, no
// source.
TEST(OrderList, SaysALengthThatIsXInWords) {
  const Compilation boat = test::compiled(on_a_cord(""));
  ASSERT_TRUE(boat.checked);
  const OrderItem rope = named(order_items(*boat.checked), "hmpe-9");
  EXPECT_EQ(needed_text(rope), "X(shroud) + 1.456 m, twice");
  EXPECT_EQ(to_order_text(rope), "1.9 m and X(shroud) + 1.456 m, twice");
  for (const OutputFile& file : OrderList().generate({*boat.checked}).files)
    EXPECT_THAT(file.bytes, testing::Not(testing::HasSubstr("0.0 m"))) << file.name;
}

TEST(OrderList, OrdersByAnEstimateThatItNames) {
  const Compilation boat = test::compiled(on_a_cord("  estimate: 12 m\n"));
  ASSERT_TRUE(boat.checked);
  const OrderItem rope = named(order_items(*boat.checked), "hmpe-9");
  EXPECT_EQ(rope.needed, 2 * 135); // 13 456 mm each
  EXPECT_TRUE(rope.open.empty());
  EXPECT_THAT(rope.notes,
              testing::Contains(testing::HasSubstr(
                  "X taken as 12.00 m by the estimate of the stay, to order by; nothing is cut")));
}

TEST(OrderList, AddsTheMarginOfTheOwner) {
  const auto with = [](const std::string& margin) {
    return test::compiled(
        on_a_cord("  estimate: 12 m\n", "cutting of hmpe-9 {\n  order-margin: " + margin + "\n}\n"));
  };
  const Compilation tenth = with("10 %");
  EXPECT_EQ(named(order_items(*tenth.checked), "hmpe-9").to_order(), 270 + 27 + 19);
  const Compilation twice = with("double");
  EXPECT_EQ(named(order_items(*twice.checked), "hmpe-9").to_order(), 2 * 270 + 19);
  const Compilation open =
      test::compiled(on_a_cord("", "cutting of hmpe-9 {\n  order-margin: double\n}\n"));
  EXPECT_EQ(to_order_text(named(order_items(*open.checked), "hmpe-9")),
            "1.9 m and X(shroud) + 1.456 m, twice, and the same again");
}

// Two pieces of 13 456 mm leave 1088 mm of 28 m, too short for a test splice of 1896 mm, and 1896 mm of 28
// 808.
TEST(OrderList, ATestSpliceIsALengthOfItsOwn) {
  const auto with = [](const std::string& length) {
    const Compilation boat = test::compiled(on_a_cord(
        "  estimate: 12 m\n", "stock drum of hmpe-9 {\n  sort: spool\n  length: " + length + "\n}\n"));
    return named(order_items(*boat.checked), "hmpe-9");
  };
  EXPECT_EQ(with("28 m").to_order(), 19);
  EXPECT_THAT(
      with("28 m").notes,
      testing::Contains(
          "no length is left in stock for the test splice; the longest to buy in one length is 1.9 m"));
  EXPECT_TRUE(with("28_808 mm").nothing_to_order());
  EXPECT_THAT(with("28_808 mm").notes,
              testing::Contains("the test splice comes off what is left in stock"));
  EXPECT_EQ(with("28_807 mm").to_order(), 19);
}

// Metres in stock are no answer to a length that nobody knows.
TEST(OrderList, StockIsNotTakenOffALengthThatIsX) {
  const Compilation boat =
      test::compiled(on_a_cord("", "stock drum of hmpe-9 {\n  sort: spool\n  length: 10 m\n}\n"));
  const OrderItem rope = named(order_items(*boat.checked), "hmpe-9");
  EXPECT_EQ(to_order_text(rope), "X(shroud) + 1.456 m, twice");
  EXPECT_THAT(rope.notes, testing::Contains(testing::HasSubstr("is not counted against what is X")));
}

TEST(OrderList, HoldsStaysWithLongNamesOfManyAlphabets) {
  const Compilation boat = test::compiled(test::forty_pairs());
  ASSERT_TRUE(boat.checked);
  const auto items = order_items(*boat.checked);
  for (const PaperSize size : {PaperSize::a4, PaperSize::letter})
    expect_well_set(order_pages(*boat.checked, items, boat.checked->rig().boat.title, size));
}

// The letters of "ring" stand in "spring" as well.
TEST(OrderList, ASpringClipOrdersNoRing) {
  const auto items_with = [](const std::string& secured) {
    const Compilation boat = test::compiled(
        "language 1\nwire wire-6 {\n  construction: \"1x19\"\n  size: \"6 mm\"\n}\n"
        "terminal eye {\n  length: 50 mm\n  lower: wire-socket (inserted: 20 mm)\n}\n"
        "toggle toggle-10 {\n  length: 60 mm\n  secured: \"" +
        secured +
        "\"\n  upper: eye (hole: 10 mm)\n  lower: jaw (gap: 9 mm, pin: \"10 mm\")\n}\n"
        "stay fore {\n  pin-to-pin: 5 m measured\n  line: wire-6\n  stack {\n    eye\n    line\n    eye\n"
        "    toggle-10\n  }\n}\n");
    EXPECT_TRUE(boat.checked);
    std::string names;
    for (const OrderItem& item : order_items(*boat.checked))
      if (item.group == "Small parts")
        names += item.name + "\n";
    return names;
  };
  EXPECT_EQ(items_with("spring clip"), "split pin for a pin of 10 mm\n");
  EXPECT_EQ(items_with("split ring"), "ring for a pin of 10 mm\n");
}

} // namespace
} // namespace sheerpole::order_list_test
