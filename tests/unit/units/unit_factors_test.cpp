#include "gnu_units.hpp"

#include "units/parse_quantity.hpp"
#include "units/unit.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>
#include <set>

namespace sheerpole::unit_factors_test {
namespace {

/// A unit of ours as GNU units writes it, and the coherent unit to give it in.
struct Counterpart {
  std::string_view name;
  std::string theirs;
  std::string coherent;
  Dimension dimension;
};

const std::vector<Counterpart>& counterparts() {
  static const std::vector<Counterpart> list{
      {"mm", "mm", "m", dimension::length},
      {"cm", "cm", "m", dimension::length},
      {"m", "m", "m", dimension::length},
      {"in", "inch", "m", dimension::length},
      {"ft", "foot", "m", dimension::length},
      {"mm2", "mm^2", "m^2", dimension::area},
      {"N", "newton", "kg m / s^2", dimension::force},
      {"kN", "kilonewton", "kg m / s^2", dimension::force},
      {"kgf", "kgf", "kg m / s^2", dimension::force},
      {"lbf", "lbf", "kg m / s^2", dimension::force},
      {"kg", "kg", "kg", dimension::mass},
      {"g", "gram", "kg", dimension::mass},
      {"lb", "lb", "kg", dimension::mass},
      {"t", "tonne", "kg", dimension::mass},
      {"deg", "degree", "radian", dimension::angle},
      {"rad", "radian", "radian", dimension::angle},
      {"degC", "tempC(1)", "K", dimension::temperature_point},
      {"degF", "tempF(1)", "K", dimension::temperature_point},
      {"K", "K", "K", dimension::temperature_difference},
      {"ppm/K", "ppm / K", "1 / K", dimension::per_kelvin},
      {"Nm", "newton m", "kg m^2 / s^2", dimension::moment},
      {"kNm", "kilonewton m", "kg m^2 / s^2", dimension::moment},
      {"kNm2", "kilonewton m^2", "kg m^3 / s^2", dimension::bending_stiffness},
      {"lbf-ft", "lbf foot", "kg m^2 / s^2", dimension::moment},
      {"MPa", "megapascal", "kg / m s^2", dimension::stress},
      {"GPa", "gigapascal", "kg / m s^2", dimension::stress},
      {"psi", "psi", "kg / m s^2", dimension::stress},
      {"kg/m", "kg/m", "kg/m", dimension::linear_mass},
      {"g/m", "gram/m", "kg/m", dimension::linear_mass},
      {"lb/ft", "lb/foot", "kg/m", dimension::linear_mass},
      {"%", "percent", "1", dimension::number},
      {"J/mol", "joule/mol", "kg m^2 / s^2 mol", dimension::molar_energy},
      {"kJ/mol", "kilojoule/mol", "kg m^2 / s^2 mol", dimension::molar_energy},
      {"nm3", "nm^3", "m^3", dimension::volume},
      {"mm/kN", "mm/kilonewton", "s^2 / kg", dimension::give},
      {"Hz", "hertz", "1/s", dimension::frequency},
      {"turns", "1", "1", dimension::turns},      // counted; there a turn is an angle
      {"d", "1", "1", dimension::rope_diameters}, // counted
      {"fids", "7*3", "1",
       dimension::rope_diameters}, // seven circumferences of three diameters, rope-trade identity
      {"fid", "7*3", "1", dimension::rope_diameters},
      {"s", "s", "s", dimension::time},
      {"min", "minute", "s", dimension::time},
      {"h", "hour", "s", dimension::time},
      {"days", "day", "s", dimension::time},
      {"day", "day", "s", dimension::time},
      {"months", "julianyear/12", "s", dimension::time},
      {"month", "julianyear/12", "s", dimension::time},
      {"years", "julianyear", "s", dimension::time},
      {"year", "julianyear", "s", dimension::time},
  };
  return list;
}

TEST(UnitFactors, EveryUnitHasItsDimensionAndACounterpart) {
  ASSERT_EQ(counterparts().size(), all_units().size());
  for (const Counterpart& counterpart : counterparts()) {
    const Unit* unit = find_unit(counterpart.name);
    ASSERT_NE(unit, nullptr) << counterpart.name;
    EXPECT_EQ(unit->dimension, counterpart.dimension) << counterpart.name;
    EXPECT_FALSE(unit->meaning.empty()) << counterpart.name;
    EXPECT_FALSE(unit->source.empty()) << counterpart.name;
  }
}

TEST(UnitFactors, NamesAreUniqueAndExact) {
  std::set<std::string_view> names;
  for (const Unit& unit : all_units())
    EXPECT_TRUE(names.insert(unit.name).second) << unit.name;
  for (const char* other : {"MM", "Mm", "kn", "KG", "inch", "", " mm", "mm ", "turn", "ton"})
    EXPECT_EQ(find_unit(other), nullptr) << other;
}

TEST(UnitFactors, AgreeWithGnuUnits) {
  std::vector<test::Conversion> questions;
  for (const Counterpart& counterpart : counterparts())
    questions.push_back({counterpart.theirs, counterpart.coherent});
  const auto answer = test::ask_gnu_units(questions);
  if (!answer)
    GTEST_SKIP() << "GNU units is not installed";
  ASSERT_EQ(answer->values.size(), questions.size()) << answer->transcript;
  for (std::size_t i = 0; i < questions.size(); ++i) {
    const std::string text = "1 " + std::string(counterparts()[i].name);
    const auto quantity = parse_quantity(text);
    ASSERT_TRUE(quantity.ok()) << text;
    EXPECT_NEAR(quantity.value().si, answer->values[i], 4e-16 * std::abs(answer->values[i])) << text;
    const Unit& unit = *find_unit(counterparts()[i].name);
    EXPECT_NEAR(unit.factor + unit.offset, answer->values[i], 4e-16 * std::abs(answer->values[i])) << text;
  }
}

// Yard and pound agreement of 1959 (NIST SP 811, appendix B); standard gravity of the 3rd CGPM, 1901.
TEST(UnitFactors, ExactOnesAreExact) {
  EXPECT_EQ(find_unit("in")->factor, 0.0254);
  EXPECT_EQ(find_unit("ft")->factor, 0.3048);
  EXPECT_EQ(find_unit("lb")->factor, 0.45359237);
  EXPECT_EQ(find_unit("kgf")->factor, 9.80665);
  EXPECT_EQ(find_unit("lbf")->factor, 4.4482216152605);
}

// From memory of NIST SP 811, appendix B.8, as printed there to seven figures.
TEST(UnitFactors, AgreeWithThePrintedTable) {
  EXPECT_NEAR(find_unit("psi")->factor, 6.894757e3, 0.0005);
  EXPECT_NEAR(find_unit("lbf-ft")->factor, 1.355818, 5e-7);
  EXPECT_NEAR(find_unit("lb/ft")->factor, 1.488164, 5e-7);
  EXPECT_NEAR(find_unit("deg")->factor, 1.745329e-2, 5e-9);
}

TEST(UnitFactors, OneLengthWrittenTwoWaysIsTheSameNumber) {
  const auto si = [](std::string_view text) { return parse_quantity(text).value().si; };
  EXPECT_EQ(si("11_642 mm"), si("11.642 m"));
  EXPECT_DOUBLE_EQ(si("1164.2 cm"), si("11.642 m")); // 1164.2 has a last bit of its own
  EXPECT_EQ(si("38 ft"), si("38'"));
  EXPECT_EQ(si("38 ft"), si("456 in"));
  EXPECT_EQ(si("38' 7 3/8\""), si("463.375 in"));
  EXPECT_EQ(si("38' 7 3/8\""), si("463 3/8\""));
  EXPECT_EQ(si("850 g"), si("0.85 kg"));
  EXPECT_EQ(si("16 ppm/K"), 16e-6);
  EXPECT_EQ(si("54.15 mm2"), 54.15e-6);
  EXPECT_EQ(si("7 %"), 0.07);
}

TEST(UnitFactors, TemperaturesMeetAtTheFixedPoints) {
  const auto si = [](std::string_view text) { return parse_quantity(text).value().si; };
  EXPECT_DOUBLE_EQ(si("32 degF"), 273.15);
  EXPECT_DOUBLE_EQ(si("212 degF"), 373.15);
  EXPECT_DOUBLE_EQ(si("0 degC"), 273.15);
  EXPECT_NEAR(si("-459.67 degF"), 0.0, 1e-12);
  EXPECT_DOUBLE_EQ(si("180 deg"), std::numbers::pi);
}

} // namespace
} // namespace sheerpole::unit_factors_test
