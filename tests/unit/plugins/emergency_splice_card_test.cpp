#include "plugins/emergency-splice-card/emergency_splice_card.hpp"

#include "service/compile.hpp"
#include "unit/calculate/compiled_rig.hpp"
#include "unit/page/page_boxes.hpp"
#include "unit/plugins/example_boat.hpp"
#include "wording/length_words.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>
#include <set>

namespace sheerpole::emergency_splice_card_test {
namespace {

using testing::HasSubstr;
using testing::Not;

class SpareCards : public testing::TestWithParam<const char*> {};
INSTANTIATE_TEST_SUITE_P(Boats, SpareCards,
                         testing::Values("pellimoor", "grisolde", "smidgeon", "oddnys-wager", "sallow"));

TEST_P(SpareCards, OneForEachLineOnTwoWellSetPagesAtMost) {
  const Compilation boat = test::example_with(GetParam(), "");
  ASSERT_TRUE(boat.checked);
  std::set<std::string> lines;
  for (const DerivedStay& stay : boat.checked->derived().stays)
    for (const Piece& piece : stay.pieces)
      lines.insert(boat.checked->rig()[piece.material].name);
  const auto spares = spare_lines(*boat.checked);
  EXPECT_EQ(spares.size(), lines.size());
  for (const PaperSize size : {PaperSize::a4, PaperSize::letter})
    for (const SpareLine& spare : spares) {
      const auto pages = spare_pages(spare, "A boat", size);
      EXPECT_LE(pages.size(), 2u) << spare.longest.line->name << " on " << name_of(size);
      expect_well_set(pages);
    }
}

TEST_P(SpareCards, AreLongEnoughForEveryPieceOfTheirLine) {
  const Compilation boat = test::example_with(GetParam(), "");
  ASSERT_TRUE(boat.checked);
  for (const SpareLine& spare : spare_lines(*boat.checked)) {
    EXPECT_EQ(spare.to_carry.parts, spare.longest.cut.parts + spare.end_again.parts);
    for (const CardPiece& card : spare.pieces)
      EXPECT_TRUE(card.cut.unknown || spare.to_carry.parts >= card.cut.parts) << card.piece->name;
  }
}

/// The marks of the second end come where its bench card has them: the
/// first bearing lies what the end aloft uses from its cut end.
TEST_P(SpareCards, MarkTheSecondEndWhereTheBenchCardDoes) {
  const Compilation boat = test::example_with(GetParam(), "");
  ASSERT_TRUE(boat.checked);
  for (const SpareLine& spare : spare_lines(*boat.checked)) {
    const CardPiece& card = spare.longest;
    Length aloft;
    for (const Term& term : card.piece->cut.terms)
      if (term.is_of(WhichEnd::upper))
        aloft += term.amount;
    for (std::size_t i = 0; i < spare.second.size(); ++i) {
      const BenchMark& mark =
          card.piece->bench.marks[card.piece->bench.marks.size() - spare.second.size() + i];
      ASSERT_EQ(mark_name(mark), spare.second[i].name);
      const double by_body = (aloft + card.piece->body.known()).millimetres() +
                             static_cast<double>(spare.second[i].beyond_body.parts) / 10.0;
      EXPECT_NEAR(by_body, mark.from_upper.known.millimetres(), 0.5 + 1e-6) << card.piece->name;
    }
  }
}

// Worked by hand. Body 9940; each end 648 buried, 108 round the eye, 51.84 that the bury takes up: 807.84,
// so a cut of 11 555.68 mm and 12 363.5 to carry, printed as 11 556 + 808. The second throat on the
// standing part lies at the body + 51.84 - 52 (crown to throat: half of 28, and 38), on the tail 108 + 52
// further.
TEST(EmergencySpliceCard, HasTheNumbersOfTheSplice) {
  const Compilation boat = test::compiled(
      "language 1\nlimits {\n  second-measure: off\n}\n"
      "rope hmpe-9 {\n  construction: \"12-strand\"\n  size: \"9 mm\"\n}\n"
      "splice bury {\n  bury: 72 d\n  eye-allowance: 12 d\n  contraction: 8 %\n  taper: \"last third\"\n"
      "  locking: \"lock stitch\"\n}\n"
      "thimble ring {\n  length: 30 mm\n  lower: rope-seat (diameter: 28 mm, throat: 38 mm)\n}\n"
      "stay cap {\n  pin-to-pin: 10_000 mm measured\n  line: hmpe-9\n  stack {\n    ring (splice: bury)\n  "
      "  line\n"
      "    ring (splice: bury)\n  }\n}\n"
      "stay low {\n  pin-to-pin: 5_000 mm measured\n  line: hmpe-9\n  stack {\n    ring (splice: bury)\n   "
      " line\n"
      "    ring (splice: bury)\n  }\n}\n");
  ASSERT_TRUE(boat.checked);
  const auto spares = spare_lines(*boat.checked);
  ASSERT_EQ(spares.size(), 1u);
  const SpareLine& spare = spares.front();
  EXPECT_EQ(spare.longest.piece->name, "cap");
  EXPECT_EQ(spare.pieces.size(), 2u);
  EXPECT_EQ(card_amount({}, spare.to_carry), "12\u202f364 mm");
  EXPECT_EQ(spare.end_again.parts, 8080);
  ASSERT_EQ(spare.second.size(), 4u);
  EXPECT_EQ(of_body({}, spare.second[0].beyond_body), "body - 648 mm"); // the tail comes out
  EXPECT_EQ(of_body({}, spare.second[1].beyond_body), "body"); // throat below, on the standing part: -0.16
  EXPECT_EQ(of_body({}, spare.second[2].beyond_body), "body + 160 mm");
  EXPECT_EQ(of_body({}, spare.second[3].beyond_body), "body + 808 mm");
  const std::string html = EmergencySpliceCard().generate({*boat.checked}).files.front().bytes;
  EXPECT_THAT(html, HasSubstr("bury 648 mm (72 d)"));
  EXPECT_THAT(html, HasSubstr("Taper the tail: last third."));
  EXPECT_THAT(html, HasSubstr("Lock it: lock stitch."));
  EXPECT_THAT(html, Not(HasSubstr("DRAFT")));
}

// Worked by hand. The lower end of `low` goes round a seat of 60 mm with its throat 80 mm off: the throats
// lie 30 + 80 = 110 mm inside the crown, so that the one on the standing part is at the body + 51.84 - 110,
// and the one on the tail its 270 mm of eye and those 110 further: + 321.84. Its end uses 648 + 270 + 51.84
// = 969.84 mm: so much more is carried, though the ends of the longest piece use but 807.84.
TEST(EmergencySpliceCard, HasTheMarksOfEveryStayAndRopeForTheGreediestEnd) {
  const Compilation boat = test::compiled(
      "language 1\nlimits {\n  second-measure: off\n}\n"
      "rope hmpe-9 {\n  construction: \"12-strand\"\n  size: \"9 mm\"\n}\n"
      "splice bury {\n  bury: 72 d\n  eye-allowance: 12 d\n  contraction: 8 %\n}\n"
      "splice wide {\n  bury: 72 d\n  eye-allowance: 30 d\n  contraction: 8 %\n}\n"
      "thimble ring {\n  length: 30 mm\n  lower: rope-seat (diameter: 28 mm, throat: 38 mm)\n}\n"
      "thimble large {\n  length: 40 mm\n  lower: rope-seat (diameter: 60 mm, throat: 80 mm)\n}\n"
      "stay cap {\n  pin-to-pin: 10_000 mm measured\n  line: hmpe-9\n  stack {\n    ring (splice: bury)\n  "
      "  line\n    ring (splice: bury)\n  }\n}\n"
      "stay low {\n  pin-to-pin: 9_800 mm measured\n  line: hmpe-9\n  stack {\n    ring (splice: bury)\n  "
      "  line\n    large (splice: wide)\n  }\n}\n");
  ASSERT_TRUE(boat.checked);
  const auto spares = spare_lines(*boat.checked);
  ASSERT_EQ(spares.size(), 1u);
  const SpareLine& spare = spares.front();
  ASSERT_EQ(spare.longest.piece->name, "cap");
  EXPECT_EQ(card_amount({}, spare.end_again), "970 mm");
  EXPECT_EQ(card_amount({}, spare.to_carry), "12\u202f526 mm");
  ASSERT_EQ(spare.others.size(), 1u);
  const OtherEnd& other = spare.others.front();
  EXPECT_THAT(other.pieces, testing::ElementsAre("low"));
  ASSERT_EQ(other.marks.size(), 4u);
  EXPECT_EQ(of_body({}, other.marks[1].beyond_body), "body - 58 mm");
  EXPECT_EQ(of_body({}, other.marks[2].beyond_body), "body + 322 mm");
  EXPECT_EQ(of_body({}, other.marks[3].beyond_body), "body + 970 mm");
  const std::string html = EmergencySpliceCard().generate({*boat.checked}).files.front().bytes;
  EXPECT_THAT(html, HasSubstr("body - 58 mm"));
  EXPECT_THAT(html, HasSubstr("The marks below are those of cap."));
  EXPECT_THAT(html, HasSubstr("ring or large"));
  EXPECT_THAT(html, HasSubstr("a ring and a large")); // both are carried
  EXPECT_THAT(html, HasSubstr("Another splice, by the bench card: low."));
}

// Nothing is cut to a length that was read once, and a spare is a cut as well.
TEST(EmergencySpliceCard, HasNoNumberOfWhatIsToBeMeasuredAgain) {
  const auto html_of = [](const std::string& more) {
    const Compilation boat = test::compiled(
        "language 1\nrope hmpe-9 {\n  construction: \"12-strand\"\n  size: \"9 mm\"\n}\n"
        "splice bury {\n  bury: 72 d\n  eye-allowance: 12 d\n  contraction: 8 %\n}\n"
        "thimble ring {\n  length: 30 mm\n}\n"
        "stay cap {\n  line: hmpe-9\n  stack {\n    ring (splice: bury)\n    line\n    ring (splice: "
        "bury)\n  }\n}\n"
        "reading of cap {\n  method: tape\n  runs: 10_000 mm\n}\n" +
        more);
    return boat.checked ? EmergencySpliceCard().generate({*boat.checked}).files.front().bytes
                        : std::string();
  };
  const std::string once = html_of("");
  EXPECT_THAT(once, HasSubstr("NOT YET"));
  EXPECT_THAT(once, HasSubstr("measured once"));
  EXPECT_THAT(once, Not(HasSubstr("12\u202f364")));
  EXPECT_THAT(once, Not(HasSubstr("11\u202f556")));
  const std::string enough = html_of("limits { second-measure: off }\n");
  EXPECT_THAT(enough, Not(HasSubstr("NOT YET")));
  EXPECT_THAT(enough, HasSubstr("12\u202f364"));
}

// X is one stay's cord from U to L wherever it stands, and says whose; bearing to bearing is the body.
TEST(EmergencySpliceCard, HasXInOneSenseAndSaysOfWhichStay) {
  const Compilation boat = test::example_with("quillwort", "limits {\n  second-measure: off\n}\n");
  ASSERT_TRUE(boat.checked);
  for (const SpareLine& spare : spare_lines(*boat.checked)) {
    std::string text;
    for (const Drawing& page : spare_pages(spare, "Quillwort", PaperSize::a4))
      for (const LabelBox& box : set_boxes(page.content))
        text += box.text + "\n";
    for (std::size_t at = text.find('X'); at != std::string::npos; at = text.find('X', at + 1))
      EXPECT_EQ(text.substr(at + 1, 1), "(") << text.substr(at, 40);
    for (const CardPiece& card : spare.pieces)
      EXPECT_THAT(text, HasSubstr(card.amount_of_stay(card.body))); // on one line
    EXPECT_THAT(text, HasSubstr("body + "));
    if (!spare.longest.rope()) {
      EXPECT_THAT(text, HasSubstr("from the mouth of the closed end"));
    }
  }
}

std::string two_on_cords(const std::string& of_first, const std::string& of_second) {
  return "language 1\nlimits {\n  second-measure: off\n}\n"
         "rope rope-9 {\n  construction: \"12-strand\"\n  size: \"9 mm\"\n}\ncord red { }\n"
         "splice bury {\n  bury: 650 mm\n  eye-allowance: 100 mm\n  contraction: 0 %\n"
         "  locking: \"None\"\n}\n"
         "thimble ring {\n  length: 30 mm\n}\n"
         "stay first {\n  line: rope-9\n" +
         of_first + "  stack {\n    ring (splice: bury)\n    line\n    ring (splice: bury)\n  }\n}\n" +
         "stay second {\n  line: rope-9\n" + of_second +
         "  stack {\n    ring (splice: bury)\n    line\n    ring (splice: bury)\n  }\n}\n"
         "reading of first {\n  method: messenger\n  cord: red\n  knots: 1\n}\n"
         "reading of second {\n  method: messenger\n  cord: red\n  knots: 2\n}\n";
}

std::string text_of_only_card(const Compilation& boat) {
  const auto spares = spare_lines(*boat.checked);
  EXPECT_EQ(spares.size(), 1u);
  std::string text;
  for (const Drawing& page : spare_pages(spares.front(), "A boat", PaperSize::a4))
    for (const LabelBox& box : set_boxes(page.content))
      text += box.text + " ";
  return text;
}

// A length that nobody knows is not a short one.
TEST(EmergencySpliceCard, DoesNotTakeAnUnknownLengthForAShortOne) {
  const Compilation one = test::compiled(two_on_cords("", "  estimate: 5 m\n"));
  ASSERT_TRUE(one.checked);
  EXPECT_EQ(spare_lines(*one.checked).front().longest.piece->name, "second");
  std::string text = text_of_only_card(one);
  EXPECT_THAT(text, HasSubstr("made for the longest that is known, second"));
  EXPECT_THAT(text, HasSubstr("Not compared: first."));

  text = text_of_only_card(test::compiled(two_on_cords("", "")));
  EXPECT_THAT(text, HasSubstr("made for one of them, first"));
  EXPECT_THAT(text, HasSubstr("Which is the longest is not known: first, second"));

  text = text_of_only_card(test::compiled(two_on_cords("  estimate: 4 m\n", "  estimate: 5 m\n")));
  EXPECT_THAT(text, HasSubstr("made for the longest, second"));
  EXPECT_THAT(text, Not(HasSubstr("ot compared")));
}

// "None" is no way to lock, however it is written.
TEST(EmergencySpliceCard, ALockingOfNoneIsNone) {
  const std::string text = text_of_only_card(test::compiled(two_on_cords("  estimate: 4 m\n", "")));
  EXPECT_THAT(text, Not(HasSubstr("None")));
  EXPECT_THAT(text, HasSubstr("The file does not say how."));
  EXPECT_THAT(text, HasSubstr("nothing locks it"));
}

TEST(EmergencySpliceCard, ListsTheTerminalsForItsWire) {
  const Compilation boat = test::example_with("grisolde", "in-hand of marine-eye-62 {\n  pieces: 2\n}\n");
  ASSERT_TRUE(boat.checked);
  bool seen = false;
  for (const SpareLine& spare : spare_lines(*boat.checked)) {
    if (spare.longest.line->name != "wire-five-sixteenths")
      continue;
    for (const SpareTerminal& terminal : spare_terminals(spare)) {
      EXPECT_THAT(terminal.wire, HasSubstr("5/16 in"));
      if (!terminal.name.starts_with("marine-eye-62"))
        continue;
      seen = true;
      EXPECT_EQ(terminal.in_hand, "2");
      EXPECT_NE(terminal.inserted, "");
    }
  }
  EXPECT_TRUE(seen);
}

TEST(EmergencySpliceCard, HoldsNamesOfManyAlphabetsAndARigWithoutLines) {
  const Compilation many = test::compiled(test::forty_pairs());
  ASSERT_TRUE(many.checked);
  for (const PaperSize size : {PaperSize::a4, PaperSize::letter})
    for (const SpareLine& spare : spare_lines(*many.checked))
      expect_well_set(spare_pages(spare, many.checked->rig().boat.title, size));
  const Compilation bare = test::compiled("language 1\nboat \"Bare\" { }\n");
  ASSERT_TRUE(bare.checked);
  EXPECT_THAT(EmergencySpliceCard().generate({*bare.checked}).files.front().bytes,
              HasSubstr("no stay of rope or wire"));
}

} // namespace
} // namespace sheerpole::emergency_splice_card_test
