#include "units/parse_quantity.hpp"

#include <gtest/gtest.h>

namespace sheerpole::smallest_division_test {
namespace {

double mm(const char* written) {
  const auto division = smallest_division(written);
  return division ? division->millimetres() : -1.0;
}

// Arithmetic of the spelling; the inch is 25.4 mm by definition (1959).
TEST(SmallestDivision, IsThatOfTheLastFigure) {
  EXPECT_NEAR(mm("11_642 mm"), 1.0, 1e-12);
  EXPECT_NEAR(mm("11.642 m"), 1.0, 1e-12);
  EXPECT_NEAR(mm("11.64 m"), 10.0, 1e-12);
  EXPECT_NEAR(mm("11642.5 mm"), 0.1, 1e-12);
  EXPECT_NEAR(mm("20 in"), 25.4, 1e-12);
  EXPECT_NEAR(mm("7 3/8 in"), 25.4 / 8, 1e-12);
  EXPECT_NEAR(mm("37 ft 4 1/16 in"), 25.4 / 16, 1e-12);
  EXPECT_NEAR(mm("38' 7 3/8\""), 25.4 / 8, 1e-12);
  EXPECT_NEAR(mm("38.2 ft"), 30.48, 1e-12);
}

TEST(SmallestDivision, IsNotThereForWhatIsNotOneLength) {
  for (const char* text : {"", "12", "3 kN", "2 m + 3 mm", "a", "11_642 mm ± 1 mm", "mm"})
    EXPECT_EQ(mm(text), -1.0) << text;
}

} // namespace
} // namespace sheerpole::smallest_division_test
