#include "backend/diagram/stay_strips.hpp"

#include "backend/diagram/strips/strip_content.hpp"
#include "backend/diagram/symbols/part_symbol.hpp"
#include "backend/drawing/label_text.hpp"
#include "backend/drawing/svg_writer.hpp"
#include "unit/drawing/boats_to_draw.hpp"
#include "unit/drawing/svg_reader.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace sheerpole::stay_strips_test {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;

Strip strip_named(const CheckedRig& checked, const std::string& name) {
  for (const Strip& strip : strip_contents(checked))
    if (strip.name == name)
      return strip;
  ADD_FAILURE() << "no strip " << name;
  return {};
}

// Lengths of the invented boats' tables of stays, worked out apart from this program: cap shroud 11642 pin
// to pin, 16 above the body, dead-eye 38, gap 160, block 46 below it, body 11382.
TEST(StripContents, RunsFromTheUpperPinToTheLower) {
  const Strip cap = strip_named(pellimoor(), "cap-shroud");
  EXPECT_EQ(cap.sides, "port and starboard alike");
  EXPECT_EQ(cap.pin_to_pin, "11\u202f642");
  ASSERT_EQ(cap.cells.size(), 7U);
  EXPECT_EQ(cap.cells[2].length, "11\u202f382 mm");
  EXPECT_THAT(cap.distances,
              ElementsAre("", "0", "16", "11\u202f398", "11\u202f436", "11\u202f596", "11\u202f642", ""));
}

// Grisolde's table: backstay upper leg as three wires of 455, 11019 and 1025 between insulators of 150.
TEST(StripContents, ShowsEachPieceOfACutWire) {
  const Strip leg = strip_named(grisolde(), "backstay-upper");
  std::vector<std::string> pieces;
  for (const StripCell& cell : leg.cells)
    if (cell.line)
      pieces.push_back(cell.length);
  EXPECT_THAT(pieces, ElementsAre("455 mm", "11\u202f019 mm", "1025 mm"));
  EXPECT_EQ(leg.distances[leg.distances.size() - 2], "12\u202f969");
}

// A turnbuckle of 320 to 470 set to its middle, 395: 75 each way (Grisolde's hardware table).
TEST(StripContents, ShowsWhatIsLeftOfAnAdjuster) {
  const Strip cap = strip_named(grisolde(), "cap-shroud");
  const StripCell& turnbuckle = cap.cells[3];
  ASSERT_TRUE(turnbuckle.adjuster);
  EXPECT_DOUBLE_EQ(turnbuckle.adjuster->share, 0.5);
  EXPECT_EQ(turnbuckle.adjuster->shortest, "320");
  EXPECT_EQ(turnbuckle.adjuster->longest, "470");
  EXPECT_EQ(turnbuckle.adjuster->tighten, "to tighten 75 mm");
  EXPECT_EQ(turnbuckle.adjuster->slacken, "to slacken 75 mm");
}

// X is pin to pin; 244 mm of hardware below the body and 16 above: body X - 260, its lower end at X - 244.
TEST(StripContents, CarriesAnUnknownLength) {
  RigBuilder b("Cord only");
  b.material("hmpe-9", LineMaterial::Kind::rope, "12-strand HMPE heat-set", "9 mm", 9);
  b.part("thimble", "thimble", "thimble", 16);
  b.part("link", "below", "hardware below", 244);
  b.stay("shroud", "Shroud", "hmpe-9", {}, {"thimble", "line", "below"});
  b.without_path(0);
  const Strip strip = strip_contents(b.checked()).front();
  EXPECT_EQ(strip.pin_to_pin, "X");
  EXPECT_EQ(strip.cells[1].length, "X - 260 mm");
  EXPECT_THAT(strip.distances, ElementsAre("0", "16", "X - 244", "X"));
}

TEST(StripContents, KeepsSidesApartWhenANumberDiffers) {
  RigBuilder b("Uneven");
  b.material("wire-3", LineMaterial::Kind::wire, "1x19", "3 mm", 3);
  b.point("tang", 0, 0.05, 6, true);
  b.point("plate", -0.3, 0.9, 0.66, true);
  b.stay("upper", "Upper shroud", "wire-3", {"tang", "plate"}, {"line"}, true);
  EXPECT_EQ(strip_contents(b.checked()).size(), 1U);
  b.stay("lower", "Lower shroud", "wire-3", {}, {"line"}, true);
  b.without_path(2964);
  EXPECT_EQ(strip_contents(b.checked()).size(), 3U);
}

CheckedRig long_stack() {
  RigBuilder b("A stay of a great many parts");
  b.material("wire-6", LineMaterial::Kind::wire, "1x19", "6 mm", 6);
  b.boat_fitting("tang", "tang", "tang that a mast maker's drawing describes at some length");
  std::vector<std::string> stack{"tang"};
  for (const char* kind : {"toggle", "link", "shackle", "insulator", "terminal", "deadeye", "thimble",
                           "bush", "pin", "cover", "foil"}) {
    b.part(kind, kind, std::string(kind) + " with a description that takes several lines", 100.25);
    stack.emplace_back(kind);
  }
  stack.emplace_back("line");
  for (const char* kind : {"turnbuckle", "lashing", "tackle", "lever", "hole-adjuster", "cylinder"}) {
    b.adjuster(kind, kind, kind, 100, 300);
    stack.push_back(std::string(kind) + " 300");
  }
  b.stay("forestay", "Forestay", "wire-6", {}, stack);
  b.without_path(15000);
  return b.checked();
}

class StayStrips : public testing::TestWithParam<CheckedRig (*)()> {};

TEST_P(StayStrips, LetNoLabelOverlapAnotherOrLeaveTheSheet) {
  for (const Drawing& drawing : stay_strips(GetParam()())) {
    const std::vector<LabelBox> boxes = label_boxes(drawing);
    for (std::size_t i = 0; i < boxes.size(); ++i) {
      EXPECT_GE(boxes[i].size, 2.2) << boxes[i].text;
      EXPECT_GE(boxes[i].box.left, 0) << boxes[i].text;
      EXPECT_LE(boxes[i].box.right, drawing.width) << boxes[i].text;
      EXPECT_LE(boxes[i].box.bottom, drawing.height) << boxes[i].text;
      for (std::size_t j = i + 1; j < boxes.size(); ++j)
        EXPECT_FALSE(boxes[i].box.overlaps(boxes[j].box)) << boxes[i].text << " / " << boxes[j].text;
    }
    EXPECT_THAT(overlapping(read_svg(write_svg(drawing))), IsEmpty());
  }
}

INSTANTIATE_TEST_SUITE_P(Boats, StayStrips, testing::Values(pellimoor, grisolde, long_stack));

std::string all_words(const Drawing& drawing) {
  std::string words;
  for (const LabelBox& label : label_boxes(drawing))
    words += label.text + " ";
  return words;
}

TEST(StayStripsText, SaysWhichEndIsAloft) {
  const std::vector<Drawing> sheets = stay_strips(pellimoor());
  ASSERT_EQ(sheets.size(), 1U);
  EXPECT_THAT(all_words(sheets.front()), HasSubstr("aloft"));
  EXPECT_THAT(all_words(sheets.front()), HasSubstr("deck"));
}

TEST(StayStripsText, SaysThatThereAreNoStays) {
  const std::vector<Drawing> sheets = stay_strips(RigBuilder("Unstayed").checked());
  ASSERT_EQ(sheets.size(), 1U);
  EXPECT_THAT(all_words(sheets.front()), HasSubstr("No stays are stated"));
}

void extent_of(const ShapeGroup& group, double axis, double& above) {
  const auto reach = [&](PaperPoint p, double more) {
    above = std::max(above, std::abs(p.y - axis) + more);
  };
  for (const DrawnNode& node : group.children) {
    if (const auto* circle = std::get_if<CircleShape>(&node.content()))
      reach(circle->centre, circle->radius);
    if (const auto* line = std::get_if<LineShape>(&node.content())) {
      reach(line->from, 0);
      reach(line->to, 0);
    }
    if (const auto* box = std::get_if<RectangleShape>(&node.content())) {
      reach({box->box.left, box->box.top}, 0);
      reach({box->box.left, box->box.bottom}, 0);
    }
    if (const auto* polygon = std::get_if<PolygonShape>(&node.content()))
      for (const PaperPoint p : polygon->points)
        reach(p, 0);
  }
}

TEST(PartSymbol, KeepsToItsHeightAndDrawsSomethingForEveryKind) {
  for (const std::string_view kind : part_kind_names)
    for (const bool turned : {false, true}) {
      ShapeGroup drawn;
      draw_part_symbol({.kind = find_word<PartKind>(kind).value()}, {10, 43, 50, turned}, drawn);
      EXPECT_THAT(drawn.children, Not(IsEmpty())) << kind;
      double above = 0;
      extent_of(drawn, 50, above);
      EXPECT_LE(above, symbol_half_height + 1e-9) << kind;
      EXPECT_GT(above, 0.5) << kind;
    }
}

} // namespace
} // namespace sheerpole::stay_strips_test
