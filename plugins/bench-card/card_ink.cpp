#include "plugins/bench-card/card_ink.hpp"

#include "backend/drawing/label_text.hpp"

#include <algorithm>
#include <utility>

namespace sheerpole {

namespace {

void write_in(ShapeGroup& into, PaperPoint at, const std::string& text, double size, bool bold,
              TextAnchor anchor, double grey) {
  if (text.empty())
    return;
  TextShape shape{at, text, size, anchor, bold, ""};
  shape.grey = grey;
  into.add(std::move(shape));
}

} // namespace

ShapeStyle ink(double width, std::vector<double> dashes) {
  return {.stroke_width = width, .stroke_grey = 0.0, .dashes = std::move(dashes), .fill_grey = {}};
}

ShapeStyle filled_ink(double grey) {
  return {.stroke_width = 0.35, .stroke_grey = 0.0, .dashes = {}, .fill_grey = grey};
}

void write(ShapeGroup& into, PaperPoint at, const std::string& text, double size, bool bold,
           TextAnchor anchor) {
  write_in(into, at, text, size, bold, anchor, 0.0);
}

void write_white(ShapeGroup& into, PaperPoint at, const std::string& text, double size, bool bold,
                 TextAnchor anchor) {
  write_in(into, at, text, size, bold, anchor, 1.0);
}

double SetLines::height() const {
  return size * line_spacing * static_cast<double>(lines.size());
}

SetLines set_lines(const std::string& text, double room, bool bold, const std::vector<double>& sizes) {
  SetLines set;
  for (const double size : sizes) {
    // The card names its face, so that the set width counts and not that of a wide one.
    set = {wrap_label(text, size, room * wide_face_allowance, bold), size};
    if (set.lines.size() == 1)
      break;
  }
  return set;
}

double write_lines(ShapeGroup& into, const SetLines& set, PaperPoint top, bool bold, TextAnchor anchor) {
  for (const std::string& line : set.lines) {
    write(into, {top.x, top.y + set.size}, line, set.size, bold, anchor);
    top.y += set.size * line_spacing;
  }
  return top.y;
}

void black_box(ShapeGroup& into, PaperBox box) {
  into.add(
      RectangleShape{box, {.stroke_width = 0.0, .stroke_grey = 0.0, .dashes = {}, .fill_grey = 0.0}, ""});
}

void SideBox::head(const std::string& words) {
  constexpr double high = 5.6;
  black_box(into_, {at_.x, at_.y, at_.x + width_, at_.y + high});
  write_white(into_, {at_.x + pad, at_.y + 4.0}, words, fitted(words, 2.9, true, width_ - 2.0 * pad), true);
  y_ = at_.y + high + 0.6;
  headed_ = true;
}

void SideBox::row(const std::string& name, const std::string& amount) {
  const double room = width_ - 2.0 * pad - text_width_in_ems(amount, true) * 3.0 - 1.0;
  write(into_, {at_.x + pad, y_ + 3.4}, name, fitted(name, 2.6, false, room));
  write(into_, {at_.x + width_ - pad, y_ + 3.4}, amount, 3.0, true, TextAnchor::end);
  y_ += 4.6;
}

void SideBox::two_amounts(const std::string& first, const std::string& of_first, const std::string& second,
                          const std::string& of_second) {
  const double half = width_ / 2.0;
  double left = at_.x + pad;
  for (const auto& [name, amount] : {std::pair{first, of_first}, {second, of_second}}) {
    write(into_, {left, y_ + 3.2}, name, 2.5);
    const double from = left + text_width_in_ems(name) * 2.5 + 1.0;
    write(into_, {from, y_ + 3.2}, amount, fitted(amount, 2.9, true, left + half - pad - 0.5 - from), true);
    left += half - 0.5;
  }
  y_ += 4.2;
}

void SideBox::blank(const std::string& name, bool bold) {
  const double from =
      std::min(at_.x + pad + text_width_in_ems(name, bold) * 2.8 + 1.5, at_.x + width_ - pad - 12.0);
  write(into_, {at_.x + pad, y_ + 4.0}, name, fitted(name, 2.8, bold, from - at_.x - pad - 1.0), bold);
  into_.add(LineShape{{from, y_ + 4.4}, {at_.x + width_ - pad, y_ + 4.4}, ink(0.2), ""});
  y_ += 5.1;
}

void SideBox::two_blanks(const std::string& first, const std::string& second) {
  const double half = width_ / 2.0;
  for (const auto& [name, left] : {std::pair{first, at_.x + pad}, {second, at_.x + half}}) {
    const double from = left + text_width_in_ems(name, false) * 2.6 + 1.0;
    write(into_, {left, y_ + 4.4}, name, 2.6);
    into_.add(LineShape{{from, y_ + 4.9}, {left + half - pad - 1.0, y_ + 4.9}, ink(0.2), ""});
  }
  y_ += 6.0;
}

void SideBox::words(const std::string& text, bool bold) {
  const SetLines set = set_lines(text, width_ - 2.0 * pad, bold, {2.5});
  y_ = write_lines(into_, set, {at_.x + pad, y_ + 0.4}, bold) + 0.6;
}

double SideBox::close() {
  y_ += 1.0;
  into_.add(RectangleShape{{at_.x, at_.y, at_.x + width_, y_}, ink(headed_ ? 0.9 : 0.5), ""});
  return y_;
}

} // namespace sheerpole
