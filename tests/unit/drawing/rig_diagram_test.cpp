#include "backend/diagram/rig_diagram.hpp"

#include "backend/drawing/label_text.hpp"
#include "backend/drawing/svg_writer.hpp"
#include "plugins/diagram/diagram.hpp"
#include "unit/drawing/boats_to_draw.hpp"
#include "unit/drawing/svg_reader.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cstdio>

namespace sheerpole::rig_diagram_test {
namespace {

using testing::Contains;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;

struct NamedBoat {
  const char* name;
  CheckedRig (*make)();
};

CheckedRig no_stays() {
  RigBuilder b("Unstayed");
  b.point("masthead", 0, 0, 9.0);
  b.point("partners", 0, 0, 1.0);
  return b.checked();
}

CheckedRig crowded() {
  RigBuilder b("Boat with very many points whose names are long, and with a long name of its own as well");
  b.material("wire-6", LineMaterial::Kind::wire, "1x19", "6 mm", 6);
  for (int i = 0; i < 40; ++i) {
    const std::string number = std::to_string(i);
    b.point("tang-" + number + "-with-a-rather-long-name", 0.001 * i, 0.002 * i, 10.0 + 0.001 * i, true);
    b.point("plate-" + number, -0.5 + 0.01 * i, 1.5, 1.0, true);
    b.stay("shroud-" + number, "Shroud number " + number + ", one of a great many", "wire-6",
           {"tang-" + number + "-with-a-rather-long-name", "plate-" + number}, {"line"}, true);
  }
  return b.checked();
}

/// Port plates measured apart from starboard: the side view must show both.
CheckedRig uneven() {
  RigBuilder b("Uneven");
  b.material("wire-3", LineMaterial::Kind::wire, "1x19", "3 mm", 3);
  b.point("tang", -0.02, 0.045, 6.02, true);
  b.point("plate-starboard", -0.300, 0.920, 0.660);
  b.point("plate-port", -0.614, -0.920, 0.654);
  b.stay("upper-starboard", "Upper shroud, starboard", "wire-3", {"tang.starboard", "plate-starboard"},
         {"line"});
  b.stay("upper-port", "Upper shroud, port", "wire-3", {"tang.port", "plate-port"}, {"line"});
  return b.checked();
}

class RigDiagram : public testing::TestWithParam<NamedBoat> {};

TEST_P(RigDiagram, PutsEveryPointWhereItIs) {
  const CheckedRig checked = GetParam().make();
  const ReadSvg svg = read_svg(write_svg(rig_diagram(checked)));
  for (const char* view : {"side", "front", "deck"}) {
    // The scale and the place of the axes are stated in the file, for whoever measures on it.
    double scale = 0, x = 0, y = 0;
    const std::string words = svg.descriptions.at(std::string(view) + "-view");
    ASSERT_EQ(
        std::sscanf(
            words.c_str(),
            "1 m of the boat is %lf mm of the sheet. The origin of the boat's axes is at x %lf mm, y %lf",
            &scale, &x, &y),
        3)
        << words;
    for (const Point& point : checked.rig().points) {
      const ReadSvg::Circle mark = svg.circles.at(std::string(view) + "-point-" + point.name);
      const double across = (mark.x - x) / scale;
      const double up = (y - mark.y) / scale;
      const Vector3& p = point.position;
      const bool side = std::string(view) == "side";
      const bool deck = std::string(view) == "deck";
      // Bow to the right in the side view; seen from astern and from above starboard is to the right.
      EXPECT_NEAR(across, side ? p.x.metres() : p.y.metres(), 0.0005) << view << " " << point.name;
      EXPECT_NEAR(up, deck ? p.x.metres() : p.z.metres(), 0.0005) << view << " " << point.name;
    }
  }
}

TEST_P(RigDiagram, LetsNoLabelOverlapAnother) {
  const Drawing drawing = rig_diagram(GetParam().make());
  const std::vector<LabelBox> boxes = label_boxes(drawing);
  for (std::size_t i = 0; i < boxes.size(); ++i)
    for (std::size_t j = i + 1; j < boxes.size(); ++j)
      EXPECT_FALSE(boxes[i].box.overlaps(boxes[j].box)) << boxes[i].text << " / " << boxes[j].text;
  EXPECT_THAT(overlapping(read_svg(write_svg(drawing))), IsEmpty());
}

TEST_P(RigDiagram, KeepsEveryLabelOnTheSheetAndLargeEnoughToRead) {
  const Drawing drawing = rig_diagram(GetParam().make());
  const std::vector<LabelBox> boxes = label_boxes(drawing);
  EXPECT_THAT(boxes, Not(IsEmpty()));
  for (const LabelBox& label : boxes) {
    EXPECT_GE(label.size, 2.2) << label.text;
    EXPECT_GE(label.box.left, 0) << label.text;
    EXPECT_GE(label.box.top, 0) << label.text;
    EXPECT_LE(label.box.right, drawing.width) << label.text;
    EXPECT_LE(label.box.bottom, drawing.height) << label.text;
  }
}

TEST_P(RigDiagram, UsesGreysOnlyAndNoScript) {
  const ReadSvg svg = read_svg(write_svg(rig_diagram(GetParam().make())));
  for (const std::string& colour : svg.colours) {
    if (colour == "none")
      continue;
    ASSERT_EQ(colour.size(), 7U) << colour;
    EXPECT_EQ(colour.substr(1, 2), colour.substr(3, 2)) << colour;
    EXPECT_EQ(colour.substr(1, 2), colour.substr(5, 2)) << colour;
  }
  for (const std::string& element : svg.elements)
    EXPECT_THAT((std::set<std::string>{"svg", "g", "title", "desc", "line", "polyline", "polygon", "circle",
                                       "rect", "text"}),
                Contains(element));
}

TEST_P(RigDiagram, GivesEachIdOnce) {
  std::vector<std::string> ids = read_svg(write_svg(rig_diagram(GetParam().make()))).ids;
  std::sort(ids.begin(), ids.end());
  EXPECT_EQ(std::adjacent_find(ids.begin(), ids.end()), ids.end());
}

TEST_P(RigDiagram, IsTheSameEachTime) {
  EXPECT_EQ(write_svg(rig_diagram(GetParam().make())), write_svg(rig_diagram(GetParam().make())));
}

INSTANTIATE_TEST_SUITE_P(Boats, RigDiagram,
                         testing::Values(NamedBoat{"pellimoor", pellimoor}, NamedBoat{"grisolde", grisolde},
                                         NamedBoat{"no_stays", no_stays}, NamedBoat{"crowded", crowded},
                                         NamedBoat{"uneven", uneven}),
                         [](const auto& boat) { return boat.param.name; });

/// No sheet holds names for all of them: the lines are drawn, the caption says why no name is there.
TEST(RigDiagramOfAVeryLargeRig, NamesNothingAndSaysSo) {
  RigBuilder b("Very large");
  b.material("wire-6", LineMaterial::Kind::wire, "1x19", "6 mm", 6);
  for (int i = 0; i < 150; ++i) {
    const std::string number = std::to_string(i);
    b.point("tang-" + number, 0.01 * i, 0, 10.0);
    b.point("plate-" + number, 0.02 * i, 0, 1.0);
    b.stay("stay-" + number, "", "wire-6", {"tang-" + number, "plate-" + number}, {"line"});
  }
  const std::string svg = write_svg(rig_diagram(b.checked()));
  EXPECT_NE(svg.find("Too many stays and points to name here; the strips name each stay."),
            std::string::npos);
  EXPECT_EQ(svg.find("side-label-stay-"), std::string::npos);
  EXPECT_NE(svg.find("side-point-tang-149"), std::string::npos);
}

std::vector<std::string> words_of(const Drawing& drawing) {
  std::vector<std::string> words;
  for (const LabelBox& label : label_boxes(drawing))
    words.push_back(label.text);
  return words;
}

std::string all_words(const Drawing& drawing) {
  std::string words;
  for (const std::string& line : words_of(drawing))
    words += line + " ";
  return words;
}

// Pellimoor's spreaders are swept: the tips lie abaft the roots (x -0.324 and -0.030 m in her table of
// points), and aft is to the left in the side view.
TEST(RigDiagramOfPellimoor, ShowsSweptSpreaderTipsAftOfTheirRoots) {
  const ReadSvg svg = read_svg(write_svg(rig_diagram(pellimoor())));
  const double tip = svg.circles.at("side-point-tip-2.port").x;
  const double root = svg.circles.at("side-point-root-2.port").x;
  EXPECT_LT(tip, root);
  // 0.294 m at the printed scale of 1:75.
  EXPECT_THAT(words_of(rig_diagram(pellimoor())), Contains("Scale 1:75"));
  EXPECT_NEAR(root - tip, 0.294 / 75 * 1000, 0.002);
}

TEST(RigDiagramOfPellimoor, SaysWhatIsToBeKnownOfTheViews) {
  const std::string words = all_words(rig_diagram(pellimoor()));
  EXPECT_THAT(words, HasSubstr("Side view, seen from starboard, bow to the right"));
  EXPECT_THAT(words, HasSubstr("Port and starboard coincide"));
  EXPECT_THAT(words, HasSubstr("Seen from astern, looking forward"));
  EXPECT_THAT(words, HasSubstr("Deck view, seen from above, bow up"));
  EXPECT_THAT(words, HasSubstr("waterline"));
  EXPECT_THAT(words, HasSubstr("DRAFT"));
}

TEST(RigDiagramOfPellimoor, NamesEveryStayInEveryView) {
  const Drawing drawing = rig_diagram(pellimoor());
  const std::vector<std::string> words = words_of(drawing);
  const auto times = [&](const char* text) { return std::count(words.begin(), words.end(), text); };
  EXPECT_GE(times("Cap shroud"), 4); // side view, twice from astern, at least once on deck
  EXPECT_GE(times("Intermediate"), 4);
  EXPECT_GE(times("Lower shroud"), 4);
}

TEST(RigDiagramOfUnevenBoat, DrawsBothSidesAndSaysSo) {
  const Drawing drawing = rig_diagram(uneven());
  const std::string words = all_words(drawing);
  EXPECT_THAT(words, HasSubstr("plate-port"));
  EXPECT_THAT(words, HasSubstr("plate-starboard"));
}

TEST(RigDiagramWithoutPoints, SaysSo) {
  RigBuilder b("Stated lengths");
  b.material("wire-6", LineMaterial::Kind::wire, "1x19", "6 mm", 6);
  b.stay("forestay", "Forestay", "wire-6", {}, {"line"});
  b.without_path(8230);
  EXPECT_THAT(all_words(rig_diagram(b.checked())), HasSubstr("states no points"));
}

TEST(RigDiagramWithoutStays, SaysSo) {
  EXPECT_THAT(all_words(rig_diagram(no_stays())), HasSubstr("No stays are stated"));
  EXPECT_THAT(all_words(rig_diagram(RigBuilder("Nothing").checked())), HasSubstr("No stays are stated"));
}

TEST(RigDiagramWithAStayWithoutPath, NamesIt) {
  RigBuilder b("Part drawn");
  b.material("wire-6", LineMaterial::Kind::wire, "1x19", "6 mm", 6);
  b.point("masthead", 0, 0, 9);
  b.point("stem", 3, 0, 1);
  b.stay("forestay", "Forestay", "wire-6", {"masthead", "stem"}, {"line"});
  b.stay("bobstay", "Bobstay", "wire-6", {}, {"line"});
  b.without_path(1200);
  EXPECT_THAT(all_words(rig_diagram(b.checked())),
              HasSubstr("Not drawn, because no path is stated: bobstay."));
}

TEST(DiagramBackendFiles, AreTheOnesItDescribes) {
  const CheckedRig checked = grisolde();
  const DiagramBackend backend;
  const OutputBundle bundle = backend.generate({checked});
  ASSERT_EQ(bundle.files.size(), 3U); // nine strips take two sheets
  EXPECT_EQ(bundle.files[0].name, backend.describe().outputs[0]);
  EXPECT_EQ(bundle.files[1].name, backend.describe().outputs[1]);
  EXPECT_EQ(bundle.files[2].name, "stay-strips-2.svg");
}

} // namespace
} // namespace sheerpole::rig_diagram_test
