#include "driver/editor/file_uri.hpp"

#include <filesystem>
#include <optional>

namespace sheerpole::editor {

namespace {

constexpr std::string_view scheme = "file://";

std::optional<int> digit(char c) {
  if (c >= '0' && c <= '9')
    return c - '0';
  if (c >= 'a' && c <= 'f')
    return c - 'a' + 10;
  if (c >= 'A' && c <= 'F')
    return c - 'A' + 10;
  return std::nullopt;
}

/// RFC 3986, section 2.3, and the sign that parts folders.
bool stands_as_it_is(char c) {
  return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '-' ||
         c == '.' || c == '_' || c == '~' || c == '/';
}

} // namespace

std::string path_of_uri(std::string_view uri) {
  if (!uri.starts_with(scheme))
    return std::string(uri);
  std::string_view rest = uri.substr(scheme.size());
  // A host before the path: ours, whatever it calls itself.
  const std::size_t slash = rest.find('/');
  rest = slash == std::string_view::npos ? std::string_view() : rest.substr(slash);
  rest = rest.substr(0, rest.find_first_of("?#"));
  std::string path;
  for (std::size_t i = 0; i < rest.size(); ++i) {
    if (rest[i] == '%' && i + 2 < rest.size()) {
      const auto high = digit(rest[i + 1]);
      const auto low = digit(rest[i + 2]);
      if (high && low && (*high != 0 || *low != 0)) {
        path += static_cast<char>(*high * 16 + *low);
        i += 2;
        continue;
      }
    }
    path += rest[i];
  }
  return std::filesystem::path(path).lexically_normal().generic_string();
}

std::string uri_of_path(std::string_view path) {
  if (!path.starts_with('/'))
    return std::string(path);
  constexpr std::string_view digits = "0123456789ABCDEF";
  std::string uri(scheme);
  for (const char c : path) {
    if (stands_as_it_is(c)) {
      uri += c;
      continue;
    }
    const auto byte = static_cast<unsigned char>(c);
    uri += '%';
    uri += digits[byte >> 4U];
    uri += digits[byte & 0xFU];
  }
  return uri;
}

} // namespace sheerpole::editor
