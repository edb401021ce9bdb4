#include "plugins/rig-drawing/dimensions.hpp"

#include "backend/drawing/label_text.hpp"
#include "plugins/rig-drawing/iso_style.hpp"
#include "units/quantity_text.hpp"
#include "wording/papers/rig_drawing_words.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

namespace sheerpole::rig_drawing {

namespace {

constexpr double arrow_length = 2.5;
constexpr double arrow_half_width = 0.42; // an angle of about 19 degrees

constexpr double leader_reach = 4.0;

/// A filled arrow with its point at `tip`, pointing along (x, y), a direction of length 1.
PolygonShape arrow(PaperPoint tip, double x, double y) {
  const PaperPoint back{tip.x - arrow_length * x, tip.y - arrow_length * y};
  return {{tip,
           {back.x - arrow_half_width * y, back.y + arrow_half_width * x},
           {back.x + arrow_half_width * y, back.y - arrow_half_width * x}},
          {0.0, 0.0, {}, 0.0},
          {}};
}

double width_of(const std::string& words, bool bold = false) {
  const PaperBox box = label_box({{}, words, plain_size, TextAnchor::start, bold, {}});
  return box.width() / wide_face_allowance;
}

constexpr double number_room = 12.5;

/// The middle of the words of a dimension: that of the dimension, or where a line would strike them out
/// that of the nearest gap between two lines which holds them.
double middle_of_words(const LevelDimension& dimension, double width) {
  std::vector<double> lines{dimension.left, dimension.right};
  for (const double x : dimension.crossed)
    if (x > dimension.left && x < dimension.right)
      lines.push_back(x);
  std::sort(lines.begin(), lines.end());
  const double middle = (dimension.left + dimension.right) / 2.0;
  const double half = width / 2.0 + 1.0;
  double found = middle;
  double off = std::numeric_limits<double>::max();
  for (std::size_t i = 0; i + 1 < lines.size(); ++i) {
    const double from = lines[i] + half;
    const double to = lines[i + 1] - half;
    if (from > to)
      continue;
    const double at = std::clamp(middle, from, to);
    if (std::abs(at - middle) < off) {
      off = std::abs(at - middle);
      found = at;
    }
  }
  return found;
}

} // namespace

std::string drawn_millimetres(Length length) {
  return in_threes(std::to_string(std::llround(length.millimetres())));
}

void draw(const LevelDimension& dimension, ShapeGroup& into) {
  ShapeGroup group{dimension.id, dimension.words, {}, {}};
  for (const double x : {dimension.left, dimension.right})
    group.add(LineShape{{x, dimension.from}, {x, dimension.y + 1.5}, leader_style(), {}});
  const double y = dimension.y;
  const double width = width_of(dimension.words);
  group.add(LineShape{{dimension.left, y}, {dimension.right, y}, dimension_style(), {}});
  const bool narrow = dimension.right - dimension.left < 2.0 * arrow_length + 1.0;
  group.add(arrow({dimension.left, y}, narrow ? 1.0 : -1.0, 0.0));
  group.add(arrow({dimension.right, y}, narrow ? -1.0 : 1.0, 0.0));
  if (dimension.right - dimension.left > width + 2.0 * arrow_length)
    group.add(TextShape{{middle_of_words(dimension, width), y - 1.0},
                        dimension.words,
                        plain_size,
                        TextAnchor::middle,
                        false,
                        {}});
  else
    group.add(TextShape{{dimension.right + 2.0 + (narrow ? arrow_length : 0.0), y + 0.36 * plain_size},
                        dimension.words,
                        plain_size,
                        TextAnchor::start,
                        false,
                        {}});
  into.add(std::move(group));
}

void draw(std::vector<LevelDimension> dimensions, ShapeGroup& into) {
  for (LevelDimension& upper : dimensions)
    for (const LevelDimension& lower : dimensions)
      if (lower.y > upper.y)
        upper.crossed.insert(upper.crossed.end(), {lower.left, lower.right});
  for (const LevelDimension& dimension : dimensions)
    draw(dimension, into);
}

void draw(const UprightDimension& dimension, ShapeGroup& into) {
  std::string title;
  for (const std::string& words : dimension.words)
    title += (title.empty() ? "" : " ") + words;
  ShapeGroup group{dimension.id, title, {}, {}};
  const double x = dimension.x;
  for (const double y : {dimension.top, dimension.bottom})
    group.add(LineShape{{dimension.from, y}, {x + 1.5, y}, leader_style(), {}});
  group.add(LineShape{{x, dimension.top}, {x, dimension.bottom}, dimension_style(), {}});
  group.add(arrow({x, dimension.top}, 0.0, -1.0));
  group.add(arrow({x, dimension.bottom}, 0.0, 1.0));
  const double beside = dimension.words_on_the_left ? -1.5 : 1.5;
  double y = dimension.top + 0.06 * (dimension.bottom - dimension.top) + plain_size;
  for (const std::string& words : dimension.words) {
    group.add(TextShape{{x + beside, y},
                        words,
                        plain_size,
                        dimension.words_on_the_left ? TextAnchor::end : TextAnchor::start,
                        false,
                        {}});
    y += text_row;
  }
  into.add(std::move(group));
}

double ladder_width(const std::vector<HeightMark>& marks) {
  double widest = 0.0;
  for (const HeightMark& mark : marks)
    widest = std::max(widest, width_of(mark.name) * 1.06);
  return leader_reach + number_room + 1.5 + widest;
}

double ladder_height(const std::vector<HeightMark>& marks) {
  return text_row * static_cast<double>(marks.size());
}

void draw_ladder(std::vector<HeightMark> marks, double x, double top, double bottom, std::string_view id,
                 ShapeGroup& into) {
  std::stable_sort(marks.begin(), marks.end(),
                   [](const HeightMark& a, const HeightMark& b) { return a.y < b.y; });
  std::vector<double> wanted;
  for (const HeightMark& mark : marks)
    wanted.push_back(mark.y);
  const std::vector<double> at =
      spread_apart(wanted, std::vector<double>(marks.size(), text_row), top, bottom);
  ShapeGroup group{std::string(id), say(RigDrawingPhrase::heights_above_waterline_millimetres), {}, {}};
  if (!marks.empty())
    group.add(LineShape{{x, marks.front().y}, {x, marks.back().y}, dimension_style(), {}});
  for (std::size_t i = 0; i < marks.size(); ++i) {
    group.add(LineShape{{x - 1.2, marks[i].y}, {x, marks[i].y}, dimension_style(), {}});
    group.add(
        PolylineShape{{{x, marks[i].y}, {x + 2.0, at[i]}, {x + leader_reach, at[i]}}, leader_style(), {}});
    const double base = at[i] + 0.36 * plain_size;
    group.add(TextShape{{x + leader_reach + number_room - 1.0, base},
                        marks[i].number,
                        plain_size,
                        TextAnchor::end,
                        true,
                        {}});
    group.add(TextShape{{x + leader_reach + number_room + 1.0, base},
                        marks[i].name,
                        plain_size,
                        TextAnchor::start,
                        false,
                        {}});
  }
  into.add(std::move(group));
}

} // namespace sheerpole::rig_drawing
