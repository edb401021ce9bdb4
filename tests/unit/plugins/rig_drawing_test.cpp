// The rig drawing, read back: places, scale and heights are those of the rig, lines and letters those of
// the ISO series, every balloon has its row, nothing that can be seen is dashed, no text lies on another
// one.
#include "plugins/rig-drawing/rig_drawing.hpp"

#include "backend/drawing/label_text.hpp"
#include "backend/drawing/svg_writer.hpp"
#include "plugins/rig-drawing/dimensions.hpp"
#include "plugins/rig-drawing/hull_outline.hpp"
#include "plugins/rig-drawing/stay_rows.hpp"
#include "unit/plugins/example_boat.hpp"

#include <fmt/format.h>
#include <gmock/gmock.h>

#include <algorithm>
#include <cmath>
#include <filesystem>
#include <functional>
#include <map>
#include <set>
#include <string>
#include <vector>

namespace sheerpole::rig_drawing_test {
namespace {

const std::vector<std::string> boats{"pellimoor", "grisolde", "tansyholm", "skirlpool", "oddnys-wager",
                                     "sallow",    "smidgeon", "quillwort", "fieldfare", "smallest"};

Compilation boat_named(const std::string& name) {
  return test::example_with(name, "");
}

void each_shape(const ShapeGroup& group,
                const std::function<void(const DrawnNode&, const ShapeGroup&)>& look) {
  for (const DrawnNode& node : group.children) {
    look(node, group);
    if (const auto* inner = std::get_if<ShapeGroup>(&node.content()))
      each_shape(*inner, look);
  }
}

std::map<std::string, CircleShape> circles_by_id(const Drawing& sheet) {
  std::map<std::string, CircleShape> result;
  each_shape(sheet.content, [&](const DrawnNode& node, const ShapeGroup&) {
    if (const auto* circle = std::get_if<CircleShape>(&node.content());
        circle != nullptr && !circle->id.empty())
      result[circle->id] = *circle;
  });
  return result;
}

/// What the title block says: "1:100" is 100.
double scale_of(const Drawing& sheet) {
  double scale = 0.0;
  each_shape(sheet.content, [&](const DrawnNode& node, const ShapeGroup& group) {
    const auto* text = std::get_if<TextShape>(&node.content());
    if (text != nullptr && group.id == "title-block" && text->text.starts_with("1:"))
      scale = std::stod(text->text.substr(2));
  });
  return scale;
}

TEST(RigDrawing, PlacesAreThoseOfTheRig) {
  std::size_t read = 0;
  for (const std::string& name : boats) {
    const Compilation boat = boat_named(name);
    ASSERT_TRUE(boat.checked) << name;
    const Drawing sheet = rig_drawing_sheet(*boat.checked);
    const Rig& rig = boat.checked->rig();
    const auto pins = circles_by_id(sheet);
    const double scale = scale_of(sheet);
    const auto place = [&](const std::string& view, const Point& point) {
      const auto found = pins.find(view + "-pin-" + element_id(point.name));
      return found == pins.end() ? nullptr : &found->second.centre;
    };
    const Point* first = nullptr;
    for (const Point& point : rig.points) {
      const PaperPoint* profile = place("profile", point);
      const PaperPoint* plan = place("plan", point);
      if (profile == nullptr)
        continue;
      ASSERT_NE(plan, nullptr);
      if (first == nullptr)
        first = &point;
      const PaperPoint* from = place("profile", *first);
      const PaperPoint* plan_from = place("plan", *first);
      const auto on_paper = [&](Length a, Length b) { return (a - b).millimetres() / scale; };
      EXPECT_NEAR(profile->x - from->x, on_paper(point.position.x, first->position.x), 1e-6);
      EXPECT_NEAR(profile->y - from->y, -on_paper(point.position.z, first->position.z), 1e-6);
      EXPECT_NEAR(plan->x - plan_from->x, on_paper(point.position.x, first->position.x), 1e-6);
      EXPECT_NEAR(plan->y - plan_from->y, on_paper(point.position.y, first->position.y), 1e-6);
      EXPECT_NEAR(plan->x, profile->x, 1e-6) << "the plan stands below the profile";
      if (const PaperPoint* astern = place("astern", point)) {
        EXPECT_NEAR(astern->y, profile->y, 1e-6) << "the view from astern stands as high as the profile";
        EXPECT_NEAR(astern->x - place("astern", *first)->x, on_paper(point.position.y, first->position.y),
                    1e-6);
      }
      ++read;
    }
  }
  EXPECT_GT(read, 100u);
}

TEST(RigDrawing, LinesAndLettersAreOfTheSeries) {
  // ISO 128-2:2020 and ISO 3098-1:2015, from memory.
  const std::set<double> widths{0.0, 0.18, 0.25, 0.35, 0.5, 0.7, 1.0};
  for (const std::string& name : boats) {
    const Compilation boat = boat_named(name);
    ASSERT_TRUE(boat.checked) << name;
    const Drawing sheet = rig_drawing_sheet(*boat.checked);
    each_shape(sheet.content, [&](const DrawnNode& node, const ShapeGroup& group) {
      std::visit(
          [&](const auto& shape) {
            using Shape = std::decay_t<decltype(shape)>;
            if constexpr (std::is_same_v<Shape, TextShape>) {
              const double capital = shape.size * 0.716;
              EXPECT_TRUE(std::abs(capital - 2.5) < 1e-9 || std::abs(capital - 3.5) < 1e-9 ||
                          std::abs(capital - 5.0) < 1e-9)
                  << name << ": " << shape.text << " " << capital;
            } else if constexpr (requires { shape.style; }) {
              // The foot of all papers has its own rule.
              const bool of_foot = std::abs(shape.style.stroke_width - 0.2) < 1e-9;
              EXPECT_TRUE(of_foot || widths.contains(shape.style.stroke_width))
                  << name << ": " << shape.style.stroke_width << " in " << group.id;
              if (!shape.style.dashes.empty()) {
                // A dot in each: an axis, or what is no part of the rig; never a plain dash.
                EXPECT_TRUE(std::any_of(shape.style.dashes.begin(), shape.style.dashes.end(),
                                        [](double length) { return length < 0.5; }));
                EXPECT_EQ(group.id.find("stay"), std::string::npos) << group.id;
              }
            }
          },
          node.content());
    });
  }
}

TEST(RigDrawing, EveryBalloonHasItsRowAndEveryStayWithAPathItsBalloon) {
  for (const std::string& name : boats) {
    const Compilation boat = boat_named(name);
    ASSERT_TRUE(boat.checked) << name;
    const Drawing sheet = rig_drawing_sheet(*boat.checked);
    std::map<std::string, std::string> number_of;
    for (const auto& row : rig_drawing::stay_rows(*boat.checked))
      number_of[row.base] = std::to_string(row.number);
    std::set<std::string> numbered;
    each_shape(sheet.content, [&](const DrawnNode& node, const ShapeGroup&) {
      const auto* group = std::get_if<ShapeGroup>(&node.content());
      if (group == nullptr || group->id.find("-balloon-") == std::string::npos)
        return;
      for (const DrawnNode& child : group->children)
        if (const auto* text = std::get_if<TextShape>(&child.content()))
          for (const auto& [base, number] : number_of)
            if (group->id.ends_with("-balloon-" + element_id(base))) {
              EXPECT_EQ(text->text, number) << group->id;
              numbered.insert(base);
            }
    });
    for (const Stay& stay : boat.checked->rig().stays)
      if (stay.path.size() > 1) {
        EXPECT_TRUE(numbered.contains(stay.base)) << name << ": " << stay.base;
      }
  }
}

struct SetText {
  std::string text;
  PaperBox box;
};

/// What the texts take in the face that the page names: their set width, from the top of the capitals to a
/// little below the base line.
std::vector<SetText> set_texts(const Drawing& sheet) {
  std::vector<SetText> result;
  each_shape(sheet.content, [&](const DrawnNode& node, const ShapeGroup&) {
    const auto* text = std::get_if<TextShape>(&node.content());
    if (text == nullptr)
      return;
    const double width = set_width(*text);
    const double left = text->at.x - (text->anchor == TextAnchor::start ? 0.0
                                      : text->anchor == TextAnchor::end ? width
                                                                        : width / 2.0);
    result.push_back(
        {text->text, {left, text->at.y - 0.75 * text->size, left + width, text->at.y + 0.2 * text->size}});
  });
  return result;
}

std::vector<std::string> overlaps(const Drawing& sheet) {
  const std::vector<SetText> texts = set_texts(sheet);
  std::vector<std::string> result;
  for (std::size_t i = 0; i < texts.size(); ++i) {
    const PaperBox& box = texts[i].box;
    if (box.left < 0.0 || box.right > sheet.width || box.top < 0.0 || box.bottom > sheet.height)
      result.push_back(texts[i].text + " leaves the sheet");
    for (std::size_t k = i + 1; k < texts.size(); ++k)
      if (box.overlaps(texts[k].box))
        result.push_back(texts[i].text + " | " + texts[k].text);
  }
  return result;
}

TEST(RigDrawing, NoTextLiesOnAnotherOrLeavesTheSheet) {
  for (const std::string& name : boats) {
    const Compilation boat = boat_named(name);
    ASSERT_TRUE(boat.checked) << name;
    EXPECT_THAT(overlaps(rig_drawing_sheet(*boat.checked)), testing::IsEmpty()) << name;
  }
}

TEST(RigDrawing, OfEveryKindOfRigIsWellSet) {
  std::size_t count = 0;
  std::vector<std::filesystem::path> files;
  for (const auto& entry :
       std::filesystem::directory_iterator(std::string(SHEERPOLE_EXAMPLES_DIR) + "/../tests/golden/rigs"))
    if (entry.path().extension() == ".rig")
      files.push_back(entry.path());
  std::sort(files.begin(), files.end());
  DiskFileReader reader;
  for (const auto& file : files) {
    const Compilation boat = compile(file.string(), reader, {});
    if (!boat.checked)
      continue;
    ++count;
    EXPECT_THAT(overlaps(rig_drawing_sheet(*boat.checked)), testing::IsEmpty()) << file;
  }
  EXPECT_GT(count, 15u);
}

TEST(RigDrawing, ADraftHasNoNumberToCutTo) {
  const Compilation boat = boat_named("grisolde");
  ASSERT_TRUE(boat.checked);
  std::map<std::string, std::string> cuts;
  for (const auto& row : rig_drawing::stay_rows(*boat.checked))
    cuts[row.base] = row.cut;
  EXPECT_EQ(cuts["inner-stay"], "NOT YET");
  EXPECT_EQ(cuts["forestay"], "15\u202f250");
}

TEST(DrawnMillimetres, HaveABlankFromFiveFiguresOn) {
  EXPECT_EQ(rig_drawing::drawn_millimetres(Length::millimetres(9114.4)), "9114");
  EXPECT_EQ(rig_drawing::drawn_millimetres(Length::millimetres(12'997)), "12\u202f997");
  EXPECT_EQ(rig_drawing::drawn_millimetres(Length::millimetres(-1'234'567)), "-1\u202f234\u202f567");
}

TEST(HullOutline, HasTheLengthAndTheBeamThatAreStated) {
  const Compilation boat = boat_named("pellimoor");
  ASSERT_TRUE(boat.checked);
  const auto hull = rig_drawing::hull_outline(boat.checked->rig());
  ASSERT_TRUE(hull);
  EXPECT_NEAR(hull->bow - hull->stern, 9.75, 1e-9);
  EXPECT_NEAR(*hull->half_beam, 1.6, 1e-9);
  ASSERT_EQ(hull->waterline.size(), 2u);
  EXPECT_NEAR((hull->waterline[0].x - hull->waterline[1].x).metres(), 8.6, 1e-9);
  EXPECT_GE(hull->bow, 3.54); // the stem fitting is on her
  EXPECT_LE(hull->stern, -6.02);
  double widest = 0.0;
  for (const Vector3& place : hull->deck)
    widest = std::max(widest, place.y.metres());
  EXPECT_NEAR(widest, 1.6, 0.02);
}

// The base of the foretriangle is the upper one, and the thin lines of waterline and length overall go down
// past it: none strikes out its words.
TEST(RigDrawing, NoThinLineStrikesOutTheWordsOfADimension) {
  for (const std::string& name : boats) {
    const Compilation boat = test::example_with(name, "");
    ASSERT_TRUE(boat.checked);
    const Drawing sheet = rig_drawing_sheet(*boat.checked);
    std::vector<LineShape> lines;
    std::vector<TextShape> texts;
    for (const DrawnNode& node : sheet.content.children)
      if (const auto* group = std::get_if<ShapeGroup>(&node.content());
          group != nullptr && group->id.starts_with("dimension-") && group->id != "dimension-height")
        for (const DrawnNode& inner : group->children) {
          if (const auto* line = std::get_if<LineShape>(&inner.content()))
            lines.push_back(*line);
          if (const auto* text = std::get_if<TextShape>(&inner.content()))
            texts.push_back(*text);
        }
    for (const TextShape& text : texts) {
      const PaperBox box = label_box(text);
      const double spare = box.width() * (1.0 - 1.0 / wide_face_allowance) / 2.0;
      for (const LineShape& line : lines)
        if (line.from.x == line.to.x) {
          EXPECT_FALSE(line.from.x > box.left + spare && line.from.x < box.right - spare &&
                       std::min(line.from.y, line.to.y) < box.bottom &&
                       std::max(line.from.y, line.to.y) > box.top)
              << name << ": " << text.text;
        }
    }
  }
}

// Tables and title block are 180 mm wide, which is the frame of an upright A4; an empty half of an A3
// beside them is paper for nothing.
TEST(RigDrawing, ARigWithoutPointsIsOnAnUprightSheet) {
  const Compilation boat = test::example_with("quillwort", "");
  ASSERT_TRUE(boat.checked);
  const Drawing sheet = rig_drawing_sheet(*boat.checked);
  EXPECT_EQ(sheet.width, 210.0);
  EXPECT_EQ(sheet.height, 297.0);
  const auto papers = [&](PaperSize size) {
    return RigDrawing().generate({.checked = *boat.checked, .paper = size, .printed = true}).papers.size();
  };
  EXPECT_EQ(papers(PaperSize::a4), 1u); // one page as it is
  EXPECT_EQ(papers(PaperSize::letter), 2u);
}

} // namespace
} // namespace sheerpole::rig_drawing_test
