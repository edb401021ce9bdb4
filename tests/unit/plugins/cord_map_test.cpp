#include "plugins/cord-map/cord_map.hpp"

#include "service/compile.hpp"
#include "source/file_reader.hpp"
#include "unit/calculate/compiled_rig.hpp"
#include "unit/page/page_boxes.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <string>

namespace sheerpole::cord_map_test {
namespace {

using testing::HasSubstr;

std::string text_of(const std::vector<Drawing>& pages) {
  std::string text;
  for (const Drawing& page : pages)
    for (const LabelBox& box : set_boxes(page.content))
      text += box.text + "\n";
  return text;
}

/// `count` stays on one cord, each 500 mm longer than the one before, tallied from the longest.
std::string many_knots(int count) {
  std::string text = "language 1\nboat \"Map\" { }\ncord red \"Red\" {\n  knot-width: 6 mm\n}\n"
                     "rope rope-9 {\n  construction: \"12-strand\"\n  size: \"9 mm\"\n}\n";
  for (int i = 0; i < count; ++i) {
    const std::string name = "stay-" + std::to_string(i + 1);
    text += "stay " + name + " \"A stay with a title of some length, number " + std::to_string(i + 1) +
            "\" {\n  line: rope-9\n  estimate: " + std::to_string(4000 + 500 * i) +
            " mm\n  stack {\n    line\n  }\n}\nreading of " + name +
            " {\n  method: messenger\n  cord: red\n  knots: " + std::to_string(count - i) +
            "\n  pull: 60 N\n  offset: 40 mm\n  date: 2026-05-02\n  by: \"somebody with a long name\"\n}\n";
  }
  return text;
}

TEST(CordMap, HasEveryKnotOnceOnWellSetPages) {
  for (const int count : {1, 4, 7, 8, 20}) {
    const Compilation boat = test::compiled(many_knots(count));
    ASSERT_TRUE(boat.checked);
    const auto cords = cords_of(*boat.checked);
    ASSERT_EQ(cords.size(), 1u);
    EXPECT_EQ(cords.front().knots.size(), static_cast<std::size_t>(count));
    for (const PaperSize size : {PaperSize::a4, PaperSize::letter}) {
      const auto pages = cord_map_pages(boat.checked->rig(), cords.front(), "Map", size);
      expect_well_set(pages);
      const std::string text = text_of(pages);
      for (int i = 1; i <= count; ++i)
        EXPECT_THAT(text, HasSubstr("stay-" + std::to_string(i) + "\n"));
    }
  }
}

TEST(CordMap, LiesInTheOrderOfTheCordAndWarnsWhereTheTalliesDoNot) {
  const Compilation boat = test::compiled(many_knots(2));
  ASSERT_TRUE(boat.checked);
  const auto cords = cords_of(*boat.checked);
  ASSERT_EQ(cords.front().knots.size(), 2u);
  EXPECT_EQ(cords.front().knots[0].tally, 2);
  // U hung 40 mm beyond the bearing: the knot of a stay of 4000 mm lies 4040 mm from it.
  EXPECT_NEAR(cords.front().knots[0].expected->millimetres(), 4040.0, 1e-9);
  const std::string text =
      text_of(cord_map_pages(boat.checked->rig(), cords.front(), "Map", PaperSize::a4));
  EXPECT_THAT(text, HasSubstr("Knot 2 comes before knot 1, 500 mm apart"));
  EXPECT_THAT(text, HasSubstr("± 3 mm"));
  EXPECT_THAT(text, HasSubstr("offset 40 mm"));
}

TEST(CordMap, OfTheExampleHasASharedKnotOnceWithBothSides) {
  DiskFileReader reader;
  const Compilation boat = compile(std::string(SHEERPOLE_EXAMPLES_DIR) + "/quillwort.rig", reader);
  ASSERT_TRUE(boat.checked);
  const auto cords = cords_of(*boat.checked);
  ASSERT_EQ(cords.size(), 2u);
  ASSERT_EQ(cords[0].knots.size(), 2u);
  for (const CordKnot& knot : cords[0].knots)
    EXPECT_EQ(knot.stays.size(), 2u);
  EXPECT_EQ(cords[1].knots.size(), 1u);
  const OutputBundle made = CordMap().generate({*boat.checked});
  ASSERT_EQ(made.papers.size(), 1u);
  expect_well_set(made.papers.front().pages);
  EXPECT_THAT(text_of(made.papers.front().pages), HasSubstr("starboard below the knot 1/8\"\n"));
}

TEST(CordMap, OfARigWithoutCordsIsNothing) {
  const Compilation boat = test::compiled("language 1\nboat \"Bare\" { }\n");
  ASSERT_TRUE(boat.checked);
  EXPECT_TRUE(CordMap().generate({*boat.checked}).files.empty());
}

} // namespace
} // namespace sheerpole::cord_map_test
