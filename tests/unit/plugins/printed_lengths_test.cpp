// One length reads the same on every paper, and the numbers of one card add up as printed.
#include "backend/card/card_piece.hpp"
#include "backend/printed_sums.hpp"
#include "plugins/bench-card/bench_card.hpp"
#include "plugins/cut-list/cut_list.hpp"
#include "plugins/dry-fit-card/dry_fit_card.hpp"
#include "plugins/labels/labels.hpp"
#include "plugins/rig-drawing/rig_drawing.hpp"
#include "unit/calculate/compiled_rig.hpp"
#include "unit/plugins/example_boat.hpp"
#include "unit/plugins/paper_text.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cstdlib>

namespace sheerpole::printed_lengths_test {
namespace {

using testing::AllOf;
using testing::HasSubstr;
using testing::Not;

constexpr const char* once_will_do = "limits {\n  second-measure: off\n}\n";

template <class Backend>
std::string first_paper(const Compilation& boat) {
  return test::one_blank_between(
      test::words_of_markup(test::plainly_set(Backend().generate({*boat.checked}).files.front().bytes)));
}

/// One wire between two terminals, in the unit of a shop.
Compilation wire(const std::string& shop, const std::string& pins, const std::string& lengths,
                 const std::string& aloft, const std::string& below) {
  return test::compiled(
      std::string("language 1\nboat \"Ray\" { }\n") + once_will_do + "shop own {\n" + shop +
      "}\nwire w {\n  construction: \"1x19\"\n  size: \"8 mm\"\n}\ntoggle swivel {\n  length: 2 1/4 in "
      "measured\n}\nterminal aloft {\n  length: " +
      lengths + " measured\n  lower: wire-socket (inserted: " + aloft +
      " measured)\n}\nterminal below {\n  length: 13 3/8 in measured\n  upper: wire-socket (inserted: " +
      below + " measured)\n}\nstay fore {\n  pin-to-pin: " + pins +
      " measured\n  line: w\n  stack {\n    swivel\n    aloft\n    line\n    below\n  }\n}\n");
}

// 464 1/32 in less 18 3/8 in and 4 in more for the ends are 449 21/32 in, 11421.27 mm: the middle of two
// sixteenths. Its printed rows come to 11421.2 mm, so the cut list has 37' 5 5/8", and so has every paper.
TEST(PrintedLengths, ATieIsRoundedAlikeOnEveryPaper) {
  const Compilation boat =
      wire("  unit: feet-and-inches\n  round-to: 1/16 in\n", "464 1/32 in", "2 3/4 in", "2 in", "2 in");
  ASSERT_TRUE(boat.checked);
  const auto cut = AllOf(HasSubstr("37' 5 5/8\""), Not(HasSubstr("37' 5 11/16\"")));
  EXPECT_THAT(first_paper<CutList>(boat), cut);
  EXPECT_THAT(first_paper<BenchCard>(boat), cut);
  EXPECT_THAT(first_paper<Labels>(boat), cut);
  EXPECT_THAT(first_paper<RigDrawing>(boat), cut);
}

/// What the cut list prints of a total, in the unit of a card.
void expect_listed(const CardPiece& card, CardLength on_card, Tenths listed) {
  if (card.unit.kind == CardUnit::Kind::feet_and_inches)
    EXPECT_EQ(card_text(card.unit, on_card), format_total_feet_inches(on_card.unknown, listed));
  else
    EXPECT_LE(std::abs(on_card.parts - listed.count), 5); // parts are tenths
}

TEST(PrintedLengths, TheCutAndTheBodyOfARopeAreThoseOfTheCutListOnEveryCard) {
  for (const char* boat_name : {"pellimoor", "smidgeon", "oddnys-wager", "sallow", "quillwort"})
    for (const char* unit : {"millimetres", "feet-and-inches"}) {
      const Compilation boat = test::example_with(
          boat_name, std::string("shop loft-of-test {\n  delivered-open: 50 %\n  unit: ") + unit + "\n}\n",
          "loft-of-test");
      ASSERT_TRUE(boat.checked) << boat_name;
      for (const CardPiece& card : card_pieces(*boat.checked)) {
        SCOPED_TRACE(card.piece->name);
        const PieceSum sum = piece_sum(*card.rig, *card.of_stay, *card.piece);
        expect_listed(card, card.cut, sum.cut());
        if (card.rope())
          expect_listed(card, card.body, sum.body());
      }
    }
}

// 48 mm and 61 mm of wire in its terminals are 1 7/8 in and 2 3/8 in to 1/8 in; of a cut of 7402.6 mm, 291
// 1/2 in, they leave 287 1/4 in. The body of 7293.6 mm rounded by itself would be 287 1/8 in.
TEST(PrintedLengths, TheBodyOfAWireIsWhatItsMarksLeaveOfTheCut) {
  const Compilation boat =
      wire("  unit: inches\n  round-to: 1/8 in\n", "7760.2 mm", "69.7 mm", "48 mm", "61 mm");
  ASSERT_TRUE(boat.checked);
  EXPECT_THAT(first_paper<BenchCard>(boat),
              AllOf(HasSubstr("By hand: body 287 1/4\" + 4 1/4\" for the ends = 291 1/2\"."),
                    HasSubstr("nothing cut or closed: 287 1/4\" from mouth to mouth"),
                    HasSubstr("Measure again: 287 1/4\" from mouth to mouth"),
                    Not(HasSubstr("287 1/8\""))));
  EXPECT_THAT(first_paper<DryFitCard>(boat), AllOf(HasSubstr("287 1/4\""), Not(HasSubstr("287 1/8\""))));
}

// Also where it is laid out by a cord: each place is the one before it and what is printed between them.
TEST(PrintedLengths, TheMarksOfEveryWireAddUpInEveryUnit) {
  int by_cord = 0;
  int plain = 0;
  for (const char* boat_name : {"pellimoor", "smidgeon", "quillwort"})
    for (const char* shop : {"  unit: millimetres\n", "  unit: inches\n  round-to: 1/8 in\n",
                             "  unit: feet-and-inches\n  round-to: 1/4 in\n"}) {
      const Compilation boat = test::example_with(
          boat_name, std::string("shop loft-of-test {\n  delivered-open: 50 %\n") + shop + "}\n",
          "loft-of-test");
      ASSERT_TRUE(boat.checked) << boat_name;
      for (const CardPiece& card : card_pieces(*boat.checked)) {
        if (card.rope() || card.marks.size() != 4)
          continue;
        SCOPED_TRACE(card.piece->name);
        const auto laid = card.body.parts + card.behaves.parts;
        const CardMark& aloft = card.marks[1];
        const CardMark& below = card.marks[2];
        EXPECT_EQ(aloft.from_upper.parts + laid + below.from_lower.parts, card.cut.parts);
        EXPECT_EQ(card.dry_fit.parts, laid);
        if (!card.cord) {
          ++plain;
          continue;
        }
        ++by_cord;
        EXPECT_EQ(aloft.from_u.parts - card.marks[0].from_u.parts, aloft.from_upper.parts);
        EXPECT_EQ(below.from_l.parts - card.marks[3].from_l.parts, below.from_lower.parts);
        EXPECT_EQ(aloft.from_u.parts, card.cord->upper.parts);
        EXPECT_EQ(card.marks[0].from_u.parts + card.marks[3].from_l.parts, -card.cut.parts);
      }
    }
  EXPECT_GT(plain, 0);
  EXPECT_GT(by_cord, 0);
}

} // namespace
} // namespace sheerpole::printed_lengths_test
