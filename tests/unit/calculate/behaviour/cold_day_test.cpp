#include "calculate/behaviour/thermal_table.hpp"
#include "service/compile.hpp"
#include "source/file_reader.hpp"
#include "wording/say.hpp"

#include <gtest/gtest.h>

#include <map>

namespace sheerpole::cold_day_test {
namespace {

// Pellimoor, set up at 25 degC and sailed at 5 degC: an invented boat whose numbers were computed outside
// the project. Mast of 24e-6 /K, HMPE of -12e-6 /K. Change of the path to 0.1 mm, growth of the bodies to
// 0.1 mm.
TEST(ColdDay, OfPellimoorComesOutAsInItsTable) {
  DiskFileReader reader;
  const Compilation rig = compile(std::string(SHEERPOLE_EXAMPLES_DIR) + "/pellimoor.rig", reader);
  ASSERT_TRUE(rig.derived);
  const std::map<std::string, std::pair<double, double>> table{
      {"forestay", {-5.2, -3.6}}, // the wire shrinks: 16e-6 x 20 x 11 303
      {"cap-shroud", {-5.3, 2.7}},
      {"intermediate", {-3.5, 1.9}},
      {"lower-shroud", {-1.8, 1.0}},
      {"backstay", {-5.8, 3.3}}};
  std::size_t met = 0;
  for (const DerivedStay& stay : rig.derived->stays) {
    const ThermalTable cold =
        thermal_table(*rig.rig, (*rig.rig)[stay.stay], stay.pieces, {5.0 + 273.15, 25.0 + 273.15});
    ASSERT_EQ(cold.rows.size(), 2u) << (cold.not_checked.empty() ? ""
                                                                 : say(*rig.rig, cold.not_checked.front()));
    const auto expected = table.find((*rig.rig)[stay.stay].base);
    ASSERT_NE(expected, table.end()) << (*rig.rig)[stay.stay].base;
    EXPECT_NEAR(cold.rows[0].path.millimetres(), expected->second.first, 0.0501);
    EXPECT_NEAR(cold.rows[0].line.millimetres(), expected->second.second, 0.0501);
    EXPECT_NEAR(cold.rows[1].slack().millimetres(), 0.0, 1e-9);
    ++met;
  }
  EXPECT_EQ(met, 8u);
}

} // namespace
} // namespace sheerpole::cold_day_test
