#include "service/compile.hpp"
#include "source/file_reader.hpp"
#include "unit/calculate/reference_rows.hpp"
#include "units/format_length.hpp"
#include "units/parse_quantity.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <string>
#include <vector>

// The lengths of the example boats against values computed outside the project; the tables say how.

namespace sheerpole::reference_lengths_test {
namespace {

struct Row {
  std::string stay, quantity, value, unit, feet_inches;
};

std::vector<Row> rows_of(const std::string& boat) {
  std::vector<Row> rows;
  for (const std::vector<std::string>& cells : reference_rows(boat, 5))
    rows.push_back({cells[0], cells[1], cells[2], cells[3], cells[4]});
  return rows;
}

/// What a printed value stands for: half of its last digit either way. A cut is the sum of two rounded
/// numbers.
double tolerance_mm(const Row& row) {
  const std::size_t point = row.value.find('.');
  const double last_digit =
      point == std::string::npos ? 1.0 : std::pow(10.0, -static_cast<double>(row.value.size() - point - 1));
  return last_digit / 2 + (row.quantity == "cut" ? 0.5 : 0.0) + 1e-6;
}

const LengthSum* sum_of(const DerivedStay& stay, const std::string& quantity) {
  if (quantity == "pin-to-pin")
    return &stay.pin_to_pin;
  if (quantity == "body")
    return &stay.body;
  if (quantity == "cut" && stay.pieces.size() == 1)
    return &stay.pieces[0].cut;
  if (quantity.rfind("piece ", 0) == 0)
    for (const Piece& piece : stay.pieces)
      if (quantity == "piece " + std::to_string(piece.number))
        return &piece.body;
  return nullptr;
}

class ReferenceLengths : public testing::TestWithParam<const char*> {};

TEST_P(ReferenceLengths, AgreeWithTheTableOfTheBoat) {
  const std::string boat = GetParam();
  DiskFileReader reader;
  const Compilation compiled = compile(std::string(SHEERPOLE_EXAMPLES_DIR) + "/" + boat + ".rig", reader);
  for (const Diagnostic& finding : compiled.findings)
    EXPECT_NE(finding.severity, Severity::error) << finding.message;
  ASSERT_TRUE(compiled.rig && compiled.derived);
  const std::vector<Row> rows = rows_of(boat);
  ASSERT_FALSE(rows.empty());

  for (const Row& row : rows) {
    SCOPED_TRACE(boat + " " + row.stay + " " + row.quantity + " " + row.value);
    const auto expected = parse_quantity(row.value + " " + row.unit);
    ASSERT_TRUE(expected.ok());
    int met = 0;
    for (const DerivedStay& stay : compiled.derived->stays) {
      const Stay& named = (*compiled.rig)[stay.stay];
      if (named.base != row.stay && named.name != row.stay)
        continue;
      ++met;
      const LengthSum* sum = sum_of(stay, row.quantity);
      ASSERT_NE(sum, nullptr);
      EXPECT_FALSE(sum->unknown);
      EXPECT_NEAR(sum->known().millimetres(), expected.value().si * 1000.0, tolerance_mm(row));
      if (!row.feet_inches.empty()) {
        EXPECT_EQ(format_feet_inches(sum->known(), 16), row.feet_inches);
      }
    }
    EXPECT_GE(met, 1);
  }
}

// Every stay of the example is in the table, so that a forgotten one is noticed.
TEST_P(ReferenceLengths, CoverEveryStay) {
  const std::string boat = GetParam();
  DiskFileReader reader;
  const Compilation compiled = compile(std::string(SHEERPOLE_EXAMPLES_DIR) + "/" + boat + ".rig", reader);
  ASSERT_TRUE(compiled.rig);
  const std::vector<Row> rows = rows_of(boat);
  for (const Stay& stay : compiled.rig->stays) {
    bool listed = false;
    for (const Row& row : rows)
      listed = listed || row.stay == stay.base || row.stay == stay.name;
    EXPECT_TRUE(listed) << stay.name;
  }
}

INSTANTIATE_TEST_SUITE_P(Boats, ReferenceLengths,
                         testing::Values("pellimoor", "grisolde", "oddnys-wager", "smidgeon", "tansyholm",
                                         "skirlpool"),
                         [](const auto& boat) {
                           std::string name = boat.param;
                           std::erase(name, '-');
                           return name;
                         });

} // namespace
} // namespace sheerpole::reference_lengths_test
