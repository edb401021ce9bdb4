#include "plugins/bench-card/from_the_cord.hpp"

#include "backend/card/card_in_hand.hpp"
#include "backend/json/json.hpp"
#include "plugins/bench-card/bench_card.hpp"
#include "service/compile.hpp"
#include "source/file_reader.hpp"
#include "unit/calculate/compiled_rig.hpp"
#include "unit/calculate/reference_rows.hpp"
#include "unit/page/page_boxes.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <map>
#include <optional>
#include <string>
#include <vector>

// Bench cards of pieces whose length exists only as a knot on a cord: the worked case against its table,
// and the card followed with numbers as whoever stands at the bench would follow it.

namespace sheerpole::from_the_cord_test {
namespace {

using testing::HasSubstr;
using testing::Not;

constexpr double inch = 25.4;

Compilation quillwort() {
  DiskFileReader reader;
  return compile(std::string(SHEERPOLE_EXAMPLES_DIR) + "/quillwort.rig", reader);
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
  for (const CordRow& row : cord_rows(card)) {
    // Below an end of the cord that is a bearing as well, the bearing stands in its row.
    const bool named =
        quantity.ends_with(" " + row.name) ||
        (quantity == "from-u bearing aloft" && row.sign == "U" && row.name.ends_with("bearing aloft"));
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
    const std::vector<CordRow> rows = cord_rows(card);
    int number = 0;
    for (const CordRow& row : rows)
      if (row.mark) {
        EXPECT_EQ(row.sign, std::to_string(++number)) << card.piece->name;
      }
    for (const bool by_upper : {true, false}) {
      const CordRow* throat = row_of(rows, CordMark::throat_on_standing_part, by_upper);
      const CordRow* out = row_of(rows, CordMark::tail_comes_out, by_upper);
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
  return test::compiled(text);
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
    if (const auto* circle = std::get_if<CircleShape>(&node.content)) {
      if (std::fabs(circle->radius - 0.8) < 1e-9)
        reach.push_back(circle->centre.x + circle->radius);
    } else if (const auto* inner = std::get_if<ShapeGroup>(&node.content)) {
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
  EXPECT_THAT(steps, HasSubstr("Bring 3 to 4 and 8 to 7 and seize both eyes."));
  EXPECT_THAT(steps, HasSubstr("pin L first (mark 10 is 7 3/4\" past it), lay out again."));
  EXPECT_THAT(steps,
              HasSubstr("Aloft 3 to 4, in at 4, out at 5, taper from 2. Below 8 to 7, in at 7, out at "
                        "6, taper from 9."));
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

// ---- A card followed ----

/// What the boat and the parts are, as whoever chose them knows it.
struct Chosen {
  bool wire = false;
  bool inches = false;
  double x = 0.0; ///< mm, what the cord is long; the card never learns it
  double offset = 0.0, hoist = 0.0, below_knot = 0.0;
  double upper_part = 0.0, lower_part = 0.0; ///< hardware between pins and bearings
  double bury[2] = {}, spare[2] = {};
  double wrap = 0.0;
  double contraction = 0.0; ///< share
  double inserted[2] = {};
};

std::string length_text_of(double mm) {
  return std::to_string(mm) + " mm";
}

std::string rig_of(const Chosen& chosen) {
  // Parts of any size: what is usual is not asked for.
  std::string text = "language 1\ncord red { }\nlimits {\n  size-off: off\n  size-far-off: off\n}\n";
  text += chosen.inches ? "shop own {\n  unit: inches\n  round-to: 1/32 in\n}\n"
                        : "shop own {\n  unit: millimetres\n}\n";
  const auto links = "link upper-link {\n  length: " + length_text_of(chosen.upper_part) +
                     "\n}\nlink lower-link {\n  length: " + length_text_of(chosen.lower_part) + "\n}\n";
  text += links;
  if (chosen.wire) {
    text += "wire line-1 {\n  construction: \"1x19\"\n  size: \"6 mm\"\n}\n";
    for (int end = 0; end < 2; ++end)
      text += std::string("terminal ") + (end == 0 ? "aloft" : "below") +
              "-end {\n  length: 0 mm\n  lower: wire-socket (inserted: " +
              length_text_of(chosen.inserted[end]) + ")\n}\n";
    text +=
        "stay stay-1 {\n  line: line-1\n  stack {\n    upper-link\n    aloft-end\n    line\n    below-end\n"
        "    lower-link\n  }\n}\n";
  } else {
    text += "rope line-1 {\n  construction: \"12-strand HMPE\"\n  size: \"9 mm\"\n}\n";
    for (int end = 0; end < 2; ++end)
      text += std::string("splice ") + (end == 0 ? "aloft" : "below") +
              "-splice {\n  bury: " + length_text_of(chosen.bury[end]) +
              "\n  eye-allowance: " + length_text_of(chosen.wrap) +
              "\n  contraction: " + std::to_string(chosen.contraction * 100.0) + " %\n}\n";
    text += "thimble eye {\n  length: 0 mm\n  lower: rope-seat (diameter: 28 mm, throat: 38 mm)\n}\n";
    text += "stay stay-1 {\n  line: line-1\n  stack {\n    upper-link\n    eye (splice: aloft-splice, "
            "spare-bury: " +
            length_text_of(chosen.spare[0]) +
            ")\n    line\n    eye (splice: below-splice, spare-bury: " + length_text_of(chosen.spare[1]) +
            ")\n    lower-link\n  }\n}\n";
  }
  text += "reading of stay-1 {\n  method: messenger\n  cord: red\n  knots: 2\n  offset: " +
          length_text_of(chosen.offset) + "\n  hoist-offset: " + length_text_of(chosen.hoist) +
          "\n  below-knot: " + length_text_of(chosen.below_knot) + "\n}\n";
  return text;
}

/// "648", "25 1/2"", "3/32"": of one printed number, in mm.
double printed_mm(std::string text, bool inches) {
  if (!inches)
    return std::stod(text);
  text.erase(std::remove(text.begin(), text.end(), '"'), text.end());
  double sum = 0.0;
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t end = std::min(text.find(' ', at), text.size());
    const std::string word = text.substr(at, end - at);
    const std::size_t slash = word.find('/');
    sum += slash == std::string::npos
               ? std::stod(word)
               : std::stod(word.substr(0, slash)) / std::stod(word.substr(slash + 1));
    at = end + 1;
  }
  return sum * inch;
}

/// What a cell of the column "from U" or "from L" says: how far inside that end. `x` for what is written as
/// X.
double inside_mm(const std::string& cell, double x, bool inches) {
  if (cell == "X")
    return x;
  if (cell.starts_with("X + "))
    return x + printed_mm(cell.substr(4), inches);
  if (cell.starts_with("X - "))
    return x - printed_mm(cell.substr(4), inches);
  if (cell.ends_with(" past"))
    return -printed_mm(cell.substr(0, cell.size() - 5), inches);
  if (cell.ends_with(" inside"))
    return printed_mm(cell.substr(0, cell.size() - 7), inches);
  return printed_mm(cell, inches);
}

struct FollowedRow {
  double by_bold = 0.0; ///< place on the cord from U, mm
  double by_other = 0.0;
};

void texts_of(const ShapeGroup& group, std::vector<const TextShape*>& into) {
  for (const DrawnNode& node : group.children)
    if (const auto* inner = std::get_if<ShapeGroup>(&node.content))
      texts_of(*inner, into);
    else if (const auto* text = std::get_if<TextShape>(&node.content))
      into.push_back(text);
}

/// The rows of the table of marks as they stand on the paper: a name with two cells beside it on one line.
std::map<std::string, FollowedRow> rows_on(const std::vector<Drawing>& pages, double x, bool inches) {
  std::map<std::string, FollowedRow> rows;
  for (const Drawing& page : pages) {
    std::vector<const TextShape*> texts;
    texts_of(page.content, texts);
    for (std::size_t i = 0; i + 2 < texts.size(); ++i) {
      const TextShape& name = *texts[i];
      const TextShape& from_u = *texts[i + 1];
      const TextShape& from_l = *texts[i + 2];
      if (name.at.y != from_u.at.y || name.at.y != from_l.at.y || from_u.anchor != TextAnchor::end ||
          from_l.anchor != TextAnchor::end || from_u.bold == from_l.bold)
        continue;
      const double by_u = inside_mm(from_u.text, x, inches);
      const double by_l = x - inside_mm(from_l.text, x, inches);
      rows[name.text] = from_u.bold ? FollowedRow{by_u, by_l} : FollowedRow{by_l, by_u};
    }
  }
  return rows;
}

/// A number of this many tenths of a millimetre or less.
rc::Gen<double> tenths(int least, int most) {
  return rc::gen::map(rc::gen::inRange(least, most + 1), [](int value) { return value / 10.0; });
}

Chosen any_chosen() {
  Chosen chosen;
  chosen.wire = *rc::gen::inRange(0, 3) == 0;
  chosen.inches = *rc::gen::inRange(0, 2) == 1;
  chosen.x = *tenths(40'000, 180'000);
  chosen.offset = *tenths(0, 900);
  chosen.hoist = *tenths(0, 1500);
  chosen.below_knot = *tenths(-100, 100);
  chosen.upper_part = *tenths(0, 2500);
  chosen.lower_part = *tenths(0, 6500);
  for (int end = 0; end < 2; ++end) {
    chosen.bury[end] = *tenths(4'600, 8'000);
    chosen.spare[end] = *tenths(1, 9'000);
    chosen.inserted[end] = *tenths(300, 700);
  }
  chosen.wrap = *tenths(900, 2'000);
  chosen.contraction = *rc::gen::inRange(0, 120) / 1000.0;
  return chosen;
}

/// One step of the printed unit.
double step_mm(const Chosen& chosen) {
  return chosen.inches ? inch / 32.0 : 1.0;
}

RC_GTEST_PROP(FromTheCord, WhoFollowsTheCardArrivesAtTheBodyAndTheCut, ()) {
  const Chosen chosen = any_chosen();
  const Compilation boat = test::compiled(rig_of(chosen));
  RC_ASSERT(boat.checked.has_value());
  const auto cards = card_pieces(*boat.checked);
  RC_ASSERT(cards.size() == 1u);
  const auto rows = rows_on(card_pages(cards.front(), "A boat", PaperSize::a4), chosen.x, chosen.inches);

  // Both columns lead to one place, whatever X is.
  for (const auto& [name, row] : rows)
    RC_ASSERT(std::abs(row.by_bold - row.by_other) < 1e-6);

  // What the boat needs, by the tape of whoever wrote it down.
  const double body =
      chosen.x - chosen.offset + chosen.hoist + chosen.below_knot - chosen.upper_part - chosen.lower_part;
  const auto place = [&](const char* name) {
    RC_ASSERT(rows.count(name) == 1u);
    return rows.at(name).by_bold;
  };
  const double cut = place("cut end below") - place("cut end aloft");
  if (chosen.wire) {
    const double made = place("mouth of the terminal below") - place("mouth of the terminal aloft");
    RC_ASSERT(std::abs(made - body) <= 1.0 + 1e-6);
    RC_ASSERT(std::abs(cut - (body + chosen.inserted[0] + chosen.inserted[1])) <= 1.0 + 1e-6);
    RC_ASSERT(std::abs(place("mouth of the terminal aloft") - place("cut end aloft") -
                       chosen.inserted[0]) <= 1.0 + 1e-6);
    return;
  }
  // The throat on the tail goes to the throat on the standing part; the rope between them lies round the
  // seat, whose crown is half of 28 and 38 from the throat.
  const double crown_to_throat = 28.0 / 2.0 + 38.0;
  const double crown_aloft = place("throat aloft, on the standing part") - crown_to_throat;
  const double crown_below = place("throat below, on the standing part") + crown_to_throat;
  RC_ASSERT(std::abs(crown_aloft - place("throat aloft, on the tail") - chosen.wrap) <= 1.0 + 1e-6);
  RC_ASSERT(std::abs(place("throat below, on the tail") - crown_below - chosen.wrap) <= 1.0 + 1e-6);
  // Buried, each splice draws in its share.
  double drawn_in = 0.0;
  for (int end = 0; end < 2; ++end)
    drawn_in += chosen.contraction * (chosen.bury[end] + chosen.spare[end]);
  const double made = crown_below - crown_aloft - drawn_in;
  RC_ASSERT(std::abs(made - body) <= 1.0 + 1e-6);
  const double tail_aloft = place("throat aloft, on the tail") - place("cut end aloft");
  const double tail_below = place("cut end below") - place("throat below, on the tail");
  RC_ASSERT(std::abs(tail_aloft - chosen.bury[0] - chosen.spare[0]) <= 1.0 + 1e-6);
  // The cut end below closes the sum of the card, so it may be a step further off.
  RC_ASSERT(std::abs(tail_below - chosen.bury[1] - chosen.spare[1]) <= 1.0 + step_mm(chosen));
  double least = body + drawn_in + 2.0 * chosen.wrap;
  for (int end = 0; end < 2; ++end)
    least += chosen.bury[end] + chosen.spare[end];
  RC_ASSERT(std::abs(cut - least) <= 1.0 + 1e-6);
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
  EXPECT_LT(stop, at("Make the end below"));
  // X - 17 13/16 of body and 2 1/16 (52 mm) into the terminal below.
  EXPECT_THAT(words[at("Cut at mark 4")], HasSubstr("from the mouth of the closed end"));
  EXPECT_EQ(at("Make the end aloft"), words.size());                           // it is closed
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

} // namespace
} // namespace sheerpole::from_the_cord_test
