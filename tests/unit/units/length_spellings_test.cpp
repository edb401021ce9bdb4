#include "gnu_units.hpp"

#include "units/parse_quantity.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <fstream>
#include <map>
#include <sstream>

namespace sheerpole {
namespace {

struct Spelling {
  int line = 0;
  std::string text;
  bool accepted = false;
  std::string value; ///< an expression of GNU units, or the kind of error
  std::string suggestion;
};

void append_code_point(std::string& text, unsigned code_point) {
  if (code_point < 0x80) {
    text += static_cast<char>(code_point);
  } else if (code_point < 0x800) {
    text += static_cast<char>(0xC0 | code_point >> 6);
    text += static_cast<char>(0x80 | (code_point & 0x3F));
  } else {
    text += static_cast<char>(0xE0 | code_point >> 12);
    text += static_cast<char>(0x80 | (code_point >> 6 & 0x3F));
    text += static_cast<char>(0x80 | (code_point & 0x3F));
  }
}

std::string unescaped(const std::string& field) {
  std::string text;
  for (std::size_t i = 0; i < field.size(); ++i) {
    if (field.compare(i, 2, "\\u") != 0) {
      text += field[i];
      continue;
    }
    append_code_point(text, static_cast<unsigned>(std::stoul(field.substr(i + 2, 4), nullptr, 16)));
    i += 5;
  }
  return text;
}

std::vector<Spelling> read_spellings() {
  std::ifstream file(SHEERPOLE_REFERENCE_DIR "/length_spellings.tsv");
  std::vector<Spelling> spellings;
  std::string line;
  for (int number = 1; std::getline(file, line); ++number) {
    if (line.starts_with('#'))
      continue;
    std::vector<std::string> fields;
    std::stringstream stream(line);
    for (std::string field; std::getline(stream, field, '\t');)
      fields.push_back(field);
    if (fields.size() < 3 || (fields[1] != "accept" && fields[1] != "refuse")) {
      ADD_FAILURE() << "length_spellings.tsv:" << number << ": not a row: " << line;
      continue;
    }
    spellings.push_back({number, unescaped(fields[0]), fields[1] == "accept", fields[2],
                         fields.size() > 3 ? unescaped(fields[3]) : std::string()});
  }
  return spellings;
}

std::string word_of(QuantityError::Kind kind) {
  using Kind = QuantityError::Kind;
  static const std::map<Kind, std::string> words{{Kind::empty, "empty"},
                                                 {Kind::malformed, "malformed"},
                                                 {Kind::missing_unit, "missing_unit"},
                                                 {Kind::unknown_unit, "unknown_unit"},
                                                 {Kind::decimal_comma, "decimal_comma"},
                                                 {Kind::spaced_number, "spaced_number"},
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

TEST(LengthSpellings, AnUnknownUnitIsGivenAsWritten) {
  EXPECT_EQ(parse_quantity("12 mmm").error().unit, "mmm");
  EXPECT_EQ(parse_quantity("38 feet 7 inches").error().unit, "feet");
}

} // namespace
} // namespace sheerpole
