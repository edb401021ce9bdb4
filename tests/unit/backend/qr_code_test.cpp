#include "backend/drawing/qr_code.hpp"

#include <gtest/gtest.h>
#include <qrcodegen/qrcodegen.hpp>

#include <algorithm>
#include <cstdint>
#include <set>
#include <string>

// Whether a code is read is tried with a reader, tests/golden/back-ends/labels.test. Here is how it is
// drawn.

namespace sheerpole::qr_code_test {
namespace {

/// The black modules of a code, by row and column.
std::set<std::pair<int, int>> black_modules(const ModulesShape& code) {
  std::set<std::pair<int, int>> black;
  for (int row = 0; row < code.across; ++row)
    for (int column = 0; column < code.across; ++column)
      if (code.is_black(row, column))
        black.insert({row, column});
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
  EXPECT_EQ(code->across, 29);
  EXPECT_DOUBLE_EQ(code->module, 1.0);
  EXPECT_DOUBLE_EQ(code->corner.x, 14.0);
  EXPECT_DOUBLE_EQ(code->corner.y, 24.0);
  const auto black = black_modules(*code);
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
  EXPECT_NE(ascii->black, utf_8->black);
}

// The mask is chosen here and not by the library: it is to be the same that the library finds, module by
// module, by the penalties of ISO/IEC 18004, 7.8.3.
TEST(QrCode, HasTheMaskThatTheLibraryFinds) {
  std::uint64_t seed = 1;
  for (std::size_t length = 1; length < 1200; length += 1 + length / 6)
    for (const char first : {' ', 'a', '0'}) {
      std::string text;
      for (std::size_t i = 0; i < length; ++i) {
        seed = seed * 6364136223846793005U + 1442695040888963407U;
        text += static_cast<char>(first + static_cast<char>(seed >> 60U));
      }
      const auto found = qr_code(text, {}, 1e6, 0.1);
      const auto wanted = qrcodegen::QrCode::encodeSegments(
          {qrcodegen::QrSegment::makeBytes(std::vector<std::uint8_t>(text.begin(), text.end()))},
          qrcodegen::QrCode::Ecc::QUARTILE, 1, 40, -1, false);
      ASSERT_TRUE(found);
      ASSERT_EQ(found->across, wanted.getSize());
      for (int row = 0; row < found->across; ++row)
        for (int column = 0; column < found->across; ++column)
          ASSERT_EQ(found->is_black(row, column), wanted.getModule(column, row))
              << text << " " << wanted.getMask() << " " << row << " " << column;
    }
}

} // namespace
} // namespace sheerpole::qr_code_test
