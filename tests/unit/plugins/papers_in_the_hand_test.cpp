// Every page of every paper says whose it is, of which revision and day, of which state of the rig, and
// which page of how many; and no length on it is broken over two lines. Read from the pages themselves, of
// the examples and of a rig whose cards are in feet and inches.
#include "backend/drawing/label_text.hpp"
#include "backend/page/paper.hpp"
#include "backend/paper_identity.hpp"
#include "backend/paper_words.hpp"
#include "base/byte_text.hpp"
#include "unit/plugins/example_boat.hpp"
#include "unit/plugins/paper_text.hpp"
#include "units/quantity_text.hpp"

#include <fmt/format.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cctype>
#include <cmath>
#include <map>
#include <vector>

namespace sheerpole::papers_in_the_hand_test {
namespace {

const std::vector<const char*> boats{"grisolde", "pellimoor", "quillwort", "sallow", "smallest"};

/// Its cards are in the unit of the only shop of the file.
Compilation example(const std::string& name, const std::string& unit = "feet-and-inches") {
  return test::example_with(name, "\nshop loft {\n  unit: " + unit + "\n}\n");
}

TEST(PaperIdentity, SaysWhatIsNotStated) {
  const Compilation boat = test::example_with("smallest", "");
  ASSERT_TRUE(boat.checked);
  EXPECT_EQ(identity_words(*boat.checked),
            "Smallest, revision not stated, report date not stated, rig " +
                sha256((*boat.sources)[SourceId{0}].file_bytes()).substr(0, 8));
}

TEST(PaperIdentity, IsAnotherOfAnyOtherTextAndValue) {
  const Compilation boat = test::example_with("smallest", "");
  const Compilation noted = test::example_with("smallest", "# a note\n");
  ASSERT_TRUE(boat.checked && noted.checked);
  EXPECT_NE(boat.checked->digest(), noted.checked->digest());
  DiskFileReader reader;
  const Compilation tried = compile(std::string(SHEERPOLE_EXAMPLES_DIR) + "/smallest.rig", reader,
                                    {.settings = {"thimble-6.length=13 mm"}, .folders = {}});
  ASSERT_TRUE(tried.checked);
  EXPECT_NE(boat.checked->digest(), tried.checked->digest());
}

TEST(PaperIdentity, StandsOnEveryPageOfEveryPaperWithItsNumber) {
  for (const char* name : boats) {
    const Compilation boat = example(name);
    ASSERT_TRUE(boat.checked) << name;
    std::map<std::string, std::vector<test::PaperPage>> files;
    for (test::PaperPage& page : test::pages_of(*boat.checked))
      files[page.file].push_back(std::move(page));
    EXPECT_GT(files.size(), 10u);
    for (const auto& [file, pages] : files)
      for (std::size_t i = 0; i < pages.size(); ++i) {
        const std::string words = test::one_blank_between(pages[i].words);
        for (const std::string& said : {boat_title(*boat.checked), edition_words(*boat.checked),
                                        fmt::format("page {} of {} ", i + 1, pages.size())})
          EXPECT_NE((words + " ").find(said), std::string::npos)
              << name << ": page " << i + 1 << " of " << file << " does not say " << said;
      }
    // What is no page: drawings and texts that are files of their own.
    for (const test::PaperText& paper : test::papers_of(*boat.checked))
      for (const char* text : {"cut-list.txt", "proof-sheet.txt", "take-up.txt", "spool-plan.txt",
                               "order-list.txt", "survey-report.html", "rig-diagram.svg", "stay-strips.svg",
                               "spool-plan.svg", "bench-cards.html", "labels.html"})
        if (paper.name == text) {
          EXPECT_NE(paper.words.find(edition_words(*boat.checked)), std::string::npos)
              << name << ": " << text;
        }
  }
}

/// Texts of a page in the order in which they are drawn, with their places.
void texts_of(const ShapeGroup& group, std::vector<TextShape>& texts) {
  for (const DrawnNode& node : group.children)
    if (const auto* inner = std::get_if<ShapeGroup>(&node.content()))
      texts_of(*inner, texts);
    else if (const auto* text = std::get_if<TextShape>(&node.content()))
      texts.push_back(*text);
}

/// The texts that are no part of a drawing: those of the elements of the structure.
void texts_of_structure(const ShapeGroup& group, std::vector<TextShape>& texts) {
  for (const DrawnNode& node : group.children)
    if (const auto* inner = std::get_if<ShapeGroup>(&node.content())) {
      if (!inner->tag.empty())
        texts_of_structure(*inner, texts);
    } else if (const auto* text = std::get_if<TextShape>(&node.content())) {
      texts.push_back(*text);
    }
}

/// Two lines of one text: the second begins where the first does, one line below.
bool goes_on(const TextShape& above, const TextShape& below) {
  return !above.fixed_pitch && above.anchor == below.anchor && above.size == below.size &&
         above.bold == below.bold && std::abs(above.at.x - below.at.x) < 0.01 &&
         std::abs(below.at.y - above.at.y - above.size * line_spacing) < 0.02;
}

std::string broken_quantity(const std::string& above, const std::string& below) {
  const std::string whole = above + " " + below;
  const auto digit = [](char sign) { return std::isdigit(static_cast<unsigned char>(sign)) != 0; };
  const std::string last = above.substr(above.rfind(' ') + 1); // all of it where there is no blank
  const bool torn = !last.empty() && std::all_of(last.begin(), last.end(), digit) && !below.empty() &&
                    digit(below.front());
  if (blank_in_quantity(whole, above.size()) || torn)
    return above + " | " + below;
  return {};
}

TEST(PapersInTheHand, BreakNoLengthOverALine) {
  std::size_t pairs = 0;
  for (const char* name : boats)
    for (const char* unit : {"millimetres", "inches", "feet-and-inches"}) {
      const Compilation boat = example(name, unit);
      ASSERT_TRUE(boat.checked) << name << " " << unit;
      for (const auto& [backend, bundle] : test::bundles_of(*boat.checked))
        for (const PagedFile& file : bundle.papers)
          for (const Drawing& page : file.pages) {
            std::vector<TextShape> texts;
            texts_of(page.content, texts);
            for (std::size_t i = 0; i + 1 < texts.size(); ++i)
              if (goes_on(texts[i], texts[i + 1])) {
                ++pairs;
                EXPECT_EQ(broken_quantity(texts[i].text, texts[i + 1].text), "")
                    << name << ", " << file.name << ", " << page.title;
              }
          }
    }
  EXPECT_GT(pairs, 500u);
  EXPECT_NE(broken_quantity("hung at 1' 4", "15/16\" from"), "");
  EXPECT_NE(broken_quantity("is (X", "+ 810 mm)"), "");
}

// Columns of a card are read at arm's length: 5 mm between the texts of two of them.
TEST(PapersInTheHand, ColumnsOfCardsAreFiveMillimetresApart) {
  std::size_t pairs = 0;
  for (const char* name : boats) {
    const Compilation boat = example(name);
    ASSERT_TRUE(boat.checked) << name;
    for (const auto& [backend, bundle] : test::bundles_of(*boat.checked))
      for (const PagedFile& file : bundle.papers) {
        if (file.name != "bench-cards.pdf" && file.name != "dry-fit-cards.pdf" &&
            file.name != "emergency-splice-cards.pdf" && file.name != "receiving-card.pdf")
          continue;
        for (const Drawing& page : file.pages) {
          std::vector<TextShape>
              texts; // of tables alone: drawings are groups of their own or have their own rules
          texts_of_structure(page.content, texts);
          for (std::size_t i = 0; i + 1 < texts.size(); ++i) {
            const TextShape& left = texts[i];
            const TextShape& right = texts[i + 1];
            const bool cells = left.anchor != TextAnchor::middle && right.anchor != TextAnchor::middle &&
                               left.size == right.size && left.at.y == right.at.y &&
                               left.at.x < right.at.x && left.text != "ALOFT" && right.id.empty();
            // The number of a step stands close to its words.
            const bool of_step = left.anchor == TextAnchor::end && left.at.x < page_margin + 10.0;
            if (!cells || of_step)
              continue;
            ++pairs;
            const double from = left.anchor == TextAnchor::end ? left.at.x : left.at.x + set_width(left);
            const double to = right.anchor == TextAnchor::end ? right.at.x - set_width(right) : right.at.x;
            EXPECT_GE(to - from, 4.99)
                << name << ", " << page.title << ": " << left.text << " | " << right.text;
          }
        }
      }
  }
  EXPECT_GT(pairs, 300u);
}

} // namespace
} // namespace sheerpole::papers_in_the_hand_test
