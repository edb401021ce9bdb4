#include "backend/page/paper_files.hpp"

#include "backend/drawing/label_text.hpp"
#include "backend/text_page.hpp"
#include "driver/built_in_backends.hpp"
#include "unit/calculate/compiled_rig.hpp"
#include "unit/page/page_boxes.hpp"
#include "unit/plugins/example_boat.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <sstream>

namespace sheerpole::text_paper_test {
namespace {

class TextPaperOnBothSheets : public testing::TestWithParam<PaperSize> {};
INSTANTIATE_TEST_SUITE_P(Sheets, TextPaperOnBothSheets, testing::Values(PaperSize::a4, PaperSize::letter));

std::vector<Drawing> pages_of(const std::string& text, PaperSize size = PaperSize::a4,
                              const std::string& draft = "") {
  return text_paper({.file = "cut-list.pdf", .name = "Cut list", .about = "Pellimoor", .draft = draft},
                    text, size)
      .pages;
}

using LinesByHeight = std::map<double, std::string>;

void read_lines(const ShapeGroup& group, LinesByHeight& lines) {
  for (const DrawnNode& node : group.children) {
    if (const auto* inner =
            std::get_if<ShapeGroup>(&node.content())) // a line is an element of the structure
      read_lines(*inner, lines);
    const auto* text = std::get_if<TextShape>(&node.content());
    if (text == nullptr || !text->fixed_pitch)
      continue;
    std::string& line = lines[text->at.y];
    const double column = (text->at.x - page_margin) / (fixed_pitch_in_ems * text->size);
    EXPECT_NEAR(column, std::round(column), 1e-6) << text->text;
    line = padded(line, static_cast<std::size_t>(std::lround(column))) + text->text;
  }
}

/// The text of fixed pitch on a page as it stands in columns again, from where its runs were set.
std::string text_again(const Drawing& page) {
  LinesByHeight lines;
  read_lines(page.content, lines);
  std::string all;
  for (const auto& [y, line] : lines)
    all += line + "\n";
  return all;
}

/// The lines that are neither empty nor a rule.
std::string inked(const std::string& text) {
  std::istringstream lines(text);
  std::string kept;
  for (std::string line; std::getline(lines, line);)
    if (!line.empty() && line.find_first_not_of('=') != std::string::npos)
      kept += line + "\n";
  return kept;
}

TEST(TextPaper, WhatStandsUnderEachOtherInTheTextDoesSoOnPaper) {
  const std::string text = "name                    mm\n"
                           "body               11150.0   = 36' 7\"\n"
                           "bury aloft          +648.0\n\n"
                           "   \xe9\x95\xb7\xe3\x81\x84   two columns each\n";
  const std::vector<Drawing> pages = pages_of(text);
  ASSERT_EQ(pages.size(), 1u);
  EXPECT_EQ(text_again(pages.front()), inked(text));
}

/// Each text paper of a boat holds the lines of its file, each in its columns, and is well set.
void expect_whole(const CheckedRig& checked, PaperSize size) {
  for (const auto& backend : built_in_backends()) {
    const BackendDescription about = backend->describe();
    if (about.papers.empty() || about.outputs.empty() || !about.outputs.front().ends_with(".txt") ||
        about.name == "order-list")
      continue; // the pages of an order have boxes to tick and more
    SCOPED_TRACE(about.name);
    const OutputBundle bundle = backend->generate({.checked = checked, .paper = size});
    ASSERT_EQ(bundle.papers.size(), 1u);
    EXPECT_EQ(bundle.papers.front().name, about.papers.front());
    std::vector<Drawing> pages;
    std::string again;
    for (const Drawing& page : bundle.papers.front().pages) {
      if (page.width != paper_of(size).width)
        continue; // the drawing of the spool plan has a size of its own
      again += text_again(page);
      pages.push_back(page);
    }
    // The file has a foot of its own below its last rule; pages have theirs.
    const std::string& text = bundle.files.front().bytes;
    const std::size_t foot = text.rfind(std::string(TextPage::width, '-') + "\n");
    ASSERT_NE(foot, std::string::npos);
    EXPECT_EQ(again, inked(text.substr(0, foot)));
    expect_well_set(pages);
  }
}

TEST_P(TextPaperOnBothSheets, TheTextPapersOfEachBoatAreWholeAndWellSet) {
  for (const char* name : {"pellimoor", "smidgeon", "grisolde", "oddnys-wager", "sallow"}) {
    SCOPED_TRACE(name);
    const Compilation boat = test::example_with(name, "");
    ASSERT_TRUE(boat.checked);
    expect_whole(*boat.checked, GetParam());
  }
}

TEST_P(TextPaperOnBothSheets, TheyHoldStaysWithLongNamesOfManyAlphabets) {
  const Compilation boat = test::compiled(test::forty_pairs());
  ASSERT_TRUE(boat.checked);
  expect_whole(*boat.checked, GetParam());
}

TEST(TextPaper, ASectionBeginsANewPageWhereItDoesNotFitTheRest) {
  const std::string rule(TextPage::width, '=');
  std::string text;
  for (int section = 1; section <= 3; ++section) {
    text += rule + "\nsection " + std::to_string(section) + "\n\n";
    for (int line = 0; line < 40; ++line)
      text += "  row " + std::to_string(line) + "\n" + (line % 8 == 7 ? "\n" : "");
  }
  const std::vector<Drawing> pages = pages_of(text);
  ASSERT_EQ(pages.size(), 3u);
  for (std::size_t i = 0; i < pages.size(); ++i)
    EXPECT_EQ(text_again(pages[i]).substr(0, 10), "section " + std::to_string(i + 1) + "\n");
}

TEST(TextPaper, ALineThatIsTooWideGoesOnBelow) {
  const std::string wide(150, 'w');
  const std::vector<Drawing> pages = pages_of("head\n" + wide + wide + "\n");
  EXPECT_EQ(text_again(pages.front()), "head\n" + std::string(130, 'w') + "\n" + std::string(130, 'w') +
                                           "\n" + std::string(40, 'w') + "\n");
  expect_well_set(pages);
}

TEST(TextPaper, ADraftSaysSoOnEveryPageAndNothingElseDoes) {
  std::string text;
  for (int line = 0; line < 200; ++line)
    text += "row " + std::to_string(line) + (line % 5 == 0 ? "\n\n" : "\n");
  const auto says_draft = [](const Drawing& page) {
    const std::vector<LabelBox> boxes = set_boxes(page.content);
    return std::any_of(boxes.begin(), boxes.end(),
                       [](const LabelBox& box) { return box.text.starts_with("DRAFT"); });
  };
  for (const bool draft : {true, false}) {
    const std::vector<Drawing> pages =
        pages_of(text, PaperSize::letter, draft ? "a number is missing" : "");
    EXPECT_GT(pages.size(), 2u);
    for (const Drawing& page : pages)
      EXPECT_EQ(says_draft(page), draft) << page.title;
  }
}

} // namespace
} // namespace sheerpole::text_paper_test
