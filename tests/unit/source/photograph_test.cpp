#include "source/photograph.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <string>

namespace sheerpole::photograph_test {
namespace {

using namespace std::string_literals;

std::string four_bytes(unsigned long value) {
  return {static_cast<char>(value >> 24U), static_cast<char>(value >> 16U), static_cast<char>(value >> 8U),
          static_cast<char>(value)};
}

// ISO/IEC 15948, 5.2 and 11.2.2: the signature, then a chunk of 13 bytes that begins with both sizes.
std::string png(unsigned long width, unsigned long height) {
  return "\x89PNG\r\n\x1a\n"s + four_bytes(13) + "IHDR" + four_bytes(width) + four_bytes(height) +
         "\x08\x00\x00\x00\x00"s;
}

// ISO/IEC 10918-1, B.2.2: a frame has its length, its precision, its height and then its width.
std::string jpeg(unsigned height, unsigned width, const std::string& before = "\xff\xe0\x00\x04JF"s) {
  const auto two = [](unsigned value) {
    return std::string{static_cast<char>(value >> 8U), static_cast<char>(value)};
  };
  return "\xff\xd8"s + before + "\xff\xc2\x00\x0b\x08"s + two(height) + two(width) + "\x01\x01\x11\x00"s;
}

TEST(PictureHead, IsReadFromTheFirstBytesAndNotFromAName) {
  const auto of_png = picture_head(png(4000, 3000));
  ASSERT_TRUE(of_png);
  EXPECT_EQ(of_png->kind, PictureKind::png);
  EXPECT_EQ(of_png->width, 4000);
  EXPECT_EQ(of_png->height, 3000);
  for (const std::string& before :
       {"\xff\xe0\x00\x04JF"s, ""s, "\xff\xff\xfe\x00\x03x"s, "\xff\xc4\x00\x02"s}) {
    const auto of_jpeg = picture_head(jpeg(300, 400, before) + "\xff\xda"s);
    if (before.empty() || before[1] != '\xff') {
      ASSERT_TRUE(of_jpeg) << before.size();
      EXPECT_EQ(of_jpeg->kind, PictureKind::jpeg);
      EXPECT_EQ(of_jpeg->width, 400);
      EXPECT_EQ(of_jpeg->height, 300);
    }
  }
}

TEST(PictureHead, RefusesWhatIsNoPictureOfASizeThatCanBeShown) {
  for (const std::string& bytes :
       {""s, "GIF89a"s, "<svg xmlns='http://www.w3.org/2000/svg'/>"s, "\xff\xd8"s, "\xff\xd8\xff"s,
        "\xff\xd8\xff\xd9"s, png(0, 10), png(10, 0), png(20'000, 10), png(16'000, 16'000),
        png(0xffffffffUL, 0xffffffffUL), png(10, 10).substr(0, 20), jpeg(0, 10), jpeg(10, 10).substr(0, 12),
        "\xff\xd8\xff\xe0\x00\x00"s, "\xff\xd8\xff\xe0\x00\x01xx"s, "\xff\xd8\xff\xe0\xff\xffxx"s,
        "\xff\xd8\xff\xdaxxxx"s, "%PDF-1.5"s})
    EXPECT_FALSE(picture_head(bytes)) << bytes.size();
}

RC_GTEST_PROP(PictureHead, StandsAnyBytesBehindItsSignature, (const std::string& rest)) {
  for (const std::string& signature : {"\x89PNG\r\n\x1a\n"s, "\xff\xd8\xff"s})
    if (const auto head = picture_head(signature + rest)) {
      RC_ASSERT(head->width > 0 && head->height > 0);
      RC_ASSERT(static_cast<long long>(head->width) * head->height <= most_pixels);
    }
}

} // namespace
} // namespace sheerpole::photograph_test
