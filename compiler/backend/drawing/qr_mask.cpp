#include "backend/drawing/qr_mask.hpp"

#include <algorithm>
#include <array>
#include <bitset>
#include <cstddef>
#include <cstdlib>
#include <limits>

namespace sheerpole {

namespace {

// A row or a column of a code, its first module at bit `margin`. What lies outside is light, as the quiet
// zone is: four modules on either side are what the penalties look at.
constexpr std::size_t margin = 4;
constexpr std::size_t most_across = 177;
/// A code of any version; and one of version 9 and less, as labels and seals have it, for which one word of
/// the machine does.
using LongLine = std::bitset<192>;
using ShortLine = std::bitset<64>;
static_assert(margin + most_across + margin <= LongLine{}.size());

// Penalties: ISO/IEC 18004, table 11 (from memory).
constexpr long for_run = 3;
constexpr long for_block = 3;
constexpr long for_finder = 40;
constexpr long for_balance = 10;

constexpr int masks = 8;
constexpr int period = 12; ///< every mask repeats itself after so many rows and columns

/// Whether a mask turns a module over: ISO/IEC 18004, table 10 (from memory).
bool turns_over(int mask, int row, int column) {
  switch (mask) {
  case 0:
    return (row + column) % 2 == 0;
  case 1:
    return row % 2 == 0;
  case 2:
    return column % 3 == 0;
  case 3:
    return (row + column) % 3 == 0;
  case 4:
    return (row / 2 + column / 3) % 2 == 0;
  case 5:
    return row * column % 2 + row * column % 3 == 0;
  case 6:
    return (row * column % 2 + row * column % 3) % 2 == 0;
  default:
    return ((row + column) % 2 + row * column % 3) % 2 == 0;
  }
}

/// Where the middles of the alignment patterns lie, in rows and columns alike: ISO/IEC 18004, annex E (from
/// memory).
std::vector<int> alignment_places(int across) {
  const int version = (across - 17) / 4;
  if (version == 1)
    return {};
  const int count = version / 7 + 2;
  const int step = version == 32 ? 26 : (version * 4 + count * 2 + 1) / (count * 2 - 2) * 2;
  std::vector<int> places{6};
  for (int i = count - 2; i >= 0; --i)
    places.push_back(across - 7 - i * step);
  return places;
}

/// Which modules hold data, by row: all but finders with the format beside them, timing, alignment and
/// version.
template <class Line>
std::vector<Line> data_modules(int across) {
  const auto size = static_cast<std::size_t>(across);
  std::vector<Line> rows(size, (Line{}.set() >> (Line{}.size() - size)) << margin);
  const auto take = [&](int top, int left, int height, int width) {
    for (int row = top; row < top + height; ++row)
      for (int column = left; column < left + width; ++column)
        rows[static_cast<std::size_t>(row)].reset(margin + static_cast<std::size_t>(column));
  };
  take(0, 0, 9, 9);
  take(0, across - 8, 9, 8);
  take(across - 8, 0, 8, 9);
  take(6, 0, 1, across);
  take(0, 6, across, 1);
  const std::vector<int> places = alignment_places(across);
  for (const int row : places)
    for (const int column : places) {
      const bool on_finder =
          (row == 6 && (column == 6 || column == across - 7)) || (row == across - 7 && column == 6);
      if (!on_finder)
        take(row - 2, column - 2, 5, 5);
    }
  if (across >= 45) { // from version 7 on
    take(0, across - 11, 6, 3);
    take(across - 11, 0, 3, 6);
  }
  return rows;
}

/// Which mask it is, twice, with the bits that mend it: ISO/IEC 18004, 7.9.1 (from memory).
template <class Line>
void write_format(std::vector<Line>& rows, std::vector<Line>& columns, QrLevel level, int mask) {
  const unsigned data = static_cast<unsigned>(level) << 3U | static_cast<unsigned>(mask);
  unsigned rest = data;
  for (int i = 0; i < 10; ++i)
    rest = (rest << 1U) ^ ((rest >> 9U) * 0x537U);
  const unsigned bits = (data << 10U | rest) ^ 0x5412U;
  const std::size_t across = rows.size();
  const auto put = [&](std::size_t row, std::size_t column, unsigned bit) {
    rows[row].set(margin + column, (bits >> bit & 1U) != 0);
    columns[column].set(margin + row, (bits >> bit & 1U) != 0);
  };
  for (unsigned i = 0; i < 15; ++i) {
    // Down column 8 and back along row 8, past the timing.
    if (i < 8)
      put(i < 6 ? i : i + 1, 8, i);
    else
      put(8, i == 8 ? 7 : 14 - i, i);
    // Beside the other two finders.
    if (i < 8)
      put(8, across - 1 - i, i);
    else
      put(across - 15 + i, 8, i);
  }
}

template <class Line>
std::vector<Line> turned(const std::vector<Line>& rows) {
  std::vector<Line> columns(rows.size());
  for (std::size_t row = 0; row < rows.size(); ++row)
    for (std::size_t column = 0; column < rows.size(); ++column)
      if (rows[row].test(margin + column))
        columns[column].set(margin + row);
  return columns;
}

/// Where a mask turns over, by row modulo its period. Every mask is the same by columns but two, so both
/// are worked out.
template <class Line>
struct Pattern {
  std::array<Line, period> rows;
  std::array<Line, period> columns;
};

template <class Line>
Pattern<Line> pattern_of(int mask) {
  Pattern<Line> pattern;
  for (std::size_t row = 0; row < period; ++row)
    for (std::size_t column = 0; column < period; ++column)
      if (turns_over(mask, static_cast<int>(row), static_cast<int>(column))) {
        pattern.rows[row].set(column);
        pattern.columns[column].set(row);
      }
  for (auto* lines : {&pattern.rows, &pattern.columns})
    for (Line& line : *lines) {
      for (std::size_t wide = period; wide < most_across; wide *= 2)
        line |= line << wide;
      line <<= margin;
    }
  return pattern;
}

/// Of each mask, for all codes.
template <class Line>
const std::array<Pattern<Line>, masks>& patterns() {
  static const std::array<Pattern<Line>, masks> all = [] {
    std::array<Pattern<Line>, masks> made;
    for (int mask = 0; mask < masks; ++mask)
      made[static_cast<std::size_t>(mask)] = pattern_of<Line>(mask);
    return made;
  }();
  return all;
}

/// Sequences that look like a finder, of modules that are wider than one: dark n, light n, dark 3 n, light
/// n, dark n, with light on both sides, 4 n of it on one. There are next to none, so this may take its
/// time.
template <class Line>
long wide_finders(const Line& line, int across) {
  std::vector<int> runs{across}; // the quiet zone, then dark and light by turns
  bool dark = false;
  for (int i = 0; i < across; ++i) {
    const bool now = line.test(margin + static_cast<std::size_t>(i));
    if (now != dark)
      runs.push_back(0);
    ++runs.back();
    dark = now;
  }
  if (runs.size() % 2 == 0)
    runs.push_back(0);
  runs.back() += across;
  long found = 0;
  for (std::size_t i = 0; i + 6 < runs.size(); i += 2) {
    const int n = runs[i + 1];
    if (n < 2 || runs[i + 2] != n || runs[i + 3] != 3 * n || runs[i + 4] != n || runs[i + 5] != n)
      continue;
    found += runs[i] >= 4 * n && runs[i + 6] >= n ? 1 : 0;
    found += runs[i + 6] >= 4 * n && runs[i] >= n ? 1 : 0;
  }
  return found;
}

template <class Line>
long finders(const Line& line, int across) {
  const Line light = ~line;
  const Line one = line & light >> 1 & line >> 2 & line >> 3 & line >> 4 & light >> 5 & line >> 6;
  long found = 0;
  if (one.any()) {
    const Line before = light << 1;
    const Line behind = light >> 7;
    const Line long_before = before & light << 2 & light << 3 & light << 4;
    const Line long_behind = behind & light >> 8 & light >> 9 & light >> 10;
    found += static_cast<long>((one & long_before & behind).count() + (one & long_behind & before).count());
  }
  // A dark run of six at least, with two light modules before and behind.
  const Line two_dark = line & line >> 1;
  const Line six_dark = two_dark & two_dark >> 2 & two_dark >> 4;
  const Line two_light = light & light >> 1;
  if ((six_dark & two_light << 2).any() && (six_dark & two_light >> 6).any())
    found += wide_finders(line, across);
  return found;
}

/// Of runs of five and more of one colour, and of what looks like a finder, in all rows or all columns.
template <class Line>
long penalty_of_lines(const std::vector<Line>& lines, const std::vector<Line>& alike) {
  long penalty = 0;
  for (std::size_t i = 0; i < lines.size(); ++i) {
    const Line two = alike[i] & alike[i] >> 1;
    const Line five = two & two >> 2; // here and at the next four
    penalty +=
        static_cast<long>(five.count()) + (for_run - 1) * static_cast<long>((five & ~(five << 1)).count());
    penalty += for_finder * finders(lines[i], static_cast<int>(lines.size()));
  }
  return penalty;
}

/// Where a module and the next of its line are of one colour.
template <class Line>
std::vector<Line> alike_neighbours(const std::vector<Line>& lines) {
  const Line pairs = (Line{}.set() >> (Line{}.size() - lines.size() + 1)) << margin;
  std::vector<Line> alike;
  alike.reserve(lines.size());
  for (const Line& line : lines)
    alike.push_back(~(line ^ line >> 1) & pairs);
  return alike;
}

/// Of no use once it is as much as `least`: then some of it is left out.
template <class Line>
long penalty_of(const std::vector<Line>& rows, const std::vector<Line>& columns, long least) {
  const std::vector<Line> alike = alike_neighbours(rows);
  long penalty = penalty_of_lines(rows, alike);
  long dark = 0;
  for (std::size_t i = 0; i < rows.size(); ++i) {
    dark += static_cast<long>(rows[i].count());
    if (i > 0) // two by two of one colour
      penalty +=
          for_block * static_cast<long>((alike[i - 1] & alike[i] & ~(rows[i - 1] ^ rows[i])).count());
  }
  if (penalty >= least)
    return penalty;
  penalty += penalty_of_lines(columns, alike_neighbours(columns));
  // By how many steps of five hundredths the dark ones are more or less than half.
  const long all = static_cast<long>(rows.size() * rows.size());
  return penalty + ((std::labs(dark * 20 - all * 10) + all - 1) / all - 1) * for_balance;
}

template <class Line>
std::vector<bool> best_of_masks(int across, QrLevel level,
                                const std::function<bool(int row, int column)>& is_black) {
  const auto size = static_cast<std::size_t>(across);
  std::vector<Line> rows(size);
  for (int row = 0; row < across; ++row)
    for (int column = 0; column < across; ++column)
      rows[static_cast<std::size_t>(row)].set(margin + static_cast<std::size_t>(column),
                                              is_black(row, column));
  const std::vector<Line> data = data_modules<Line>(across);
  std::vector<Line> columns = turned(rows);
  const std::vector<Line> data_columns = turned(data);
  std::vector<Line> best;
  long least = std::numeric_limits<long>::max();
  for (int mask = 0; mask < masks; ++mask) {
    // The mask before is taken off by the same exchange that puts this one on.
    if (mask > 0) {
      const Pattern<Line>& off = patterns<Line>()[static_cast<std::size_t>(mask - 1)];
      const Pattern<Line>& on = patterns<Line>()[static_cast<std::size_t>(mask)];
      for (std::size_t i = 0; i < size; ++i) {
        rows[i] ^= (off.rows[i % period] ^ on.rows[i % period]) & data[i];
        columns[i] ^= (off.columns[i % period] ^ on.columns[i % period]) & data_columns[i];
      }
      write_format(rows, columns, level, mask);
    }
    if (const long penalty = penalty_of(rows, columns, least); penalty < least) {
      least = penalty;
      best = rows;
    }
  }
  std::vector<bool> black;
  black.reserve(size * size);
  for (const Line& row : best)
    for (std::size_t column = 0; column < size; ++column)
      black.push_back(row.test(margin + column));
  return black;
}

} // namespace

std::vector<bool> best_masked(int across, QrLevel level,
                              const std::function<bool(int row, int column)>& is_black) {
  const bool is_short = margin + static_cast<std::size_t>(across) + margin <= ShortLine{}.size();
  return is_short ? best_of_masks<ShortLine>(across, level, is_black)
                  : best_of_masks<LongLine>(across, level, is_black);
}

} // namespace sheerpole
