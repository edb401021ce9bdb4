#pragma once

#include "base/result.hpp"
#include "source/file_reader.hpp"
#include "source/source_text.hpp"

#include <cstdint>
#include <string>
#include <string_view>

namespace sheerpole {

/// Largest rig file that is read; a rig is some kilobytes.
inline constexpr std::size_t largest_source_bytes = 4 * 1024 * 1024;

struct LoadFailure {
  enum class Kind { not_found, not_readable, is_folder, too_large, not_utf8 };
  Kind kind = Kind::not_found;
  std::uint32_t line = 0; ///< for not_utf8: the line of the first bad byte, from 1
};

/// Reads a file, drops a leading byte order mark and makes sure that it is UTF-8.
Result<SourceText, LoadFailure> load(const std::string& path, SourceId id, FileReader& reader);

/// Offset of the first byte that is not valid UTF-8 (overlong forms and surrogates are not), or npos.
std::size_t first_invalid_utf8(std::string_view bytes);

} // namespace sheerpole
