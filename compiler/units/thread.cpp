#include "units/thread.hpp"

#include "units/parse_quantity.hpp"
#include "units/text_cursor.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <optional>
#include <variant>

namespace sheerpole {

namespace {

constexpr std::string_view unified = "ASME B1.1";
constexpr std::string_view metric = "ISO 261";

constexpr ThreadRow inch_thread(std::string_view designation, double diameter_inches,
                                double threads_per_inch) {
  return {designation, diameter_inches * 25.4, 25.4 / threads_per_inch, unified};
}
constexpr ThreadRow metric_thread(std::string_view designation, double diameter, double pitch) {
  return {designation, diameter, pitch, metric};
}

// Threads per inch from memory of ASME B1.1; pitches from memory of ISO 261 (the selection of ISO 262 for
// screws and nuts, and the fine pitches of M5 and M6). Of each metric diameter the coarse pitch stands
// first.
constexpr std::array threads{
    inch_thread("1/4-28 UNF", 1.0 / 4.0, 28.0),
    inch_thread("5/16-24 UNF", 5.0 / 16.0, 24.0),
    inch_thread("3/8-24 UNF", 3.0 / 8.0, 24.0),
    inch_thread("7/16-20 UNF", 7.0 / 16.0, 20.0),
    inch_thread("1/2-20 UNF", 1.0 / 2.0, 20.0),
    inch_thread("9/16-18 UNF", 9.0 / 16.0, 18.0),
    inch_thread("5/8-18 UNF", 5.0 / 8.0, 18.0),
    inch_thread("3/4-16 UNF", 3.0 / 4.0, 16.0),
    inch_thread("7/8-14 UNF", 7.0 / 8.0, 14.0),
    inch_thread("1-12 UNF", 1.0, 12.0),
    inch_thread("1-14 UNS", 1.0,
                14.0), // special pitch; in turnbuckles it is commoner than 1-12 (common practice)
    inch_thread("1/4-20 UNC", 1.0 / 4.0, 20.0),
    inch_thread("5/16-18 UNC", 5.0 / 16.0, 18.0),
    inch_thread("3/8-16 UNC", 3.0 / 8.0, 16.0),
    inch_thread("7/16-14 UNC", 7.0 / 16.0, 14.0),
    inch_thread("1/2-13 UNC", 1.0 / 2.0, 13.0),
    inch_thread("9/16-12 UNC", 9.0 / 16.0, 12.0),
    inch_thread("5/8-11 UNC", 5.0 / 8.0, 11.0),
    inch_thread("3/4-10 UNC", 3.0 / 4.0, 10.0),
    inch_thread("7/8-9 UNC", 7.0 / 8.0, 9.0),
    inch_thread("1-8 UNC", 1.0, 8.0),
    metric_thread("M5", 5.0, 0.8),
    metric_thread("M5 x 0.5", 5.0, 0.5),
    metric_thread("M6", 6.0, 1.0),
    metric_thread("M6 x 0.75", 6.0, 0.75),
    metric_thread("M8", 8.0, 1.25),
    metric_thread("M8 x 1", 8.0, 1.0),
    metric_thread("M10", 10.0, 1.5),
    metric_thread("M10 x 1.25", 10.0, 1.25),
    metric_thread("M10 x 1", 10.0, 1.0),
    metric_thread("M12", 12.0, 1.75),
    metric_thread("M12 x 1.5", 12.0, 1.5),
    metric_thread("M12 x 1.25", 12.0, 1.25),
    metric_thread("M14", 14.0, 2.0),
    metric_thread("M14 x 1.5", 14.0, 1.5),
    metric_thread("M16", 16.0, 2.0),
    metric_thread("M16 x 1.5", 16.0, 1.5),
    metric_thread("M18", 18.0, 2.5),
    metric_thread("M18 x 2", 18.0, 2.0),
    metric_thread("M18 x 1.5", 18.0, 1.5),
    metric_thread("M20", 20.0, 2.5),
    metric_thread("M20 x 2", 20.0, 2.0),
    metric_thread("M20 x 1.5", 20.0, 1.5),
    metric_thread("M22", 22.0, 2.5),
    metric_thread("M22 x 2", 22.0, 2.0),
    metric_thread("M22 x 1.5", 22.0, 1.5),
    metric_thread("M24", 24.0, 3.0),
    metric_thread("M24 x 2", 24.0, 2.0),
    metric_thread("M27", 27.0, 3.0),
    metric_thread("M27 x 2", 27.0, 2.0),
    metric_thread("M30", 30.0, 3.5),
    metric_thread("M30 x 2", 30.0, 2.0),
};

/// What a designation says, before it is looked up.
struct WrittenThread {
  bool metric = false;
  double diameter_mm = 0.0;
  double pitch_mm = 0.0; ///< 0: not written
  std::string series;    ///< UNF, UNC, UNS; empty: not written
};

bool same(double a, double b) {
  return std::abs(a - b) < 1e-6;
}

std::optional<double> number_of(std::string_view text) {
  const auto scanned = scan_plain_number(text);
  const double* number = std::get_if<double>(&scanned);
  return number && *number > 0.0 ? std::optional(*number) : std::nullopt;
}

/// With a plain x and without blanks, which carry nothing in `M12 x 1.25`. Between two digits one stays:
/// `M1 2` is not M12.
std::string squeezed(std::string_view text) {
  std::string result;
  TextCursor cursor(text);
  while (!cursor.at_end()) {
    if (cursor.skip_blanks()) {
      if (cursor.at_digit() && !result.empty() && TextCursor::is_digit(result.back()))
        result += ' ';
      continue;
    }
    if (cursor.take("\u00D7")) {
      result += 'x';
      continue;
    }
    result += cursor.peek();
    cursor.move_to(cursor.position() + 1);
  }
  return result;
}

std::optional<WrittenThread> read_metric(std::string_view text) {
  const std::size_t times = text.find('x');
  const auto diameter = number_of(text.substr(0, times));
  if (!diameter)
    return std::nullopt;
  WrittenThread written{true, *diameter, 0.0, {}};
  if (times == text.npos)
    return written;
  const auto pitch = number_of(text.substr(times + 1));
  if (!pitch)
    return std::nullopt;
  written.pitch_mm = *pitch;
  return written;
}

std::optional<WrittenThread> read_unified(std::string_view text) {
  const std::size_t letters = text.find('U');
  WrittenThread written;
  if (letters != text.npos)
    written.series = std::string(text.substr(letters));
  text = text.substr(0, letters);
  const std::size_t hyphen = text.rfind('-');
  const auto diameter = number_of(text.substr(0, hyphen));
  if (!diameter)
    return std::nullopt;
  written.diameter_mm = *diameter * 25.4;
  if (hyphen == text.npos)
    return written;
  const auto threads_per_inch = number_of(text.substr(hyphen + 1));
  if (!threads_per_inch)
    return std::nullopt;
  written.pitch_mm = 25.4 / *threads_per_inch;
  return written;
}

std::optional<WrittenThread> read_thread(std::string_view text) {
  if (text.starts_with('M') || text.starts_with('m'))
    return read_metric(text.substr(1));
  return read_unified(text);
}

bool is_metric(const ThreadRow& row) {
  return row.standard == metric;
}

bool matches(const WrittenThread& written, const ThreadRow& row) {
  if (written.metric != is_metric(row) || !same(written.diameter_mm, row.diameter_mm))
    return false;
  if (written.metric && written.pitch_mm == 0.0)
    return row.designation.find('x') == row.designation.npos;
  return same(written.pitch_mm, row.pitch_mm) &&
         (written.series.empty() || row.designation.ends_with(written.series));
}

/// The threads of the written diameter, or of the nearest ones in the same system when it has none.
std::string near_designations(const WrittenThread& written) {
  double nearest = std::numeric_limits<double>::infinity();
  for (const ThreadRow& row : threads)
    if (is_metric(row) == written.metric)
      nearest = std::min(nearest, std::abs(row.diameter_mm - written.diameter_mm));
  if (nearest > 0.2 * written.diameter_mm)
    return {};
  std::string list;
  for (const ThreadRow& row : threads) {
    if (is_metric(row) != written.metric || !same(std::abs(row.diameter_mm - written.diameter_mm), nearest))
      continue;
    if (!list.empty())
      list += ", ";
    list += row.designation;
  }
  return list;
}

Thread thread_of(const ThreadRow& row) {
  return {std::string(row.designation), Length::millimetres(row.diameter_mm),
          Length::millimetres(row.pitch_mm), std::string(row.standard)};
}

} // namespace

std::span<const ThreadRow> known_threads() {
  return threads;
}

Result<Thread, std::string> parse_thread(std::string_view designation) {
  const std::string text = squeezed(designation);
  std::optional<WrittenThread> written = read_thread(text);
  if (!written) {
    // The size alone may still be readable: 1/2-20x, M12 coarse.
    const std::size_t size_end = text.find_first_not_of("0123456789/.", text.starts_with('M') ? 1 : 0);
    written = read_thread(std::string_view(text).substr(0, size_end));
    return written ? near_designations(*written) : std::string();
  }
  if (!text.starts_with('m'))
    for (const ThreadRow& row : threads)
      if (matches(*written, row))
        return thread_of(row);
  return near_designations(*written);
}

} // namespace sheerpole
