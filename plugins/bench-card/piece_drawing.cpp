#include "backend/card/card_in_hand.hpp"
#include "backend/drawing/label_text.hpp"
#include "backend/paper_words.hpp"
#include "plugins/bench-card/finished_end.hpp"
#include "plugins/bench-card/piece_shapes.hpp"
#include "wording/papers/bench_card_words.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace sheerpole {

namespace {

void draw_tips(const std::vector<TipRow>& tips, double left, double right, double y, ShapeGroup& into) {
  const auto apart = (right - left) / static_cast<double>(tips.size() + 1);
  for (std::size_t i = 0; i < tips.size(); ++i) {
    double x = left + apart * static_cast<double>(i + 1);
    if (const double from_break = x - (left + right) / 2.0; std::abs(from_break) < 2.6)
      x += from_break < 0.0 ? -2.6 : 2.6; // the break of the drawing is there
    const ShapeStyle black{.stroke_width = 0.0, .stroke_grey = 0.0, .dashes = {}, .fill_grey = 0.0};
    into.add(LineShape{{x, y - 4.0}, {x, y + 2.0}, ink(0.35), ""});
    into.add(PolygonShape{{{x, y - 5.6}, {x + 1.2, y - 4.0}, {x, y - 2.4}, {x - 1.2, y - 4.0}}, black, ""});
    const std::string& sign = tips[i].sign;
    write(into, {x, y - 6.4}, sign, fitted(sign, 2.8, true, apart - 0.6), true, TextAnchor::middle);
  }
}

/// In the middle below the line: how much is buried at each end.
void write_burys(const CardPiece& card, double middle, double y, double room, ShapeGroup& into) {
  const std::string aloft = bury_words(card, WhichEnd::upper);
  const std::string below = bury_words(card, WhichEnd::lower);
  std::vector<std::string> lines;
  if (aloft == below)
    lines.push_back(led_by(say(BenchCardPhrase::both_ends_colon), aloft));
  else
    lines = {led_by(say(BenchCardPhrase::aloft_before), aloft),
             led_by(say(BenchCardPhrase::below_before), below)};
  for (const std::string& line : lines) {
    y += 3.4;
    write(into, {middle, y + 1.6}, line, fitted(line, 2.6, true, room), true, TextAnchor::middle);
  }
}

constexpr double finished_height = 17.6;
constexpr double words_begin = 10.9; ///< below the middle of the line
constexpr double words_apart = 3.2;

void draw_finished(const CardPiece& card, const std::vector<MarkRow>& rows, bool with_words, double width,
                   PaperPoint at, ShapeGroup& into) {
  const double y = at.y + 8.6;
  const double middle = at.x + width / 2.0;
  for (const WhichEnd end : {WhichEnd::upper, WhichEnd::lower}) {
    const bool upper = end == WhichEnd::upper;
    const EndPlace place{card, end, upper ? at.x : at.x + width, upper ? 1.0 : -1.0, y};
    const double to_middle = middle - place.way * 1.5;
    if (card.rope())
      draw_eye(place, rows, to_middle, into);
    else
      draw_terminal(place, rows, to_middle, into);
    double base = y + words_begin;
    for (const std::string& words : with_words ? words_of_end(place, rows) : std::vector<std::string>{}) {
      write(into, {place.edge, base}, words, fitted(words, 2.6, false, width / 2.0 - 2.5), false,
            upper ? TextAnchor::start : TextAnchor::end);
      base += words_apart;
    }
  }
  if (!with_words)
    write_burys(card, middle, y, width - 2.0 * out - 4.0, into);
  draw_tips(tip_rows(card), at.x + out, at.x + width - out, y, into);
  draw_break(into, middle, y);
}

std::size_t lines_of_ends(const CardPiece& card, const std::vector<MarkRow>& rows) {
  std::size_t most = 1;
  for (const WhichEnd end : {WhichEnd::upper, WhichEnd::lower})
    most = std::max(most, words_of_end({card, end}, rows).size());
  return most;
}

} // namespace

void add_piece_drawings(const CardPiece& card, const CardLook& look, PageFlow& page) {
  const std::vector<MarkRow> rows = mark_rows(card);
  page.drawing(straight_height(card),
               [&](ShapeGroup& into, PaperPoint at) { draw_straight(card, rows, page.width(), at, into); });
  if (look.finished == CardLook::Finished::in_words) {
    for (const WhichEnd end : {WhichEnd::upper, WhichEnd::lower})
      page.text(fmt::format("{}: {}.",
                            end == WhichEnd::upper ? say(BenchCardPhrase::aloft_begins)
                                                   : say(BenchCardPhrase::below_begins),
                            joined(words_of_end({card, end}, rows), "; ")),
                {.size = look.small, .bold = false, .indent = 0.0});
    return;
  }
  const bool with_words = look.finished == CardLook::Finished::drawn_with_words;
  const double height =
      with_words ? 8.6 + words_begin + words_apart * static_cast<double>(lines_of_ends(card, rows)) - 1.2
                 : finished_height;
  page.drawing(height, [&](ShapeGroup& into, PaperPoint at) {
    draw_finished(card, rows, with_words, page.width(), at, into);
  });
}

} // namespace sheerpole
