#include "backend/drawing/label_text.hpp"

#include "backend/drawing/text_runs.hpp"

#include "base/code_point.hpp"
#include "units/quantity_text.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <numeric>
#include <utility>

namespace sheerpole {

namespace {

// Hundredths of an em for U+0020 … U+007E, from memory of the Helvetica metrics, rounded up.
constexpr std::array<int, 95> plain_widths = {
    28,  28, 36, 56, 56, 89, 67, 20, 34, 34, 39, 59, 28, 34, 28, 28, // blank to slash
    56,  56, 56, 56, 56, 56, 56, 56, 56, 56, 28, 28, 59, 59, 59, 56, // digits to ?
    102, 67, 67, 73, 73, 67, 62, 78, 73, 28, 50, 67, 56, 84, 73, 78, // @ to O
    67,  78, 73, 67, 62, 73, 67, 95, 67, 67, 62, 28, 28, 28, 47, 56, // P to _
    34,  56, 56, 50, 56, 56, 28, 56, 56, 23, 23, 50, 23, 84, 56, 56, // ` to o
    56,  56, 34, 50, 28, 56, 50, 73, 50, 50, 50, 34, 26, 34, 59};    // p to ~

constexpr int widest_sign = 102;

// A bold face of the same family sets running text about a twelfth wider.
constexpr double bold_allowance = 1.1;

// A fifth of an em, as DejaVu Sans has it; Liberation Sans has none and sheerpole-pdf leaves as much.
constexpr int thin_blank_width = 20;

int width_of(char32_t code_point) {
  if (code_point >= 0x20 && code_point <= 0x7e)
    return plain_widths[code_point - 0x20];
  switch (code_point) {
  case 0x00a0: // no-break space
    return 28;
  case 0x202f: // the blank inside a long number
    return thin_blank_width;
  case 0x00b0: // degree
    return 40;
  case 0x00b7: // middle dot
    return 34;
  case 0x00b1: // plus-minus
  case 0x00d7: // multiplication sign
  case 0x2212: // minus
    return 59;
  case 0x2013: // en dash
    return 56;
  case 0x2014: // em dash
  case 0x2026: // ellipsis
    return 100;
  default:
    return widest_sign;
  }
}

void collect(const ShapeGroup& group, std::vector<LabelBox>& found) {
  for (const DrawnNode& node : group.children) {
    if (const auto* text = std::get_if<TextShape>(&node.content()))
      found.push_back({text->text, text->size, label_box(*text)});
    else if (const auto* inner = std::get_if<ShapeGroup>(&node.content()))
      collect(*inner, found);
  }
}

/// width_of() each ASCII character; nothing of a byte that is a part of another one.
constexpr std::array<std::uint8_t, 256> widths_of_bytes = [] {
  std::array<std::uint8_t, 256> widths{};
  for (std::size_t sign = 0; sign < 0x80; ++sign)
    widths[sign] =
        static_cast<std::uint8_t>(sign >= 0x20 && sign <= 0x7e ? plain_widths[sign - 0x20] : widest_sign);
  return widths;
}();

/// Hundredths of an em, not bold.
int plain_width(std::string_view text) {
  int sum = 0;
  std::size_t at = 0;
  while (at < text.size()) {
    // Every text of every paper comes here, and nearly all of it is ASCII.
    if (const std::uint8_t width = widths_of_bytes[static_cast<unsigned char>(text[at])]; width != 0) {
      sum += width;
      ++at;
      continue;
    }
    const CodePoint next = first_code_point(text.substr(at));
    sum += width_of(next.value);
    at += next.bytes;
  }
  return sum;
}

double in_ems(int plain_width, bool bold) {
  return (bold ? bold_allowance : 1.0) * plain_width / 100.0;
}

struct LineRoom {
  double size;
  double width;
  bool bold;
  bool holds(int plain_width) const {
    return in_ems(plain_width, bold) * size * wide_face_allowance <= width + 1e-9;
  }
};

/// Whether blanks stand between words alone, and never two of them.
bool single_blanks_only(std::string_view text) {
  bool after_blank = true;
  for (const char sign : text) {
    if (sign == ' ' && after_blank)
      return false;
    after_blank = sign == ' ';
  }
  return !after_blank;
}

/// Where the next word of a text ends. What is one quantity is one word where a line holds it.
std::size_t end_of_word(std::string_view text, const LineRoom& room) {
  std::size_t end = std::min(text.find(' '), text.size());
  while (end < text.size() && blank_in_quantity(text, end)) {
    const std::size_t longer = std::min(text.find(' ', end + 1), text.size());
    if (!room.holds(plain_width(text.substr(0, longer))))
      break;
    end = longer;
  }
  return end;
}

/// Bytes of `word` that go on one line; at least one character.
std::size_t bytes_that_fit(std::string_view word, const LineRoom& room) {
  std::size_t fit = 0;
  std::size_t after_hyphen = 0;
  int sum = 0;
  for (std::size_t at = 0; at < word.size();) {
    const CodePoint next = first_code_point(word.substr(at));
    at += next.bytes;
    sum += width_of(next.value);
    if (!room.holds(sum) && fit > 0)
      break;
    fit = at;
    if (word[at - 1] == '-' && at < word.size())
      after_hyphen = at;
  }
  return fit < word.size() && after_hyphen > 0 ? after_hyphen : fit;
}

} // namespace

double text_width_in_ems(std::string_view text, bool bold) {
  // All figures are as wide.
  constexpr double saved = (1.0 - small_figures) * 56.0;
  const auto small = text.find('/') == std::string_view::npos ? 0 : small_figures_in(text);
  return in_ems(plain_width(text) - static_cast<int>(saved * static_cast<double>(small)), bold);
}

double fitted(const std::string& text, double size, bool bold, double room) {
  const double width = text_width_in_ems(text, bold) * size;
  return width <= room ? size : size * room / width;
}

double set_width(const TextShape& text) {
  return (text.fixed_pitch ? fixed_pitch_in_ems * static_cast<double>(screen_columns(text.text))
                           : text_width_in_ems(text.text, text.bold)) *
         text.size;
}

PaperBox label_box(const TextShape& text) {
  // The common faces of fixed pitch are as wide as this one (from memory), and a text keeps its set width.
  const double width = set_width(text) * (text.fixed_pitch ? 1.0 : wide_face_allowance);
  const double before = text.anchor == TextAnchor::start    ? 0.0
                        : text.anchor == TextAnchor::middle ? width / 2
                                                            : width;
  return {text.at.x - before, text.at.y - 0.95 * text.size, text.at.x - before + width,
          text.at.y + 0.25 * text.size};
}

std::vector<LabelBox> label_boxes(const Drawing& drawing) {
  std::vector<LabelBox> found;
  collect(drawing.content, found);
  return found;
}

std::string broken_off(std::string line) {
  // Whole characters: what follows the first byte of one goes with it.
  for (int i = 0; i < 2 && !line.empty(); ++i) {
    while (!line.empty() && (static_cast<unsigned char>(line.back()) & 0xC0) == 0x80)
      line.pop_back();
    if (!line.empty())
      line.pop_back();
  }
  return line + "…";
}

std::vector<std::string> wrap_label(std::string_view text, double size, double width, bool bold) {
  const LineRoom room{size, width, bold};
  // Most texts go on one line as they are, and need not be taken apart. Of a long one a few bytes tell that
  // it does not.
  constexpr std::size_t least_sign = 20; // hundredths of an em, of the narrowest in four bytes at the most
  const bool too_long = !room.holds(static_cast<int>(text.size() / 4 * least_sign));
  if (!too_long && room.holds(plain_width(text)) && single_blanks_only(text))
    return {std::string(text)};
  std::vector<std::string> lines;
  std::string line;
  int line_width = 0; // so that no word is measured twice
  while (!text.empty()) {
    const std::size_t blank = end_of_word(text, room);
    std::string_view word = text.substr(0, blank);
    text.remove_prefix(std::min(blank + 1, text.size()));
    if (word.empty())
      continue;
    int word_width = plain_width(word);
    const int longer = line.empty() ? word_width : line_width + width_of(' ') + word_width;
    if (room.holds(longer)) {
      if (!line.empty())
        line += ' ';
      line += word;
      line_width = longer;
      continue;
    }
    if (!line.empty())
      lines.push_back(std::move(line));
    while (!room.holds(word_width)) {
      const std::size_t fit = bytes_that_fit(word, room);
      if (fit == word.size())
        break;
      lines.emplace_back(word.substr(0, fit));
      word.remove_prefix(fit);
      word_width = plain_width(word);
    }
    line = word;
    line_width = word_width;
  }
  if (!line.empty() || lines.empty())
    lines.push_back(std::move(line));
  return lines;
}

namespace {

double turn(PaperPoint a, PaperPoint b, PaperPoint c) {
  return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}

bool cross(PaperPoint a, PaperPoint b, PaperPoint c, PaperPoint d) {
  return turn(a, b, c) * turn(a, b, d) < 0 && turn(c, d, a) * turn(c, d, b) < 0;
}

/// Each block of positions that push each other away stands at the mean of what its members want.
struct PushedBlock {
  double sum = 0.0;
  std::size_t count = 0;
  double mean() const { return sum / static_cast<double>(count); }
};

/// Labels from top to bottom, and the places on paper where their leaders end.
struct OrderedColumn {
  std::vector<const LabelRequest*> labels;
  std::vector<PaperPoint> ports;
};

std::vector<PaperPoint> ports_of(const std::vector<const LabelRequest*>& labels,
                                 const LabelColumn& column) {
  std::vector<double> wanted;
  std::vector<double> heights;
  for (const LabelRequest* label : labels) {
    wanted.push_back(label->site.y);
    heights.push_back(label_height(*label));
  }
  const double outward = column.to_left ? -1.0 : 1.0;
  std::vector<PaperPoint> ports;
  for (const double middle : spread_apart(wanted, heights, column.top, column.bottom))
    ports.push_back({column.edge - outward * (leader_gap + leader_stub), middle});
  return ports;
}

/// Brings the labels into the order that join_without_crossing() finds; false when it was that order
/// already.
bool uncross(OrderedColumn& column) {
  std::vector<PaperPoint> sites;
  for (const LabelRequest* label : column.labels)
    sites.push_back(label->site);
  const std::vector<std::size_t> port_of = join_without_crossing(sites, column.ports);
  std::vector<const LabelRequest*> reordered(column.labels.size());
  for (std::size_t i = 0; i < port_of.size(); ++i)
    reordered[port_of[i]] = column.labels[i];
  const bool changed = reordered != column.labels;
  column.labels = std::move(reordered);
  return changed;
}

OrderedColumn order_column(const std::vector<LabelRequest>& requests, const LabelColumn& column) {
  std::vector<const LabelRequest*> by_site;
  for (const LabelRequest& request : requests)
    by_site.push_back(&request);
  std::stable_sort(by_site.begin(), by_site.end(),
                   [](const LabelRequest* a, const LabelRequest* b) { return a->site.y < b->site.y; });
  // A new order moves labels of different heights, and new places may cross again. Labels of one height
  // settle at the first attempt. Should others not settle, the order of the sites is kept: leaders may
  // cross, labels never overlap.
  OrderedColumn ordered{by_site, {}};
  constexpr int attempts = 50;
  for (int i = 0; i < attempts; ++i) {
    ordered.ports = ports_of(ordered.labels, column);
    if (!uncross(ordered))
      return ordered;
  }
  ordered.labels = by_site;
  ordered.ports = ports_of(ordered.labels, column);
  return ordered;
}

} // namespace

std::vector<std::size_t> join_without_crossing(const std::vector<PaperPoint>& sites,
                                               const std::vector<PaperPoint>& ports) {
  std::vector<std::size_t> port_of(sites.size());
  std::iota(port_of.begin(), port_of.end(), std::size_t{0});
  for (bool changed = true; changed;) {
    changed = false;
    for (std::size_t i = 0; i < sites.size(); ++i)
      for (std::size_t j = i + 1; j < sites.size(); ++j) {
        const PaperPoint a = ports[port_of[i]];
        const PaperPoint b = ports[port_of[j]];
        if (!cross(sites[i], a, sites[j], b))
          continue;
        const double now = distance(sites[i], a) + distance(sites[j], b);
        const double exchanged = distance(sites[i], b) + distance(sites[j], a);
        if (exchanged >= now - 1e-9) // rounding only: lines that cross are always longer
          continue;
        std::swap(port_of[i], port_of[j]);
        changed = true;
      }
  }
  return port_of;
}

std::vector<double> spread_apart(const std::vector<double>& wanted, const std::vector<double>& heights,
                                 double top, double bottom) {
  // With the distance that the bands above take taken off, "at least this far apart" becomes "not falling":
  // isotonic regression, solved exactly by pooling adjacent violators (from memory of Barlow et al.,
  // Statistical Inference under Order Restrictions).
  std::vector<PushedBlock> blocks;
  std::vector<double> offsets; // of each middle from the middle of the first band
  for (std::size_t i = 0; i < wanted.size(); ++i) {
    offsets.push_back(i == 0 ? 0.0 : offsets.back() + (heights[i - 1] + heights[i]) / 2);
    blocks.push_back({wanted[i] - offsets[i], 1});
    while (blocks.size() > 1 && blocks[blocks.size() - 2].mean() >= blocks.back().mean()) {
      const PushedBlock last = blocks.back();
      blocks.pop_back();
      blocks.back().sum += last.sum;
      blocks.back().count += last.count;
    }
  }
  std::vector<double> placed;
  if (wanted.empty())
    return placed;
  const double highest = top + heights.front() / 2;
  const double lowest = bottom - heights.back() / 2 - offsets.back();
  for (const PushedBlock& block : blocks)
    for (std::size_t i = 0; i < block.count; ++i)
      placed.push_back(std::max(highest, std::min(block.mean(), lowest)) + offsets[placed.size()]);
  return placed;
}

double label_height(const LabelRequest& request) {
  // More room around labels of several lines, so that they do not read as one.
  const double clearance = request.lines.size() > 1 ? 0.9 : 0.2;
  return line_spacing * request.size * static_cast<double>(request.lines.size()) + clearance;
}

double column_height(const std::vector<LabelRequest>& requests) {
  double height = 0.0;
  for (const LabelRequest& request : requests)
    height += label_height(request);
  return height;
}

double column_width(const std::vector<LabelRequest>& requests) {
  double width = 0.0;
  for (const LabelRequest& request : requests)
    for (const std::string& line : request.lines)
      width =
          std::max(width, label_box({{}, line, request.size, TextAnchor::start, request.bold, {}}).width());
  return width;
}

void place_labels(const std::vector<LabelRequest>& requests, const LabelColumn& column, ShapeGroup& into) {
  if (requests.empty())
    return;
  const double outward = column.to_left ? -1.0 : 1.0;
  const OrderedColumn ordered = order_column(requests, column);
  for (std::size_t i = 0; i < ordered.labels.size(); ++i) {
    const LabelRequest& request = *ordered.labels[i];
    const PaperPoint port = ordered.ports[i];
    ShapeGroup label;
    label.id = request.id;
    label.add(PolylineShape{
        {request.site, port, {column.edge - outward * leader_gap, port.y}}, {0.13, 0.35, {}, {}}, {}});
    if (request.ringed)
      label.add(CircleShape{request.site, 0.5, {0.13, 0.0, {}, 1.0}, {}});
    // Capitals and small letters together look centred when the base line is 0.35 em below the middle.
    const double step = line_spacing * request.size;
    double base = port.y + 0.35 * request.size - step * static_cast<double>(request.lines.size() - 1) / 2;
    for (const std::string& line : request.lines) {
      label.add(TextShape{{column.edge, base},
                          line,
                          request.size,
                          column.to_left ? TextAnchor::end : TextAnchor::start,
                          request.bold,
                          {}});
      base += step;
    }
    into.add(std::move(label));
  }
}

} // namespace sheerpole
