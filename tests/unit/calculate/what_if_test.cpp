#include "service/compile.hpp"
#include "source/file_reader.hpp"
#include "unit/calculate/reference_rows.hpp"

#include <gtest/gtest.h>

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

} // namespace
} // namespace sheerpole::what_if_test
