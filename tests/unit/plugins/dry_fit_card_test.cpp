#include "plugins/dry-fit-card/dry_fit_card.hpp"

#include "calculate/geometry/spar_lines.hpp"
#include "service/compile.hpp"
#include "unit/calculate/compiled_rig.hpp"
#include "unit/page/page_boxes.hpp"
#include "unit/plugins/example_boat.hpp"
#include "unit/plugins/paper_text.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace sheerpole::dry_fit_card_test {
namespace {

using testing::HasSubstr;
using testing::Not;

class DryFitCards : public testing::TestWithParam<const char*> {};
INSTANTIATE_TEST_SUITE_P(Boats, DryFitCards,
                         testing::Values("pellimoor", "grisolde", "smidgeon", "oddnys-wager", "sallow"));

TEST_P(DryFitCards, EveryStayHasAPageThatIsWellSet) {
  const Compilation boat = test::example_with(GetParam(), "");
  ASSERT_TRUE(boat.checked);
  const auto fits = stay_fits(*boat.checked);
  EXPECT_EQ(fits.size(), boat.checked->rig().stays.size());
  for (const PaperSize size : {PaperSize::a4, PaperSize::letter})
    for (const StayFit& fit : fits) {
      const auto pages = fit_pages(fit, "A boat", size);
      EXPECT_EQ(pages.size(), 1u) << fit.stay->name << " on " << name_of(size);
      expect_well_set(pages);
      const auto hoisted = hoisted_pages(fit, "A boat", size);
      // Below a bowsprit nothing hangs beside its place.
      const bool from_mast = mast_at(boat.checked->rig(), *fit.stay, WhichEnd::upper) != nullptr;
      // With hardly any hardware below the line its bearing would hang below the pin at the deck.
      const auto& hang = fit.of_stay->hoisted_fit;
      const bool hangs_above =
          hang && (hang->gap || (hang->without_gap && hang->without_gap->millimetres() >= 30.0));
      EXPECT_EQ(hoisted.size(), fit.free().rope() && from_mast && hangs_above ? 1u : 0u)
          << fit.stay->name << " on " << name_of(size);
      expect_well_set(hoisted);
    }
}

/// What the adjusters have either way is the take-up that is calculated apart from any card.
TEST_P(DryFitCards, TheRowsAreApartByTheRangeOfTheAdjusters) {
  const Compilation boat = test::example_with(GetParam(), "");
  ASSERT_TRUE(boat.checked);
  for (const StayFit& fit : stay_fits(*boat.checked)) {
    Length tighten;
    Length slacken;
    for (const TakeUp& adjuster : fit.of_stay->adjusters) {
      tighten += adjuster.to_tighten;
      slacken += adjuster.to_slacken;
    }
    if (fit.of_stay->adjusters.empty()) {
      EXPECT_EQ(fit.rows.size(), 1u);
      continue;
    }
    ASSERT_EQ(fit.rows.size(), 3u);
    if (!fit.rows[0].of_bearings) {
      EXPECT_FALSE(fit.rows[1].of_bearings);
      continue;
    }
    EXPECT_NEAR(static_cast<double>(fit.rows[1].of_bearings->parts - fit.rows[0].of_bearings->parts) / 10.0,
                tighten.millimetres(), 0.5 + 1e-6);
    EXPECT_NEAR(static_cast<double>(fit.rows[0].of_bearings->parts - fit.rows[2].of_bearings->parts) / 10.0,
                slacken.millimetres(), 0.5 + 1e-6);
  }
}

// Worked by hand: pins 11 642 mm apart, an eye of 62 mm and a screw of 265 to 395 mm set to 300 mm leave
// 11 280 mm. Closed the screw is 35 mm shorter, open 95 mm longer. Two threads of 20 to the inch move 2.54
// mm a turn.
TEST(DryFitCard, SaysWhatWouldHangAtBothEndsOfTheScrew) {
  const Compilation boat = test::compiled(
      "language 1\nwire wire-6 {\n  construction: \"1x19\"\n  size: \"6 mm\"\n}\n"
      "terminal eye-62 {\n  length: 62 mm\n  lower: wire-socket (inserted: 50 mm)\n}\n"
      "turnbuckle bottle {\n  shortest: 265 mm\n  longest: 395 mm\n  thread: \"1/2-20 UNF\"\n  screw: "
      "pair\n"
      "  engaged-at-longest: 15 mm\n  upper: wire-socket (inserted: 50 mm)\n  lower: jaw (gap: 14 mm, pin: "
      "\"12 mm\")\n}\n"
      "stay forestay {\n  pin-to-pin: 11_642 mm measured\n  line: wire-6\n  stack {\n    eye-62\n    "
      "line\n    "
      "bottle "
      "(length: 300 mm)\n  }\n}\n");
  ASSERT_TRUE(boat.checked);
  const auto fits = stay_fits(*boat.checked);
  ASSERT_EQ(fits.size(), 1u);
  const StayFit& fit = fits.front();
  ASSERT_EQ(fit.rows.size(), 3u);
  EXPECT_EQ(fit.rows[0].adjusters, "300 mm");
  EXPECT_EQ(fit.rows[0].of_bearings->parts, 112'800);
  EXPECT_EQ(fit.rows[1].adjusters, "265 mm, 13.8 turns in");
  EXPECT_EQ(fit.rows[1].of_bearings->parts, 113'150);
  EXPECT_EQ(fit.rows[2].adjusters, "395 mm, 37.4 turns out");
  EXPECT_EQ(fit.rows[2].of_bearings->parts, 111'850);
  const std::string html = test::plainly_set(DryFitCard().generate({*boat.checked}).files.front().bytes);
  EXPECT_THAT(html, HasSubstr("11280 mm"));
  // 15 mm at the longest and half of the 95 mm that it is shorter: 62.5 mm, rounded.
  EXPECT_THAT(html, HasSubstr("thread left in the body, each stud: 63 mm"));
  EXPECT_THAT(html, HasSubstr("At both ends: no toggle is given"));
  EXPECT_THAT(html, Not(HasSubstr("DRAFT")));
}

TEST(DryFitCard, IsADraftJustWhenAPieceOfTheStayIsOne) {
  const Compilation boat = test::example_with("grisolde", "");
  ASSERT_TRUE(boat.checked);
  for (const StayFit& fit : stay_fits(*boat.checked)) {
    const bool rope = fit.free().rope(); // its rope rests on a splice that nobody has tested
    EXPECT_EQ(fit.draft_reasons.empty(), !rope) << fit.stay->name;
  }
}

// Of three lines the one between takes what the other two leave, and the row says which it is.
TEST(DryFitCard, NamesThePieceThatTakesWhatTheOthersLeave) {
  const Compilation boat = test::example_with("grisolde", "");
  ASSERT_TRUE(boat.checked);
  for (const StayFit& fit : stay_fits(*boat.checked))
    if (fit.stay->name == "backstay-upper") {
      std::string text;
      for (const Drawing& page : fit_pages(fit, "Grisolde", PaperSize::a4))
        for (const LabelBox& box : set_boxes(page.content))
          text += box.text + "\n";
      EXPECT_THAT(text, HasSubstr("piece 2 of 3"));
      EXPECT_THAT(text, HasSubstr("takes what the others leave"));
      EXPECT_THAT(text, Not(HasSubstr("\nnone\n")));
      return;
    }
  FAIL();
}

TEST(DryFitCard, IsInTheUnitOfTheShop) {
  const Compilation boat =
      test::example_with("grisolde", "shop loft {\n  delivered-open: 50 %\n  unit: inches\n}\n");
  ASSERT_TRUE(boat.checked);
  const std::string html = test::plainly_set(DryFitCard().generate({*boat.checked}).files.front().bytes);
  EXPECT_THAT(html, HasSubstr("Lengths in inches to 1/16\" (shop loft)."));
  // 395 mm, as the turnbuckle is set: 15.551 in.
  EXPECT_THAT(html, HasSubstr(">15 9/16\"<"));
  EXPECT_THAT(html, Not(HasSubstr("395 mm")));
}

/// The worked case: a cord without a number, 24 in of hardware below.
std::string worked(const std::string& more) {
  return "language 1\nrope hmpe-9 {\n  construction: \"12-strand HMPE heat-set\"\n  size: \"9 mm\"\n}\n"
         "splice long-bury {\n  bury: 25 1/2 in\n  contraction: 0 % measured\n}\n"
         "thimble thimble-9 {\n  length: 0 mm\n  wrap: 6 1/4 in\n  lower: rope-seat (diameter: 28 mm)\n}\n"
         "toggle toggle-57 {\n  length: 2 1/4 in\n}\n"
         "turnbuckle bottle-19 {\n  shortest: 17 in\n  longest: 22 in\n  upper: jaw (gap: 14 mm, pin: \"12 "
         "mm\")\n  lower: jaw (gap: 14 mm, pin: \"12 mm\")\n}\n"
         "shop loft {\n  unit: inches\n}\n"
         "stay cap-shroud {\n  line: hmpe-9\n  hoist-gap: 4 in measured\n  stack {\n    thimble-9 (splice: "
         "long-bury)\n    line\n    thimble-9 (splice: long-bury)\n    2 x toggle-57\n    bottle-19 "
         "(length: 19.5 in)\n  }\n}\n"
         "reading of cap-shroud {\n  method: messenger\n  mark: \"orange cord, 4 knots\"\n}\n" +
         more;
}

// Common practice, no source: 24 in of hardware less 4 in of gap hang at 20 in; 2 1/2 in of screw either
// way and two toggles of 2 1/4 in.
TEST(HoistedPage, SaysTheHeightAndWhatTakesUpADifference) {
  const Compilation boat = test::compiled(worked(""));
  ASSERT_TRUE(boat.checked);
  const std::string html = test::plainly_set(DryFitCard().generate({*boat.checked}).files.front().bytes);
  EXPECT_THAT(html, HasSubstr(">20\"<"));
  for (const char* words :
       {"over 24 3/4\"", "22 1/2\" to 24 3/4\"", "15 1/4\" to 17 1/2\"", "13\" to 15 1/4\"", "under 13\"",
        "STOP. Open the weave only when it hangs right.", "X has no number, and this card needs none"})
    EXPECT_THAT(html, HasSubstr(words));
  EXPECT_THAT(html, Not(HasSubstr("RELEASED")));
  for (const StayFit& fit : stay_fits(*boat.checked))
    expect_well_set(hoisted_pages(fit, "A boat", PaperSize::letter));
}

TEST(HoistedPage, IsReleasedByADryFitThatAgreesAndByNoOther) {
  const auto html = [](const char* hung) {
    const Compilation boat = test::compiled(
        worked(std::string("dry-fit of cap-shroud {\n  hung-at: ") + hung + "\n  date: 2026-05-03\n}\n"));
    EXPECT_TRUE(boat.checked);
    return DryFitCard().generate({*boat.checked}).files.front().bytes;
  };
  const std::string right = html("20 in");
  EXPECT_THAT(right, HasSubstr("It hangs right. RELEASED."));
  EXPECT_THAT(right, Not(HasSubstr("DRAFT")));
  const std::string wrong = html("15 in");
  EXPECT_THAT(wrong, HasSubstr("NOT RELEASED"));
  EXPECT_THAT(wrong, HasSubstr("DRAFT"));
}

TEST(DryFitCard, HoldsStaysWithLongNamesOfManyAlphabets) {
  const Compilation boat = test::compiled(test::forty_pairs());
  ASSERT_TRUE(boat.checked);
  for (const PaperSize size : {PaperSize::a4, PaperSize::letter})
    for (const StayFit& fit : stay_fits(*boat.checked))
      expect_well_set(fit_pages(fit, boat.checked->rig().boat.title, size));
}

} // namespace
} // namespace sheerpole::dry_fit_card_test
