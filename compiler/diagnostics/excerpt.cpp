#include "diagnostics/excerpt.hpp"

#include "base/code_point.hpp"

#include <algorithm>
#include <vector>

namespace sheerpole {

namespace {

constexpr std::size_t tab_stop = 4;
constexpr std::string_view blanks = "    ";
constexpr std::string_view replacement = "\xEF\xBF\xBD"; // U+FFFD
constexpr std::string_view gap = "...";

bool takes_over_the_screen(char32_t value) {
  return is_hidden_control(value) || value == '\n' || value == 0xFFFD;
}

/// One sign as it is printed.
struct Cell {
  std::string_view text;
  std::size_t columns = 1;
  std::size_t from = 0; ///< screen column of its beginning
};

} // namespace

Excerpt excerpt(std::string_view line, std::size_t begin, std::size_t end, std::size_t width) {
  begin = std::min(begin, line.size());
  end = std::clamp(end, begin, line.size());

  std::vector<Cell> cells;
  std::size_t columns = 0;
  std::size_t mark_from = 0;
  std::size_t mark_to = 0;
  for (std::size_t i = 0; i < line.size();) {
    if (i <= begin)
      mark_from = columns;
    const CodePoint next = first_code_point(line.substr(i));
    Cell cell{line.substr(i, next.bytes), next.columns, columns};
    if (next.value == '\t') {
      cell.columns = tab_stop - columns % tab_stop;
      cell.text = blanks.substr(0, cell.columns);
    } else if (takes_over_the_screen(next.value)) {
      cell.columns = 1;
      cell.text = replacement;
    }
    columns += cell.columns;
    cells.push_back(cell);
    i += next.bytes;
    if (i <= end)
      mark_to = columns;
    if (i > begin && columns > mark_from + 2 * width)
      break; // the rest is cut off in any case, and a line can be very long
  }
  if (begin == line.size())
    mark_from = columns;
  mark_to = std::max(mark_to, mark_from + 1);

  std::size_t from = 0;
  std::size_t to = columns;
  if (columns > width) {
    if (mark_to + gap.size() > width) // else the beginning of the line can stay
      from = mark_from - std::min(mark_from, width / 3);
    if (columns - from <= width - gap.size())
      from = columns - (width - gap.size());
    to = std::min(columns, from + width - (from > 0 ? gap.size() : 0));
    if (to < columns)
      to -= gap.size();
  }

  Excerpt result;
  std::size_t shown_from = columns; // a wide sign may begin before `from`
  for (const Cell& cell : cells) {
    if (cell.from < from || cell.from + cell.columns > to)
      continue;
    shown_from = std::min(shown_from, cell.from);
    result.text += cell.text;
  }
  const std::size_t before = from > 0 ? gap.size() : 0;
  if (from > 0)
    result.text.insert(0, gap);
  if (to < columns)
    result.text += gap;
  result.text.erase(result.text.find_last_not_of(' ') + 1);
  result.mark_begin = mark_from - std::min(mark_from, shown_from) + before;
  result.mark_width = std::max<std::size_t>(1, std::min(mark_to, std::max(to, mark_from + 1)) - mark_from);
  return result;
}

std::string printable(std::string_view text) {
  std::string result;
  while (!text.empty()) {
    const CodePoint next = first_code_point(text);
    if (next.value == '\n' || next.value == '\t')
      result += ' ';
    else if (takes_over_the_screen(next.value))
      result += replacement;
    else
      result += text.substr(0, next.bytes);
    text.remove_prefix(next.bytes);
  }
  return result;
}

} // namespace sheerpole
