#include "calculate/change/sensitivity.hpp"

#include "service/compile.hpp"
#include "source/file_reader.hpp"
#include "unit/calculate/compiled_rig.hpp"
#include "unit/calculate/reference_rows.hpp"

#include <gtest/gtest.h>

#include <cmath>

namespace sheerpole::sensitivity_test {
namespace {

Compilation example(const std::string& name, std::vector<std::string> settings = {}) {
  DiskFileReader reader;
  return compile(std::string(SHEERPOLE_EXAMPLES_DIR) + "/" + name + ".rig", reader,
                 {.settings = std::move(settings), .folders = {}});
}

const Sensitivity* find(const Compilation& boat, const std::vector<Sensitivity>& all,
                        const std::string& stay, const std::string& what, SmallChange by) {
  for (const Sensitivity& one : all)
    if ((*boat.rig)[one.stay].name == stay && one.what == what && one.by == by)
      return &one;
  return nullptr;
}

// Every row against a rig that is compiled with the thing set otherwise.
void expect_as_compiled(const std::string& name, const std::string& setting, const std::string& what,
                        SmallChange by) {
  const Compilation boat = example(name);
  const Compilation set = example(name, {setting});
  ASSERT_TRUE(boat.checked && set.checked) << setting;
  const auto all = sensitivities(*boat.rig, *boat.derived);
  std::size_t met = 0;
  for (std::size_t i = 0; i < boat.derived->stays.size(); ++i) {
    const DerivedStay& was = boat.derived->stays[i];
    const DerivedStay& is = set.derived->stays[i];
    const Sensitivity* found = find(boat, all, (*boat.rig)[was.stay].name, what, by);
    const double expected = (is.pin_to_pin.known() - was.pin_to_pin.known()).millimetres();
    if (found == nullptr) {
      EXPECT_NEAR(expected, 0.0, 0.005) << (*boat.rig)[was.stay].name;
      continue;
    }
    ++met;
    EXPECT_NEAR(found->pin_to_pin.millimetres(), expected, 1e-6) << (*boat.rig)[was.stay].name;
    EXPECT_NEAR(found->body.millimetres(), (is.body.known() - was.body.known()).millimetres(), 1e-6);
  }
  EXPECT_GE(met, 1u) << setting;
}

TEST(Sensitivity, OfASparIsThatOfTheRigWithItTurned) {
  expect_as_compiled("oddnys-wager", "steeve=1 deg", "bowsprit", SmallChange::further_up);
}

TEST(Sensitivity, OfASparRaisedIsThatOfTheRigWithItsHeelHigher) {
  expect_as_compiled("grisolde", "step-packing=10 mm", "mast", SmallChange::up);
}

TEST(Sensitivity, OfAPointIsThatOfTheRigWithItMoved) {
  expect_as_compiled("grisolde", "stem=(5.180, 0.000, 1.750) m", "stem", SmallChange::forward);
  expect_as_compiled("grisolde", "stem=(5.170, 0.000, 1.760) m", "stem", SmallChange::up);
}

// Against lengths computed outside the project (tests/reference/what-if.tsv): 25 mm of packing is two and a
// half times 10 mm but for the bend of the way, which is far below a tenth of a millimetre.
TEST(Sensitivity, AgreesWithTheWhatIfTable) {
  const Compilation boat = example("grisolde");
  const auto all = sensitivities(*boat.rig, *boat.derived);
  std::size_t met = 0;
  for (const auto& cells : reference_rows("what-if", 5)) {
    if (cells[0] != "grisolde")
      continue;
    for (const Stay& stay : boat.rig->stays) {
      if (stay.base != cells[2])
        continue;
      const Sensitivity* found = find(boat, all, stay.name, "mast", SmallChange::up);
      ASSERT_NE(found, nullptr) << stay.name;
      EXPECT_NEAR(2.5 * found->pin_to_pin.millimetres(), std::stod(cells[4]) - std::stod(cells[3]), 0.11);
      ++met;
    }
  }
  EXPECT_GE(met, 8u);
}

TEST(Sensitivity, ALongerPartLeavesSoMuchLessForTheLine) {
  const Compilation boat = example("pellimoor");
  const auto all = sensitivities(*boat.rig, *boat.derived);
  const Sensitivity* found = find(boat, all, "cap-shroud.port", "lashing-260", SmallChange::set_longer);
  ASSERT_NE(found, nullptr);
  EXPECT_DOUBLE_EQ(found->body.millimetres(), -10.0);
  EXPECT_DOUBLE_EQ(found->pin_to_pin.millimetres(), 0.0);
}

// A reading holds for the boat as she stands: a point that is stated otherwise does not move it.
TEST(Sensitivity, SaysWhereTheLengthIsRead) {
  const Compilation boat = test::compiled(R"(language 1
points {
  top: (0, 0, 10) m drawn
  stem: (3, 0, 1) m drawn
}
wire wire-6 {
  construction: "1x19"
  size: "6 mm"
}
stay forestay {
  path: top > stem
  line: wire-6
  stack {
    line
  }
}
reading of forestay {
  method: tape
  runs: 9_480 mm
}
)");
  ASSERT_TRUE(boat.rig);
  const auto all = sensitivities(*boat.rig, *boat.derived);
  ASSERT_FALSE(all.empty());
  for (const Sensitivity& one : all)
    EXPECT_FALSE(one.counts) << one.what;
  // 10 mm up on a chord of 3 and 9: 10 x 9 / sqrt(90), and the half of a second order.
  const Sensitivity* found = find(boat, all, "forestay", "top", SmallChange::up);
  ASSERT_NE(found, nullptr);
  EXPECT_NEAR(found->pin_to_pin.millimetres(), 90.0 / std::sqrt(90.0), 0.001);
}

} // namespace
} // namespace sheerpole::sensitivity_test
