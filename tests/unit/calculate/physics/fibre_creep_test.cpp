#include "calculate/physics/fibre_creep.hpp"

#include "calculate/physics/physical_values.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <gtest/gtest.h>
#include <limits>
#include <rapidcheck/gtest.h>
#include <vector>

namespace sheerpole::fibre_creep_test {
namespace creep_rate_tests {
namespace {

// O'Connor and Robbins, J. Chem. Phys. 153, 144904 (2020): 1.5 eV and 45 cubic angstrom. Only ratios are
// checked; no rate of any rope is known here.
constexpr CreepActivation activation{144.7e3, 45e-30};
constexpr double celsius = 273.15;

// SI Brochure, 9th edition; R printed there as 8.31446261815324.
TEST(CreepRate, ConstantsAreThoseOfTheSi) {
  EXPECT_DOUBLE_EQ(gas_constant_joules_per_mole_kelvin, 8.31446261815324);
}

// From 20 to 30 degC by the exponential alone, worked by hand: 4.94 for 118 kJ/mol (older fits, from memory
// of Wilding and Ward), 7.09 for 144.7 kJ/mol.
TEST(CreepRate, TenKelvinAlone) {
  EXPECT_NEAR(*thermal_rate_factor(118e3, 30 + celsius, 20 + celsius), 4.94, 0.005);
  EXPECT_NEAR(*thermal_rate_factor(144.7e3, 30 + celsius, 20 + celsius), 7.09, 0.005);
}

// sinh(0.70 GPa v / kT) / sinh(0.35 GPa v / kT) at 293.15 K is 49.0, by hand 2 cosh(3.8914).
TEST(CreepRate, TwiceTheStress) {
  EXPECT_NEAR(*creep_rate_ratio(activation, {293.15, 0.70e9}, {293.15, 0.35e9}), 49.0, 0.05);
}

// With s v / kT the same in both, the sinh terms cancel and the exponential is left; at one stress they
// lower it a little, by sinh(3.7630) / sinh(3.8914) = 0.8795.
TEST(CreepRate, TenKelvinUnderLoad) {
  const double alone = *thermal_rate_factor(144.7e3, 303.15, 293.15);
  EXPECT_NEAR(*creep_rate_ratio(activation, {303.15, 0.35e9 * 303.15 / 293.15}, {293.15, 0.35e9}), alone,
              1e-9);
  EXPECT_NEAR(*creep_rate_ratio(activation, {303.15, 0.35e9}, {293.15, 0.35e9}) / alone, 0.8795, 0.0002);
}

TEST(CreepRate, OfTheReferenceIsTheReference) {
  EXPECT_NEAR(*creep_rate(3e-9, activation, {293.15, 0.35e9}, {293.15, 0.35e9}), 3e-9, 1e-20);
  EXPECT_NEAR(*creep_rate(3e-9, activation, {293.15, 0.70e9}, {293.15, 0.35e9}), 3e-9 * 49.0, 3e-9 * 0.05);
}

TEST(CreepRate, OfNoLoadIsNone) {
  EXPECT_EQ(*creep_rate_ratio(activation, {293.15, 0}, {293.15, 0.35e9}), 0);
  EXPECT_EQ(*creep_rate(1e-9, activation, {293.15, 0}, {293.15, 0.35e9}), 0);
}

// sinh(1000) is no number, the ratio to sinh(999) is e.
TEST(CreepRate, LargeStressesKeepTheirRatio) {
  const double unit = boltzmann_joules_per_kelvin * 293.15 / 45e-30; // stress for s v / kT = 1
  EXPECT_NEAR(*creep_rate_ratio(activation, {293.15, 1000 * unit}, {293.15, 999 * unit}), std::exp(1.0),
              1e-9);
  EXPECT_FALSE(creep_rate_ratio(activation, {293.15, 1000 * unit}, {293.15, unit}));
}

// sinh x is x for small x.
TEST(CreepRate, SmallStressesAreInProportion) {
  EXPECT_NEAR(*creep_rate_ratio(activation, {293.15, 30}, {293.15, 10}), 3, 1e-9);
}

TEST(CreepRate, IsNothingOutOfRange) {
  const double nan = std::numeric_limits<double>::quiet_NaN();
  const CreepState good{293.15, 1e8};
  EXPECT_FALSE(creep_rate_ratio({0, 45e-30}, good, good));
  EXPECT_FALSE(creep_rate_ratio({1e5, 0}, good, good));
  EXPECT_FALSE(creep_rate_ratio({nan, 45e-30}, good, good));
  EXPECT_FALSE(creep_rate_ratio(activation, {0, 1e8}, good));
  EXPECT_FALSE(creep_rate_ratio(activation, {-10, 1e8}, good));
  EXPECT_FALSE(creep_rate_ratio(activation, {293.15, -1}, good));
  EXPECT_FALSE(creep_rate_ratio(activation, {293.15, nan}, good));
  EXPECT_FALSE(creep_rate_ratio(activation, {293.15, std::numeric_limits<double>::infinity()}, good));
  EXPECT_FALSE(creep_rate_ratio(activation, good, {293.15, 0}));
  EXPECT_FALSE(creep_rate(-1, activation, good, good));
  EXPECT_FALSE(creep_rate(nan, activation, good, good));
  EXPECT_FALSE(thermal_rate_factor(1e5, 0, 293.15));
  EXPECT_FALSE(thermal_rate_factor(nan, 300, 293.15));
}

RC_GTEST_PROP(CreepRate, RatiosMultiplyAlongAChain, ()) {
  const auto state = [] {
    return CreepState{*rc::gen::inRange(2500, 3500) / 10.0, *rc::gen::inRange(1, 1500) * 1e6};
  };
  const CreepState a = state();
  const CreepState b = state();
  const CreepState c = state();
  const double direct = *creep_rate_ratio(activation, a, c);
  const double by_way = *creep_rate_ratio(activation, a, b) * *creep_rate_ratio(activation, b, c);
  RC_ASSERT(std::abs(by_way / direct - 1.0) < 1e-10);
}

RC_GTEST_PROP(CreepRate, RisesWithStress, ()) {
  const double low = *rc::gen::inRange(1, 1000) * 1e6;
  const double high = low + *rc::gen::inRange(1, 500) * 1e6;
  const double kelvin = *rc::gen::inRange(250, 340);
  RC_ASSERT(*creep_rate_ratio(activation, {kelvin, high}, {kelvin, low}) > 1.0);
}

} // namespace
} // namespace creep_rate_tests

namespace creep_table_tests {
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
} // namespace creep_table_tests

} // namespace sheerpole::fibre_creep_test
