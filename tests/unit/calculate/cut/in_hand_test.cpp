#include "calculate/cut/in_hand.hpp"

#include "calculate/calculate.hpp"
#include "unit/calculate/compiled_rig.hpp"
#include "unit/calculate/reference_rows.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <map>

namespace sheerpole::in_hand_test {
namespace {

/// tests/reference/in-hand.tsv, by case and quantity. Common practice, no source.
double worked(const std::string& which, const std::string& quantity) {
  for (const auto& row : reference_rows("in-hand", 3))
    if (row[0] == which && row[1] == quantity)
      return std::stod(row[2]);
  ADD_FAILURE() << which << ", " << quantity;
  return 0.0;
}

/// The stay of the worked case: a cord mark, two wraps, 24 in of screw and toggles.
std::string on_a_cord(const std::string& upper, const std::string& line, const std::string& lower) {
  return "language 1\nrope hmpe-9 {\n  construction: \"12-strand HMPE heat-set\"\n  size: \"9 mm\"\n}\n"
         "splice eye {\n  bury: 25.5 in measured\n  contraction: 0 % measured\n}\n"
         "thimble ring {\n  length: 0 mm\n  wrap: 6.25 in measured\n}\n"
         "toggle joint {\n  length: 2.25 in\n}\n"
         "turnbuckle screw {\n  shortest: 17 in\n  longest: 22 in\n}\n"
         "stay shroud {\n  line: hmpe-9\n  stack {\n    ring (splice: eye" +
         upper + ")\n    line" + line + "\n    ring (splice: eye" + lower +
         ")\n    2 x joint (removable: yes)\n    screw (length: 19.5 in)\n  }\n}\n"
         "reading of shroud {\n  method: messenger\n  mark: \"four knots\"\n}\n";
}

struct Made {
  Compilation compilation;
  const Piece& piece() const { return compilation.derived->stays[0].pieces[0]; }
};

Made made(const std::string& text) {
  return {test::compiled(text)};
}

TEST(InHand, IsSharedOutAsAtTheBench) {
  const Made least = made(on_a_cord("", "", ""));
  EXPECT_NEAR(least.piece().body.known().inches(), worked("body", "plus-x"), 1e-9);
  EXPECT_NEAR(least.piece().cut.known().inches(), worked("least-cut", "plus-x"), 1e-9);
  EXPECT_FALSE(least.piece().in_hand);

  const Made shared = made(on_a_cord("", " (in-hand-over: 10.75 ft measured)", ""));
  const Piece& piece = shared.piece();
  ASSERT_TRUE(piece.in_hand);
  EXPECT_TRUE(piece.in_hand->cut_nothing());
  for (const WhichEnd end : {WhichEnd::upper, WhichEnd::lower}) {
    EXPECT_NEAR(piece.in_hand->at(end).more.inches(), worked("extra 129", "more-at-each-end"), 1e-9);
    EXPECT_NEAR(buried(piece, end).spare.inches(), worked("extra 129", "more-at-each-end"), 1e-9);
    EXPECT_NEAR(buried(piece, end).total().inches(), 25.5 + 64.5, 1e-9);
  }
  EXPECT_TRUE(piece.cut.unknown);
  EXPECT_NEAR(piece.cut.known().inches(), worked("extra 129", "cut-plus-x"), 1e-9);
}

TEST(InHand, GoesToTheOtherEndWhereOneHasItsOwn) {
  const Made result =
      made(on_a_cord(", spare-bury: 5 ft measured", " (in-hand-over: 10.75 ft measured)", ""));
  const Piece& piece = result.piece();
  ASSERT_TRUE(piece.in_hand);
  EXPECT_NEAR(buried(piece, WhichEnd::upper).spare.inches(), 60.0, 1e-9);
  EXPECT_NEAR(buried(piece, WhichEnd::lower).spare.inches(),
              worked("extra 129, one end 60", "more-at-the-other"), 1e-9);
  EXPECT_NEAR(piece.cut.known().inches(), worked("extra 129, one end 60", "cut-plus-x"), 1e-9);
  // The parts past the pins differ by what the burys differ.
  const Halves parts = halves(piece);
  EXPECT_NEAR((parts.lower - parts.upper).inches(), 9.0, 1e-9);
}

/// A stay of known length: 10 m between the pins of two thimbles of 16 mm, 9 mm rope.
std::string known(const std::string& upper, const std::string& line, const std::string& lower,
                  const std::string& splice = "  contraction: 8 % measured\n",
                  const std::string& length = "10 m") {
  return "language 1\nrope hmpe-9 {\n  construction: \"12-strand HMPE heat-set\"\n  size: \"9 mm\"\n}\n"
         "splice eye {\n  bury: 72 d practice\n" +
         splice +
         "}\nthimble ring {\n  length: 16 mm\n  wrap: 100 mm measured\n"
         "  lower: rope-seat (diameter: 28 mm, throat: 38 mm)\n}\n"
         "stock piece-7 of hmpe-9 {\n  sort: offcut\n  length: 13_000 mm measured\n}\n"
         "stay shroud {\n  pin-to-pin: " +
         length + "\n  line: hmpe-9\n  stack {\n    ring (splice: eye" + upper + ")\n    line" + line +
         "\n    ring (splice: eye" + lower + ")\n  }\n}\n";
}

// Body 10 000 - 32 = 9968 mm; least cut 9968 + 2 x (100 + 648 + 51.84) = 11 567.68 mm.
constexpr double least_cut_mm = 11'567.68;

std::string in_hand_mm(double length) {
  return " (in-hand: " + std::to_string(length) + " mm measured)";
}

TEST(InHand, LongerBurysContractLikeTheRest) {
  const Made result = made(known("", in_hand_mm(least_cut_mm + 1166.4), ""));
  const Piece& piece = result.piece();
  EXPECT_NEAR(piece.in_hand->over.millimetres(), 1166.4, 1e-6);
  EXPECT_NEAR(piece.in_hand->at(WhichEnd::upper).more.millimetres(),
              worked("contraction 8, extra 1166.4 mm", "more-at-each-end-mm"), 1e-6);
  EXPECT_NEAR(piece.cut.known().millimetres(), least_cut_mm + 1166.4, 1e-6);
  EXPECT_NEAR(test::term_mm(piece.cut, TermKind::contraction_of_spare, WhichEnd::lower), 43.2, 1e-6);
  EXPECT_TRUE(piece.in_hand->cut_nothing());
}

// Half of what opening the weave takes is given back: 1.04 of rope for one of bury.
TEST(InHand, WhatIsGivenBackIsNotUsed) {
  const Made result =
      made(known("", in_hand_mm(20'000), "", "  contraction: 8 % measured\n  recovered: 50 %\n"));
  const Piece& piece = result.piece();
  EXPECT_NEAR(piece.in_hand->at(WhichEnd::upper).rope_per_spare, 1.04, 1e-12);
  EXPECT_NEAR((piece.cut.known() + piece.in_hand->cut_away).millimetres(), 20'000, 1e-6);
}

TEST(InHand, IsTheStockThatTheLineNames) {
  const Made result = made(known("", " (stock: piece-7)", ""));
  const Piece& piece = result.piece();
  ASSERT_TRUE(piece.in_hand);
  EXPECT_EQ(piece.in_hand->stock, "piece-7");
  EXPECT_NEAR(piece.cut.known().millimetres(), 13'000, 1e-6);
}

TEST(InHand, KeepsNoMoreThanThereIsRoomFor) {
  const Made result = made(known("", in_hand_mm(9000), "", "  contraction: 0 % measured\n", "2 m"));
  const Piece& piece = result.piece();
  // Bearings 1968 mm apart, throats 52 mm from each, two burys of 648 mm: 568 mm are left for both tails.
  EXPECT_NEAR(piece.in_hand->at(WhichEnd::upper).more.millimetres(), 284.0, 1e-6);
  EXPECT_FALSE(piece.in_hand->cut_nothing());
  EXPECT_NEAR((piece.cut.known() + piece.in_hand->cut_away).millimetres(), 9000, 1e-6);
  EXPECT_FALSE(test::found(result.compilation, "burys-overlap"));
}

TEST(InHand, TooLittleTakesTheSpareAndNeverTheBury) {
  const Made result = made(known(", spare-bury: 500 mm", in_hand_mm(least_cut_mm + 216.0), ""));
  const Piece& piece = result.piece();
  ASSERT_TRUE(piece.in_hand->too_short());
  // 540 mm of rope for the spare, 216 there: 324 short, 300 mm of bury.
  EXPECT_NEAR(piece.in_hand->over.millimetres(), -324.0, 1e-6);
  EXPECT_NEAR(piece.in_hand->at(WhichEnd::upper).spare_given_up.millimetres(), 300.0, 1e-6);
  EXPECT_NEAR(piece.in_hand->lacking.millimetres(), 0.0, 1e-6);
  EXPECT_TRUE(test::found(result.compilation, "in-hand-short"));
  EXPECT_FALSE(result.compilation.checked->draft_reasons().empty());

  const Made none = made(known("", in_hand_mm(least_cut_mm - 10.0), ""));
  EXPECT_NEAR(none.piece().in_hand->lacking.millimetres(), 10.0, 1e-6);
}

/// What the edit of `in-hand-short` puts in the place of what stands in the file.
std::string way_out(const std::string& text) {
  const Compilation result = test::compiled(text);
  for (const Diagnostic& finding : result.findings)
    if (finding.slug == "in-hand-short" && finding.edit)
      return text.substr(finding.edit->span.begin, finding.edit->span.end - finding.edit->span.begin) +
             " -> " + finding.edit->replacement;
  return "none";
}

TEST(InHand, TooLittleAlwaysNamesOneWayOut) {
  EXPECT_EQ(way_out(known("", " (in-hand: 11 m)", "")), "11 m -> 11568 mm");
  // Both spares are needed: no one number of them makes up for what is short.
  EXPECT_EQ(way_out(known(", spare-bury: 200 mm", " (in-hand: 11.7 m)", ", spare-bury: 200 mm")),
            "11.7 m -> 12000 mm"); // 11 567.68 + 2 x 216 = 11 999.68
  // A record of stock is what was measured of it: another piece is the way out, where there is one.
  const std::string short_one = "stock stub of hmpe-9 {\n  sort: offcut\n  length: 9 m measured\n}\n";
  EXPECT_EQ(way_out(known("", " (stock: stub)", "") + short_one), "stub -> piece-7");
}

TEST(InHand, OfALengthXIsEnoughUpToSome) {
  const Made result = made(on_a_cord("", " (in-hand: 500 in measured)", ""));
  const Piece& piece = result.piece();
  ASSERT_TRUE(piece.in_hand && piece.in_hand->longest_x);
  EXPECT_NEAR(piece.in_hand->longest_x->inches(), 500.0 - 39.5, 1e-9);
  EXPECT_NEAR(piece.cut.known().inches(), 39.5, 1e-9);
}

TEST(InHand, WaitsForWhatTheCutLacks) {
  const Made result = made(known("", in_hand_mm(20'000), "", ""));
  EXPECT_TRUE(result.piece().in_hand->incomplete);
  EXPECT_EQ(buried(result.piece(), WhichEnd::upper).spare, Length{});
}

// A bound on the length moves a bearing by itself, and not by less because burys of a piece in hand would
// be shared out anew.
TEST(InHand, DoesNotShrinkWhatTheLengthIsOffBy) {
  const auto worst = [](const std::string& line) {
    const Made result = made(known("", line, "", "  contraction: 8 % measured\n", "10 m ± 5 mm"));
    return result.compilation.derived->stays[0].uncertainty->worst_high.millimetres();
  };
  EXPECT_NEAR(worst(""), 5.0, 1e-6);
  EXPECT_NEAR(worst(in_hand_mm(13'000)), 5.0, 1e-6);
}

RC_GTEST_PROP(InHand, WhatIsThereIsUsedOrCutAway, ()) {
  const double length = *rc::gen::inRange(3000, 20'000);
  const double there = *rc::gen::inRange(2000, 40'000);
  const double contraction = *rc::gen::inRange(0, 13);
  const std::string spare = *rc::gen::element(std::string(), std::string(", spare-bury: 250 mm"));
  const Made result = made(known(spare, in_hand_mm(there), "",
                                 "  contraction: " + std::to_string(contraction) + " % measured\n",
                                 std::to_string(length) + " mm"));
  if (!result.compilation.derived)
    return;
  const Piece& piece = result.piece();
  const InHand& kept = *piece.in_hand;
  if (kept.too_short()) {
    RC_ASSERT(kept.kept == Length{});
    RC_ASSERT(kept.at(WhichEnd::upper).spare_given_up <= kept.at(WhichEnd::upper).spare_there);
    return;
  }
  RC_ASSERT(std::abs((piece.cut.known() + kept.cut_away).millimetres() - there) < 1e-6);
  for (const WhichEnd end : {WhichEnd::upper, WhichEnd::lower})
    RC_ASSERT(std::abs(buried(piece, end).bury.millimetres() - 648.0) < 1e-6);
}

} // namespace
} // namespace sheerpole::in_hand_test
