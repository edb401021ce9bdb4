#include "source/load.hpp"

#include <algorithm>
#include <utility>

namespace sheerpole {

std::size_t first_invalid_utf8(std::string_view bytes) {
  std::size_t i = 0;
  const auto at = [&](std::size_t k) { return static_cast<unsigned char>(bytes[k]); };
  while (i < bytes.size()) {
    const unsigned char lead = at(i);
    std::size_t length = 0;
    std::uint32_t code = 0;
    std::uint32_t least = 0;
    if (lead < 0x80) {
      ++i;
      continue;
    }
    if ((lead & 0xE0) == 0xC0) {
      length = 2, code = lead & 0x1F, least = 0x80;
    } else if ((lead & 0xF0) == 0xE0) {
      length = 3, code = lead & 0x0F, least = 0x800;
    } else if ((lead & 0xF8) == 0xF0) {
      length = 4, code = lead & 0x07, least = 0x10000;
    } else {
      return i;
    }
    if (i + length > bytes.size())
      return i;
    for (std::size_t k = 1; k < length; ++k) {
      if ((at(i + k) & 0xC0) != 0x80)
        return i;
      code = (code << 6) | (at(i + k) & 0x3F);
    }
    if (code < least || code > 0x10FFFF || (code >= 0xD800 && code <= 0xDFFF))
      return i;
    i += length;
  }
  return std::string_view::npos;
}

Result<SourceText, LoadFailure> load(const std::string& path, SourceId id, FileReader& reader) {
  auto read = reader.read(path, largest_source_bytes);
  if (!read.ok()) {
    switch (read.error()) {
    case FileReader::Failure::not_found:
      return LoadFailure{LoadFailure::Kind::not_found};
    case FileReader::Failure::not_readable:
      return LoadFailure{LoadFailure::Kind::not_readable};
    case FileReader::Failure::is_folder:
      return LoadFailure{LoadFailure::Kind::is_folder};
    case FileReader::Failure::too_large:
      return LoadFailure{LoadFailure::Kind::too_large};
    }
  }
  std::string bytes = std::move(read.value());
  const bool marked = bytes.compare(0, 3, "\xEF\xBB\xBF") == 0;
  if (marked)
    bytes.erase(0, 3);
  const std::size_t bad = first_invalid_utf8(bytes);
  if (bad != std::string_view::npos) {
    const auto line = std::count(bytes.begin(), bytes.begin() + static_cast<std::ptrdiff_t>(bad), '\n') + 1;
    return LoadFailure{LoadFailure::Kind::not_utf8, static_cast<std::uint32_t>(line)};
  }
  return SourceText(id, path, std::move(bytes), marked);
}

} // namespace sheerpole
