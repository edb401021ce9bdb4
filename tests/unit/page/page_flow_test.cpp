#include "backend/page/page_flow.hpp"
#include "unit/page/page_boxes.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <variant>

namespace sheerpole::page_flow_test {
namespace {

constexpr const char* long_word =
    "Ærøskøbing-wire-with-a-name-that-nobody-would-give-it-but-somebody-will-and-more";

class OnBothSheets : public testing::TestWithParam<PaperSize> {};
INSTANTIATE_TEST_SUITE_P(Sheets, OnBothSheets, testing::Values(PaperSize::a4, PaperSize::letter));

FlowTable many_rows(std::size_t count) {
  FlowTable table{
      .columns = {{"no.", 1.0}, {"what", 4.0}, {"mm", 2.0, true}, {"seen", 1.0}}, .rows = {}, .size = 3.4};
  for (std::size_t i = 0; i < count; ++i)
    table.rows.push_back({{.text = std::to_string(i + 1)},
                          {.text = i % 7 == 0 ? long_word : "throat aloft, on the standing part"},
                          {.text = "12998"},
                          {.text = "", .tick = true}});
  return table;
}

std::size_t count_of(const std::vector<Drawing>& pages, std::string_view text) {
  std::size_t count = 0;
  for (const Drawing& page : pages) {
    const auto boxes = set_boxes(page.content);
    count += static_cast<std::size_t>(
        std::count_if(boxes.begin(), boxes.end(), [&](const LabelBox& box) { return box.text == text; }));
  }
  return count;
}

TEST_P(OnBothSheets, NothingIsCutOffAndNothingOverlaps) {
  PageFlow page(GetParam(),
                {.name = "Bench card", .about = long_word, .draft = {"contraction is missing"}});
  page.heading(long_word, 9.0);
  for (int i = 0; i < 30; ++i) {
    page.text(long_word, {.size = 4.0, .bold = i % 2 == 0, .indent = i % 3 * 5.0});
    page.tick(
        "Lay it out straight and make every mark from the one zero; then check it from the other end.");
    page.to_write("Measured a second time by, day:");
  }
  page.notice("STOP. What is cut off cannot be put back.", {.size = 6.0, .bold = true, .indent = 0.0});
  page.table(many_rows(60));
  const std::vector<Drawing> pages = page.pages("Card", "");
  EXPECT_GT(pages.size(), 3u);
  expect_well_set(pages);
  EXPECT_EQ(pages.front().width, GetParam() == PaperSize::a4 ? 210.0 : 215.9);
}

TEST_P(OnBothSheets, ATableRepeatsItsHeadingAndLosesNoRow) {
  PageFlow page(GetParam(), {.name = "Order", .about = "", .draft = {}});
  page.table(many_rows(100));
  const std::vector<Drawing> pages = page.pages("Order", "");
  EXPECT_EQ(count_of(pages, "what"), pages.size());
  EXPECT_EQ(count_of(pages, "12998"), 100u);
  expect_well_set(pages);
}

TEST_P(OnBothSheets, ADraftSaysSoOnEveryPage) {
  PageFlow page(GetParam(), {.name = "Order", .about = "Tern", .draft = {"bury is assumed"}});
  page.table(many_rows(80));
  const std::vector<Drawing> pages = page.pages("Order", "");
  ASSERT_GT(pages.size(), 1u);
  EXPECT_EQ(count_of(pages, "DRAFT: do not cut to it. bury is assumed."), pages.size());
  EXPECT_EQ(count_of(pages, "Order, Tern"), pages.size());
  EXPECT_EQ(count_of(pages, "page 2 of " + std::to_string(pages.size())), 1u);
}

TEST(PageFlow, BeginsNoPageThatStaysEmpty) {
  PageFlow page(PaperSize::a4, {.name = "Card", .about = "", .draft = {}});
  page.text("One line.");
  EXPECT_EQ(page.pages("Card", "").size(), 1u);
}

// Stripes all round, on every page, between the edge of the sheet and its margins; nothing across the top.
TEST_P(OnBothSheets, AHatchedBorderStandsOutsideTheMarginsOfEveryPage) {
  PageFlow page(GetParam(), {.name = "Bench card", .about = "", .draft = {}, .hatched = true});
  page.text("first");
  page.new_page();
  page.text("second");
  const std::vector<Drawing> pages = page.pages("a", "b");
  ASSERT_EQ(pages.size(), 2u);
  EXPECT_EQ(count_of(pages, "DRAFT: do not cut to it."), 0u);
  for (const Drawing& one : pages) {
    double stripes = 0.0; // square millimetres of ink
    for (const DrawnNode& node : one.content.children) {
      const auto* stripe = std::get_if<PolygonShape>(&node.content());
      if (stripe == nullptr)
        continue;
      double twice = 0.0;
      for (std::size_t i = 0; i < stripe->points.size(); ++i) {
        const PaperPoint& a = stripe->points[i];
        const PaperPoint& b = stripe->points[(i + 1) % stripe->points.size()];
        twice += a.x * b.y - b.x * a.y;
        const bool inside = a.x > page_margin && a.x < one.width - page_margin && a.y > page_margin &&
                            a.y < one.height - page_margin;
        EXPECT_FALSE(inside) << a.x << " " << a.y;
      }
      stripes += std::abs(twice) / 2.0;
    }
    // Half of a frame of 5 mm, 5 mm from the edge.
    const double frame = 5.0 * 2.0 * ((one.width - 10.0) + (one.height - 20.0));
    EXPECT_NEAR(stripes, frame / 2.0, 0.02 * frame);
  }
}

} // namespace
} // namespace sheerpole::page_flow_test
