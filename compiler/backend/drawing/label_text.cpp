#include "backend/drawing/label_text.hpp"

#include "base/code_point.hpp"
#include "units/quantity_text.hpp"

#include <algorithm>
#include <array>

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

int width_of(char32_t code_point) {
  if (code_point >= 0x20 && code_point <= 0x7e)
    return plain_widths[code_point - 0x20];
  switch (code_point) {
  case 0x00a0: // no-break space
    return 28;
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
    if (const auto* text = std::get_if<TextShape>(&node.content))
      found.push_back({text->text, text->size, label_box(*text)});
    else if (const auto* inner = std::get_if<ShapeGroup>(&node.content))
      collect(*inner, found);
  }
}

/// Hundredths of an em, not bold.
int plain_width(std::string_view text) {
  int sum = 0;
  while (!text.empty()) {
    if (const auto sign = static_cast<unsigned char>(text.front()); sign < 0x80) {
      sum += width_of(sign);
      text.remove_prefix(1);
      continue;
    }
    const CodePoint next = first_code_point(text);
    sum += width_of(next.value);
    text.remove_prefix(next.bytes);
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

/// Where the next word of a text ends. What is one quantity is one word where a line holds it.
std::size_t end_of_word(std::string_view text, const LineRoom& room) {
  std::size_t end = std::min(text.find(' '), text.size());
  while (end < text.size() && blank_in_quantity(text, end)) {
    const std::size_t longer = std::min(text.find(' ', end + 1), text.size());
    if (!room.holds(text.substr(0, longer)))
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
  return in_ems(plain_width(text), bold);
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

std::vector<std::string> wrap_label(std::string_view text, double size, double width, bool bold) {
  const LineRoom room{size, width, bold};
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

} // namespace sheerpole
