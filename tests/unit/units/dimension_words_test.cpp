#include "units/dimension.hpp"
#include "units/unit.hpp"

#include <gtest/gtest.h>

namespace sheerpole::dimension_words_test {
namespace {

TEST(DimensionWords, NamedOnesAreSaidInARiggersWords) {
  EXPECT_EQ(describe(dimension::number), "a plain number");
  EXPECT_EQ(describe(dimension::length), "a length");
  EXPECT_EQ(describe(dimension::area), "an area");
  EXPECT_EQ(describe(dimension::mass), "a mass");
  EXPECT_EQ(describe(dimension::time), "a time");
  EXPECT_EQ(describe(dimension::force), "a force");
  EXPECT_EQ(describe(dimension::moment), "a moment");
  EXPECT_EQ(describe(dimension::stress), "a stress");
  EXPECT_EQ(describe(dimension::linear_mass), "a mass per length");
  EXPECT_EQ(describe(dimension::angle), "an angle");
  EXPECT_EQ(describe(dimension::temperature_point), "a temperature");
  EXPECT_EQ(describe(dimension::temperature_difference), "a temperature difference");
  EXPECT_EQ(describe(dimension::per_kelvin), "a coefficient per kelvin");
  EXPECT_EQ(describe(dimension::rope_diameters), "a number of rope diameters");
  EXPECT_EQ(describe(dimension::turns), "a number of turns");
}

TEST(DimensionWords, OthersAreSpeltInBaseUnits) {
  EXPECT_EQ(describe(dimension::area + dimension::mass), "a quantity in m2 kg");
  EXPECT_EQ(describe(dimension::force - dimension::length), "a quantity in kg s-2");
  EXPECT_EQ(describe(dimension::length - dimension::turns), "a quantity in m turns-1");
}

TEST(DimensionWords, ProductsOfDimensionsAreThoseOfMechanics) {
  EXPECT_EQ(dimension::force + dimension::length, dimension::moment);
  EXPECT_EQ(dimension::force - dimension::area, dimension::stress);
  EXPECT_EQ(dimension::mass - dimension::length, dimension::linear_mass);
  EXPECT_EQ(dimension::number - dimension::temperature_difference, dimension::per_kelvin);
  EXPECT_EQ(dimension::length + dimension::length, dimension::area);
  EXPECT_TRUE((dimension::length - dimension::length).is_plain_number());
  EXPECT_FALSE(dimension::angle.is_plain_number());
  EXPECT_FALSE(dimension::rope_diameters.is_plain_number());
  EXPECT_FALSE(dimension::turns.is_plain_number());
}

} // namespace
} // namespace sheerpole::dimension_words_test
