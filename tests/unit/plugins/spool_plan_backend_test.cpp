#include "plugins/spool-plan/spool_plan_backend.hpp"
#include "unit/backend/csv_reader.hpp"
#include "unit/calculate/spool_plan/stock_rig.hpp"
#include "unit/drawing/svg_reader.hpp"

#include <algorithm>
#include <charconv>
#include <numeric>

namespace sheerpole::spool_plan_backend_test {
using namespace test;
namespace {

std::string file_of(const OutputBundle& bundle, const std::string& name) {
  for (const OutputFile& file : bundle.files)
    if (file.name == name)
      return file.bytes;
  ADD_FAILURE() << "there is no " << name;
  return "";
}

OutputBundle planned(const StockRig& rig) {
  const Compilation compilation = compiled(rig.text);
  return SpoolPlanBackend().generate({*compilation.checked});
}

std::size_t column(const std::vector<std::vector<std::string>>& table, const std::string& name) {
  return static_cast<std::size_t>(std::find(table[0].begin(), table[0].end(), name) - table[0].begin());
}

std::int64_t number(const std::string& text) {
  std::int64_t value = -1;
  std::from_chars(text.data(), text.data() + text.size(), value);
  return value;
}

StockRig usual() {
  return StockRig("Demo")
      .stay("one", 3000)
      .stay("two", 2000)
      .stay("three", 1500, "assumed")
      .stock("drum", "spool", 10'000, "  batch: \"lot \\\"7\\\", red\"\n  spare: 10 %\n")
      .stock("bit", "offcut", 3900)
      .cutting("  kerf: 3 mm\n  least-offcut: 500 mm\n");
}

TEST(SpoolPlanBackEnd, OneRowACutThatAddsUp) {
  const auto table = read_csv(file_of(planned(usual()), "spool-plan.csv"));
  ASSERT_EQ(table.size(), 4U);
  for (std::size_t i = 1; i < table.size(); ++i) {
    ASSERT_EQ(table[i].size(), table[0].size());
    const auto cell = [&](const std::string& name) { return table[i].at(column(table, name)); };
    EXPECT_EQ(number(cell("to_mm")) - number(cell("from_mm")), number(cell("length_mm")));
    EXPECT_EQ(cell("cut_no"), std::to_string(i));
    EXPECT_EQ(cell("draft"), cell("piece") == "three" ? "yes" : "no");
    if (i > 1 && table[i - 1][column(table, "stock")] == cell("stock")) {
      EXPECT_EQ(number(cell("from_mm")), number(table[i - 1][column(table, "to_mm")]) + 3);
    }
    if (cell("stock") == "drum") {
      EXPECT_EQ(cell("batch"), "lot \"7\", red");
    }
  }
}

TEST(SpoolPlanBackEnd, TheTextMarksDraftsAndSaysWhatIsProven) {
  const std::string text = file_of(planned(usual()), "spool-plan.txt");
  EXPECT_NE(text.find("DRAFT\n"), std::string::npos);
  EXPECT_NE(text.find("Demo: three; NOT YET"), std::string::npos);
  EXPECT_NE(text.find("* pin-to-pin of three is assumed"), std::string::npos);
  // The offcut of 3900 mm holds 2000 + 3 + 1500 + 3 and not 3000 + 3 + 1500: 3003 mm come off the spool.
  EXPECT_NE(text.find("about 3.1 m are cut off spools and coils, and no plan cuts off less: proven"),
            std::string::npos);
  EXPECT_NE(text.find("394 mm are waste"), std::string::npos);
  EXPECT_NE(text.find("6997 mm stay on the spool, 1000 mm of them the spare that is kept back"),
            std::string::npos);
}

TEST(SpoolPlanBackEnd, ADraftHasRoomAndNoPlace) {
  const OutputBundle bundle = planned(StockRig("Demo")
                                          .unknown_stay("hung", "  estimate: 5 m\n")
                                          .stay("one", 3000)
                                          .stock("drum", "spool", 20'000));
  const std::string text = file_of(bundle, "spool-plan.txt");
  EXPECT_NE(text.find("       1         0      3000  9' 10 1/8\""), std::string::npos) << text;
  EXPECT_NE(text.find("       2   not yet   not yet                     not yet        0  Demo: hung; NOT "
                      "YET; X(hung)"),
            std::string::npos)
      << text;
  EXPECT_NE(text.find("planned by the estimate of the stay"), std::string::npos);
  const std::string svg = file_of(bundle, "spool-plan.svg");
  EXPECT_NE(svg.find("2. about 5.0 m kept for it, NOT YET to be cut: Demo: hung"), std::string::npos);
  EXPECT_EQ(svg.find("cut at 7940 mm"), std::string::npos);
}

TEST(SpoolPlanBackEnd, WhatIsNotProvenIsCalledSoWithItsBound) {
  // Pieces of about 1 m for offcuts of about 2.5 m, as many as the search may not finish within a limit of
  // none: then the offcuts' own length is the bound.
  StockRig rig("Demo");
  for (int i = 0; i < 9; ++i)
    rig.stay("stay-" + std::to_string(i), 1000 + 17 * i);
  rig.stock("drum", "spool", 50'000).stock("bit", "offcut", 2600).stock("bob", "offcut", 2700);
  const Compilation compilation = compiled(rig.text);
  CuttingLimits none;
  none.most_pieces = 1;
  const SpoolPlan plan = plan_spools({boat_of(compilation, "Demo")}, none);
  const LinePlan& line = plan.lines.at(0);
  EXPECT_FALSE(line.proven);
  EXPECT_EQ(line.bound_mm, 9 * 1000 + 17 * 36 - 2600 - 2700);
  EXPECT_GT(line.counted_mm, line.bound_mm);
}

TEST(SpoolPlanBackEnd, NewStockIsReadInPlaceOfTheOld) {
  const std::string text = file_of(planned(usual()), "new-stock.rig");
  // The boat without its own records of stock and cutting, and the new ones behind it.
  StockRig boat("Demo");
  boat.stay("later", 2500);
  const Compilation again = compiled(boat.text + text.substr(std::string("language 1\n").size()));
  ASSERT_TRUE(again.rig);
  const SpoolPlan plan = plan_spools({boat_of(again, "Demo")});
  ASSERT_EQ(plan.lines.size(), 1U);
  const LineOrder& line = plan.lines[0].order;
  ASSERT_EQ(line.stocks.size(), 1U);
  EXPECT_EQ(line.stocks[0].name, "drum");
  EXPECT_EQ(line.stocks[0].sort, StockForm::spool);
  EXPECT_EQ(line.stocks[0].length_mm, 6997);
  EXPECT_EQ(line.stocks[0].kept_back_mm, 700);
  EXPECT_EQ(line.stocks[0].batch, "lot \"7\", red");
  EXPECT_EQ(line.kerf_mm.value, 3);
  EXPECT_EQ(line.least_offcut_mm.value, 500);
}

TEST(SpoolPlanBackEnd, ABoatWithoutStockIsToldWhatToOrder) {
  const OutputBundle bundle = planned(StockRig("Demo").stay("one", 3000).stay("two", 2000));
  const std::string text = file_of(bundle, "spool-plan.txt");
  EXPECT_NE(text.find("Nothing of it is in stock."), std::string::npos);
  EXPECT_NE(text.find("at least 5000 mm (5.00 m): 2 pieces. The longest is 3000 mm"), std::string::npos);
  EXPECT_NE(text.find("kerf 0 mm (not stated); every rest is kept (no least offcut is stated)"),
            std::string::npos);
  EXPECT_EQ(read_csv(file_of(bundle, "spool-plan.csv")).size(), 1U);
  EXPECT_EQ(bundle.files.size(), 3U); // no stock, no new stock
}

TEST(SpoolPlanBackEnd, LabelsOfManyShortPiecesStandApartOnTheSheet) {
  StockRig rig("A boat with a name that is longer than most, and one more word");
  for (int i = 0; i < 60; ++i)
    rig.stay("stay-number-" + std::to_string(i), 200 + 31 * i % 400);
  for (int i = 0; i < 8; ++i)
    rig.stay("long-stay-" + std::to_string(i), 9000);
  rig.stock("drum", "spool", 200'000).stock("bit", "offcut", 900).cutting("  kerf: 2 mm\n");
  const OutputBundle bundle = planned(rig);
  const ReadSvg svg = read_svg(file_of(bundle, "spool-plan.svg"));
  EXPECT_TRUE(overlapping(svg).empty()) << overlapping(svg).front();
  for (const ReadSvg::Text& text : svg.texts) {
    EXPECT_GE(text.left, 0.0) << text.words;
    EXPECT_LE(text.right, svg.width) << text.words;
    EXPECT_LE(text.bottom, svg.height) << text.words;
  }
  // Each of the 68 has its number once in or below its bar.
  for (int i = 1; i <= 68; ++i)
    EXPECT_EQ(std::count_if(svg.texts.begin(), svg.texts.end(),
                            [&](const ReadSvg::Text& text) { return text.words == std::to_string(i); }),
              1)
        << i;
  std::vector<std::string> ids = svg.ids;
  std::sort(ids.begin(), ids.end());
  EXPECT_EQ(std::adjacent_find(ids.begin(), ids.end()), ids.end());
}

TEST(SpoolPlanBackEnd, AFleetIsOnePlanAndItsBoatsAreToldApart) {
  const Compilation first = compiled(StockRig("Sister").stay("one", 3000).text);
  const Compilation second = compiled(StockRig("Sister").stay("one", 2000).text);
  const OutputBundle bundle = SpoolPlanBackend().generate(
      {*first.checked, {{&*first.checked, "a.rig", {}}, {&*second.checked, "b.rig", {}}}});
  const std::string text = file_of(bundle, "spool-plan.txt");
  EXPECT_NE(text.find("Sister (a.rig): one"), std::string::npos);
  EXPECT_NE(text.find("Sister (b.rig): one"), std::string::npos);
  EXPECT_NE(text.find("at least 5000 mm"), std::string::npos);
}

/// The rig with the stock that a plan left in the place of its own.
StockRig with_stock(StockRig bare, const std::string& new_stock) {
  bare.text += new_stock.substr(new_stock.find('\n') + 1);
  return bare;
}

TEST(SpoolPlanBackEnd, TakesNoPieceTwice) {
  const StockRig bare = StockRig("Demo").stay("one", 3000).stay("two", 2000);
  StockRig first = bare;
  first.stock("drum", "spool", 10'000).cutting("  kerf: 3 mm\n");
  const std::string once = file_of(planned(first), "new-stock.rig");
  EXPECT_NE(once.find("length: 4_994 mm"), std::string::npos) << once;
  const OutputBundle again = planned(with_stock(bare, once));
  EXPECT_EQ(file_of(again, "new-stock.rig"), once);
  EXPECT_NE(file_of(again, "spool-plan.txt").find("an earlier plan has taken it"), std::string::npos);
  // A piece that was made longer since, and one that came later, are cut; the other is not.
  StockRig changed = StockRig("Demo").stay("one", 3000).stay("two", 2001).stay("three", 500);
  const std::string then = file_of(planned(with_stock(changed, once)), "new-stock.rig");
  EXPECT_NE(then.find("length: 2_487 mm"), std::string::npos) << then; // 4994 - 2001 - 500 - 2 x 3
}

// What the stock did not hold was not taken, and is planned when there is more.
TEST(SpoolPlanBackEnd, WhatWasShortIsPlannedLater) {
  const StockRig bare = StockRig("Demo").stay("one", 3000).stay("two", 2000);
  StockRig first = bare;
  first.stock("drum", "spool", 3500);
  StockRig second = with_stock(bare, file_of(planned(first), "new-stock.rig"));
  second.stock("new-drum", "spool", 5000);
  const std::string then = file_of(planned(second), "new-stock.rig");
  EXPECT_NE(then.find("length: 3_000 mm"), std::string::npos) << then; // 5000 - 2000
}

} // namespace
} // namespace sheerpole::spool_plan_backend_test
