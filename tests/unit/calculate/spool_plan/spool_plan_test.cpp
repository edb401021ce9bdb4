#include "calculate/spool_plan/spool_order.hpp"
#include "unit/calculate/spool_plan/stock_rig.hpp"

namespace sheerpole::spool_plan_test {
using namespace test;
namespace {

// The lengths of these boats are whole millimetres, so that each position can be added up by hand.

/// The one line of one boat.
class SpoolPlanTest : public testing::Test {
protected:
  const LinePlan& plan(const StockRig& rig, std::vector<PieceNote> notes = {}) {
    compilation_ = compiled(rig.text);
    SpoolBoat boat = boat_of(compilation_, "Demo");
    boat.notes = std::move(notes);
    whole_ = plan_spools({boat});
    EXPECT_EQ(whole_.lines.size(), 1U);
    return whole_.lines.front();
  }
  const std::string& name(const LinePlan& plan, const SpoolCut& cut) {
    return plan.order.pieces[cut.piece].name;
  }

  Compilation compilation_;
  SpoolPlan whole_;
};

TEST_F(SpoolPlanTest, EachPieceHasItsKerfBehindIt) {
  const LinePlan& line = plan(StockRig("Demo")
                                  .stay("long-one", 3000)
                                  .stay("short-one", 2000)
                                  .stock("drum", "spool", 10'000)
                                  .cutting("  kerf: 3 mm\n"));
  ASSERT_EQ(line.uses.size(), 1U);
  const SpoolUse& use = line.uses.front();
  ASSERT_EQ(use.cuts.size(), 2U);
  EXPECT_EQ(name(line, use.cuts[0]), "long-one");
  EXPECT_EQ(use.cuts[0].start_mm, 0);
  EXPECT_EQ(use.cuts[0].end_mm, 3000);
  EXPECT_EQ(use.cuts[1].start_mm, 3003);
  EXPECT_EQ(use.cuts[1].end_mm, 5003);
  EXPECT_EQ(use.kerf_mm, 6);
  EXPECT_EQ(use.rest_mm, 4994); // 10000 - 3000 - 3 - 2000 - 3
  EXPECT_EQ(use.fate, RestFate::stays);
  EXPECT_EQ(use.rest_name, "drum");
  EXPECT_EQ(line.counted_mm, 5006);
  EXPECT_TRUE(line.proven);
}

TEST_F(SpoolPlanTest, APieceThatEndsWithItsStockNeedsNoCut) {
  const LinePlan& line = plan(StockRig("Demo")
                                  .stay("one", 3000)
                                  .stay("two", 2000)
                                  .stock("bit", "offcut", 5003)
                                  .cutting("  kerf: 3 mm\n"));
  ASSERT_EQ(line.uses.size(), 1U);
  EXPECT_EQ(line.uses.front().kerf_mm, 3);
  EXPECT_EQ(line.uses.front().rest_mm, 0);
  EXPECT_EQ(line.uses.front().fate, RestFate::nothing);
  EXPECT_TRUE(whole_.new_stock.empty());
}

TEST_F(SpoolPlanTest, OneMillimetreTooShortIsTooShort) {
  const LinePlan& line = plan(StockRig("Demo")
                                  .stay("one", 3000)
                                  .stay("two", 2000)
                                  .stock("bit", "offcut", 5002)
                                  .cutting("  kerf: 3 mm\n"));
  ASSERT_EQ(line.short_pieces.size(), 1U);
  EXPECT_EQ(line.order.pieces[line.short_pieces[0].piece].name, "two");
  EXPECT_EQ(line.to_buy_mm, 2003);
  EXPECT_EQ(line.measure, SpoolMeasure::uncut);
  EXPECT_EQ(line.counted_mm, 2000);
  EXPECT_TRUE(line.proven);
}

TEST_F(SpoolPlanTest, SpareIsAddedAndRoundedUp) {
  const LinePlan& line =
      plan(StockRig("Demo").stay("even", 3000).stay("odd", 3001).cutting("  spare: 2 %\n"));
  EXPECT_EQ(line.order.pieces[0].length_mm, 3060); // 3000 x 1.02, exactly
  EXPECT_EQ(line.order.pieces[1].length_mm, 3062); // 3001 x 1.02 = 3061.02
}

TEST_F(SpoolPlanTest, TheLongerOfListedAndExactCutIsPlanned) {
  PieceNote note;
  note.piece = "one";
  note.listed_cut = Length::millimetres(3000.1); // as rows rounded one by one may come to
  EXPECT_EQ(plan(StockRig("Demo").stay("one", 3000), {note}).order.pieces[0].length_mm, 3001);
}

TEST_F(SpoolPlanTest, OffcutsGoBeforeSpools) {
  const LinePlan& line = plan(StockRig("Demo")
                                  .stay("one", 3000)
                                  .stay("two", 2000)
                                  .stock("drum", "spool", 10'000)
                                  .stock("bit", "offcut", 3100)
                                  .cutting("  least-offcut: 500 mm\n"));
  ASSERT_EQ(line.uses.size(), 2U);
  EXPECT_EQ(name(line, line.uses[0].cuts[0]), "two");
  EXPECT_EQ(name(line, line.uses[1].cuts[0]), "one");
  EXPECT_EQ(line.uses[1].rest_mm, 100);
  EXPECT_EQ(line.uses[1].fate, RestFate::waste);
  EXPECT_EQ(line.totals.waste_mm, 100);
  EXPECT_EQ(line.totals.stock_mm,
            line.totals.pieces_mm + line.totals.kerf_mm + line.totals.kept_mm + line.totals.waste_mm);
}

TEST_F(SpoolPlanTest, OfOffcutsThatSaveAlikeTheShorterIsBegun) {
  const LinePlan& line = plan(StockRig("Demo")
                                  .stay("one", 3000)
                                  .stock("drum", "spool", 10'000)
                                  .stock("long-bit", "offcut", 9000)
                                  .stock("short-bit", "offcut", 4000));
  ASSERT_EQ(line.uses.size(), 1U);
  EXPECT_EQ(line.order.stocks[line.uses[0].stock].name, "short-bit");
  EXPECT_EQ(line.counted_mm, 0);
}

TEST_F(SpoolPlanTest, OfSpoolsThatHoldThePiecesTheShortestIsTakenWhoseRestIsNoWaste) {
  const StockRig rig = StockRig("Demo")
                           .stay("one", 3000)
                           .stock("long-drum", "spool", 90'000)
                           .stock("drum", "spool", 9000)
                           .stock("tight-drum", "spool", 3200)
                           .cutting("  least-offcut: 500 mm\n");
  const LinePlan& line = plan(rig);
  ASSERT_EQ(line.uses.size(), 1U);
  EXPECT_EQ(line.order.stocks[line.uses[0].stock].name, "drum");
}

TEST_F(SpoolPlanTest, AnOffcutIsCarriedForwardUnderANameOfItsOwn) {
  plan(StockRig("Demo")
           .stay("one", 3000)
           .stock("bit", "offcut", 5000, "  pieces: 2\n")
           .stock("bit-rest", "offcut", 700)
           .cutting("  kerf: 2 mm\n"));
  ASSERT_EQ(whole_.new_stock.size(), 3U);
  EXPECT_EQ(whole_.new_stock[0].name, "bit"); // the one of the two that is not begun
  EXPECT_EQ(whole_.new_stock[0].pieces, 1);
  EXPECT_EQ(whole_.new_stock[0].length_mm, 5000);
  EXPECT_FALSE(whole_.new_stock[0].changed);
  EXPECT_EQ(whole_.new_stock[1].name, "bit-rest-2"); // bit-rest is there already
  EXPECT_EQ(whole_.new_stock[1].sort, StockForm::offcut);
  EXPECT_EQ(whole_.new_stock[1].length_mm, 1998);
  EXPECT_EQ(whole_.new_stock[2].name, "bit-rest");
}

TEST_F(SpoolPlanTest, WhatIsKeptBackIsNotCutInto) {
  // 10 % of 10 m is kept: 9 m may be cut, which two pieces of 4.5 m would fill but for the kerf.
  const LinePlan& line = plan(StockRig("Demo")
                                  .stay("one", 4500)
                                  .stay("two", 4500)
                                  .stock("drum", "spool", 10'000, "  spare: 10 %\n")
                                  .cutting("  kerf: 2 mm\n  least-offcut: 3 m\n"));
  ASSERT_EQ(line.uses.size(), 1U);
  EXPECT_EQ(line.uses[0].cuts.size(), 1U);
  EXPECT_EQ(line.short_pieces.size(), 1U);
  EXPECT_EQ(line.uses[0].rest_mm, 5498);

  // The last cut is made before what is kept, so it takes its kerf although the usable length is used up.
  const LinePlan& full = plan(StockRig("Demo")
                                  .stay("one", 9000)
                                  .stock("drum", "spool", 10'000, "  spare: 10 %\n")
                                  .cutting("  kerf: 2 mm\n  least-offcut: 3 m\n"));
  EXPECT_EQ(full.uses[0].kerf_mm, 2);
  EXPECT_EQ(full.uses[0].rest_mm, 998);
  EXPECT_EQ(full.uses[0].fate, RestFate::stays); // shorter than the least offcut, and wanted
}

TEST_F(SpoolPlanTest, OneOfSeveralSpoolsOfARecordGetsANameAndStaysASpool) {
  plan(StockRig("Demo").stay("one", 3000).stock("drum", "spool", 10'000, "  pieces: 3\n"));
  ASSERT_EQ(whole_.new_stock.size(), 2U);
  EXPECT_EQ(whole_.new_stock[0].pieces, 2);
  EXPECT_EQ(whole_.new_stock[1].name, "drum-rest");
  EXPECT_EQ(whole_.new_stock[1].sort, StockForm::spool);
  EXPECT_EQ(whole_.new_stock[1].length_mm, 7000);
}

TEST_F(SpoolPlanTest, AnUnknownLengthIsPlannedByTheEstimateOrNotAtAll) {
  const LinePlan& line = plan(StockRig("Demo")
                                  .unknown_stay("guessed", "  estimate: 5 m\n")
                                  .unknown_stay("marked")
                                  .stock("drum", "spool", 10'000));
  ASSERT_EQ(line.order.pieces.size(), 1U);
  EXPECT_EQ(line.order.pieces[0].name, "guessed");
  EXPECT_TRUE(line.order.pieces[0].estimated);
  EXPECT_EQ(line.order.pieces[0].length_mm, 4940); // 5000 pin to pin, 60 less
  ASSERT_EQ(line.order.unplanned.size(), 1U);
  EXPECT_EQ(line.order.unplanned[0].name, "marked");
  EXPECT_TRUE(line.order.unplanned[0].reason.is(StockPhrase::no_estimate));
}

// As the order list has it: by the points where nothing is estimated, and X has in it what the reading
// takes off the cord.
TEST_F(SpoolPlanTest, AnUnknownLengthIsTheSameAsInTheOrder) {
  const LinePlan& line =
      plan(StockRig("Demo")
               .unknown_stay("hung", "  estimate: 5 m\n")
               .unknown_stay("drawn", "  path: top > foot\n")
               .more("points {\n  top: (0, 0, 6) m\n  foot: (0, 0, 0) m\n}\ncord red { }\n"

                     "reading of hung {\n  method: messenger\n  cord: red\n  knots: 1\n"
                     "  offset: 40 mm\n}\n"
                     "reading of drawn {\n  method: messenger\n  cord: red\n  knots: 2\n"
                     "  offset: 40 mm\n}\n")
               .stock("drum", "spool", 20'000));
  ASSERT_EQ(line.order.pieces.size(), 2U);
  // The cord is 40 mm longer than the pins are apart, and the piece 60 mm shorter than those: 5000 - 60.
  EXPECT_EQ(line.order.pieces[0].length_mm, 4940);
  EXPECT_EQ(line.order.pieces[0].ordered.x.millimetres(), 5040.0);
  EXPECT_EQ(line.order.pieces[0].ordered.by, EstimateBy::statement);
  EXPECT_EQ(line.order.pieces[1].length_mm, 5940);
  EXPECT_EQ(line.order.pieces[1].ordered.by, EstimateBy::path);
}

// What is not known yet moves nothing that may be cut.
TEST_F(SpoolPlanTest, DraftsComeLastOnTheirStock) {
  const LinePlan& line = plan(StockRig("Demo")
                                  .unknown_stay("guessed", "  estimate: 5 m\n")
                                  .stay("one", 3000)
                                  .stay("two", 2000)
                                  .stock("drum", "spool", 20'000)
                                  .cutting("  kerf: 3 mm\n"));
  ASSERT_EQ(line.uses.size(), 1U);
  ASSERT_EQ(line.uses[0].cuts.size(), 3U);
  EXPECT_FALSE(line.order.pieces[line.uses[0].cuts[0].piece].draft());
  EXPECT_FALSE(line.order.pieces[line.uses[0].cuts[1].piece].draft());
  EXPECT_EQ(line.order.pieces[line.uses[0].cuts[2].piece].name, "guessed");
  EXPECT_EQ(line.uses[0].cuts[2].start_mm, 3000 + 3 + 2000 + 3);
}

TEST_F(SpoolPlanTest, ADraftIsPlannedAndAnIncompleteCutIsNot) {
  PieceNote draft;
  draft.piece = "draft";
  draft.draft_reasons = {"pin-to-pin of draft is assumed"};
  PieceNote incomplete;
  incomplete.piece = "lacking";
  incomplete.complete = false;
  const LinePlan& line = plan(
      StockRig("Demo").stay("draft", 3000, "assumed").stay("lacking", 2000).stock("drum", "spool", 10'000),
      {draft, incomplete});
  ASSERT_EQ(line.order.pieces.size(), 1U);
  EXPECT_EQ(line.order.pieces[0].draft_reasons, draft.draft_reasons);
  EXPECT_EQ(line.uses.size(), 1U);
  ASSERT_EQ(line.order.unplanned.size(), 1U);
  EXPECT_EQ(line.order.unplanned[0].name, "lacking");
}

TEST_F(SpoolPlanTest, WithNothingInStockAllIsToBeBought) {
  const LinePlan& line =
      plan(StockRig("Demo").stay("one", 3000).stay("two", 2000).cutting("  kerf: 3 mm\n"));
  EXPECT_FALSE(line.searched);
  EXPECT_TRUE(line.uses.empty());
  EXPECT_EQ(line.short_pieces.size(), 2U);
  EXPECT_EQ(line.to_buy_mm, 5006);
  EXPECT_TRUE(whole_.new_stock.empty());
  EXPECT_TRUE(whole_.files.empty());
}

TEST_F(SpoolPlanTest, APieceLongerThanEveryStockIsToldFromOneForWhichThereIsNoMore) {
  const LinePlan& line = plan(StockRig("Demo")
                                  .stay("giant", 30'000)
                                  .stay("one", 3000)
                                  .stay("two", 2900)
                                  .stock("drum", "spool", 4000));
  ASSERT_EQ(line.short_pieces.size(), 2U);
  EXPECT_EQ(line.short_pieces[0].reason, UncutReason::longer_than_every_stock);
  EXPECT_EQ(line.short_pieces[1].reason, UncutReason::not_enough_stock);
  EXPECT_EQ(line.order.pieces[line.short_pieces[1].piece].name, "two");
  EXPECT_EQ(line.to_buy_mm, 32'900);
  EXPECT_EQ(line.measure, SpoolMeasure::uncut);
  EXPECT_EQ(line.counted_mm, 2900); // the giant is in no plan
}

TEST_F(SpoolPlanTest, APieceThatNoStockHoldsLeavesTheProofOfTheOthersAlone) {
  const LinePlan& line =
      plan(StockRig("Demo").stay("giant", 30'000).stay("one", 3000).stock("drum", "spool", 4000));
  ASSERT_EQ(line.short_pieces.size(), 1U);
  EXPECT_EQ(line.measure, SpoolMeasure::cut_off);
  EXPECT_EQ(line.counted_mm, 3000);
  EXPECT_TRUE(line.proven);
}

TEST_F(SpoolPlanTest, AnOffcutThatTheSpoolCanNotReplaceIsKeptForThePieceThatNeedsIt) {
  // Filled by itself the offcut would take both short pieces, 5.9 of its 6 m, and the long one would find
  // no place on the spool.
  const LinePlan& line = plan(StockRig("Demo")
                                  .stay("long-one", 5000)
                                  .stay("one", 3000)
                                  .stay("two", 2900)
                                  .stock("drum", "spool", 4000, "  pieces: 2\n")
                                  .stock("bit", "offcut", 6000));
  EXPECT_TRUE(line.short_pieces.empty());
  EXPECT_EQ(line.measure, SpoolMeasure::cut_off);
  EXPECT_EQ(line.counted_mm, 5900);
  EXPECT_LE(line.bound_mm, line.counted_mm);
}

TEST_F(SpoolPlanTest, AChainIsPlannedInWholeLinks) {
  const std::string text =
      "language 1\nboat \"Demo\" { }\nchain chain-6 {\n  construction: \"short-link\"\n"
      "  size: \"6 mm\"\n  pitch: 18 mm\n}\nshackle bow {\n  length: 20 mm\n}\n"
      "cutting of chain-6 {\n  spare: 1 %\n}\n"
      "stay bobstay {\n  line: chain-6\n  pin-to-pin: 1040 mm\n  stack {\n    bow\n"
      "    line\n    bow\n  }\n}\n";
  compilation_ = compiled(text);
  const SpoolPlan plan = plan_spools({boat_of(compilation_, "Demo")});
  ASSERT_EQ(plan.lines.size(), 1U);
  ASSERT_EQ(plan.lines[0].order.pieces.size(), 1U);
  // 1000 mm are 55.56 links: 56; one in a hundred more makes 57 of 18 mm.
  EXPECT_EQ(plan.lines[0].order.pieces[0].length_mm, 1026);
}

TEST(SpoolPlanOfBoats, TwoBoatsCutFromOneSpoolThatIsCountedOnce) {
  const Compilation first = compiled(
      StockRig("First").stay("one", 6000).stock("drum", "spool", 10'000).cutting("  kerf: 2 mm\n").text);
  const Compilation second = compiled(
      StockRig("Second").stay("two", 3000).stock("drum", "spool", 10'000).cutting("  kerf: 2 mm\n").text);

  const SpoolPlan shared =
      plan_spools({boat_of(first, "First", "loft"), boat_of(second, "Second", "loft")});
  ASSERT_EQ(shared.lines.size(), 1U);
  EXPECT_EQ(shared.lines[0].order.stocks.size(), 1U);
  ASSERT_EQ(shared.lines[0].uses.size(), 1U);
  EXPECT_EQ(shared.lines[0].uses[0].cuts.size(), 2U);
  EXPECT_EQ(shared.lines[0].uses[0].rest_mm, 996); // 10000 - 6002 - 3002

  const SpoolPlan apart = plan_spools({boat_of(first, "First", "a"), boat_of(second, "Second", "b")});
  EXPECT_EQ(apart.lines[0].order.stocks.size(), 2U);
  EXPECT_EQ(apart.files.size(), 2U);
}

TEST(SpoolPlanOfBoats, OneLineOfTwoNamesIsOneAndBothNamesAreSaid) {
  const Compilation first = compiled(StockRig("First").stay("one", 6000).cutting("  kerf: 1 mm\n").text);
  const Compilation second = compiled(
      StockRig("Second", "thin-wire").stay("two", 3000).cutting("  kerf: 2 mm\n  spare: 1 %\n").text);
  const SpoolPlan plan = plan_spools({boat_of(first, "First"), boat_of(second, "Second")});
  ASSERT_EQ(plan.lines.size(), 1U);
  const LineOrder& line = plan.lines[0].order;
  ASSERT_EQ(line.names.size(), 2U);
  EXPECT_EQ(line.names[0].name, "wire-4");
  EXPECT_EQ(line.names[1].name, "thin-wire");
  EXPECT_EQ(line.names[1].boats, std::vector<std::string>{"Second"});
  EXPECT_EQ(line.kerf_mm.value, 2); // stated differently: the greatest
  EXPECT_TRUE(line.kerf_mm.differs);
  EXPECT_FALSE(line.spare.differs);
  EXPECT_EQ(line.pieces[0].length_mm, 6060);
}

TEST(SpoolPlanOfBoats, AnotherGradeIsAnotherLine) {
  StockRig other("Second");
  other.stay("two", 3000);
  other.text.replace(other.text.find("\"316\""), 5, "\"304\"");
  const Compilation first = compiled(StockRig("First").stay("one", 6000).text);
  const Compilation second = compiled(other.text);
  EXPECT_EQ(plan_spools({boat_of(first, "First"), boat_of(second, "Second")}).lines.size(), 2U);
}

} // namespace
} // namespace sheerpole::spool_plan_test
