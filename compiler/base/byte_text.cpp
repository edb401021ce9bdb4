#include "base/byte_text.hpp"

#include <sha2.h>

#include <array>
#include <cstdint>

namespace sheerpole {

namespace {

constexpr std::string_view alphabet = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";

/// The six bits of a letter, or -1.
int bits_of(char letter) {
  if (letter >= 'A' && letter <= 'Z')
    return letter - 'A';
  if (letter >= 'a' && letter <= 'z')
    return letter - 'a' + 26;
  if (letter >= '0' && letter <= '9')
    return letter - '0' + 52;
  return letter == '+' ? 62 : letter == '/' ? 63 : -1;
}

} // namespace

std::string sha256(std::string_view bytes) {
  SHA2_CTX context;
  SHA256Init(&context);
  SHA256Update(&context, reinterpret_cast<const std::uint8_t*>(bytes.data()), bytes.size());
  std::array<std::uint8_t, SHA256_DIGEST_LENGTH> digest{};
  SHA256Final(digest.data(), &context);
  constexpr std::string_view digits = "0123456789abcdef";
  std::string text;
  for (const std::uint8_t byte : digest) {
    text += digits[byte >> 4U];
    text += digits[byte & 0x0fU];
  }
  return text;
}

std::string to_base64(std::string_view bytes) {
  std::string text;
  text.reserve((bytes.size() + 2) / 3 * 4);
  for (std::size_t i = 0; i < bytes.size(); i += 3) {
    const std::string_view three = bytes.substr(i, 3);
    std::uint32_t bits = 0;
    for (std::size_t j = 0; j < 3; ++j)
      bits = bits << 8U | (j < three.size() ? static_cast<unsigned char>(three[j]) : 0U);
    for (std::size_t j = 0; j < 4; ++j)
      text += j <= three.size() ? alphabet[bits >> (18U - 6U * j) & 63U] : '=';
  }
  return text;
}

std::optional<std::string> from_base64(std::string_view text) {
  if (text.size() % 4 != 0)
    return std::nullopt;
  const std::size_t padding = text.ends_with("==") ? 2 : text.ends_with('=') ? 1 : 0;
  std::string bytes;
  bytes.reserve(text.size() / 4 * 3);
  for (std::size_t i = 0; i < text.size(); i += 4) {
    const std::size_t letters = i + 4 == text.size() ? 4 - padding : 4;
    std::uint32_t bits = 0;
    for (std::size_t j = 0; j < 4; ++j) {
      const int six = j < letters ? bits_of(text[i + j]) : 0;
      if (six < 0)
        return std::nullopt;
      bits = bits << 6U | static_cast<std::uint32_t>(six);
    }
    for (std::size_t j = 0; j + 1 < letters; ++j)
      bytes += static_cast<char>(bits >> (16U - 8U * j) & 255U);
    if (letters < 4 && (bits & ((1U << (8U * (4U - letters))) - 1U)) != 0)
      return std::nullopt;
  }
  return bytes;
}

} // namespace sheerpole
