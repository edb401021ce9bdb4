// No paper invites a cut that may still change: of a piece that is a DRAFT no paper shows the cut as a
// number, nor a box to tick or a step by which it is cut or opened. Every paper that every back end makes
// is read here as people read it, of the examples with one number after the other taken back, and of rigs
// put together at random. The number that must not stand there is worked out by the rig itself, in each of
// the ways in which papers write a length.
#include "backend/card/card_piece.hpp"
#include "backend/printed_sums.hpp"
#include "backend/table/rig_tables.hpp"
#include "calculate/length/body.hpp"
#include "driver/built_in_backends.hpp"
#include "unit/calculate/compiled_rig.hpp"
#include "unit/plugins/example_boat.hpp"
#include "unit/plugins/paper_text.hpp"

#include <fmt/format.h>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <array>
#include <cctype>
#include <fstream>
#include <iterator>
#include <optional>
#include <set>

namespace sheerpole::drafts_on_papers_test {
namespace {

using test::papers_of;
using test::PaperText;

/// Whether the words stand in the text and are not part of a longer number or name.
bool stands_in(const std::string& text, const std::string& words) {
  const auto joins = [](char sign) { return std::isalnum(static_cast<unsigned char>(sign)) != 0; };
  for (std::size_t at = text.find(words); at != std::string::npos; at = text.find(words, at + 1)) {
    const std::size_t end = at + words.size();
    const bool begins = at == 0 || (!joins(text[at - 1]) && text[at - 1] != '.');
    const bool ends =
        end == text.size() ||
        (!joins(text[end]) && !(text[end] == '.' && end + 1 < text.size() &&
                                std::isdigit(static_cast<unsigned char>(text[end + 1])) != 0));
    if (begins && ends)
      return true;
  }
  return false;
}

/// A length in each of the ways in which papers write one.
std::set<std::string> written(const CardPiece& card, const LengthSum& sum) {
  const Tenths tenths = printed_total(sum);
  const std::string x = x_of_stay(card.stay->name);
  const CardLength rounded = card.unit.round(sum.known(), sum.unknown);
  std::set<std::string> ways{format_total(sum.unknown, tenths),
                             format_total(sum.unknown, tenths, x),
                             card_text(card.unit, rounded),
                             card.amount_of_stay(rounded),
                             format_total_feet_inches(sum.unknown, tenths),
                             format_total_feet_inches(sum.unknown, tenths, x)};
  if (!sum.unknown)
    for (const int decimals : {2, 3})
      ways.insert(format_fixed(sum.known().metres(), decimals) + " m");
  return ways;
}

/// How far each item of a stack reaches from the upper pin, as the strips write it beside the stay.
std::vector<LengthSum> reaches(const CardPiece& card) {
  std::vector<LengthSum> all;
  LengthSum reach{
      .kind = SumKind::body, .unknown = card.piece->body.unknown, .terms = {}, .unknown_source = {}};
  for (const StackItem& item : card.stay->stack) {
    const auto length = item.kind == StackItem::Kind::line ? std::optional(card.piece->body.known())
                                                           : taken_length(*card.rig, item);
    reach.terms.push_back(Term{.amount = length.value_or(Length{}), .provenance = {}});
    all.push_back(reach);
  }
  return all;
}

/// What must not be read of the cut of `card`, but for what is written of another length of the rig too: a
/// body, a piece that may be cut.
std::set<std::string> forbidden(const CardPiece& card, const std::vector<CardPiece>& all) {
  std::set<std::string> words = written(card, card.piece->cut);
  for (const CardPiece& other : all) {
    for (const std::string& word : written(other, other.piece->body))
      words.erase(word);
    for (const std::string& word : written(other, other.of_stay->pin_to_pin))
      words.erase(word);
    for (const LengthSum& reach : reaches(other))
      for (const std::string& word : written(other, reach))
        words.erase(word);
    if (other.may_be_cut())
      for (const std::string& word : written(other, other.piece->cut))
        words.erase(word);
  }
  return words;
}

/// Rows of a table for programs that hold the words, without the state of the piece beside it.
std::string unmarked_row(const PaperText& paper, const std::set<std::string>& words) {
  std::size_t from = 0;
  while (from < paper.bytes.size()) {
    const std::size_t end = std::min(paper.bytes.find('\n', from), paper.bytes.size());
    const std::string row = paper.bytes.substr(from, end - from);
    from = end + 1;
    const bool marked = row.find("DRAFT") != std::string::npos || row.find(",yes,") != std::string::npos;
    for (const std::string& word : words)
      if (!marked && stands_in(row, word))
        return row;
  }
  return {};
}

struct Looked {
  std::size_t pieces = 0; ///< that are drafts
  std::size_t words = 0;  ///< that were looked for
};

Looked expect_no_cut(const CheckedRig& checked, const std::string& what) {
  Looked looked;
  const std::vector<CardPiece> cards = card_pieces(checked);
  const std::vector<PaperText> papers = papers_of(checked);
  std::vector<test::PaperPage> pages = test::pages_of(checked);
  for (test::PaperPage& page : pages)
    page.words = test::one_blank_between(page.words);
  for (const CardPiece& card : cards) {
    if (!card.draft())
      continue;
    ++looked.pieces;
    const std::string& name = card.piece->name;
    EXPECT_FALSE(card.draft_reasons.empty()) << what << ": " << name << " is a draft without a reason";
    const std::set<std::string> words = forbidden(card, cards);
    looked.words += words.size();
    for (const PaperText& paper : papers) {
      if (paper.name.ends_with(".json") || paper.name.ends_with(".sarif"))
        continue; // each number there has its place by name, and the piece has `draft`
      if (paper.for_programs()) {
        EXPECT_EQ(unmarked_row(paper, words), "") << what << ": " << paper.name << ", " << name;
        continue;
      }
      for (const std::string& word : words)
        EXPECT_FALSE(stands_in(paper.words, word))
            << what << ": " << paper.name << " shows the cut of " << name << ", " << word;
    }
    // Its own sheets say NOT YET, the reasons and their number, and have nothing to tick.
    const std::string counted = reasons_counted(card.draft_reasons);
    for (const test::PaperPage& page : pages) {
      const bool bench = (page.title + ",").starts_with("Bench card of " + name + ",");
      const bool dry_fit = (page.title + ",").starts_with("Dry fit of " + card.stay->name + ",");
      if (!bench && !dry_fit)
        continue;
      EXPECT_NE(page.words.find(not_yet()), std::string::npos) << what << ": " << page.title;
      EXPECT_EQ(page.boxes, 0u) << what << ": " << page.title << " has boxes to tick";
      for (const char* step :
           {"Cut to ", "Cut at ", "Splice the end", "Splice both ends", "STOP.", "Make every mark"})
        EXPECT_EQ(page.words.find(step), std::string::npos) << what << ": " << page.title << ": " << step;
      if (bench) {
        EXPECT_NE(page.words.find("Held back for " + counted + "."), std::string::npos)
            << what << ": " << page.title << " does not say " << counted;
      }
      for (const DraftReason& reason : card.draft_reasons)
        EXPECT_NE(page.words.find(reason.reason), std::string::npos)
            << what << ": " << page.title << " does not say " << reason.reason;
    }
  }
  // One count on all papers of the whole rig.
  const std::string waiting = waiting_words(checked);
  for (const PaperText& paper : papers)
    for (const char* one :
         {"order-list.html", "survey-report.html", "stay-strips.svg", "rig-diagram.svg", "order-list.txt"})
      if (paper.name == one) {
        EXPECT_EQ(paper.words.find(waiting.empty() ? "for programs no page has" : waiting) !=
                      std::string::npos,
                  !waiting.empty())
            << what << ": " << paper.name << " does not say " << waiting;
      }
  return looked;
}

std::string text_of_example(const std::string& name) {
  std::ifstream in(std::string(SHEERPOLE_EXAMPLES_DIR) + "/" + name + ".rig", std::ios::binary);
  return {std::istreambuf_iterator<char>(in), {}};
}

constexpr std::array<const char*, 5> boats{"smallest", "sallow", "quillwort", "pellimoor", "smidgeon"};

TEST(DraftsOnPapers, NoExampleShowsACutThatMayStillChange) {
  DiskFileReader reader;
  std::size_t drafts = 0;
  for (const char* name : {"grisolde", "pellimoor", "quillwort"}) {
    const Compilation boat = compile(std::string(SHEERPOLE_EXAMPLES_DIR) + "/" + name + ".rig", reader);
    ASSERT_TRUE(boat.checked) << name;
    drafts += expect_no_cut(*boat.checked, name).pieces;
  }
  EXPECT_GT(drafts, 0u);
}

/// The n-th place where `from` stands, counted round.
std::string with_one_taken_back(std::string text, const std::string& from, const std::string& to,
                                std::size_t n) {
  std::vector<std::size_t> places;
  for (std::size_t at = text.find(from); at != std::string::npos; at = text.find(from, at + 1))
    places.push_back(at);
  if (places.empty())
    return {};
  return text.replace(places[n % places.size()], from.size(), to);
}

// A number that was measured, made or drawn is taken back and is assumed; or a contraction is not stated.
TEST(DraftsOnPapers, NoNumberThatIsTakenBackLeavesACutToBeSeen) {
  DiskFileReader disk;
  Looked looked;
  std::size_t n = 0;
  for (const char* name : boats) {
    const std::string text = text_of_example(name);
    for (const auto& [from, to] : {std::pair{" measured", " assumed"},
                                   {" drawn", " assumed"},
                                   {"\n  contraction:", "\n  # contraction:"},
                                   {"\n  cut-from:", "\n  # cut-from:"}}) {
      const std::string changed = with_one_taken_back(text, from, to, n++);
      if (changed.empty())
        continue;
      const Compilation boat = test::example_as(name, changed);
      if (!boat.checked) // what is left is an error
        continue;
      const Looked found = expect_no_cut(*boat.checked, std::string(name) + " with" + to);
      looked.pieces += found.pieces;
      looked.words += found.words;
    }
  }
  EXPECT_GT(looked.pieces, 10u);
  EXPECT_GT(looked.words, 50u);
}

std::string any_draft() {
  const int bury = *rc::gen::inRange(55, 90);
  const int wrap = *rc::gen::inRange(61, 299);
  const int length = *rc::gen::inRange(9001, 25'000);
  const bool known = *rc::gen::arbitrary<bool>();
  const bool inches = *rc::gen::arbitrary<bool>();
  const bool stock = *rc::gen::arbitrary<bool>();
  const int slip = *rc::gen::inRange(0, 5);
  return fmt::format("language 1\nboat \"Ray\" {{ }}\nrope cord {{\n  construction: \"12-strand HMPE "
                     "heat-set\"\n  size: \"9 mm\"\n}}\n"
                     "{}{}splice eye {{\n  bury: {} d {}\n{}}}\nthimble ring {{\n  length: 20 mm {}\n  "
                     "wrap: {} mm {}\n}}\n"
                     "stay shroud {{\n  line: cord\n{}  stack {{\n    ring (splice: eye)\n    line\n    "
                     "ring (splice: eye)\n  }}\n}}\n"
                     "stay other {{\n  line: cord\n{}  stack {{\n    ring (splice: eye)\n    line\n    "
                     "ring (splice: eye)\n  }}\n}}\n{}",
                     inches ? "shop loft {\n  unit: feet-and-inches\n}\n" : "",
                     stock ? "stock drum of cord {\n  sort: spool\n  length: 100 m\n}\n" : "", bury,
                     slip == 0 ? "assumed" : "measured",
                     slip == 1 ? ""
                               : fmt::format("  contraction: 8 % {}\n", slip == 2 ? "assumed" : "measured"),
                     slip == 3 ? "assumed" : "measured", wrap, slip == 4 ? "assumed" : "measured",
                     known ? fmt::format("  pin-to-pin: {} mm measured\n", length) : "",
                     fmt::format("  pin-to-pin: {} mm measured\n", length + 1234),
                     known ? "" : "reading of shroud {\n  method: messenger\n  mark: \"red\"\n}\n");
}

// A piece that is to be measured again has NOT YET wherever a number would be cut to, and not on its bench
// card alone. Its marks are on the bench card, for the dry fit.
TEST(DraftsOnPapers, NoPaperHasTheCutOfAPieceThatIsToBeMeasuredAgain) {
  const std::set<std::string, std::less<>> papers_to_cut_by{
      "cut-list.txt",    "index.html",         "labels.html",    "order-list.html", "proof-sheet.txt",
      "rig-drawing.svg", "survey-report.html", "spool-plan.txt", "spool-plan.svg"};
  std::size_t again = 0;
  std::set<std::string, std::less<>> read;
  for (const char* name : {"pellimoor", "quillwort", "sallow", "tansyholm"}) {
    DiskFileReader reader;
    const Compilation boat = compile(std::string(SHEERPOLE_EXAMPLES_DIR) + "/" + name + ".rig", reader);
    ASSERT_TRUE(boat.checked) << name;
    const std::vector<CardPiece> cards = card_pieces(*boat.checked);
    const std::vector<PaperText> papers = papers_of(*boat.checked);
    for (const CardPiece& card : cards) {
      if (!card.measure_again())
        continue;
      ++again;
      const std::set<std::string> words = forbidden(card, cards);
      for (const PaperText& paper : papers) {
        if (!papers_to_cut_by.contains(paper.name))
          continue;
        read.insert(paper.name);
        for (const std::string& word : words)
          EXPECT_FALSE(stands_in(paper.words, word))
              << name << ": " << paper.name << " shows the cut of " << card.piece->name << ", " << word;
      }
      const Table pieces = pieces_table(*boat.checked);
      const auto row = std::find_if(pieces.rows.begin(), pieces.rows.end(),
                                    [&](const auto& cells) { return cells.front() == card.piece->name; });
      ASSERT_NE(row, pieces.rows.end());
      const auto number = static_cast<std::size_t>(row - pieces.rows.begin());
      EXPECT_TRUE(std::any_of(pieces.held.begin(), pieces.held.end(),
                              [&](const HeldCell& cell) {
                                return cell.row == number && cell.column == 4 && cell.shown == not_yet();
                              }))
          << name << ": " << card.piece->name;
    }
  }
  EXPECT_GT(again, 3u);
  EXPECT_EQ(read, papers_to_cut_by) << "a paper has another name";
}

RC_GTEST_PROP(DraftsOnPapers, NoRigAtRandomShowsACutThatMayStillChange, ()) {
  const std::string text = any_draft();
  const Compilation rig = test::compiled(text);
  RC_ASSERT(rig.checked.has_value());
  const Looked looked = expect_no_cut(*rig.checked, text);
  RC_ASSERT(looked.pieces == 2u);
}

} // namespace
} // namespace sheerpole::drafts_on_papers_test
