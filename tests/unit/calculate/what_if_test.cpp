#include "service/compile.hpp"
#include "source/file_reader.hpp"
#include "unit/calculate/reference_rows.hpp"

#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <map>
#include <string>
#include <vector>

// Values set from outside, against pin-to-pin lengths computed outside the project; the table says how.

namespace sheerpole::what_if_test {
namespace {

struct Row {
  std::string stay;
  double before = 0.0;
  double after = 0.0;
};

using Case = std::pair<std::string, std::string>; // boat and settings

std::map<Case, std::vector<Row>> cases() {
  std::map<Case, std::vector<Row>> result;
  for (const std::vector<std::string>& cells : reference_rows("what-if", 5))
    result[{cells[0], cells[1]}].push_back({cells[2], std::stod(cells[3]), std::stod(cells[4])});
  return result;
}

Compilation compiled(const std::string& boat, std::vector<std::string> settings) {
  DiskFileReader reader;
  return compile(std::string(SHEERPOLE_EXAMPLES_DIR) + "/" + boat + ".rig", reader,
                 {.settings = std::move(settings), .folders = {}});
}

double pin_to_pin(const Compilation& compilation, std::size_t stay) {
  return compilation.derived->stays[stay].pin_to_pin.known().millimetres();
}

constexpr double tenth = 0.05 + 1e-6; // half of the last printed digit

TEST(WhatIf, AgreesWithTheTables) {
  ASSERT_GE(cases().size(), 2u);
  for (const auto& [what, rows] : cases()) {
    SCOPED_TRACE(what.first + " " + what.second);
    const Compilation before = compiled(what.first, {});
    const Compilation after = compiled(what.first, {what.second});
    ASSERT_TRUE(before.checked && after.checked);
    std::size_t met = 0;
    for (std::size_t i = 0; i < before.rig->stays.size(); ++i) {
      const Stay& stay = before.rig->stays[i];
      const Row* row = nullptr;
      for (const Row& candidate : rows)
        if (candidate.stay == stay.base || candidate.stay == stay.name)
          row = &candidate;
      if (row == nullptr) {
        EXPECT_NEAR(pin_to_pin(after, i), pin_to_pin(before, i), tenth) << stay.name;
        continue;
      }
      ++met;
      EXPECT_NEAR(pin_to_pin(before, i), row->before, tenth) << stay.name;
      EXPECT_NEAR(pin_to_pin(after, i), row->after, tenth) << stay.name;
    }
    EXPECT_GE(met, rows.size());
    EXPECT_FALSE(after.checked->draft_reasons().empty()) << "a trial must not look final";
  }
}

// The lower end of the baby stay lies on the hinge axis, so its length stays while the mast is raised:
// 1653 mm at 0, 45 and 90 degrees, computed outside the project.
TEST(WhatIf, ABabyStayOnTheHingeAxisKeepsItsLength) {
  for (const char* rake : {"mast.rake=0 deg", "mast.rake=45 deg", "mast.rake=90 deg"}) {
    const Compilation raised = compiled("smidgeon", {rake});
    ASSERT_TRUE(raised.checked) << rake;
    for (std::size_t i = 0; i < raised.rig->stays.size(); ++i)
      if (raised.rig->stays[i].base == "baby-stay") {
        EXPECT_NEAR(pin_to_pin(raised, i), 1653.0, 0.5) << rake;
      }
  }
}

// As measured: port less starboard, upper 6.6 mm and lower 7.3 mm.
TEST(WhatIf, PortAndStarboardDifferAsMeasured) {
  const Compilation boat = compiled("smidgeon", {});
  ASSERT_TRUE(boat.checked);
  std::map<std::string, double> lengths;
  for (std::size_t i = 0; i < boat.rig->stays.size(); ++i)
    lengths[boat.rig->stays[i].name] = pin_to_pin(boat, i);
  EXPECT_NEAR(lengths["upper-shroud.port"] - lengths["upper-shroud.starboard"], 6.6, 0.05);
  EXPECT_NEAR(lengths["lower-shroud.port"] - lengths["lower-shroud.starboard"], 7.3, 0.05);
}

// Lashings of 38 + 160 + 46 mm become a thimble of 16 and a turnbuckle of 280 mm: the body of 11 382 mm
// becomes 11 330 mm, by hand.
TEST(WhatIf, TurnbucklesForLashingsShortenTheBody) {
  const Compilation lashed = compiled("pellimoor", {});
  const Compilation screwed = compiled("pellimoor-turnbuckles", {});
  ASSERT_TRUE(lashed.checked && screwed.checked);
  const auto body = [](const Compilation& boat) {
    for (std::size_t i = 0; i < boat.rig->stays.size(); ++i)
      if (boat.rig->stays[i].name == "cap-shroud.port")
        return boat.derived->stays[i].body.known().millimetres();
    return 0.0;
  };
  EXPECT_NEAR(body(lashed), 11382.0, 0.5);
  EXPECT_NEAR(body(screwed), 11330.0, 0.5);
  EXPECT_NEAR(body(lashed) - body(screwed), 52.0, 1e-6);
  for (std::size_t i = 0; i < screwed.rig->stays.size(); ++i) {
    if (screwed.rig->stays[i].base == "cap-shroud") {
      const TakeUp& adjuster = screwed.derived->stays[i].adjusters.at(0);
      EXPECT_NEAR(adjuster.to_tighten.millimetres(), 55.0, 1e-6);
      EXPECT_NEAR(adjuster.to_slacken.millimetres(), 55.0, 1e-6);
    }
  }
}

/// Where a point lies, in millimetres: x, y, z; NaN where there is none.
std::array<double, 3> place_of(const Compilation& compilation, const std::string& name) {
  for (const Point& point : compilation.rig->points)
    if (point.name == name)
      return {point.position.x.millimetres(), point.position.y.millimetres(),
              point.position.z.millimetres()};
  return {NAN, NAN, NAN};
}

void expect_place(const Compilation& compilation, const std::string& name,
                  const std::array<double, 3>& millimetres) {
  const std::array<double, 3> found = place_of(compilation, name);
  for (std::size_t i = 0; i < 3; ++i)
    EXPECT_NEAR(found[i], millimetres[i], 1e-6) << name << " "
                                                << "xyz"[i];
}

/// A boat with a plate that was measured on one side by a layer, and set from outside.
Compilation measured_to_port(std::vector<std::string> settings, std::string as_of = {}) {
  OneTextReader reader("boat.rig", R"(language 1
boat "Tern" { }
points {
  tang: (-40, 65, 5400) mm mirrored
  plate: (-620, 1430, 1100) mm mirrored drawn
  stem: (4, 0, 1) m
}
layer fitted {
  date: 2026-05-02
  points {
    plate.port: (-622, -1431, 1103) mm measured "tape"
    stem: (4010, 0, 1000) mm measured
  }
}
)");
  return compile(
      "boat.rig", reader,
      {.settings = std::move(settings), .folders = {}, .as_of = std::move(as_of), .rig_only = true});
}

// What was measured of the other two coordinates stays, on each side.
TEST(WhatIf, ACoordinateLeavesTheOthersAsLayersHaveThem) {
  const Compilation both = measured_to_port({"plate.z=1.2 m"});
  ASSERT_TRUE(both.rig);
  expect_place(both, "plate.port", {-622, -1431, 1200});
  expect_place(both, "plate.starboard", {-620, 1430, 1200});
  const Compilation port = measured_to_port({"plate.port.z=1.2 m"});
  ASSERT_TRUE(port.rig);
  expect_place(port, "plate.port", {-622, -1431, 1200});
  expect_place(port, "plate.starboard", {-620, 1430, 1100});
  const Compilation starboard = measured_to_port({"plate.starboard.z=1.2 m"});
  ASSERT_TRUE(starboard.rig);
  expect_place(starboard, "plate.port", {-622, -1431, 1103});
  expect_place(starboard, "plate.starboard", {-620, 1430, 1200});
  const Compilation stem = measured_to_port({"stem.z=1.1 m"});
  ASSERT_TRUE(stem.rig);
  expect_place(stem, "stem", {4010, 0, 1100});
}

TEST(WhatIf, CoordinatesOfOnePointAreSetOneAfterTheOther) {
  const Compilation tang = measured_to_port({"tang.z=5500 mm", "tang.x=-50 mm", "plate.port.x=-1 m"});
  ASSERT_TRUE(tang.rig);
  expect_place(tang, "tang.port", {-50, -65, 5500});
  expect_place(tang, "tang.starboard", {-50, 65, 5500});
  expect_place(tang, "plate.port", {-1000, -1431, 1103});
  const Compilation one = measured_to_port({"tang.port.z=5500 mm"});
  ASSERT_TRUE(one.rig);
  expect_place(one, "tang.port", {-40, -65, 5500});
  expect_place(one, "tang.starboard", {-40, 65, 5400});
}

// Each setting goes on from the one before it, whichever of the two is for one side alone.
TEST(WhatIf, ASideAndBothSidesAreSetOneAfterTheOther) {
  const Compilation side_last = measured_to_port({"tang.x=-50 mm", "tang.port.z=5500 mm"});
  ASSERT_TRUE(side_last.rig);
  expect_place(side_last, "tang.port", {-50, -65, 5500});
  expect_place(side_last, "tang.starboard", {-50, 65, 5400});
  const Compilation side_first = measured_to_port({"tang.port.z=5500 mm", "tang.x=-50 mm"});
  ASSERT_TRUE(side_first.rig);
  expect_place(side_first, "tang.port", {-50, -65, 5500});
  expect_place(side_first, "tang.starboard", {-50, 65, 5400});
  const Compilation whole = measured_to_port({"tang=(-40, 70, 5000) mm", "tang.z=5100 mm"});
  ASSERT_TRUE(whole.rig);
  expect_place(whole, "tang.port", {-40, -70, 5100});
  expect_place(whole, "tang.starboard", {-40, 70, 5100});
  const Compilation replaced = measured_to_port({"plate=(-600, 1400, 1000) mm", "plate.port.x=-1 m"});
  ASSERT_TRUE(replaced.rig);
  expect_place(replaced, "plate.port", {-1000, -1400, 1000});
  expect_place(replaced, "plate.starboard", {-600, 1400, 1000});
}

TEST(WhatIf, BeforeALayerItIsAsItWasThen) {
  const Compilation designed = measured_to_port({"plate.z=1.2 m"}, "designed");
  ASSERT_TRUE(designed.rig);
  expect_place(designed, "plate.port", {-620, -1430, 1200});
}

TEST(WhatIf, OfAPointThatIsNotThereNothingIsSet) {
  for (const char* setting : {"plate.w=1 m", "plate.port.z.x=1 m", "stem.port.z=1 m"})
    EXPECT_FALSE(measured_to_port({setting}).rig) << setting;
}

} // namespace
} // namespace sheerpole::what_if_test
