#pragma once

#include "service/open_boat.hpp"

#include <optional>
#include <string>
#include <vector>

namespace sheerpole::service {

/// What is known of a word: how it is declared or written, and what it means.
struct Hover {
  Span span;                      ///< the word
  std::string code;               ///< `toggle toggle-12 "Toggle"`, `pull: 50 N`
  std::vector<std::string> lines; ///< each a paragraph
};

/// Of the word at the byte `offset`; nothing where none is known.
std::optional<Hover> hover(const OpenBoat& boat, SourceId source, std::uint32_t offset);

/// The hover as Markdown (CommonMark), its code fenced as `rig`, and as plain text.
std::string markdown(const Hover& hover);
std::string plain_text_of(const Hover& hover);

} // namespace sheerpole::service
