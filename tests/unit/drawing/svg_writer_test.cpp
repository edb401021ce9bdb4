#include "backend/drawing/svg_writer.hpp"

#include "backend/drawing/label_text.hpp"
#include "backend/drawing/text_runs.hpp"
#include "unit/drawing/svg_reader.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <clocale>

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
