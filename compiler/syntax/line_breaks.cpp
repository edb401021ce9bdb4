#include "syntax/line_breaks.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

/// For each opening and closing brace, whether its block is spread over more than one line; false for other
/// words.
std::vector<bool> spread_blocks(const std::vector<WrittenWord>& words) {
  std::vector<bool> spread(words.size(), false);
  std::vector<std::size_t> open;
  std::size_t lines_before = 0;
  std::vector<std::size_t> lines_at_open;
  for (std::size_t i = 0; i < words.size(); ++i) {
    lines_before += words[i].line_ends;
    if (words[i].kind == WordKind::opens_block) {
      open.push_back(i);
      lines_at_open.push_back(lines_before);
    } else if (words[i].kind == WordKind::closes_block && !open.empty()) {
      spread[i] = spread[open.back()] = lines_before > lines_at_open.back();
      open.pop_back();
      lines_at_open.pop_back();
    }
  }
  return spread;
}

} // namespace

std::vector<LineBreak> line_breaks(const std::vector<WrittenWord>& words) {
  const std::vector<bool> spread = spread_blocks(words);
  std::vector<LineBreak> breaks(words.size());
  std::size_t depth = 0;
  bool behind_opening =
      true; // of the file, a block or a bracket, with a remark behind it on its line or none
  for (std::size_t i = 0; i < words.size(); ++i) {
    const WordKind kind = words[i].kind;
    const bool trailing_comment = kind == WordKind::comment && words[i].line_ends == 0;
    const bool closes = kind == WordKind::closes_block || kind == WordKind::closes_bracket;
    if (kind == WordKind::closes_block && spread[i])
      --depth;

    std::size_t line_ends = std::min<std::size_t>(words[i].line_ends, behind_opening || closes ? 1 : 2);
    if (kind == WordKind::opens_block) // a remark before it ends its line all the same
      line_ends = i > 0 && words[i - 1].kind == WordKind::comment ? 1 : 0;
    else if (kind == WordKind::closes_block && spread[i])
      line_ends = 1;
    else if (i > 0 && words[i - 1].kind == WordKind::opens_block && spread[i - 1] && !trailing_comment)
      line_ends = 1;
    breaks[i] = {i == 0 ? 0 : line_ends, depth};

    if (kind == WordKind::opens_block && spread[i])
      ++depth;
    behind_opening = kind == WordKind::opens_block || kind == WordKind::opens_bracket ||
                     (behind_opening && trailing_comment && i > 0);
  }
  return breaks;
}

} // namespace sheerpole
