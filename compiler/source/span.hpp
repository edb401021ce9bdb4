#pragma once

#include "base/id.hpp"

#include <cstdint>

namespace sheerpole {

using SourceId = Id<struct SourceTag>;

/// Bytes [begin, end) of one source file. An empty span marks a place between two characters.
struct Span {
  SourceId source;
  std::uint32_t begin = 0;
  std::uint32_t end = 0;
  friend constexpr auto operator<=>(const Span&, const Span&) = default;
};

/// The smallest span that covers both; both must lie in one file.
constexpr Span cover(Span a, Span b) {
  return {a.source, a.begin < b.begin ? a.begin : b.begin, a.end > b.end ? a.end : b.end};
}

} // namespace sheerpole
