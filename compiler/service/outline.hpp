#pragma once

#include "service/open_boat.hpp"

#include <cstdint>
#include <string>
#include <vector>

namespace sheerpole::service {

/// What a line of the outline is.
enum class OutlineSort { file, let, declaration, block, point, expectation };

/// The word by which answers name it: "let".
std::string_view name_of(OutlineSort sort);

/// One thing that a file states, with what stands inside it.
struct OutlineItem {
  std::string name;   ///< `cap-shroud.port`; the kind where there is no name
  std::string detail; ///< its kind, and its title: `toggle "Toggle"`
  OutlineSort sort = OutlineSort::declaration;
  Span span; ///< the whole of it
  Span name_span;
  std::vector<OutlineItem> inside = {};
};

/// All that a file states, in its order.
std::vector<OutlineItem> outline(const OpenBoat& boat, SourceId source);

/// Lines that may be folded to their first, from 0.
struct Fold {
  enum class Sort { block, comment, uses };
  std::uint32_t first = 0;
  std::uint32_t last = 0;
  Sort sort = Sort::block;
};

/// Blocks and brackets over several lines, comments below each other, and `use` below `use`.
std::vector<Fold> folds(const SourceText& text);

} // namespace sheerpole::service
