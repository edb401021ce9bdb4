// What the cards say where a rig is not like the usual one: cut from a drawing, a wire round a thimble, a
// lashing of which nobody states the cord.

#include "plugins/bench-card/bench_card.hpp"
#include "plugins/cut-list/cut_list.hpp"
#include "plugins/dry-fit-card/dry_fit_card.hpp"
#include "plugins/emergency-splice-card/emergency_splice_card.hpp"
#include "plugins/order-list/order_list.hpp"
#include "plugins/receiving-card/receiving_card.hpp"
#include "plugins/rig-drawing/rig_drawing.hpp"
#include "plugins/take-up/take_up_sheet.hpp"
#include "unit/calculate/compiled_rig.hpp"
#include "unit/plugins/example_boat.hpp"
#include "unit/plugins/paper_text.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace sheerpole::cards_of_odd_pieces_test {
namespace {

using testing::AllOf;
using testing::HasSubstr;
using testing::Not;

std::string words_of(const OutputFile& file) {
  return test::one_blank_between(test::words_of_markup(without_thin_blanks(test::plainly_set(file.bytes))));
}

template <class Backend>
std::string first_paper(const Compilation& boat) {
  return words_of(Backend().generate({*boat.checked}).files.front());
}

TEST(CardsOfOddPieces, ADryFitIsNotAskedOfAMastThatIsNotUp) {
  const Compilation drawn = test::example_with("oddnys-wager", "");
  ASSERT_TRUE(drawn.checked);
  const std::string bench = first_paper<BenchCard>(drawn);
  EXPECT_THAT(bench, AllOf(HasSubstr("With no mast up, sign for that instead"),
                           HasSubstr("dry fit passed, or no mast up; day")));
  EXPECT_THAT(first_paper<DryFitCard>(drawn), HasSubstr("From drawing: hang it once the mast is up."));
  // Measured in place there was a mast to measure on.
  const Compilation measured = test::example_with("sallow", "");
  ASSERT_TRUE(measured.checked);
  EXPECT_THAT(first_paper<BenchCard>(measured),
              AllOf(HasSubstr("dry fit passed, day"), Not(HasSubstr("no mast up"))));
}

TEST(CardsOfOddPieces, ALineIsPartedFromItsSpoolBeyondItsLastMark) {
  const Compilation boat = test::example_with("oddnys-wager", "");
  ASSERT_TRUE(boat.checked);
  EXPECT_THAT(first_paper<BenchCard>(boat),
              HasSubstr("Cut the line off its spool past mark 8, not at it."));
}

TEST(CardsOfOddPieces, AWireRoundAThimbleIsNoWireInATerminal) {
  const Compilation boat = test::example_with("smidgeon", "");
  ASSERT_TRUE(boat.checked);
  const std::string bench = first_paper<BenchCard>(boat);
  EXPECT_THAT(bench, AllOf(HasSubstr("bearing of the eye"),
                           HasSubstr("The 75 mm beyond mark 3 go round it and back into the sleeve"),
                           Not(HasSubstr("put the wire into wire-thimble-10"))));
  // 10 mm from its pin to its crown, 75 mm beyond it: the cut is what it was.
  EXPECT_THAT(bench, HasSubstr("5638 mm + 105 mm for the ends = 5743 mm"));
}

TEST(CardsOfOddPieces, ALengthOfWireIsFromMouthToMouthAndABearingIsSaid) {
  const Compilation boat = test::example_with("pellimoor", "");
  ASSERT_TRUE(boat.checked);
  const std::string bench = first_paper<BenchCard>(boat);
  EXPECT_THAT(bench, AllOf(HasSubstr("11303 mm from mouth to mouth. With the mast up"),
                           HasSubstr("body, mouth to mouth"), HasSubstr("Bearing: the crown of the eye.")));
}

// 11382 and 11485 on the bench card are 103 apart, which is what the hoisted card takes off; each splice
// shrinks by 51.84 mm (8 % of 648 mm), and two of them rounded by themselves would be 104.
TEST(CardsOfOddPieces, BothCardsHaveOneNumberForWhatStillShrinks) {
  const Compilation boat = test::example_with("pellimoor", "");
  ASSERT_TRUE(boat.checked);
  EXPECT_THAT(first_paper<BenchCard>(boat), HasSubstr("103 mm to go in the splices"));
  const std::string hoisted = first_paper<DryFitCard>(boat);
  EXPECT_THAT(hoisted,
              AllOf(HasSubstr("still to shrink in the splices - 103 mm"), HasSubstr("141 mm less the gap"),
                    HasSubstr("103 mm The contraction of the splices")));
  // By the rows of the cut list: 11381.7 + 51.8 + 51.8.
  const std::string list = CutList().generate({*boat.checked}).files.front().bytes;
  EXPECT_THAT(list, HasSubstr("dry fit    11485.3 mm"));
}

TEST(CardsOfOddPieces, ASlipIsLookedForBeforeAnAdjusterHidesIt) {
  const Compilation boat = test::example_with("pellimoor", "");
  ASSERT_TRUE(boat.checked);
  EXPECT_THAT(first_paper<DryFitCard>(boat),
              HasSubstr("First look for a slip below. None: the adjuster takes it up."));
}

TEST(CardsOfOddPieces, TheOrderSaysWhichCordIsNotInIt) {
  const Compilation boat = test::example_with("oddnys-wager", "");
  ASSERT_TRUE(boat.checked);
  const std::string order = first_paper<OrderList>(boat);
  EXPECT_THAT(order, HasSubstr("lanyard-520: no cord is ordered for it: the file does not name it, nor the "
                               "number of passes."));
  const Compilation corded = test::example_with("pellimoor", "");
  ASSERT_TRUE(corded.checked);
  EXPECT_THAT(first_paper<OrderList>(corded), Not(HasSubstr("no cord is ordered")));
}

TEST(CardsOfOddPieces, TheDrawingSaysThatItsCutsAreFromTheDrawing) {
  const Compilation boat = test::example_with("oddnys-wager", "");
  ASSERT_TRUE(boat.checked);
  EXPECT_THAT(first_paper<RigDrawing>(boat), HasSubstr("13 not measured, cut from the drawing"));
}

TEST(CardsOfOddPieces, TheTableOfTemperaturesSaysWhereItIsNothing) {
  const Compilation boat = test::example_with("pellimoor", "");
  ASSERT_TRUE(boat.checked);
  EXPECT_THAT(first_paper<TakeUpSheet>(boat), HasSubstr("Temperature, counted from 25 degC."));
}

// Under 14 kN rope reads longer than at the dock; the body is the length there, since the stretch until
// then is taken off the cut. Where no stretch is counted it is the length as laid out.
TEST(CardsOfOddPieces, APieceIsMeasuredAgainUnderThePullThatItsBodyHoldsFor) {
  const Compilation stretched = test::example_with("sallow", "");
  ASSERT_TRUE(stretched.checked);
  EXPECT_THAT(
      first_paper<BenchCard>(stretched),
      AllOf(HasSubstr("Measure again at the dock tension, 3200 N: 7290 mm from bearing to bearing."),
            Not(HasSubstr("under the pull"))));
  const Compilation plain = test::example_with("pellimoor", "");
  ASSERT_TRUE(plain.checked);
  EXPECT_THAT(first_paper<BenchCard>(plain),
              HasSubstr("Measure again, the pull let off, straight and hand-tight: 11382 mm"));
}

// So many diameters are a rule for any seat: nobody has wrapped this one, and nothing disagrees yet.
TEST(CardsOfOddPieces, AnEyeByRuleIsWrappedAndDisagreesWithNothing) {
  const Compilation boat = test::example_with("skirlpool", "");
  ASSERT_TRUE(boat.checked);
  EXPECT_THAT(first_paper<BenchCard>(boat),
              AllOf(HasSubstr("EYES BY RULE: WRAP BEFORE THE CUT"), Not(HasSubstr("EYES DISAGREE"))));
}

TEST(CardsOfOddPieces, AStayMadeLyingIsHungOnTheMastAsItLies) {
  const Compilation boat = test::example_with("skirlpool", "");
  ASSERT_TRUE(boat.checked);
  EXPECT_THAT(first_paper<BenchCard>(boat), HasSubstr("Hang it on the mast as it lies: dry-fit card."));
  const std::string fits = first_paper<DryFitCard>(boat);
  const std::string diamond = fits.substr(fits.find("DRY FIT diamond.port"));
  EXPECT_THAT(diamond.substr(0, diamond.find("DRY FIT diamond.starboard")),
              AllOf(HasSubstr("laid along the mast; terminals on their pins beside it"),
                    Not(HasSubstr("hang it once the mast is up")), Not(HasSubstr("on a halyard"))));
}

// The rope is an end longer than its mark: it is hung and cut before its tail is tapered and buried.
TEST(CardsOfOddPieces, AboardTheRopeIsHungThenCutThenBuried) {
  const Compilation boat = test::example_with("sallow", "");
  ASSERT_TRUE(boat.checked);
  const std::string card = first_paper<EmergencySpliceCard>(boat);
  const auto at = [&](const char* words) {
    EXPECT_THAT(card, HasSubstr(words));
    return card.find(words);
  };
  EXPECT_LT(at("Seize the eye below at its marks"), at("Take it down and cut at the mark of the cut end."));
  EXPECT_LT(at("cut at the mark of the cut end."), at("Taper the tail:"));
  EXPECT_LT(at("Taper the tail:"), at("bury all of it"));
}

TEST(CardsOfOddPieces, ASpareSaysWhichStaysItsEndAloftDoesNotFit) {
  const Compilation other = test::example_with("skirlpool", "");
  ASSERT_TRUE(other.checked);
  EXPECT_THAT(first_paper<EmergencySpliceCard>(other),
              HasSubstr("Made at home with cruiser-eye-60 aloft. These stays have another part there: "
                        "bridle-leg.port, bridle-leg.starboard."));
  const Compilation alike = test::example_with("larkwhin", "");
  ASSERT_TRUE(alike.checked);
  EXPECT_THAT(first_paper<EmergencySpliceCard>(alike),
              AllOf(Not(HasSubstr("Made at home with")), HasSubstr("its adjuster set as the table says")));
}

TEST(CardsOfOddPieces, NoHullIsDrawnWhereNoStayComesDownAtItsStem) {
  const Compilation shrouds = test::example_with("sallow", "");
  ASSERT_TRUE(shrouds.checked);
  EXPECT_THAT(first_paper<RigDrawing>(shrouds),
              HasSubstr("Hull not drawn: no stay comes down at its stem"));
  const Compilation forestay = test::example_with("pellimoor", "");
  ASSERT_TRUE(forestay.checked);
  EXPECT_THAT(first_paper<RigDrawing>(forestay), Not(HasSubstr("Hull not drawn")));
}

TEST(CardsOfOddPieces, ALashingHasNoThreadOnTheReceivingCard) {
  const Compilation boat = test::example_with("oddnys-wager", "");
  ASSERT_TRUE(boat.checked);
  EXPECT_THAT(first_paper<ReceivingCard>(boat),
              AllOf(HasSubstr("shortest, hauled up"), Not(HasSubstr("screw turns"))));
}

} // namespace
} // namespace sheerpole::cards_of_odd_pieces_test
