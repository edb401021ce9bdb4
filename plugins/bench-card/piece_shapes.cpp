#include "plugins/bench-card/piece_shapes.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace sheerpole {

namespace {

/// Links by turns from the side and edge on, of which the outermost are seen from the side.
void draw_links(double left, double right, double y, ShapeGroup& into) {
  constexpr double link = 6.0;
  constexpr double half = 1.8;
  constexpr double apart = link - 1.4;
  const int pairs = std::max(0, static_cast<int>((right - left - link) / (2.0 * apart)));
  const double step = pairs == 0 ? 0.0 : (right - left - link) / (2.0 * pairs);
  for (int i = 0; i <= 2 * pairs; ++i) {
    const double from = left + step * i;
    if (i % 2 == 0)
      into.add(RectangleShape{{from, y - half, from + link, y + half}, ink(0.5), ""});
    else
      into.add(LineShape{{from, y}, {from + link, y}, ink(1.0), ""});
  }
}

} // namespace

void draw_sign(ShapeGroup& into, const MarkRow& row, PaperPoint at, double half) {
  const double size = (row.sign.size() > 1 ? 1.15 : 1.4) * half; // two digits stay inside the circle
  const PaperPoint base{at.x, at.y + 0.36 * size};
  if (row.is_mark()) {
    into.add(CircleShape{at, half, ink(0.35), ""});
    write(into, base, row.sign, size, true, TextAnchor::middle);
    return;
  }
  black_box(into, {at.x - half, at.y - half, at.x + half, at.y + half});
  write_white(into, base, row.sign, size, true, TextAnchor::middle);
}

void draw_break(ShapeGroup& into, double x, double y) {
  into.add(RectangleShape{{x - 1.5, y - 1.8, x + 1.5, y + 1.8},
                          {.stroke_width = 0.0, .stroke_grey = 1.0, .dashes = {}, .fill_grey = 1.0},
                          ""});
  for (const double dx : {-1.5, 1.5})
    into.add(LineShape{{x + dx - 0.8, y + 2.0}, {x + dx + 0.8, y - 2.0}, ink(0.35), ""});
}

void draw_braid(double left, double right, double y, ShapeGroup& into) {
  bool rising = true;
  for (double x = left + 1.6; x + 1.6 < right; x += 3.2, rising = !rising)
    into.add(
        LineShape{{x, y + (rising ? 0.5 : -0.5)}, {x + 1.4, y + (rising ? -0.5 : 0.5)}, ink(0.18), ""});
}

void draw_line(const CardPiece& card, double left, double right, double y, ShapeGroup& into) {
  if (card.chain())
    return draw_links(left, right, y, into);
  if (!card.rope()) {
    into.add(LineShape{{left, y}, {right, y}, ink(1.4), ""});
    return;
  }
  into.add(RectangleShape{{left, y - rope_half, right, y + rope_half}, ink(0.35), ""});
  draw_braid(left, right, y, into);
}

void draw_arrow(ShapeGroup& into, double left, double right, double y) {
  into.add(LineShape{{left, y}, {right, y}, ink(0.25), ""});
  const ShapeStyle head{.stroke_width = 0.0, .stroke_grey = 0.0, .dashes = {}, .fill_grey = 0.0};
  const double length = std::min(2.4, 0.3 * std::abs(right - left));
  for (const auto& [x, inwards] : {std::pair{left, length}, {right, -length}})
    into.add(PolygonShape{{{x, y}, {x + inwards, y - 0.5}, {x + inwards, y + 0.5}}, head, ""});
}

} // namespace sheerpole
