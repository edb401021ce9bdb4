#include "backend/drawing/qr_code.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <set>
#include <string>
#include <variant>
#include <vector>

// Whether a code is read is tried with a reader, tests/golden/back-ends/labels.test. Here is how it is
// drawn.

namespace sheerpole::qr_code_test {
namespace {

/// The black modules of a drawn code, by row and column; `modules` across, without the quiet zone.
std::set<std::pair<int, int>> black_modules(const ShapeGroup& code, PaperPoint corner, double module) {
  std::set<std::pair<int, int>> black;
  for (const DrawnNode& node : code.children) {
    const auto& box = std::get<RectangleShape>(node.content).box;
    const int row = static_cast<int>(std::lround((box.top - corner.y) / module));
    for (int column = static_cast<int>(std::lround((box.left - corner.x) / module));
         column < static_cast<int>(std::lround((box.right - corner.x) / module)); ++column)
      black.insert({row, column});
  }
  return black;
}

// A version 3 code has 29 modules, and 42 bytes fit it at level M: ISO/IEC 18004, tables 1 and 7 (from
// memory).
TEST(QrCode, HasAQuietZoneAndItsThreeEyes) {
  const std::string text = "Pellimoor cap-shroud.port 12997 B a7f3c00e";
  ASSERT_EQ(text.size(), 42u);
  const double side = 37.0; // one millimetre a module, were it of version 3
  const auto code = qr_code(text, {10.0, 20.0}, side, 1.0);
  ASSERT_TRUE(code);
  const auto black = black_modules(*code, {14.0, 24.0}, 1.0);
  for (const auto& [row, column] : black) {
    EXPECT_TRUE(row >= 0 && row < 29 && column >= 0 && column < 29) << row << " " << column;
  }
  // An eye: a ring of 7, white inside it, 3 by 3 in the middle.
  for (const auto& [top, left] : {std::pair{0, 0}, {0, 22}, {22, 0}})
    for (int row = 0; row < 7; ++row)
      for (int column = 0; column < 7; ++column) {
        const int ring = std::max(std::abs(row - 3), std::abs(column - 3));
        EXPECT_EQ(black.count({top + row, left + column}) == 1u, ring != 2) << row << " " << column;
      }
  // Timing: every other module between the eyes.
  for (int i = 8; i < 21; ++i)
    EXPECT_EQ(black.count({6, i}) == 1u, i % 2 == 0) << i;
}

TEST(QrCode, IsNotDrawnWhereItsModulesWouldBeTooSmall) {
  EXPECT_TRUE(qr_code(std::string(100, 'a'), {}, 24.0, 0.4));
  EXPECT_FALSE(qr_code(std::string(400, 'a'), {}, 24.0, 0.4));
  EXPECT_FALSE(qr_code(std::string(4000, 'a'), {}, 2400.0, 0.4)); // no code holds so much
}

TEST(QrCode, ATextThatIsNotAsciiNeedsALittleMore) {
  const auto ascii = qr_code("Aeroe", {}, 24.0, 0.4);
  const auto utf_8 = qr_code("\xC3\x86r\xC3\xB8", {}, 24.0, 0.4);
  ASSERT_TRUE(ascii && utf_8);
  EXPECT_NE(ascii->children.size(), utf_8->children.size());
}

} // namespace
} // namespace sheerpole::qr_code_test
