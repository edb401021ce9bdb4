#include "backend/drawing/wrap_label.hpp"

#include "backend/drawing/text_width.hpp"
#include "base/code_point.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

struct LineRoom {
  double size;
  double width;
  bool bold;
  bool holds(std::string_view text) const {
    return text_width_in_ems(text, bold) * size * wide_face_allowance <= width + 1e-9;
  }
};

/// Bytes of `word` that go on one line; at least one character.
std::size_t bytes_that_fit(std::string_view word, const LineRoom& room) {
  std::size_t fit = 0;
  std::size_t after_hyphen = 0;
  for (std::size_t at = 0; at < word.size();) {
    at += first_code_point(word.substr(at)).bytes;
    if (!room.holds(word.substr(0, at)) && fit > 0)
      break;
    fit = at;
    if (word[at - 1] == '-' && at < word.size())
      after_hyphen = at;
  }
  return fit < word.size() && after_hyphen > 0 ? after_hyphen : fit;
}

} // namespace

std::vector<std::string> wrap_label(std::string_view text, double size, double width, bool bold) {
  const LineRoom room{size, width, bold};
  std::vector<std::string> lines;
  std::string line;
  while (!text.empty()) {
    const std::size_t blank = std::min(text.find(' '), text.size());
    std::string_view word = text.substr(0, blank);
    text.remove_prefix(std::min(blank + 1, text.size()));
    if (word.empty())
      continue;
    const std::string longer = line.empty() ? std::string(word) : line + " " + std::string(word);
    if (room.holds(longer)) {
      line = longer;
      continue;
    }
    if (!line.empty())
      lines.push_back(std::move(line));
    while (!room.holds(word)) {
      const std::size_t fit = bytes_that_fit(word, room);
      if (fit == word.size())
        break;
      lines.emplace_back(word.substr(0, fit));
      word.remove_prefix(fit);
    }
    line = std::string(word);
  }
  if (!line.empty() || lines.empty())
    lines.push_back(std::move(line));
  return lines;
}

} // namespace sheerpole
