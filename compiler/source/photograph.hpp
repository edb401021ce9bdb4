#pragma once

#include "source/span.hpp"

#include <cstddef>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace sheerpole {

/// Bounds of what is read and shown. A picture from a telephone has 3 to 6 MB and 12 to 50 million pixels
/// (common practice, no source); a report with forty of them is still a file that can be sent.
inline constexpr std::size_t largest_photograph_bytes = std::size_t{8} << 20U;
inline constexpr std::size_t most_photographs = 60;
inline constexpr std::size_t most_photograph_bytes = std::size_t{64} << 20U; ///< of one rig together
inline constexpr int widest_photograph = 16'384;                             ///< pixels, each way
inline constexpr long long most_pixels = 64'000'000;

enum class PictureKind { jpeg, png };

/// What a picture says of itself at its beginning.
struct PictureHead {
  PictureKind kind = PictureKind::jpeg;
  int width = 0; ///< pixels, as stored: a note in it that it is to be turned is not read
  int height = 0;
};

/// By its first bytes and not by its name: JPEG (ISO/IEC 10918-1, annex B: SOI, then segments up to a
/// frame) or PNG (ISO/IEC 15948, 5.2 and 11.2.2: signature, then IHDR). Nothing for anything else and for
/// one that breaks off before its size.
std::optional<PictureHead> picture_head(std::string_view bytes);

/// A picture that a file of a rig names.
struct Photograph {
  struct Named {
    std::string stated; ///< its path from the folder of the file
    Span at;
  };
  std::vector<Named> named; ///< at least one; a picture that is named again is the same
  std::string path;         ///< as it was opened
  std::string name;         ///< from the folder of the rig file: the same wherever the command was typed
  PictureHead head;
  std::shared_ptr<const std::string> bytes; ///< as they lie on the disk
  std::string digest;                       ///< SHA-256
};

} // namespace sheerpole
