#include "calculate/bench/hoisted_fit.hpp"

#include "calculate/calculate.hpp"
#include "unit/calculate/compiled_rig.hpp"
#include "unit/calculate/reference_rows.hpp"
#include "wording/say.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <string>

namespace sheerpole::hoisted_fit_test {
namespace {

using test::compiled;
using test::found;

/// The worked case: X as a mark on a cord, 24 in of hardware below, 2 1/2 in of screw either way.
std::string worked(const std::string& stay, const std::string& more,
                   const std::string& contraction = "0 %") {
  return "language 1\n"
         "rope hmpe-9 {\n  construction: \"12-strand HMPE heat-set\"\n  size: \"9 mm\"\n}\n"
         "splice long-bury {\n  bury: 25 1/2 in\n  contraction: " +
         contraction +
         " measured\n}\n"
         "thimble thimble-9 {\n  length: 0 mm\n  wrap: 6 1/4 in\n  lower: rope-seat (diameter: 28 mm)\n}\n"
         "toggle toggle-57 {\n  length: 2 1/4 in\n}\n"
         "turnbuckle bottle-19 {\n  shortest: 17 in\n  longest: 22 in\n"
         "  upper: jaw (gap: 14 mm, pin: \"12 mm\")\n  lower: jaw (gap: 14 mm, pin: \"12 mm\")\n}\n"
         "stay cap-shroud {\n  line: hmpe-9\n" +
         stay +
         "  stack {\n    thimble-9 (splice: long-bury)\n    line\n    thimble-9 (splice: long-bury)\n"
         "    2 x toggle-57\n    bottle-19 (length: 19.5 in)\n  }\n}\n"
         "reading of cap-shroud {\n  method: messenger\n  mark: \"orange cord, 4 knots\"\n"
         "  offset: 35 mm\n}\n" +
         more;
}

const HoistedFit& of(const Compilation& rig) {
  EXPECT_TRUE(rig.derived && rig.derived->stays[0].hoisted_fit);
  return *rig.derived->stays[0].hoisted_fit;
}

std::string dry_fit(const std::string& hung, const std::string& gap, const std::string& more = "") {
  return "dry-fit of cap-shroud {\n  hung-at: " + hung + " in\n  hoist-gap: " + gap + " in\n" + more +
         "}\n";
}

TEST(HoistedFit, AgreesWithTheWorkedCase) {
  const std::map<std::string, HangMend> mends{{"right", HangMend::right},
                                              {"take up", HangMend::take_up},
                                              {"give out", HangMend::give_out},
                                              {"toggle more", HangMend::toggle_more},
                                              {"toggles out", HangMend::toggles_out},
                                              {"lay out shorter", HangMend::lay_out_shorter},
                                              {"lay out longer", HangMend::lay_out_longer}};
  const auto rows = reference_rows("hoisted-dry-fit", 5);
  EXPECT_EQ(rows.size(), 14u);
  for (const auto& row : rows) {
    const Compilation rig = compiled(worked("", dry_fit(row[0], row[1])));
    const FoundHang* hung = of(rig).latest();
    ASSERT_NE(hung, nullptr) << row[0];
    EXPECT_NEAR(hung->should_hang.inches(), std::stod(row[2]), 1e-6) << row[0];
    EXPECT_NEAR(hung->high.inches(), std::stod(row[3]), 1e-6) << row[0];
    std::string what = row[4];
    int toggles = 0;
    if (const char last = what.back(); last >= '0' && last <= '9') {
      toggles = last - '0';
      what.resize(what.size() - 2);
    }
    EXPECT_EQ(hung->band.mend, mends.at(what)) << row[0];
    EXPECT_EQ(hung->band.toggles, toggles) << row[0];
    // What the screw alone takes up releases the card; anything else blocks the cut.
    EXPECT_EQ(rig.derived->stays[0].pieces[0].blocked.empty(), hung->releases()) << row[0];
    EXPECT_EQ(found(rig, "dry-fit-differs"), hung->band.mend != HangMend::right) << row[0];
  }
}

// Of two toggles one is said to come out: 2 1/2 in of screw and 2 1/4 in of it, and no more.
TEST(HoistedFit, TakesOutNoToggleThatIsToStay) {
  std::string text = worked("", "");
  const std::string both = "    2 x toggle-57\n";
  text.replace(text.find(both), both.size(), "    toggle-57\n    toggle-57 (removable: yes)\n");
  const Compilation rig = compiled(text);
  int most = 0;
  for (const HangBand& band : of(rig).bands)
    most = std::max(most, band.toggles);
  EXPECT_EQ(most, 1);
  const HangBand& longest = of(rig).bands.back();
  EXPECT_EQ(longest.mend, HangMend::lay_out_shorter);
  EXPECT_NEAR(longest.to->inches(), -4.75, 1e-9);
}

TEST(HoistedFit, IsANumberAlsoWhenXHasNone) {
  const Compilation rig = compiled(worked("  hoist-gap: 4 in measured\n", ""));
  EXPECT_TRUE(rig.derived->stays[0].pieces[0].cut.unknown);
  ASSERT_TRUE(of(rig).hangs_at());
  EXPECT_NEAR(of(rig).hangs_at()->inches(), 20.0, 1e-9);
  EXPECT_EQ(of(rig).latest(), nullptr);
}

// Arithmetic: 8 % of 25 1/2 in are 2.04 in at each end, which the splices still take, so that it hangs
// lower.
TEST(HoistedFit, HangsLowerByWhatTheSplicesStillTake) {
  const Compilation rig = compiled(worked("  hoist-gap: 4 in measured\n", "", "8 %"));
  EXPECT_NEAR(of(rig).hangs_at()->inches(), 20.0 - 2 * 0.08 * 25.5, 1e-9);
}

TEST(HoistedFit, WithoutAGapIsNotANumberAndItsRecordNotChecked) {
  const Compilation rig = compiled(worked("", "dry-fit of cap-shroud {\n  hung-at: 20 in\n}\n"));
  EXPECT_FALSE(of(rig).hangs_at());
  EXPECT_NEAR(of(rig).without_gap->inches(), 24.0, 1e-9);
  EXPECT_EQ(of(rig).latest(), nullptr);
  bool said = false;
  for (const CheckResult& result : rig.results->all)
    said = said || (result.check == "dry-fit-differs" && result.outcome == CheckOutcome::not_checked);
  EXPECT_TRUE(said);
}

TEST(HoistedFit, TheLatestDayCountsWhateverTheOrder) {
  const std::string early = dry_fit("12", "4", "  date: 2026-05-01\n");
  const std::string late = dry_fit("20", "4", "  date: 2026-05-03\n");
  for (const std::string& both : {early + late, late + early}) {
    const Compilation rig = compiled(worked("", both));
    EXPECT_EQ(of(rig).latest()->date, "2026-05-03");
    EXPECT_TRUE(rig.derived->stays[0].pieces[0].blocked.empty());
  }
}

TEST(HoistedFit, NamesTheLikeliestSlip) {
  const auto slips = [](const char* hung) {
    const Compilation rig = compiled(worked("", dry_fit(hung, "4")));
    std::vector<std::string> words;
    for (const HangSlip& slip : of(rig).latest()->slips)
      words.push_back(say(*rig.rig, slip.words));
    return words;
  };
  EXPECT_EQ(slips("17.75").front(), "toggle-57 left out, or counted twice") << "2 1/4 in";
  EXPECT_EQ(slips("26.25").front(), "the eye of one end left out") << "6 1/4 in";
  EXPECT_EQ(slips("8").front(), "the tape read a foot out") << "12 in";
  EXPECT_EQ(slips("21.38").front(), "the offset of the reading forgotten, or taken twice") << "35 mm";
  EXPECT_EQ(slips("18.68").front(), "24 mm taken for an inch in the hardware, in place of 25.4")
      << "24 x 1.4 mm";
  EXPECT_TRUE(slips("20").empty());
}

// A gap that is known to an inch tells no less than an inch.
TEST(HoistedFit, IsRightWithinWhatTheGapIsKnownTo) {
  const auto mend = [](const char* hung) {
    const Compilation rig =
        compiled(worked("  hoist-gap: 4 in ± 1 in measured\n",
                        std::string("dry-fit of cap-shroud {\n  hung-at: ") + hung + " in\n}\n"));
    return of(rig).latest()->band.mend;
  };
  EXPECT_EQ(mend("21.2"), HangMend::right);
  EXPECT_EQ(mend("21.5"), HangMend::give_out);
}

// 24 in of hardware hold no gap of 4 m: the piece would hang below the pin that it is measured from.
TEST(HoistedFit, AGapThatLeadsBelowThePinHasNoHeight) {
  const Compilation far = compiled(worked("  hoist-gap: 4 m\n", ""));
  EXPECT_TRUE(of(far).not_known.is(HangPhrase::gap_too_long));
  EXPECT_FALSE(of(far).without_gap);
  EXPECT_EQ(
      say(*far.rig, of(far).not_known),
      "a hoist gap of 4000 mm is more than the 609.6 mm at which it hangs without a gap: it would hang "
      "below the pin at the deck");
  const Compilation near = compiled(worked("  hoist-gap: 23 in\n", ""));
  EXPECT_TRUE(of(near).not_known.empty());
  EXPECT_TRUE(of(near).without_gap);
}

} // namespace
} // namespace sheerpole::hoisted_fit_test
