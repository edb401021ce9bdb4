#include "plugins/bench-card/mark_rows.hpp"

#include "backend/card/card_in_hand.hpp"
#include "backend/json/json.hpp"
#include "plugins/bench-card/bench_card.hpp"
#include "service/compile.hpp"
#include "source/file_reader.hpp"
#include "unit/calculate/compiled_rig.hpp"
#include "unit/calculate/reference_rows.hpp"
#include "unit/page/page_boxes.hpp"
#include "unit/plugins/example_boat.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>
#include <optional>
#include <string>
#include <vector>

// Bench cards of pieces whose length exists only as a knot on a cord: the worked case against its table.

namespace sheerpole::from_the_cord_test {
namespace {

using testing::HasSubstr;
using testing::Not;

constexpr double inch = 25.4;

/// Each of her cords was hoisted once; here that will do, so that the cards go on to the cut.
constexpr const char* once_will_do = "\nlimits {\n  second-measure: off\n}\n";

Compilation quillwort() {
  return test::example_with("quillwort", once_will_do);
}

const CardPiece* card_of(const std::vector<CardPiece>& cards, const std::string& piece) {
  for (const CardPiece& card : cards)
    if (card.piece->name == piece)
      return &card;
  return nullptr;
}

// ---- The worked case ----

/// What the table asks for, of the card of one cap shroud; nothing for a quantity that is another test's.
std::optional<double> inches_of(const CardPiece& card, const std::string& quantity) {
  if (quantity == "beyond-x body")
    return card.piece->body.known().millimetres() / inch;
  if (quantity == "beyond-x cut")
    return card.piece->cut.known().millimetres() / inch;
  const bool aloft = quantity.find(" aloft") != std::string::npos;
  std::string name = quantity.substr(std::min<std::size_t>(quantity.size(), 7));
  if (const std::size_t at = name.find(aloft ? " aloft" : " below"); at != std::string::npos)
    name.erase(at, 6);
  for (const MarkRow& row : mark_rows(card)) {
    // Below an end of the cord that is a bearing as well, the bearing stands in its row.
    const bool named =
        row.by_upper == aloft &&
        (name == row.name ||
         (name == "bearing" && row.name.ends_with(aloft ? "bearing aloft" : "bearing below")));
    if (named && quantity.starts_with("from-u "))
      return static_cast<double>(row.from_u.parts) / 64.0;
    if (named && quantity.starts_with("from-l "))
      return static_cast<double>(row.from_l.parts) / 64.0;
  }
  return std::nullopt;
}

TEST(FromTheCord, TheWorkedCaseHasTheNumbersOfItsTable) {
  const Compilation boat = quillwort();
  ASSERT_TRUE(boat.checked);
  const auto cards = card_pieces(*boat.checked);
  for (const char* side : {"cap-shroud.port", "cap-shroud.starboard"}) {
    const CardPiece* card = card_of(cards, side);
    ASSERT_NE(card, nullptr) << side;
    int met = 0;
    for (const auto& row : reference_rows("cord-worked-case", 3)) {
      const auto inches = inches_of(*card, row[0]);
      if (!inches)
        continue;
      ++met;
      EXPECT_NEAR(*inches, std::stod(row[1]), 1e-9) << side << ": " << row[0];
    }
    EXPECT_EQ(met, 8) << side; // of this test; the other rows are tested where they are worked out
  }
}

TEST(FromTheCord, TheCardOfTheWorkedCasePrintsItAsARiggerReadsIt) {
  const Compilation boat = quillwort();
  ASSERT_TRUE(boat.checked);
  const auto cards = card_pieces(*boat.checked);
  const CardPiece* card = card_of(cards, "cap-shroud.port");
  ASSERT_NE(card, nullptr);
  std::string text;
  for (const PaperSize size : {PaperSize::a4, PaperSize::letter}) {
    const auto pages = card_pages(*card, "Quillwort", size);
    for (const Drawing& page : pages)
      for (const LabelBox& box : set_boxes(page.content))
        text += box.text + "\n";
  }
  EXPECT_THAT(text, HasSubstr("X = cord orange, 4 knots: from its upper end U to its knot L."));
  EXPECT_THAT(text, HasSubstr("X + 39 1/2\""));
  EXPECT_THAT(text, HasSubstr("X - 24\""));
  EXPECT_THAT(text, HasSubstr("31 3/4\" past"));
  EXPECT_THAT(text, HasSubstr("7 3/4\" past"));
  EXPECT_THAT(text, HasSubstr("24\" inside"));
  EXPECT_THAT(text, HasSubstr("+ 39 1/2\" = CUT"));
  EXPECT_THAT(text, HasSubstr("- 24\" = body"));
}

TEST(FromTheCord, EachCardIsOneWellSetPageOnBothSheets) {
  const Compilation boat = quillwort();
  ASSERT_TRUE(boat.checked);
  for (const PaperSize size : {PaperSize::a4, PaperSize::letter})
    for (const CardPiece& card : card_pieces(*boat.checked)) {
      const auto pages = card_pages(card, "Quillwort", size);
      EXPECT_EQ(pages.size(), 1u) << card.piece->name << " on " << name_of(size);
      expect_well_set(pages);
    }
}

// The tail is 25 1/2 in of rope, so on the unopened rope it comes out as far inside its throat.
TEST(FromTheCord, TheTailComesOutAsFarInsideItsThroatAsItIsLong) {
  const Compilation boat = quillwort();
  ASSERT_TRUE(boat.checked);
  for (const CardPiece& card : card_pieces(*boat.checked)) {
    const std::vector<MarkRow> rows = mark_rows(card);
    int number = 0;
    for (const MarkRow& row : rows)
      if (row.is_mark()) {
        EXPECT_EQ(row.sign, std::to_string(++number)) << card.piece->name;
      }
    for (const bool by_upper : {true, false}) {
      const MarkRow* throat = row_of(rows, MarkKind::throat_on_standing_part, by_upper);
      const MarkRow* out = row_of(rows, MarkKind::tail_comes_out, by_upper);
      ASSERT_EQ(throat == nullptr, !card.rope()) << card.piece->name;
      ASSERT_EQ(out == nullptr, !card.rope()) << card.piece->name;
      if (out == nullptr)
        continue;
      const CardLength from_throat = by_upper ? out->from_u - throat->from_u : out->from_l - throat->from_l;
      EXPECT_EQ(from_throat.parts, static_cast<std::int64_t>(25.5 * 64)) << card.piece->name;
      // Both columns lead to one place.
      EXPECT_EQ(out->from_u.parts + out->from_l.parts, 0) << card.piece->name;
    }
  }
}

// Past the pin aloft and past the bearing below lie 31 3/4 in each, docs/cords.md.
TEST(FromTheCord, TheHalvesCheckHasTheNumbersOfTheMarks) {
  const Compilation boat = quillwort();
  ASSERT_TRUE(boat.checked);
  const auto cards = card_pieces(*boat.checked);
  const CardHalves cap = card_halves(*card_of(cards, "cap-shroud.port"));
  EXPECT_EQ(cap.upper.parts, static_cast<std::int64_t>(31.75 * 64));
  EXPECT_EQ(cap.lower.parts, static_cast<std::int64_t>(31.75 * 64));
  EXPECT_EQ(halves_differ_words(*card_of(cards, "cap-shroud.port")), "They must be alike.");
  for (const CardPiece& card : cards) {
    const CardHalves parts = card_halves(card);
    EXPECT_EQ(parts.upper.parts + card.body.parts + parts.lower.parts, card.cut.parts) << card.piece->name;
  }
  std::string text;
  for (const Drawing& page : card_pages(*card_of(cards, "cap-shroud.port"), "Quillwort", PaperSize::a4))
    for (const LabelBox& box : set_boxes(page.content))
      text += box.text + "\n";
  EXPECT_THAT(text, HasSubstr("HALVES CHECK\nU to rope end 1\n31 3/4\"\nB to rope end 10\n31 3/4\"\n"));
}

/// The same boat with a shop that works in whole millimetres.
Compilation quillwort_in_millimetres() {
  DiskFileReader reader;
  std::string text = reader.read(std::string(SHEERPOLE_EXAMPLES_DIR) + "/quillwort.rig", 1'000'000).value();
  for (const auto& [inches, millimetres] :
       {std::pair<std::string, std::string>{"unit: inches", "unit: millimetres"}, {"1/16 in", "1 mm"}}) {
    EXPECT_NE(text.find(inches), std::string::npos) << inches;
    text.replace(text.find(inches), inches.size(), millimetres);
  }
  return test::compiled(text + once_will_do);
}

// 31 3/4 in are 806.45 mm: the marks of the two ends come out as 806 and 807, in tenths here.
TEST(FromTheCord, HalvesThatAreAlikeSaySoAlsoWhereTheMarksWereRounded) {
  const Compilation boat = quillwort_in_millimetres();
  ASSERT_TRUE(boat.checked);
  const auto cards = card_pieces(*boat.checked);
  const CardPiece& card = *card_of(cards, "cap-shroud.port");
  EXPECT_EQ(card_halves(card).upper.parts, 8060);
  EXPECT_EQ(card_halves(card).lower.parts, 8070);
  EXPECT_EQ(halves_differ_words(card), "They must be alike; 1 mm is of rounding.");
}

/// Small knots of a tally, each by how far it reaches to the right.
void find_tally(const ShapeGroup& group, std::vector<double>& reach) {
  for (const DrawnNode& node : group.children)
    if (const auto* circle = std::get_if<CircleShape>(&node.content())) {
      if (std::fabs(circle->radius - 0.8) < 1e-9)
        reach.push_back(circle->centre.x + circle->radius);
    } else if (const auto* inner = std::get_if<ShapeGroup>(&node.content())) {
      find_tally(*inner, reach);
    }
}

TEST(FromTheCord, TheTallyIsDrawnWhole) {
  const Compilation boat = quillwort_in_millimetres();
  ASSERT_TRUE(boat.checked);
  const auto cards = card_pieces(*boat.checked);
  for (const auto& [name, knots] :
       {std::pair{"cap-shroud.port", 4U}, {"lower-shroud.port", 1U}, {"forestay", 3U}})
    for (const PaperSize size : {PaperSize::a4, PaperSize::letter}) {
      std::vector<double> reach;
      double width = 0.0;
      for (const Drawing& page : card_pages(*card_of(cards, name), "Quillwort", size)) {
        find_tally(page.content, reach);
        width = page.width;
      }
      EXPECT_EQ(reach.size(), knots) << name;
      for (const double right : reach)
        EXPECT_LE(right, width - 15.0) << name; // the margin of the sheet
    }
}

TEST(FromTheCord, StepsGoByTheNumbersOfTheMarks) {
  const Compilation boat = quillwort();
  ASSERT_TRUE(boat.checked);
  const auto cards = card_pieces(*boat.checked);
  std::string steps;
  for (const CardStep& step : card_steps(*card_of(cards, "cap-shroud.port")))
    steps += step.text + "\n";
  EXPECT_THAT(steps, HasSubstr("Bring 3 to 4 and 8 to 7, seize both eyes."));
  EXPECT_THAT(steps, HasSubstr("pin L first (mark 10 is 7 3/4\" past it), lay out again."));
  EXPECT_THAT(steps, HasSubstr("Bring 3 to 4. Bury from 4, out at 5. Taper from 2"));
  EXPECT_THAT(steps, HasSubstr("Bring 8 to 7. Bury from 7, out at 6. Taper from 9"));
}

TEST(FromTheCord, JsonSaysOfWhichStayTheXIs) {
  const Compilation boat = quillwort();
  ASSERT_TRUE(boat.checked);
  const Json request = request_json(*boat.checked);
  int pieces = 0;
  for (const Json& stay : request["derived"]["stays"])
    for (const Json& piece : stay["pieces"]) {
      ++pieces;
      EXPECT_EQ(piece["bench"]["cut"]["x_of"], stay["stay"]);
      EXPECT_EQ(piece["bench"]["cut"]["plus_mm"], piece["cut"]["known_mm"]);
      for (const Json& mark : piece["bench"]["marks"]) {
        // One of the two is a number, the other is X less it.
        EXPECT_NE(mark["from_u"]["x_of"].is_null(), mark["from_l"]["x_of"].is_null());
        EXPECT_NEAR(mark["from_u"]["plus_mm"].get<double>() + mark["from_l"]["plus_mm"].get<double>(), 0.0,
                    1e-5);
      }
    }
  EXPECT_EQ(pieces, 5);
  EXPECT_NEAR(request["derived"]["stays"][0]["pieces"][0]["bench"]["cut"]["plus_mm"].get<double>(),
              39.5 * inch, 1e-6);
}

TEST(FromTheCord, WireIsClosedAtItsFirstEndBeforeItIsLaidOut) {
  const Compilation boat = quillwort();
  ASSERT_TRUE(boat.checked);
  const auto cards = card_pieces(*boat.checked);
  const CardPiece* card = card_of(cards, "forestay");
  ASSERT_NE(card, nullptr);
  std::vector<std::string> words;
  std::size_t stop = 0;
  for (const CardStep& step : card_steps(*card)) {
    if (step.stop)
      stop = words.size();
    words.push_back(step.text);
  }
  const auto at = [&](const std::string& begin) {
    std::size_t i = 0;
    while (i < words.size() && !words[i].starts_with(begin))
      ++i;
    return i;
  };
  EXPECT_LT(at("Close the end aloft first"), at("Lay the cord along it"));
  EXPECT_LT(at("Lay the cord along it"), at("Pass 1"));
  EXPECT_LT(at("Pass 2"), stop);
  EXPECT_LT(stop, at("Below: put the wire into"));
  // X - 17 13/16 of body and 2 1/16 (52 mm) into the terminal below.
  EXPECT_THAT(words[at("Cut at mark 4")], HasSubstr("from the mouth of the closed end"));
  EXPECT_EQ(at("Aloft: put the wire into"), words.size());                     // it is closed
  EXPECT_THAT(words[at("Close the end aloft first")], HasSubstr("1 15/16\"")); // 50 mm in sixteenths
}

TEST(FromTheCord, SaysWhatLiesOutsideTheBearings) {
  const Compilation boat = quillwort();
  ASSERT_TRUE(boat.checked);
  const auto cards = card_pieces(*boat.checked);
  for (const auto& [piece, has] : {std::pair{"lower-shroud.port", true}, {"cap-shroud.port", false}}) {
    const CardPiece* card = card_of(cards, piece);
    ASSERT_NE(card, nullptr);
    std::string text;
    for (const Drawing& page : card_pages(*card, "Quillwort", PaperSize::a4))
      for (const LabelBox& box : set_boxes(page.content))
        text += box.text + " ";
    // 8 % of 25 1/2 in is 2.04 in.
    if (has)
      EXPECT_THAT(text, HasSubstr("outside the bearings: 2 1/16\" aloft and 2 1/16\" below"));
    else
      EXPECT_THAT(text, Not(HasSubstr("outside the bearings")));
  }
}

/// The words of all pages of a card.
std::string words_of(const CardPiece& card) {
  std::string text;
  for (const Drawing& page : card_pages(card, "Quillwort", PaperSize::a4))
    for (const LabelBox& box : set_boxes(page.content))
      text += box.text + "\n";
  return text;
}

TEST(FromTheCord, APieceThatWasMeasuredOnceIsNotForCutting) {
  const Compilation boat = test::example_with("quillwort", "");
  ASSERT_TRUE(boat.checked);
  const auto cards = card_pieces(*boat.checked);
  for (const char* piece : {"cap-shroud.port", "forestay"}) {
    const CardPiece* card = card_of(cards, piece);
    ASSERT_NE(card, nullptr);
    const std::string text = words_of(*card);
    EXPECT_THAT(text, HasSubstr("MEASURE AGAIN, NOT FOR CUTTING"));
    EXPECT_THAT(text, HasSubstr("CUT\nNOT YET\n"));
    EXPECT_THAT(text, HasSubstr("it was measured once\nmeasure it a second time, or by a second way\n"));
    for (const char* sign :
         {"STOP", "signed", "by, day", "Cut at", "= CUT", "Bury from", "Lock ", "close it", "X + 39 1/2\""})
      EXPECT_THAT(text, Not(HasSubstr(sign))) << piece;
    for (const CardStep& step : card_steps(*card))
      EXPECT_FALSE(step.stop);
  }
  // The rope may be laid out, seized and hung: that is a second measure. A wire would have to be closed.
  EXPECT_THAT(words_of(*card_of(cards, "cap-shroud.port")), HasSubstr("Dry fit, nothing cut"));
  EXPECT_THAT(words_of(*card_of(cards, "forestay")), HasSubstr("Close no terminal yet."));
  EXPECT_THAT(words_of(*card_of(cards, "forestay")), Not(HasSubstr("Dry fit, nothing")));
  EXPECT_TRUE(card_pages(*card_of(cards, "forestay"), "Quillwort", PaperSize::a4).size() == 1);
}

} // namespace
} // namespace sheerpole::from_the_cord_test
