#include "gnu_units.hpp"
#include "spelling_corpus.hpp"

#include "units/parse_quantity.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <map>

namespace sheerpole::length_spellings_test {
namespace {

std::string word_of(QuantityError::Kind kind) {
  using Kind = QuantityError::Kind;
  static const std::map<Kind, std::string> words{{Kind::empty, "empty"},
                                                 {Kind::malformed, "malformed"},
                                                 {Kind::missing_unit, "missing_unit"},
                                                 {Kind::unknown_unit, "unknown_unit"},
                                                 {Kind::decimal_comma, "decimal_comma"},
                                                 {Kind::spaced_number, "spaced_number"},
                                                 {Kind::odd_groups, "odd_groups"},
                                                 {Kind::zero_denominator, "zero_denominator"},
                                                 {Kind::improper_mixed, "improper_mixed"},
                                                 {Kind::too_large, "too_large"}};
  return words.at(kind);
}

/// The coherent unit of what we read; when we took a length for a mass, GNU units refuses the conversion.
std::string coherent_unit(Dimension dimension) {
  if (dimension == dimension::temperature_point)
    return "K";
  std::string unit = "1";
  const auto append = [&](const char* name, int exponent) {
    if (exponent != 0)
      unit += std::string(" ") + name + "^(" + std::to_string(exponent) + ")";
  };
  append("m", dimension.length);
  append("kg", dimension.mass);
  append("s", dimension.time);
  append("K", dimension.temperature);
  append("radian", dimension.angle);
  return unit;
}

TEST(LengthSpellings, CorpusIsLarge) {
  const std::vector<Spelling> spellings = read_spellings();
  std::size_t accepted = 0;
  for (const Spelling& spelling : spellings)
    accepted += spelling.accepted ? 1 : 0;
  EXPECT_GE(accepted, 120u);
  EXPECT_GE(spellings.size() - accepted, 100u);
}

TEST(LengthSpellings, AcceptedOnesAgreeWithGnuUnits) {
  std::vector<Spelling> asked;
  std::vector<Quantity> ours;
  std::vector<test::Conversion> questions;
  for (const Spelling& spelling : read_spellings()) {
    if (!spelling.accepted)
      continue;
    const auto quantity = parse_quantity(spelling.text);
    if (!quantity.ok()) {
      ADD_FAILURE() << "line " << spelling.line << ": refused: " << spelling.text << " ("
                    << word_of(quantity.error().kind) << ")";
      continue;
    }
    asked.push_back(spelling);
    ours.push_back(quantity.value());
    questions.push_back({spelling.value, coherent_unit(quantity.value().dimension)});
  }
  const auto answer = test::ask_gnu_units(questions);
  if (!answer)
    GTEST_SKIP() << "GNU units is not installed";
  ASSERT_EQ(answer->values.size(), questions.size()) << answer->transcript;
  for (std::size_t i = 0; i < asked.size(); ++i)
    EXPECT_NEAR(ours[i].si, answer->values[i], 1e-15 * std::abs(answer->values[i]))
        << "line " << asked[i].line << ": " << asked[i].text;
}

TEST(LengthSpellings, RefusedOnesSayWhyAndWhatWasMeant) {
  for (const Spelling& spelling : read_spellings()) {
    if (spelling.accepted)
      continue;
    const auto quantity = parse_quantity(spelling.text);
    if (quantity.ok()) {
      ADD_FAILURE() << "line " << spelling.line << ": read in silence: " << spelling.text;
      continue;
    }
    const QuantityError& error = quantity.error();
    EXPECT_EQ(word_of(error.kind), spelling.value) << "line " << spelling.line << ": " << spelling.text;
    const std::string suggestion = error.suggestions.empty() ? "-" : error.suggestions.front();
    EXPECT_EQ(suggestion, spelling.suggestion) << "line " << spelling.line << ": " << spelling.text;
    EXPECT_EQ(error.unit.empty(), error.kind != QuantityError::Kind::unknown_unit)
        << "line " << spelling.line;
  }
}

TEST(LengthSpellings, EverySuggestionIsAccepted) {
  for (const Spelling& spelling : read_spellings()) {
    const auto quantity = parse_quantity(spelling.text);
    if (quantity.ok())
      continue;
    for (const std::string& suggestion : quantity.error().suggestions)
      EXPECT_TRUE(parse_quantity(suggestion).ok()) << spelling.text << " -> " << suggestion;
  }
}

TEST(LengthSpellings, BlanksRoundAQuantityAreNotPartOfIt) {
  EXPECT_EQ(parse_quantity("  12 mm\t").value().si, parse_quantity("12 mm").value().si);
  EXPECT_EQ(parse_quantity("\u00A0"
                           "12 mm\u202F")
                .value()
                .si,
            parse_quantity("12 mm").value().si);
}

TEST(LengthSpellings, ADecimalCommaHasBothReadings) {
  const auto refused = parse_quantity("11,815 m");
  ASSERT_FALSE(refused.ok());
  EXPECT_EQ(refused.error().suggestions, (std::vector<std::string>{"11.815 m", "11_815 m"}));
}

TEST(LengthSpellings, TellInWhatALengthIsWritten) {
  for (const char* text : {"38 ft", "38ft 7 in", "38' 7 3/8\"", "38.11'", "-2 ft"})
    EXPECT_EQ(length_unit_of(text), LengthUnit::feet) << text;
  for (const char* text : {"7 3/8 in", "7-3/8\"", "0.5 in"})
    EXPECT_EQ(length_unit_of(text), LengthUnit::inches) << text;
  for (const char* text : {"11_642 mm", "11.642 m", "2 cm"})
    EXPECT_EQ(length_unit_of(text), LengthUnit::metric) << text;
  for (const char* text : {"27 d", "3 kN", "5", "inches"})
    EXPECT_EQ(length_unit_of(text), LengthUnit::none) << text;
}

TEST(LengthSpellings, AnUnknownUnitIsGivenAsWritten) {
  EXPECT_EQ(parse_quantity("12 mmm").error().unit, "mmm");
  EXPECT_EQ(parse_quantity("38 feet 7 inches").error().unit, "feet");
}

} // namespace
} // namespace sheerpole::length_spellings_test
