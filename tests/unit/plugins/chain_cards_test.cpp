// A chain is cut at a whole link: what the papers say of it, and that they all say the same.
#include "plugins/bench-card/bench_card.hpp"
#include "plugins/cut-list/cut_list.hpp"
#include "plugins/dry-fit-card/dry_fit_card.hpp"
#include "plugins/index/index.hpp"
#include "plugins/labels/labels.hpp"
#include "plugins/spool-plan/spool_plan_backend.hpp"
#include "unit/calculate/compiled_rig.hpp"
#include "unit/plugins/paper_text.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace sheerpole::chain_cards_test {
namespace {

using testing::AllOf;
using testing::HasSubstr;
using testing::Not;

/// Between its pins lie a screw set to 384 mm, two shackles of 44 and 52 mm, and 1968.5 mm of chain.
struct Bobstay {
  std::string pitch = "  pitch: 28 mm\n";
  std::string pins = "2448.5 mm";
  std::string screw = "    bottle (open: 60 %)\n";
  std::string shop = "shop shed {\n  unit: inches\n  round-to: 1/8 in\n}\n";

  Compilation compiled() const {
    return test::compiled(
        "language 1\nboat \"Ray\" { }\nlimits {\n  second-measure: off\n}\n" + shop +
        "chain links \"Bobstay chain\" {\n  construction: \"short link\"\n  size: \"10 mm\"\n" + pitch +
        "}\nturnbuckle bottle {\n  shortest: 300 mm measured\n  longest: 440 mm measured\n}\n"
        "shackle bow-12 {\n  length: 44 mm measured\n}\nshackle bow-14 {\n  length: 52 mm measured\n}\n"
        "stay bobstay {\n  pin-to-pin: " +
        pins + " measured\n  line: links\n  stack {\n" + screw +
        "    bow-12\n    line\n    bow-14\n  }\n}\n");
  }
};

template <class Backend>
std::string first_paper(const Compilation& boat) {
  return test::one_blank_between(
      test::words_of_markup(test::plainly_set(Backend().generate({*boat.checked}).files.front().bytes)));
}

TEST(ChainCards, EveryPaperHasTheSameLinks) {
  const Compilation boat = Bobstay().compiled();
  ASSERT_TRUE(boat.checked);
  // 1968.5 mm are 70.3 links of 28 mm: 70 of them are 1960 mm, 8.5 mm shorter.
  const std::string said = "70 links of 28 mm, 77 1/8\"";
  const std::string off = "3/8\" shorter than worked out, 77 1/2\": bottle is set longer by as much.";
  EXPECT_THAT(first_paper<BenchCard>(boat),
              AllOf(HasSubstr("CUT " + said), HasSubstr("Chain: " + said + ", " + off)));
  EXPECT_THAT(first_paper<DryFitCard>(boat), HasSubstr("bobstay: " + said + ", " + off));
  EXPECT_EQ(piece_labels(*boat.checked).front().length, "cut " + said);
  EXPECT_THAT(piece_labels(*boat.checked).front().code, HasSubstr("bobstay, cut " + said));
  EXPECT_THAT(first_paper<Index>(boat), HasSubstr(said));
  const std::string list = test::one_blank_between(first_paper<CutList>(boat));
  EXPECT_THAT(list, HasSubstr("CUT 70 links of 28 mm, 1960.0 mm = 6' 5 3/16\"; 8.5 mm shorter than worked "
                              "out, 1968.5 mm = 6' 5 1/2\": bottle is set longer by as much"));
  EXPECT_THAT(first_paper<SpoolPlanBackend>(boat), HasSubstr("1960 mm Ray: bobstay; 70 links of 28 mm"));
}

// Set to 384 mm its pins are where they should with 1968.5 mm of chain; 8.5 mm less of that is 392.5 mm of
// screw, 47.5 mm short of its longest.
TEST(ChainCards, TheScrewIsSetAsTheLinksWantIt) {
  Bobstay rig;
  rig.shop.clear();
  const Compilation boat = rig.compiled();
  ASSERT_TRUE(boat.checked);
  EXPECT_THAT(first_paper<BenchCard>(boat), HasSubstr("bottle set to 393 mm"));
  EXPECT_THAT(first_paper<DryFitCard>(boat),
              AllOf(HasSubstr("as set 393 mm"), HasSubstr("takes up 93 mm and gives out 48 mm")));
}

// One link is lost where the chain is cut: 84 links and 82 of 167 leave none, and of 166 they cannot be
// had.
TEST(ChainCards, ACutTakesALink) {
  const auto planned = [](int links) {
    const std::string text =
        "language 1\nboat \"Ray\" { }\nlimits {\n  second-measure: off\n}\nchain links {\n  construction: "
        "\"short link\"\n  size: \"8 mm\"\n  pitch: 24 mm\n}\nshackle bow {\n  length: 40 mm measured\n}\n"
        "stock drum of links {\n  sort: spool\n  length: " +
        std::to_string(links * 24) + " mm\n}\n";
    const auto stay = [](const std::string& name, int length) {
      return "stay " + name + " {\n  pin-to-pin: " + std::to_string(length) +
             " mm measured\n  line: links\n  stack {\n    bow\n    line\n    bow\n  }\n}\n";
    };
    return first_paper<SpoolPlanBackend>(
        test::compiled(text + stay("bobstay", 84 * 24 + 80) + stay("martingale", 82 * 24 + 80)));
  };
  EXPECT_THAT(planned(167), AllOf(HasSubstr("kerf 24 mm (the link that is cut is lost)"),
                                  HasSubstr("Ray: martingale; 82 links of 24 mm")));
  EXPECT_THAT(planned(166), HasSubstr("To buy"));
}

TEST(ChainCards, AChainIsCountedAndGoesIntoNoTerminal) {
  const Compilation boat = Bobstay().compiled();
  ASSERT_TRUE(boat.checked);
  EXPECT_THAT(first_paper<BenchCard>(boat),
              AllOf(HasSubstr("Links to count: 70."), HasSubstr("Cut the next link past link 70."),
                    HasSubstr("make bow-14 fast to link 70"), HasSubstr("inside of link 70"),
                    Not(HasSubstr("Cut at 1 and at 2")), Not(HasSubstr("how deep the wire goes in")),
                    Not(HasSubstr("zero at the cut end"))));
}

// 1 1/8 in is 28.575 mm: 69 of them are 1971.675 mm. Rounded to the card's 1/16 in it would be no other
// length, in millimetres to two decimals it would.
TEST(ChainCards, ThePitchIsPrintedAsTheFileHasIt) {
  Bobstay rig;
  rig.pitch = "  pitch: 1 1/8 in\n";
  rig.shop.clear();
  const Compilation boat = rig.compiled();
  ASSERT_TRUE(boat.checked);
  EXPECT_THAT(
      first_paper<BenchCard>(boat),
      HasSubstr("69 links of 1 1/8 in, 1972 mm, 3 mm longer than worked out, 1969 mm: bottle is set "
                "shorter by as much."));
  EXPECT_THAT(first_paper<SpoolPlanBackend>(boat), HasSubstr("69 links of 1 1/8 in"));
}

TEST(ChainCards, WhereNothingTakesTheLinksUpThePapersSaySo) {
  Bobstay none;
  none.screw.clear();
  none.pins = "2064.5 mm";
  const Compilation bare = none.compiled();
  ASSERT_TRUE(bare.checked);
  EXPECT_THAT(first_paper<BenchCard>(bare),
              HasSubstr("the stay has no adjuster and comes out shorter by as much"));
  EXPECT_THAT(first_paper<CutList>(bare), HasSubstr("the stay has no adjuster and comes out shorter"));
  Bobstay wide_open;
  wide_open.screw = "    bottle (open: 100 %)\n";
  wide_open.pins = "2504.5 mm";
  const Compilation open = wide_open.compiled();
  ASSERT_TRUE(open.checked);
  EXPECT_THAT(first_paper<BenchCard>(open), HasSubstr("bottle cannot be set longer by as much"));
}

TEST(ChainCards, WithoutAPitchItIsCutAtTheNearestLink) {
  Bobstay rig;
  rig.pitch.clear();
  const Compilation boat = rig.compiled();
  ASSERT_TRUE(boat.checked);
  EXPECT_THAT(first_paper<BenchCard>(boat), AllOf(HasSubstr("CUT AT THE WHOLE LINK NEAREST TO 77 1/2\""),
                                                  HasSubstr("Cut at the whole link nearest to mark 2."),
                                                  HasSubstr("the file does not give the length of one")));
  EXPECT_EQ(piece_labels(*boat.checked).front().length, "cut at the whole link nearest to 77 1/2\"");
  EXPECT_THAT(first_paper<CutList>(boat), HasSubstr("CUT at the whole link nearest to 1968.5 mm"));
}

} // namespace
} // namespace sheerpole::chain_cards_test
