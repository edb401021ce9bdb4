#include "backend/drawing/svg_writer.hpp"

#include "backend/drawing/label_text.hpp"
#include "backend/drawing/markup_buffer.hpp"
#include "backend/drawing/text_runs.hpp"
#include "unit/drawing/svg_reader.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <clocale>
#include <string>
#include <utility>
#include <variant>
#include <vector>

namespace sheerpole::svg_writer_test {
namespace {

using testing::HasSubstr;
using testing::Not;

Drawing small_drawing() {
  Drawing drawing;
  drawing.width = 100;
  drawing.height = 50;
  drawing.title = "Stay & shroud";
  drawing.content.id = "sheet";
  drawing.content.add(LineShape{{1, 2}, {3.25, 4}, {0.4, 0.0, {3, 1}, {}}, "wire"});
  drawing.content.add(CircleShape{{5, 6}, 0.5, {0.0, 0.0, {}, 0.0}, "dot"});
  drawing.content.add(TextShape{{7, 8}, "tip", 2.5, TextAnchor::end, true, {}});
  return drawing;
}

std::string set(const std::string& words) {
  std::string text;
  for (const TextRun& run : runs_of(words))
    text += (run.place == TextRun::Place::above   ? "^"
             : run.place == TextRun::Place::below ? "_"
                                                  : "|") +
            std::string(run.text);
  return text;
}

TEST(TextRuns, AreThoseOfAFractionOfAnInch) {
  EXPECT_EQ(set("1' 4 15/16\""), "|1' 4 ^15|/_16|\"");
  EXPECT_EQ(set("X - 3/4\" past, 1/2 in pin"), "|X - ^3|/_4|\" past, ^1|/_2| in pin");
  EXPECT_EQ(set("-1/64\""), "|-^1|/_64|\"");
  // A thread, a day, a ratio, more than one, no part of an inch, a place that is no number.
  for (const char* words : {"5/8-18 UNF", "1/2", "2/3", "9/8\"", "1/3\"", "a1/2\"", "1/1/2\"", "1/2 inside",
                            "/2\"", "1/\"", ""})
    EXPECT_EQ(set(words), "|" + std::string(words));
  EXPECT_EQ(small_figures_in("1' 4 15/16\" and 1/8\""), 6u);
}

TEST(SvgWriter, SetsAFractionInSmallFiguresAndKeepsItsWords) {
  Drawing drawing;
  drawing.content.add(TextShape{{7, 8}, "4 15/16\"", 10.0, TextAnchor::start, false, {}});
  const std::string svg = write_svg(drawing);
  EXPECT_THAT(
      svg, HasSubstr(
               " xml:space=\"preserve\">4 <tspan dy=\"-2.700\" font-size=\"7.400\">15</tspan><tspan "
               "dy=\"2.700\">/</tspan>"
               "<tspan dy=\"0.800\" font-size=\"7.400\">16</tspan><tspan dy=\"-0.800\">\"</tspan></text>"));
  EXPECT_EQ(read_svg(svg).texts.at(0).words, "4 15/16\"");
  // Four figures of 0.56 em are 0.26 of that narrower.
  EXPECT_NEAR(text_width_in_ems("4 15/16\"") + 0.58,
              text_width_in_ems("4 15/16a") - text_width_in_ems("a") + text_width_in_ems("\""), 0.011);
}

// Element and attribute names from the SVG 1.1 (second edition) recommendation; the order is this project's
// own choice and part of what "same rig, same bytes" means.
TEST(SvgWriter, WritesOneElementALineInOneOrder) {
  const std::string svg = write_svg(small_drawing());
  EXPECT_THAT(svg, testing::StartsWith(
                       "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
                       "<!DOCTYPE svg PUBLIC \"-//W3C//DTD SVG 1.1//EN\" "
                       "\"http://www.w3.org/Graphics/SVG/1.1/DTD/svg11.dtd\">\n"
                       "<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" width=\"100.000mm\" "
                       "height=\"50.000mm\" viewBox=\"0 0 100.000 50.000\" font-family=\"'Liberation "
                       "Sans', sans-serif\""));
  EXPECT_THAT(svg, HasSubstr("\n  <title>Stay &amp; shroud</title>\n"));
  EXPECT_THAT(
      svg,
      HasSubstr("\n    <line id=\"wire\" x1=\"1.000\" y1=\"2.000\" x2=\"3.250\" y2=\"4.000\" fill=\"none\" "
                "stroke=\"#000000\" stroke-width=\"0.400\" stroke-dasharray=\"3.000 1.000\" />\n"));
  EXPECT_THAT(
      svg,
      HasSubstr("\n    <circle id=\"dot\" cx=\"5.000\" cy=\"6.000\" r=\"0.500\" fill=\"#000000\" />\n"));
  EXPECT_THAT(svg, HasSubstr("font-weight=\"bold\" text-anchor=\"end\" textLength="));
}

TEST(SvgWriter, WritesAPointInEveryLocale) {
  const std::string here = write_svg(small_drawing());
  const std::string before = std::setlocale(LC_ALL, nullptr);
  for (const char* locale : {"de_DE.UTF-8", "fr_FR.UTF-8"})
    if (std::setlocale(LC_ALL, locale) != nullptr) {
      EXPECT_EQ(write_svg(small_drawing()), here) << locale;
    }
  std::setlocale(LC_ALL, before.c_str());
  EXPECT_THAT(here, Not(HasSubstr("3,25")));
}

// XML 1.0 (fifth edition), section 2.2: characters below U+0020 but tab and the line ends are no
// characters.
TEST(SvgWriter, WritesNoCharacterThatXmlForbids) {
  Drawing drawing = small_drawing();
  drawing.content.add(
      TextShape{{1, 1}, std::string("a\x01\x1f") + "b\x7f<\"&", 2.5, TextAnchor::start, false, {}});
  const ReadSvg svg = read_svg(write_svg(drawing));
  EXPECT_EQ(svg.texts.back().words, "a\xef\xbf\xbd\xef\xbf\xbd"
                                    "b\x7f<\"&");
}

// Against a text that grows by itself: blocks are longer than some pieces and shorter than others.
RC_GTEST_PROP(MarkupBuffer, HoldsItsPiecesInOrder, (const std::vector<std::string>& pieces)) {
  constexpr std::size_t longer_than_a_block = 100'000;
  std::string expected;
  MarkupBuffer all;
  for (const std::string& piece : pieces) {
    const std::string many(*rc::gen::element<std::size_t>(1, 70, longer_than_a_block), '=');
    MarkupBuffer part;
    part.put(piece);
    part.put('|');
    all.put("<g>");
    all.put(std::move(part));
    all.put(many);
    expected += "<g>" + piece + "|" + many;
  }
  RC_ASSERT(all.take() == expected);
  RC_ASSERT(all.take().empty());
}

TEST(MarkupBuffer, WritesNumbersLikeOneThatStandsAlone) {
  for (const double value : {0.0, -0.0004, 2.5, 999.9995, -1234567.125, 1e12, -4.5e300}) {
    MarkupBuffer buffer;
    buffer.put_attribute(" x=\"", value, 3);
    EXPECT_EQ(buffer.take(), " x=\"" + format_fixed(value, 3) + "\"");
  }
}

TEST(SvgWriter, WritesAStyleAgainAfterAnother) {
  Drawing drawing;
  const ShapeStyle thin{.stroke_width = 0.2, .stroke_grey = 0.0, .dashes = {}, .fill_grey = {}};
  const ShapeStyle dashed{.stroke_width = 0.2, .stroke_grey = 0.0, .dashes = {3, 1}, .fill_grey = {}};
  for (const ShapeStyle& style : {thin, thin, dashed, thin})
    drawing.content.add(LineShape{{1, 2}, {3, 4}, style, ""});
  std::string dashes;
  const std::string svg = write_svg(drawing);
  for (std::size_t at = svg.find("<line"); at != std::string::npos; at = svg.find("<line", at + 1))
    dashes += svg.substr(at, svg.find('\n', at) - at).find("stroke-dasharray=\"3.000 1.000\"") !=
                      std::string::npos
                  ? '-'
                  : '.';
  EXPECT_EQ(dashes, "..-.");
}

TEST(Drawing, ACopyOfAShapeIsChangedAlone) {
  ShapeGroup inner;
  inner.add(TextShape{{1, 2}, "tip", 2.5, TextAnchor::end, true, {}});
  ShapeGroup group;
  group.add(inner);
  const ShapeGroup moved = placed(group, {10, 20}, 2.0);
  const auto text_of = [](const ShapeGroup& all) {
    const auto& within = std::get<ShapeGroup>(all.children.front().content());
    return std::get<TextShape>(within.children.front().content());
  };
  EXPECT_EQ(text_of(group).at.x, 1);
  EXPECT_EQ(text_of(moved).at.x, 12);
  EXPECT_EQ(text_of(moved).at.y, 24);
  EXPECT_EQ(text_of(moved).size, 5);
}

// XML 1.0, section 2.3: Name.
TEST(ElementId, KeepsWhatANameMayHold) {
  EXPECT_EQ(element_id("tip-2.port"), "tip-2.port");
  EXPECT_EQ(element_id("a b"), "a_20b");
  EXPECT_EQ(element_id("a_b"), "a__b");
  EXPECT_EQ(element_id("\xc3\xa5"), "_c3_a5");
}

RC_GTEST_PROP(ElementId, TwoNamesNeverMakeOneId, (const std::string& a, const std::string& b)) {
  RC_ASSERT((element_id(a) == element_id(b)) == (a == b));
}

} // namespace
} // namespace sheerpole::svg_writer_test
