#include "backend/order/order_items.hpp"
#include "backend/order/order_plan.hpp"
#include "plugins/spool-plan/spool_plan_backend.hpp"
#include "unit/calculate/spool_plan/stock_rig.hpp"

#include <gmock/gmock.h>

#include <algorithm>

namespace sheerpole::order_of_stock_test {
using namespace test;
namespace {

OrderItem wire_of(const StockRig& rig) {
  const Compilation compilation = compiled(rig.text);
  for (OrderItem& item : order_items(*compilation.checked))
    if (item.name == "wire-4")
      return item;
  ADD_FAILURE() << "nothing of wire-4";
  return {};
}

StockRig two_legs() {
  return StockRig("Demo").stay("one", 3614).stay("two", 3614).cutting("  kerf: 4 mm\n");
}

// Both need 3614 mm and a kerf of 4 mm: 3.7 m each. A coil of 7 m holds one and 3382 mm are left of it.
TEST(OrderOfStock, ALengthThatHoldsOnePieceIsNotTakenOffTheOther) {
  const OrderItem wire = wire_of(two_legs().stock("coil", "coil", 7000));
  EXPECT_EQ(wire.needed, 74);
  EXPECT_EQ(wire.in_hand, 70);
  EXPECT_EQ(wire.to_order(), 37);
  EXPECT_THAT(wire.notes,
              testing::Contains(testing::MatchesRegex(
                  "no length is left in stock for (one|two); the longest to buy in one length is 3.7 m")));
}

TEST(OrderOfStock, NothingIsOrderedOfWhatThePlanCutsFromStock) {
  // 3614 + 4 + 3614
  EXPECT_TRUE(wire_of(two_legs().stock("coil", "coil", 7232)).nothing_to_order());
  EXPECT_EQ(wire_of(two_legs().stock("coil", "coil", 7231)).to_order(), 37);
}

// To the plan two names of the same line are one line.
TEST(OrderOfStock, StockUnderAnotherNameOfTheLineIsSaid) {
  StockRig rig = StockRig("Demo").stay("one", 3000);
  rig.more("wire other {\n  construction: \"1x19\"\n  grade: \"316\"\n  size: \"4 mm\"\n}\n"
           "stock drum of other {\n  sort: spool\n  length: 5 m\n}\n");
  const OrderItem wire = wire_of(rig);
  EXPECT_EQ(wire.in_hand, 0);
  EXPECT_TRUE(wire.nothing_to_order());
  EXPECT_THAT(wire.notes, testing::Contains(testing::HasSubstr("in hand by the stock of the file")));
}

TEST(OrderOfStock, WhatIsKeptBackIsNotCounted) {
  EXPECT_EQ(wire_of(two_legs().stock("coil", "coil", 7232, "  spare: 10 %\n")).to_order(), 37);
}

TEST(OrderOfStock, IsNeverLessThanTheSpoolPlan) {
  for (int length = 900; length <= 12'100; length += 800) {
    StockRig rig("Demo");
    rig.stay("one", 1815).stay("two", 1815).stay("three", 3614).stay("four", 2600);
    rig.stock("bit", "offcut", length / 3, "  pieces: 2\n").stock("coil", "coil", length);
    rig.cutting("  kerf: 7 mm\n  spare: 1 %\n");
    const Compilation compilation = compiled(rig.text);
    const SpoolPlan plan = plan_spools({spool_boat(*compilation.checked)});
    const OrderItem wire = wire_of(rig);
    const auto ordered_mm = std::int64_t{100} * wire.to_order();
    EXPECT_GE(ordered_mm, plan.lines[0].to_buy_mm) << length;
    // Each piece is rounded up by less than a tenth of a metre.
    const auto short_pieces = static_cast<std::int64_t>(plan.lines[0].short_pieces.size());
    EXPECT_LE(ordered_mm, plan.lines[0].to_buy_mm + 100 * short_pieces) << length;
  }
}

// 3614 mm with its kerf leave 3382 mm of 7 m: the piece made again has no place there.
TEST(OrderOfStock, APieceThatIsOrderedTwiceHasToLieInOneLengthTwice) {
  StockRig rig = StockRig("Demo").stay("one", 3614).stock("coil", "coil", 7000);
  rig.cutting("  kerf: 4 mm\n  order-margin: double\n");
  EXPECT_EQ(wire_of(rig).to_order(), 37);
}

TEST(OrderOfStock, TheMarginComesOffWhatIsLeft) {
  const StockRig rig = StockRig("Demo").stay("one", 3000).cutting("  order-margin: 10 %\n");
  EXPECT_EQ(wire_of(StockRig(rig).stock("coil", "coil", 3300)).to_order(), 0);
  EXPECT_EQ(wire_of(StockRig(rig).stock("coil", "coil", 3299)).to_order(), 3);
  EXPECT_EQ(wire_of(StockRig(rig)).to_order(), 33);
}

TEST(OrderOfStock, WhatAnEarlierPlanHasTakenIsNotOrderedAgain) {
  const StockRig bare = StockRig("Demo").stay("one", 3000).stay("two", 2000);
  const Compilation first = compiled(StockRig(bare).stock("drum", "spool", 10'000).text);
  std::string left;
  for (const OutputFile& file : SpoolPlanBackend().generate({*first.checked}).files)
    if (file.name == "new-stock.rig")
      left = file.bytes;
  StockRig then = bare;
  then.text += left.substr(left.find('\n') + 1);
  then.stay("three", 6000); // 5000 mm are left
  const OrderItem wire = wire_of(then);
  EXPECT_EQ(wire.needed, 60);
  EXPECT_EQ(wire.to_order(), 60);
  EXPECT_THAT(wire.notes,
              testing::Contains("an earlier plan has taken one from the stock, so it is not in it"));
  const Compilation boat = compiled(then.text);
  for (const OrderItem& item : needed_items(*boat.checked))
    if (item.name == "wire-4") {
      EXPECT_EQ(item.needed, 30 + 20 + 60);
    }
}

TEST(OrderOfStock, PapersThatSayWhatIsNeededNeedNoPlan) {
  const Compilation boat = compiled(two_legs().stock("coil", "coil", 7000).text);
  const auto asked = order_items(*boat.checked);
  const auto needed = needed_items(*boat.checked);
  ASSERT_EQ(asked.size(), needed.size());
  for (std::size_t i = 0; i < asked.size(); ++i) {
    EXPECT_EQ(asked[i].name, needed[i].name);
    EXPECT_EQ(asked[i].needed, needed[i].needed);
    EXPECT_EQ(asked[i].stays, needed[i].stays);
  }
}

} // namespace
} // namespace sheerpole::order_of_stock_test
