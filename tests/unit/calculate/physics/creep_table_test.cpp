#include "calculate/physics/creep_table.hpp"

#include "calculate/physics/creep_rate.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <vector>

namespace sheerpole::creep_table_test {
namespace {

// Invented numbers, round so that logarithms can be taken by hand: a decade for each tenth of the break
// load, and a decade for the ten kelvin.
const std::vector<CreepPoint> table{
    {0.1, 293.15, 1e-10}, {0.2, 293.15, 1e-9}, {0.3, 293.15, 1e-8},
    {0.1, 303.15, 1e-9},  {0.2, 303.15, 1e-8}, {0.3, 303.15, 1e-7},
};

double rate(double share, double kelvin) {
  const auto found = creep_rate_from_table(table, share, kelvin);
  EXPECT_TRUE(found) << share << " " << kelvin;
  return found.value_or(0);
}

/// Half-way between the two temperatures of the table in 1/T: 2 / (1/293.15 + 1/303.15) = 298.066 K.
constexpr double middle_kelvin = 2 * 293.15 * 303.15 / (293.15 + 303.15);

TEST(CreepTable, GivesItsOwnPoints) {
  for (const CreepPoint& point : table)
    EXPECT_NEAR(rate(point.share_of_break, point.temperature_kelvin) / point.rate, 1, 1e-12);
}

// By hand: half a decade is a factor of 3.162278.
TEST(CreepTable, IsLogarithmicInLoadAndInReciprocalTemperature) {
  EXPECT_NEAR(rate(0.15, 293.15), 3.162278e-10, 1e-15);
  EXPECT_NEAR(rate(0.25, 303.15), 3.162278e-8, 1e-13);
  EXPECT_NEAR(rate(0.2, middle_kelvin), 3.162278e-9, 1e-14);
  EXPECT_NEAR(rate(0.25, middle_kelvin), 1e-8, 1e-19);
}

// Between two temperatures Arrhenius's law is met exactly: 25 degC from 20 and 30 degC.
TEST(CreepTable, FollowsArrhenius) {
  const std::array points{CreepPoint{0.2, 293.15, 1e-9},
                          CreepPoint{0.2, 303.15, 1e-9 * *thermal_rate_factor(118e3, 303.15, 293.15)}};
  EXPECT_NEAR(*creep_rate_from_table(points, 0.2, 298.15) / 1e-9,
              *thermal_rate_factor(118e3, 298.15, 293.15), 1e-9);
}

TEST(CreepTable, IsNothingBeyondItsPoints) {
  EXPECT_FALSE(creep_rate_from_table(table, 0.0999, 293.15));
  EXPECT_FALSE(creep_rate_from_table(table, 0.3001, 293.15));
  EXPECT_FALSE(creep_rate_from_table(table, 0.2, 293.1));
  EXPECT_FALSE(creep_rate_from_table(table, 0.2, 303.2));
}

TEST(CreepTable, OfNoLoadIsNone) {
  EXPECT_EQ(*creep_rate_from_table(table, 0, 293.15), 0);
  EXPECT_EQ(*creep_rate_from_table(table, 0, 350), 0);
}

// The warmest has no point at 0.3, so between the others it is not asked, and beyond them there is nothing.
TEST(CreepTable, MayHaveFewerLoadsAtSomeTemperatures) {
  std::vector<CreepPoint> ragged = table;
  ragged.push_back({0.2, 298.15, 2e-9});
  ragged.push_back({0.1, 313.15, 1e-8});
  ragged.push_back({0.2, 313.15, 1e-7});
  EXPECT_NEAR(*creep_rate_from_table(ragged, 0.3, middle_kelvin), 3.162278e-8, 1e-13);
  EXPECT_NEAR(*creep_rate_from_table(ragged, 0.2, 298.15), 2e-9, 1e-20);
  EXPECT_TRUE(creep_rate_from_table(ragged, 0.2, 310));
  EXPECT_FALSE(creep_rate_from_table(ragged, 0.3, 310));
}

TEST(CreepTable, OfOneTemperatureAnswersThereOnly) {
  const std::array points{CreepPoint{0.1, 293.15, 1e-10}, CreepPoint{0.2, 293.15, 1e-9}};
  EXPECT_TRUE(creep_rate_from_table(points, 0.15, 293.15));
  EXPECT_TRUE(creep_rate_from_table(points, 0.15, 293.15 + 1e-9)); // 68 degF for 20 degC
  EXPECT_FALSE(creep_rate_from_table(points, 0.15, 293.2));
}

TEST(CreepTable, IsNoneWithoutSoundPoints) {
  const double nan = std::numeric_limits<double>::quiet_NaN();
  EXPECT_FALSE(is_creep_table({}));
  for (const CreepPoint& bad :
       {CreepPoint{0, 293.15, 1e-9}, CreepPoint{0.2, 0, 1e-9}, CreepPoint{0.2, 293.15, 0},
        CreepPoint{nan, 293.15, 1e-9}, CreepPoint{0.2, nan, 1e-9}, CreepPoint{0.2, 293.15, nan}}) {
    const std::array points{CreepPoint{0.1, 293.15, 1e-10}, bad};
    EXPECT_FALSE(is_creep_table(points));
    EXPECT_FALSE(creep_rate_from_table(points, 0.1, 293.15));
  }
  const std::array twice{CreepPoint{0.1, 293.15, 1e-10}, CreepPoint{0.1, 293.15, 2e-10}};
  EXPECT_FALSE(is_creep_table(twice));
  EXPECT_FALSE(creep_rate_from_table(table, -0.1, 293.15));
  EXPECT_FALSE(creep_rate_from_table(table, nan, 293.15));
  EXPECT_FALSE(creep_rate_from_table(table, 0.2, nan));
}

RC_GTEST_PROP(CreepTable, DoesNotCareForTheOrderOfItsPoints, ()) {
  std::vector<CreepPoint> shuffled;
  std::vector<CreepPoint> rest = table;
  while (!rest.empty()) {
    const std::size_t taken = *rc::gen::inRange<std::size_t>(0, rest.size());
    shuffled.push_back(rest[taken]);
    rest.erase(rest.begin() + static_cast<std::ptrdiff_t>(taken));
  }
  const double share = *rc::gen::inRange(100, 301) / 1000.0;
  const double kelvin = 293.15 + *rc::gen::inRange(0, 1001) / 100.0;
  RC_ASSERT(creep_rate_from_table(shuffled, share, kelvin) == creep_rate_from_table(table, share, kelvin));
}

} // namespace
} // namespace sheerpole::creep_table_test
