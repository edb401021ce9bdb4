#include "plugins/spool-plan/spool_plan_backend.hpp"
#include "unit/calculate/spool_plan/stock_rig.hpp"

#include <gmock/gmock.h>

namespace sheerpole::stock_kept_test {
using namespace test;
using testing::HasSubstr;
using testing::Not;
namespace {

/// A stay whose cut is 2000 mm, made of a piece of this stock as it is.
std::string made_of(const std::string& stay, const std::string& stock) {
  return "stay " + stay + " {\n  line: wire-4\n  pin-to-pin: 2060 mm measured\n  stack {\n    upper\n" +
         "    line (stock: " + stock + ")\n    lower\n  }\n}\n";
}

std::string file_of(const OutputBundle& bundle, const std::string& name) {
  for (const OutputFile& file : bundle.files)
    if (file.name == name)
      return file.bytes;
  return "";
}

OutputBundle planned(const std::string& text) {
  const Compilation compilation = compiled(text);
  return SpoolPlanBackend().generate({*compilation.checked});
}

std::string new_stock(const std::string& text) {
  return file_of(planned(text), "new-stock.rig");
}

/// The rig with the stock that the plan left in the place of its own.
std::string with_stock(const StockRig& bare, const std::string& left) {
  return bare.text + left.substr(left.find('\n') + 1);
}

// Nothing is cut from the two that are meant for stays: they are there as before, with all that was said of
// them, and the stays find them.
TEST(StockKept, WhatIsMadeUpAsItIsStandsInTheNewStock) {
  const StockRig bare =
      StockRig("Demo").stay("one", 3000).more(made_of("hung", "bit") + made_of("twin", "bit"));
  StockRig rig = bare;
  rig.text += "stock bit \"Two from the shelf\" of wire-4 {\n  sort: offcut\n  length: 2500 mm measured "
              "\"tape\"\n  pieces: 2\n  batch: \"L7\"\n  note: \"dry store\"\n}\n";
  rig.stock("drum", "spool", 10'000).cutting("  kerf: 4 mm\n  order-margin: double\n");
  const std::string left = new_stock(rig.text);
  EXPECT_THAT(left, HasSubstr("stock bit \"Two from the shelf\" of wire-4 {\n  sort: offcut\n  length: "
                              "2_500 mm measured \"tape\"\n  batch: \"L7\"\n  note: \"dry store\"\n  "
                              "pieces: 2\n}\n"));
  EXPECT_THAT(left, HasSubstr("length: 6_996 mm computed \"left of drum by the spool plan\""));
  EXPECT_THAT(left, HasSubstr("order-margin: double\n"));
  EXPECT_EQ(new_stock(with_stock(bare, left)), left);
}

TEST(StockKept, AStockOfWhichNothingMayBeCutIsNotLostWithItsLine) {
  StockRig rig = StockRig("Demo").more(made_of("hung", "bit")).stock("bit", "offcut", 2500);
  rig.cutting("  kerf: 3 mm\n");
  const std::string left = new_stock(rig.text);
  EXPECT_THAT(left, HasSubstr("stock bit of wire-4 {\n  sort: offcut\n  length: 2_500 mm\n}\n"));
  EXPECT_THAT(left, HasSubstr("cutting of wire-4 {\n  kerf: 3 mm\n}\n"));
  EXPECT_EQ(file_of(planned(rig.text), "cut-pieces.rig"), "");
}

// Of three one is meant for a stay and one is cut.
TEST(StockKept, OfSeveralTheRestStays) {
  StockRig rig = StockRig("Demo").stay("one", 2400).more(made_of("hung", "bit"));
  rig.stock("bit", "offcut", 2500, "  pieces: 3\n");
  const std::string left = new_stock(rig.text);
  EXPECT_THAT(left,
              HasSubstr("stock bit of wire-4 {\n  sort: offcut\n  length: 2_500 mm\n  pieces: 2\n}\n"));
  EXPECT_THAT(left, HasSubstr("stock bit-rest of wire-4 {\n  sort: offcut\n  length: 100 mm computed"));
}

// The one that is not cut keeps the name, since a stay names it.
TEST(StockKept, TheRestOfASpoolTakesNoNameThatIsStillUsed) {
  StockRig rig = StockRig("Demo").stay("one", 3000).more(made_of("hung", "drum"));
  rig.stock("drum", "spool", 10'000, "  pieces: 2\n");
  const std::string left = new_stock(rig.text);
  EXPECT_THAT(left, HasSubstr("stock drum of wire-4 {\n  sort: spool\n  length: 10_000 mm\n}\n"));
  EXPECT_THAT(left, HasSubstr("stock drum-rest of wire-4 {\n  sort: spool\n  length: 7_000 mm computed"));
}

// What is meant for a stay is cut for no other one, and nothing that is kept back of it is offered.
TEST(StockKept, NoOtherPieceIsCutFromIt) {
  StockRig rig = StockRig("Demo").stay("one", 2400).more(made_of("hung", "bit"));
  rig.stock("bit", "offcut", 2500, "  spare: 99 %\n");
  const OutputBundle bundle = planned(rig.text);
  EXPECT_THAT(file_of(bundle, "spool-plan.txt"), HasSubstr("at least 2400 mm (2.40 m): 1 piece"));
  EXPECT_THAT(file_of(bundle, "spool-plan.txt"), Not(HasSubstr("kept back")));
}

TEST(StockKept, BoatsThatShareAStockEachSetTheirsAside) {
  const std::string stock =
      StockRig("First").more(made_of("hung", "bit")).stock("bit", "offcut", 2500, "  pieces: 3\n").text;
  const Compilation first = compiled(stock);
  const Compilation second = compiled(stock);
  const SpoolPlan plan = plan_spools({boat_of(first, "First", "loft"), boat_of(second, "Second", "loft")});
  ASSERT_EQ(plan.lines.size(), 1U);
  ASSERT_EQ(plan.lines[0].order.stocks.size(), 1U);
  EXPECT_EQ(plan.lines[0].order.stocks[0].pieces, 1);
  ASSERT_EQ(plan.new_stock.size(), 1U);
  EXPECT_EQ(plan.new_stock[0].pieces, 3);
}

// The file that is replaced stated them, so they go on in the one that replaces it.
TEST(StockKept, TheCuttingOfALineWithoutStockStands) {
  StockRig rig = StockRig("Demo").stay("one", 3000).stock("drum", "spool", 10'000);
  rig.more(
      "wire thin {\n  construction: \"1x19\"\n  size: \"3 mm\"\n}\ncutting of thin {\n  kerf: 2 mm\n}\n");
  const Compilation compilation = compiled(rig.text);
  const OutputBundle bundle =
      SpoolPlanBackend().generate({*compilation.checked, {{&*compilation.checked, "a.rig", {"loft"}}}});
  EXPECT_THAT(file_of(bundle, "new-stock.rig"), HasSubstr("cutting of thin {\n  kerf: 2 mm\n}\n"));
}

} // namespace
} // namespace sheerpole::stock_kept_test
