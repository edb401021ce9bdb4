#include "source/photograph.hpp"

namespace sheerpole {

namespace {

using namespace std::string_view_literals;

unsigned byte_at(std::string_view bytes, std::size_t at) {
  return static_cast<unsigned char>(bytes[at]);
}

unsigned two_bytes(std::string_view bytes, std::size_t at) {
  return (byte_at(bytes, at) << 8U) | byte_at(bytes, at + 1);
}

std::optional<PictureHead> with_size(PictureKind kind, unsigned long width, unsigned long height) {
  constexpr auto most = static_cast<unsigned long>(widest_photograph);
  if (width == 0 || height == 0 || width > most || height > most ||
      static_cast<long long>(width) * static_cast<long long>(height) > most_pixels)
    return std::nullopt;
  return PictureHead{kind, static_cast<int>(width), static_cast<int>(height)};
}

std::optional<PictureHead> png_head(std::string_view bytes) {
  constexpr std::size_t size_at = 16;
  if (bytes.size() < size_at + 8 || bytes.substr(8, 8) != "\0\0\0\x0dIHDR"sv)
    return std::nullopt;
  const auto four = [&](std::size_t at) {
    return (static_cast<unsigned long>(two_bytes(bytes, at)) << 16U) | two_bytes(bytes, at + 2);
  };
  return with_size(PictureKind::png, four(size_at), four(size_at + 4));
}

/// Segments stand behind each other, each with its length, up to the one that begins the frame (table B.1:
/// SOF0 to SOF15 without DHT, JPG and DAC).
std::optional<PictureHead> jpeg_head(std::string_view bytes) {
  std::size_t at = 2;
  while (at + 4 <= bytes.size()) {
    if (byte_at(bytes, at) != 0xff)
      return std::nullopt;
    const unsigned marker = byte_at(bytes, at + 1);
    if (marker == 0xff) { // fill byte
      ++at;
      continue;
    }
    if (marker == 0x01 || (marker >= 0xd0 && marker <= 0xd7)) { // stand alone
      at += 2;
      continue;
    }
    const unsigned length = two_bytes(bytes, at + 2);
    const bool frame =
        marker >= 0xc0 && marker <= 0xcf && marker != 0xc4 && marker != 0xc8 && marker != 0xcc;
    if (length < 2 || marker == 0xd8 || marker == 0xd9 || marker == 0xda)
      return std::nullopt;
    if (frame)
      return length < 8 || at + 9 > bytes.size()
                 ? std::nullopt
                 : with_size(PictureKind::jpeg, two_bytes(bytes, at + 7), two_bytes(bytes, at + 5));
    at += 2 + length;
  }
  return std::nullopt;
}

} // namespace

std::optional<PictureHead> picture_head(std::string_view bytes) {
  if (bytes.starts_with("\x89PNG\r\n\x1a\n"sv))
    return png_head(bytes);
  if (bytes.starts_with("\xff\xd8\xff"sv))
    return jpeg_head(bytes);
  return std::nullopt;
}

} // namespace sheerpole
