#pragma once

#include "source/file_reader.hpp"

#include <string_view>

namespace sheerpole {

/// The finding about a file that could not be loaded.
constexpr std::string_view slug_of(LoadFailure::Kind kind) {
  switch (kind) {
  case LoadFailure::Kind::not_found:
    return "file-not-found";
  case LoadFailure::Kind::not_readable:
    return "file-not-readable";
  case LoadFailure::Kind::is_folder:
    return "file-is-folder";
  case LoadFailure::Kind::too_large:
    return "file-too-large";
  case LoadFailure::Kind::not_utf8:
    return "file-not-utf8";
  }
  return "file-not-readable";
}

} // namespace sheerpole
