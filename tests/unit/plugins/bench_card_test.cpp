#include "plugins/bench-card/bench_card.hpp"

#include "backend/card/card_piece.hpp"
#include "backend/json/json.hpp"
#include "backend/paper_words.hpp"
#include "backend/printed_sums.hpp"
#include "plugins/cut-list/cut_list.hpp"
#include "service/compile.hpp"
#include "source/file_reader.hpp"
#include "unit/calculate/compiled_rig.hpp"
#include "unit/page/page_boxes.hpp"
#include "unit/plugins/example_boat.hpp"
#include "unit/plugins/paper_text.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>
#include <map>
#include <tuple>

namespace sheerpole::bench_card_test {
namespace {

using testing::HasSubstr;

Compilation example(const std::string& name) {
  DiskFileReader reader;
  return compile(std::string(SHEERPOLE_EXAMPLES_DIR) + "/" + name + ".rig", reader);
}

class BenchCards : public testing::TestWithParam<const char*> {};
INSTANTIATE_TEST_SUITE_P(Boats, BenchCards,
                         testing::Values("pellimoor", "grisolde", "smidgeon", "oddnys-wager", "sallow"));

TEST_P(BenchCards, EveryPieceHasAPageThatIsWellSet) {
  const Compilation compilation = example(GetParam());
  ASSERT_TRUE(compilation.checked);
  for (const PaperSize size : {PaperSize::a4, PaperSize::letter})
    for (const CardPiece& card : card_pieces(*compilation.checked)) {
      const auto pages = card_pages(card, "A boat", size);
      EXPECT_EQ(pages.size(), 1u) << card.piece->name << " on " << name_of(size);
      expect_well_set(pages);
    }
}

/// The marks in cut-list.json are made of the same rig by another back end, in tenths of a millimetre.
TEST_P(BenchCards, MarksAreThoseOfTheJsonToTheMillimetreAndAddUp) {
  const Compilation compilation = example(GetParam());
  ASSERT_TRUE(compilation.checked);
  std::map<std::string, Json> pieces;
  Json list;
  for (const OutputFile& file : CutList().generate({*compilation.checked}).files)
    if (file.name == "cut-list.json")
      list = Json::parse(file.bytes);
  for (const Json& piece : list["pieces"])
    pieces[piece["name"]] = piece;
  const auto cards = card_pieces(*compilation.checked);
  ASSERT_EQ(cards.size(), pieces.size());
  for (const CardPiece& card : cards) {
    const Json& marks = pieces[card.piece->name]["bench"]["marks"];
    ASSERT_EQ(marks.size(), card.marks.size()) << card.piece->name;
    for (std::size_t i = 0; i < card.marks.size(); ++i) {
      const CardMark& mark = card.marks[i];
      EXPECT_EQ(mark.from_upper.parts + mark.from_lower.parts, card.cut.parts)
          << card.piece->name << ", " << mark.name;
      EXPECT_EQ(mark.from_upper.unknown, marks[i]["from_aloft"]["unknown"].get<bool>());
      // Its own place and the cut are rounded; the cut is that of the printed rows.
      const double of_rows =
          std::abs(piece_sum(*card.rig, *card.of_stay, *card.piece).cut().length().millimetres() -
                   card.piece->cut.known().millimetres());
      EXPECT_LE(std::abs(static_cast<double>(mark.from_upper.parts) / 10.0 -
                         marks[i]["from_aloft"]["known_mm"].get<double>()),
                1.0 + of_rows + 1e-6)
          << card.piece->name << ", " << mark.name;
    }
    EXPECT_EQ(card.body.parts + card.ends.parts + card.behaves.parts, card.cut.parts);
  }
}

/// All the texts of the pages.
std::string text_of(const std::vector<Drawing>& pages) {
  std::string text;
  for (const Drawing& page : pages)
    for (const LabelBox& box : set_boxes(page.content))
      text += box.text + "\n";
  return text;
}

/// Every choice of a shop's unit, with a step of its own or the usual one.
struct ShopOfCards {
  const char* text;
  const char* words; ///< on the card
};
constexpr ShopOfCards shops[] = {
    {"  unit: millimetres\n", "millimetres to 1 mm"},
    {"  unit: millimetres\n  round-to: 0.5 mm\n", "millimetres to 0.5 mm"},
    {"  unit: inches\n", "inches to 1/16\""},
    {"  unit: inches\n  round-to: 1/32 in\n", "inches to 1/32\""},
    {"  unit: feet-and-inches\n", "feet and inches to 1/16\""},
};

TEST_P(BenchCards, InEveryUnitTheMarksAndTheSumByHandAddUpAsPrinted) {
  for (const ShopOfCards& shop : shops) {
    const Compilation compilation =
        test::example_with(GetParam(), std::string("shop loft {\n") + shop.text + "}\n");
    ASSERT_TRUE(compilation.checked) << shop.words;
    for (const CardPiece& card : card_pieces(*compilation.checked)) {
      EXPECT_THAT(unit_words(card.unit), HasSubstr(shop.words));
      for (const CardMark& mark : card.marks) {
        EXPECT_EQ(mark.from_upper.parts % card.unit.step, 0) << card.piece->name;
        EXPECT_EQ(mark.from_upper.parts + mark.from_lower.parts, card.cut.parts) << card.piece->name;
      }
      EXPECT_EQ(card.body.parts + card.ends.parts + card.behaves.parts, card.cut.parts);
      // The printed total of the cut list to the step of the card: never further off than half of it.
      const double cut = static_cast<double>(card.cut.parts);
      const Length listed = piece_sum(*card.rig, *card.of_stay, *card.piece).cut().length();
      EXPECT_LE(std::abs(cut - listed / card.unit.part()),
                0.5 * static_cast<double>(card.unit.step) + 1e-6);
      const auto pages = card_pages(card, "A boat", PaperSize::letter);
      expect_well_set(pages);
      EXPECT_THAT(text_of(pages),
                  HasSubstr(card.draft() ? "CUT\nNOT YET" : "CUT\n" + card.amount(card.cut)));
    }
  }
}

// 25.4 mm to the inch: exact, by the international yard and pound agreement of 1959.
TEST(BenchCard, PrintsOneUnitOnly) {
  const Compilation boat = test::example_with("pellimoor", "shop loft {\n  unit: inches\n}\n");
  ASSERT_TRUE(boat.checked);
  const Length size_of_rope = Length::millimetres(9.0);
  for (const CardPiece& card : card_pieces(*boat.checked)) {
    std::string text = text_of(card_pages(card, "A boat", PaperSize::a4));
    // Names of sizes stay as they are sold, titles of places as they are stated.
    for (const char* name : {"hole 40 mm aft", "9 mm", "7 mm", "6 mm", "10 mm", "8 mm"})
      for (std::size_t at = text.find(name); at != std::string::npos; at = text.find(name))
        text.erase(at, std::string_view(name).size());
    EXPECT_THAT(text, testing::Not(HasSubstr(" mm"))) << card.piece->name;
    if (card.rope() && card.line->diameter.value == size_of_rope) {
      EXPECT_THAT(text, HasSubstr("bury 25 1/2\" (72 d)")); // 648 mm: 25.512 in
    }
  }
}

// Worked by hand: 72 d of 9 mm are 648 mm buried; the throat on the standing part lies at 808 mm, 648 of
// tail, 108 round the eye and 52 from its crown to its throat. So the tail comes out at 808 + 648 = 1456
// mm.
TEST(BenchCard, TheTailComesOutAsFarInsideTheThroatAsItIsLong) {
  const Compilation boat = example("pellimoor");
  ASSERT_TRUE(boat.checked);
  int met = 0;
  for (const CardPiece& card : card_pieces(*boat.checked))
    for (std::size_t i = 1; i < card.marks.size(); ++i)
      if (card.piece->name == "cap-shroud.port" && card.marks[i].name == "tail comes out aloft") {
        EXPECT_EQ(card.marks[i - 1].from_upper.parts, 8080); // tenths of a millimetre
        EXPECT_EQ(card.marks[i].from_upper.parts, 14560);
        ++met;
      }
  EXPECT_EQ(met, 1);
}

// What the splice does not state is said where it would be.
TEST(BenchCard, WhatTheSpliceDoesNotStateIsNotGiven) {
  const Compilation boat = test::compiled(
      "language 1\nlimits {\n  second-measure: off\n}\nrope hmpe-9 {\n  construction: \"12-strand\"\n  "
      "size: \"9 mm\"\n}\n"
      "splice bury {\n  bury: 72 d\n  eye-allowance: 12 d\n  contraction: 8 %\n}\nthimble ring {\n"
      "  length: 30 mm\n  lower: rope-seat (diameter: 28 mm, throat: 38 mm)\n}\n"
      "stay cap {\n  pin-to-pin: 10_000 mm measured\n  line: hmpe-9\n  stack {\n"
      "    ring (splice: bury)\n    line\n    ring (splice: bury)\n  }\n}\n");
  ASSERT_TRUE(boat.checked);
  const std::string text = text_of(card_pages(card_pieces(*boat.checked).front(), "A boat", PaperSize::a4));
  EXPECT_THAT(text, HasSubstr("taper begins\nnot given\n"));
  EXPECT_THAT(text, HasSubstr("taper not given; lock not given"));
  EXPECT_THAT(text, HasSubstr("Lock both throats. No method is given: follow the rope maker."));
  EXPECT_THAT(text, HasSubstr("Taper not given: follow the rope maker."));
}

TEST(BenchCard, HoldsStaysWithLongNamesOfManyAlphabets) {
  const Compilation boat = test::compiled(test::forty_pairs());
  ASSERT_TRUE(boat.checked);
  const auto cards = card_pieces(*boat.checked);
  EXPECT_EQ(cards.size(), 80u);
  for (const PaperSize size : {PaperSize::a4, PaperSize::letter})
    for (const CardPiece& card : cards)
      expect_well_set(card_pages(card, boat.checked->rig().boat.title, size));
}

TEST(BenchCard, IsADraftJustWhenAnInputIsAssumedOrMissing) {
  const Compilation pellimoor = example("pellimoor");
  EXPECT_THAT(BenchCard().generate({*pellimoor.checked}).files.front().bytes,
              testing::Not(HasSubstr("DRAFT")));
  const Compilation grisolde = example("grisolde");
  const std::string html = BenchCard().generate({*grisolde.checked}).files.front().bytes;
  EXPECT_THAT(html, HasSubstr("DRAFT, NOT FOR CUTTING"));
  EXPECT_THAT(html, HasSubstr("eye-allowance of untested-bury is assumed"));
}

// A knife goes by a number: the card of a draft holds neither the cut nor a mark.
TEST(BenchCard, OfADraftHoldsNoNumberToCutTo) {
  const Compilation grisolde = example("grisolde");
  ASSERT_TRUE(grisolde.checked);
  int drafts = 0;
  int measured = 0;
  for (const CardPiece& card : card_pieces(*grisolde.checked)) {
    const std::string text = text_of(card_pages(card, "A boat", PaperSize::a4));
    EXPECT_EQ(text.find(card_text(card.unit, card.cut)) == std::string::npos, card.draft())
        << card.piece->name;
    EXPECT_EQ(text.find("What releases this card") != std::string::npos, card.draft());
    EXPECT_THAT(text, HasSubstr(card.stamp));
    ++(card.draft() ? drafts : measured);
  }
  EXPECT_GT(drafts, 0);
  EXPECT_GT(measured, 0);
}

TEST(BenchCard, ANameOutOfMarkupStaysText) {
  DiskFileReader reader;
  Compilation compilation = example("smallest");
  ASSERT_TRUE(compilation.checked);
  Rig rig = compilation.checked->rig();
  rig.boat.title = "<script>alert(1)</script>";
  rig.stays.front().title = "=1+1 & <b>";
  const auto checked =
      CheckedRig::make(compilation.sources, std::make_shared<const Rig>(rig), compilation.derived, {});
  const std::string html = BenchCard().generate({*checked}).files.front().bytes;
  EXPECT_THAT(html, testing::Not(HasSubstr("<script")));
  EXPECT_THAT(html, testing::Not(HasSubstr("<b>")));
  EXPECT_THAT(html, HasSubstr("=1+1 &amp; &lt;b&gt;"));
}

TEST(BenchCard, ALockingOfNoneLocksNothing) {
  for (const auto& [locking, says, not_said] : {std::tuple{"None", "nothing locks it", "None"},
                                                {"lock stitch", "lock stitch", "nothing locks it"}}) {
    const Compilation boat = test::compiled(
        "language 1\nlimits {\n  second-measure: off\n}\nrope hmpe-9 {\n  construction: \"12-strand\"\n  "
        "size: \"9 mm\"\n}\n"
        "splice bury {\n  bury: 72 d\n  eye-allowance: 12 d\n  contraction: 8 %\n  locking: \"" +
        std::string(locking) +
        "\"\n}\nthimble ring {\n  length: 30 mm\n}\n"
        "stay cap {\n  pin-to-pin: 10_000 mm measured\n  line: hmpe-9\n  stack {\n"
        "    ring (splice: bury)\n    line\n    ring (splice: bury)\n  }\n}\n");
    ASSERT_TRUE(boat.checked);
    std::string text;
    for (const CardStep& step : card_steps(card_pieces(*boat.checked).front()))
      text += step.text + "\n";
    EXPECT_THAT(text, HasSubstr(says));
    EXPECT_THAT(text, testing::Not(HasSubstr(not_said)));
  }
}

// One unit on a card, docs/decisions/0011: the reasons of a draft as well.
TEST(BenchCard, TheReasonsOfADraftAreInTheUnitOfTheCard) {
  const std::string rig =
      "rope hmpe-9 {\n  construction: \"12-strand\"\n  size: \"9 mm\"\n}\n"
      "splice bury {\n  bury: 72 d\n  eye-allowance: 12 d\n  contraction: 8 %\n}\n"
      "thimble ring {\n  length: 30 mm\n}\n"
      "stay cap {\n  pin-to-pin: 10_000 mm measured\n  line: hmpe-9\n  stack {\n"
      "    ring (splice: bury)\n    line (in-hand: 10 m measured)\n    ring (splice: bury)\n  }\n}\n";
  const Compilation inches = test::compiled("language 1\nshop own {\n  unit: inches\n}\n" + rig);
  const Compilation metric = test::compiled("language 1\n" + rig);
  ASSERT_TRUE(inches.checked && metric.checked);
  const CardPiece in_inches = card_pieces(*inches.checked).front();
  const CardPiece in_millimetres = card_pieces(*metric.checked).front();
  ASSERT_TRUE(in_inches.draft());
  // 10 000 less two rings, two burys of 648, two eyes of 108 and twice 8 % of 648: 11 555.68, so 1555.68 mm
  // are lacking, 61 1/4 in.
  EXPECT_THAT(joined(draft_lines(in_inches.draft_reasons), "; "), HasSubstr("61 1/4\""));
  EXPECT_THAT(joined(draft_lines(in_inches.draft_reasons), "; "), testing::Not(HasSubstr(" mm")));
  EXPECT_THAT(joined(draft_lines(in_millimetres.draft_reasons), "; "), HasSubstr("1555.68 mm"));
}

// A card that says 5 m to a tip is held to the tip, and cut shorter where it does not reach; what nobody
// measured is no number on it.
TEST(BenchCard, ATipThatIsAssumedHasNoNumber) {
  const auto card_of = [](const std::string& how) {
    const Compilation boat = test::compiled(
        "language 1\nlimits {\n  second-measure: off\n}\npoints {\n  tang: (0, 0.08, 10) m measured\n"
        "  tip: (0, 1.13, 5) m " +
        how +
        "\n  plate: (0, 1.23, 1) m measured\n}\nrope hmpe-9 {\n  construction: \"12-strand\"\n"
        "  size: \"9 mm\"\n}\nsplice bury {\n  bury: 72 d\n  eye-allowance: 12 d\n  contraction: 8 %\n}\n"
        "thimble ring {\n  length: 30 mm\n}\nstay cap {\n  path: tang > tip clamped > plate\n"
        "  pin-to-pin: 9_200 mm measured\n  line: hmpe-9\n  stack {\n"
        "    ring (splice: bury)\n    line\n    ring (splice: bury)\n  }\n}\n");
    EXPECT_TRUE(boat.checked);
    for (const OutputFile& file : BenchCard().generate({*boat.checked}).files)
      if (file.name == "bench-cards.html")
        return test::words_of_markup(file.bytes);
    return std::string();
  };
  // 5.109 m from tang to tip, less the ring.
  EXPECT_THAT(card_of("measured"), testing::Not(HasSubstr("hold the piece to its tip")));
  EXPECT_THAT(card_of("measured"), HasSubstr("5079 mm"));
  const std::string assumed = card_of("assumed \"spreader: measure\"");
  EXPECT_THAT(assumed, HasSubstr("T1 tip, clamped: assumed: hold the piece to its tip"));
  EXPECT_THAT(assumed, testing::Not(HasSubstr("5079")));
}

} // namespace
} // namespace sheerpole::bench_card_test
