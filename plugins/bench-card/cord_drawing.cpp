#include "backend/card/card_in_hand.hpp"
#include "backend/drawing/label_text.hpp"
#include "backend/paper_words.hpp"
#include "plugins/bench-card/from_the_cord.hpp"
#include "wording/say.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <numbers>
#include <utility>

namespace sheerpole {

namespace {

ShapeStyle stroke(double width, std::vector<double> dashes = {}) {
  return {.stroke_width = width, .stroke_grey = 0.0, .dashes = std::move(dashes), .fill_grey = {}};
}
ShapeStyle filled(double grey) {
  return {.stroke_width = 0.5, .stroke_grey = 0.0, .dashes = {}, .fill_grey = grey};
}

void write(ShapeGroup& into, PaperPoint at, const std::string& text, double size, bool bold = false,
           TextAnchor anchor = TextAnchor::start) {
  if (!text.empty())
    into.add(TextShape{at, text, size, anchor, bold, ""});
}

/// A round mark is made on the rope, a square one is a place on the cord.
void draw_sign(ShapeGroup& into, const CordRow& row, PaperPoint at, double half = 2.0) {
  if (row.mark)
    into.add(CircleShape{at, half, stroke(0.35), ""});
  else
    into.add(RectangleShape{{at.x - half, at.y - half, at.x + half, at.y + half}, stroke(0.7), ""});
  const double size = (row.sign.size() > 1 ? 1.15 : 1.4) * half; // two digits stay inside the circle
  write(into, {at.x, at.y + 0.36 * size}, row.sign, size, true, TextAnchor::middle);
}

/// Where each row stands along the drawn rope: the upper ones in its upper half, the lower ones in its
/// lower.
std::vector<double> places_on_drawing(const std::vector<CordRow>& rows, double left, double right) {
  const auto upper = static_cast<std::size_t>(
      std::count_if(rows.begin(), rows.end(), [](const CordRow& row) { return row.by_upper; }));
  const double half = (right - left) * 0.46;
  std::vector<double> result;
  for (std::size_t i = 0; i < rows.size(); ++i) {
    const bool by_upper = i < upper;
    const std::size_t count = by_upper ? upper : rows.size() - upper;
    const std::size_t number = by_upper ? i : i - upper;
    const double share = count < 2 ? 0.0 : static_cast<double>(number) / static_cast<double>(count - 1);
    result.push_back(by_upper ? left + half * share : right - half * (1.0 - share));
  }
  return result;
}

void draw_break(ShapeGroup& into, double x, double y) {
  into.add(RectangleShape{{x - 1.5, y - 1.8, x + 1.5, y + 1.8},
                          {.stroke_width = 0.0, .stroke_grey = 1.0, .dashes = {}, .fill_grey = 1.0},
                          ""});
  for (const double dx : {-1.5, 1.5})
    into.add(LineShape{{x + dx - 0.8, y + 2.0}, {x + dx + 0.8, y - 2.0}, stroke(0.35), ""});
}

/// As large as `size`, smaller where the text would be wider than its room.
double fitted(const std::string& text, double size, bool bold, double room) {
  const double width = text_width_in_ems(text, bold) * size;
  return width <= room ? size : size * room / width;
}

constexpr double rope_half = 1.3;

/// The line from one place to another: a rope as a band with strokes of its braid, a wire as one stroke.
void draw_line(const CardPiece& card, double left, double right, double y, ShapeGroup& into) {
  if (!card.rope()) {
    into.add(LineShape{{left, y}, {right, y}, stroke(1.4), ""});
    return;
  }
  into.add(RectangleShape{{left, y - rope_half, right, y + rope_half}, stroke(0.35), ""});
  bool rising = true;
  for (double x = left + 1.6; x + 1.6 < right; x += 3.2, rising = !rising)
    into.add(
        LineShape{{x, y + (rising ? 0.5 : -0.5)}, {x + 1.4, y + (rising ? -0.5 : 0.5)}, stroke(0.18), ""});
}

void draw_arrow(ShapeGroup& into, double left, double right, double y) {
  into.add(LineShape{{left, y}, {right, y}, stroke(0.25), ""});
  const ShapeStyle head{.stroke_width = 0.0, .stroke_grey = 0.0, .dashes = {}, .fill_grey = 0.0};
  for (const auto& [x, inwards] : {std::pair{left, 2.4}, {right, -2.4}})
    into.add(PolygonShape{{{x, y}, {x + inwards, y - 0.5}, {x + inwards, y + 0.5}}, head, ""});
}

/// How far a row lies from the nearer end of the cord, for below its mark.
std::string nearer(const CardPiece& card, const CordRow& row) {
  const CardLength place = row.by_upper ? row.from_u : row.from_l;
  return card_text(card.unit, {false, std::abs(place.parts)});
}

constexpr double layout_height = 30.2;
constexpr double tally_begins = 3.2; ///< from the middle of the knot
constexpr double tally_apart = 2.2;

/// The piece along the top with the numbers of the table below its marks, the cord below it. Not to scale:
/// the marks stand at equal distances.
void draw_layout(const CardPiece& card, const std::vector<CordRow>& rows, double width, PaperPoint at,
                 ShapeGroup& into) {
  const double rope = at.y + 11.0;
  const double cord = at.y + 21.6;
  const Reading* reading = reading_of_x(*card.stay, *card.of_stay);
  const int tally = reading == nullptr ? 0 : reading->knots.value_or(0);
  constexpr double margin = 3.0;
  const double left = at.x + margin;
  // Where the cord ends with the piece its tally needs room beyond it.
  const double right =
      at.x + width -
      (rows.back().sign == "L" && tally > 0 && tally <= 10 ? tally_begins + tally_apart * tally : margin);
  const double middle = (left + right) / 2.0;
  write(into, {at.x, at.y + 3.2}, "ALOFT", 3.0, true);
  write(into, {at.x + width, at.y + 3.2}, "BELOW", 3.0, true, TextAnchor::end);
  write(into, {middle, at.y + 3.2}, "not to scale; the numbers are those of the table", 2.4, false,
        TextAnchor::middle);
  const std::vector<double> xs = places_on_drawing(rows, left, right);
  draw_line(card, left, middle - 1.5, rope, into);
  draw_line(card, middle + 1.5, right, rope, into);
  draw_break(into, middle, rope);
  double upper_end = left;
  double knot = right;
  for (std::size_t i = 0; i < rows.size(); ++i) {
    into.add(LineShape{{xs[i], rope - 2.0}, {xs[i], rope + 2.0}, stroke(0.5), ""});
    draw_sign(into, rows[i], {xs[i], rope - 4.6});
    if (rows[i].sign == "U")
      upper_end = xs[i];
    if (rows[i].sign == "L")
      knot = xs[i];
    // Between its neighbours; the outermost stand at the edge of the page.
    const bool first = i == 0;
    const bool last = i + 1 == rows.size();
    const double before = first ? 16.0 : xs[i] - xs[i - 1];
    const double behind = last ? 16.0 : xs[i + 1] - xs[i];
    const std::string number = nearer(card, rows[i]);
    const bool end_of_cord = rows[i].sign == "U" || rows[i].sign == "L";
    const double size = fitted(number, 2.6, end_of_cord, std::min(before, behind) - 1.0);
    const bool wide = text_width_in_ems(number, end_of_cord) * size > 2.0 * margin;
    write(into,
          {first && wide  ? at.x
           : last && wide ? at.x + width
                          : xs[i],
           rope + 5.2},
          number, size, end_of_cord,
          first && wide  ? TextAnchor::start
          : last && wide ? TextAnchor::end
                         : TextAnchor::middle);
  }
  for (const double x : {upper_end, knot})
    into.add(LineShape{{x, rope + 6.2}, {x, cord - 1.8}, stroke(0.18, {0.4, 0.8}), ""});
  into.add(LineShape{{upper_end, cord}, {knot, cord}, stroke(0.7), ""});
  draw_break(into, middle, cord);
  into.add(CircleShape{{upper_end, cord}, 1.4, filled(1.0), ""});
  into.add(CircleShape{{knot, cord}, 1.6, filled(0.0), ""});
  // All of it or nothing: a tally that is cut off at the edge is another one. Its number stands beside it.
  if (knot + tally_begins + tally_apart * (tally - 1) + 0.8 <= at.x + width)
    for (int i = 0; i < tally; ++i)
      into.add(CircleShape{{knot + tally_begins + tally_apart * i, cord}, 0.8, stroke(0.35), ""});
  write(into, {middle + 4.0, cord - 1.4}, card.cord->where, 2.8);
  for (const double x : {upper_end, knot})
    into.add(LineShape{{x, cord + 2.0}, {x, cord + 7.6}, stroke(0.18), ""});
  draw_arrow(into, upper_end, knot, cord + 6.8);
  write(into, {middle, cord + 6.0}, "X", 3.6, true, TextAnchor::middle);
}

constexpr double finished_height = 21.0;

/// One eye of the finished piece; `way` is 1 where the rope runs to the right from it, -1 where to the
/// left.
void draw_eye(PaperPoint crown, double way, double throat, ShapeGroup& into) {
  const auto pear = [&](double half, double from, double to) {
    std::vector<PaperPoint> points{{to, crown.y}};
    constexpr int steps = 24;
    for (int i = 0; i <= steps; ++i) {
      const double angle = std::numbers::pi * (0.40 + 1.20 * i / steps);
      points.push_back({from + way * half * std::cos(angle), crown.y - half * std::sin(angle)});
    }
    into.add(PolygonShape{std::move(points), stroke(0.35), ""});
  };
  pear(6.0, crown.x, throat);
  pear(3.6, crown.x, throat - way * 4.5);
  into.add(CircleShape{crown, 1.5, filled(0.0), ""});
}

/// The piece with its eyes made: which mark has come to which, where each tail lies and comes out.
void draw_finished(const CardPiece& card, const std::vector<CordRow>& rows, double width, PaperPoint at,
                   ShapeGroup& into) {
  const double y = at.y + 8.0;
  const double middle = at.x + width / 2.0;
  for (const WhichEnd end : {WhichEnd::upper, WhichEnd::lower}) {
    const bool upper = end == WhichEnd::upper;
    const double way = upper ? 1.0 : -1.0;
    const double edge = upper ? at.x : at.x + width;
    const PaperPoint crown{edge + way * 7.0, y};
    const double throat = edge + way * 27.0;
    const double out = edge + way * 60.0;
    draw_eye(crown, way, throat, into);
    // The standing part is wider where the tail lies in it, and thinner again where it tapers off.
    for (const double side : {-1.0, 1.0})
      into.add(PolylineShape{{{throat, y + side * 2.2},
                              {throat + way * 20.0, y + side * 2.2},
                              {out, y + side * rope_half},
                              {middle - way * 1.5, y + side * rope_half}},
                             stroke(0.35),
                             ""});
    for (const double side : {-1.0, 1.0})
      into.add(LineShape{{throat + way * 0.5, y + side * 0.9}, {out, y}, stroke(0.25, {1.2, 0.8}), ""});
    const auto sign = [&](const CordRow* row, double x) {
      if (row != nullptr)
        draw_sign(into, *row, {x, y - 5.2});
    };
    sign(row_of(rows, CordMark::throat_on_tail, upper), throat - 2.2);
    sign(row_of(rows, CordMark::throat_on_standing_part, upper), throat + 2.2);
    sign(row_of(rows, CordMark::tail_comes_out, upper), out);
    for (const double x : {throat, out})
      into.add(LineShape{{x, y - 3.1}, {x, y - (x == throat ? 2.2 : rope_half)}, stroke(0.25), ""});
    const PieceEnd& made = upper ? card.piece->upper : card.piece->lower;
    const TextAnchor anchor = upper ? TextAnchor::start : TextAnchor::end;
    write(into, {edge, y + 9.0}, made.bare() ? "no part named" : made.part_name(*card.rig), 2.5, false,
          anchor);
    write(into, {edge, y + 12.2}, bury_words(card, end), 2.5, true, anchor);
  }
  draw_break(into, middle, y);
}

/// Columns of the table of marks: where each begins, or ends where its texts stand to the right.
struct MarkColumns {
  double sign, name, from_u, from_l, first, second, end;
};

MarkColumns mark_columns(PaperPoint at, double width) {
  return {at.x + 3.0,           at.x + 7.0,           at.x + width * 0.610, at.x + width * 0.810,
          at.x + width * 0.840, at.x + width * 0.905, at.x + width};
}

constexpr double heading_height = 8.0;
constexpr double table_share = 0.725;

void draw_marks(const CardPiece& card, const std::vector<CordRow>& rows, double row_height, double width,
                PaperPoint at, ShapeGroup& into) {
  constexpr double size = 2.8;
  const MarkColumns to = mark_columns(at, width);
  const double room = to.from_l - to.from_u - 1.0;
  double y = at.y;
  const auto heading = [&](double x, const char* above, const char* below, TextAnchor anchor) {
    write(into, {x, y + 2.9}, above, 2.7, true, anchor);
    write(into, {x, y + 6.4}, below, 2.7, false, anchor);
  };
  write(into, {to.name, y + 6.4}, "mark", 2.7, true);
  heading(to.from_u, "from U,", "upper end", TextAnchor::end);
  heading(to.from_l, "from L,", "its knot", TextAnchor::end);
  heading(to.first + 1.75, "pass 1", "pinned", TextAnchor::middle);
  heading((to.second + to.end) / 2.0 + 0.5, "pass 2", "apart by", TextAnchor::middle);
  y += heading_height;
  into.add(LineShape{{at.x, y}, {to.end, y}, stroke(0.5), ""});
  for (std::size_t i = 0; i < rows.size(); ++i) {
    const CordRow& row = rows[i];
    const double base = y + row_height / 2.0 + 1.0;
    draw_sign(into, row, {to.sign, y + row_height / 2.0}, std::min(2.0, row_height / 2.0 - 0.3));
    const std::string from_u = cord_place(card.unit, row.from_u);
    const std::string from_l = cord_place(card.unit, row.from_l);
    write(
        into, {to.name, base}, row.name,
        fitted(row.name, size, false, to.from_u - text_width_in_ems(from_u, true) * size - to.name - 1.0));
    write(into, {to.from_u, base}, from_u, fitted(from_u, size, row.by_upper, room), row.by_upper,
          TextAnchor::end);
    write(into, {to.from_l, base}, from_l, fitted(from_l, size, !row.by_upper, room), !row.by_upper,
          TextAnchor::end);
    if (row.mark) {
      const double half = std::min(1.75, row_height / 2.0 - 0.5);
      const PaperPoint box{to.first + 1.75, y + row_height / 2.0};
      into.add(RectangleShape{{box.x - half, box.y - half, box.x + half, box.y + half}, stroke(0.35), ""});
      into.add(
          LineShape{{to.second, y + row_height - 0.5}, {to.end, y + row_height - 0.5}, stroke(0.2), ""});
    }
    y += row_height;
    const bool middle = i + 1 < rows.size() && row.by_upper && !rows[i + 1].by_upper;
    into.add(LineShape{{at.x, y}, {to.second - 1.5, y}, stroke(middle ? 0.5 : 0.15), ""});
  }
}

/// A frame beside the table, filled from above; close() draws it and returns the y below it.
class SideBox {
public:
  SideBox(ShapeGroup& into, PaperPoint at, double width) : into_(into), at_(at), width_(width), y_(at.y) {}

  void head(const char* words) {
    write(into_, {at_.x + pad, at_.y + 4.0}, words, 2.8, true);
    into_.add(LineShape{{at_.x, at_.y + 5.4}, {at_.x + width_, at_.y + 5.4}, stroke(0.9), ""});
    y_ = at_.y + 5.8;
  }
  /// A name and its amount to the right.
  void row(const std::string& name, const std::string& amount) {
    const double room = width_ - 2.0 * pad - text_width_in_ems(amount, true) * 3.0 - 1.0;
    write(into_, {at_.x + pad, y_ + 3.4}, name, fitted(name, 2.5, false, room));
    write(into_, {at_.x + width_ - pad, y_ + 3.4}, amount, 3.0, true, TextAnchor::end);
    y_ += 4.6;
  }
  /// A name and a line to write on.
  void blank(const std::string& name, bool bold) {
    const double from =
        std::min(at_.x + pad + text_width_in_ems(name, bold) * 2.8 + 1.5, at_.x + width_ - pad - 12.0);
    write(into_, {at_.x + pad, y_ + 4.4}, name, fitted(name, 2.8, bold, from - at_.x - pad - 1.0), bold);
    into_.add(LineShape{{from, y_ + 4.9}, {at_.x + width_ - pad, y_ + 4.9}, stroke(0.2), ""});
    y_ += 5.8;
  }
  /// Two lines to write on beside each other, each with its word.
  void two_blanks(const std::string& first, const std::string& second) {
    const double half = width_ / 2.0;
    for (const auto& [name, left] : {std::pair{first, at_.x + pad}, {second, at_.x + half}}) {
      const double from = left + text_width_in_ems(name, false) * 2.5 + 1.0;
      write(into_, {left, y_ + 4.4}, name, 2.5);
      into_.add(LineShape{{from, y_ + 4.9}, {left + half - pad - 1.0, y_ + 4.9}, stroke(0.2), ""});
    }
    y_ += 6.0;
  }
  void words(const std::string& text, bool bold) {
    constexpr double size = 2.3;
    for (const std::string& line :
         wrap_label(text, size, (width_ - 2.0 * pad) * wide_face_allowance, bold)) {
      write(into_, {at_.x + pad, y_ + 2.8}, line, size, bold);
      y_ += size * line_spacing;
    }
    y_ += 0.8;
  }
  double close() {
    y_ += 1.0;
    into_.add(RectangleShape{{at_.x, at_.y, at_.x + width_, y_}, stroke(0.5), ""});
    return y_;
  }

private:
  static constexpr double pad = 2.0;
  ShapeGroup& into_;
  PaperPoint at_;
  double width_;
  double y_;
};

/// What lies past the bearings before anything is buried; both are sums of the marks as printed.
double draw_halves(const CardPiece& card, const std::vector<CordRow>& rows, double width, PaperPoint at,
                   ShapeGroup& into) {
  const CardHalves parts = card_halves(card);
  SideBox box(into, at, width);
  box.head("HALVES CHECK");
  const auto place = [&](std::string_view sign, std::string_view else_sign) {
    const bool there =
        std::any_of(rows.begin(), rows.end(), [&](const CordRow& row) { return row.sign == sign; });
    return there ? sign : else_sign;
  };
  box.row(fmt::format("{} to rope end 1", place("A", "U")), card.amount(parts.upper));
  const auto last = std::find_if(rows.rbegin(), rows.rend(), [](const CordRow& row) { return row.mark; });
  box.row(fmt::format("{} to rope end {}", place("B", "L"), last == rows.rend() ? "" : last->sign),
          card.amount(parts.lower));
  box.two_blanks("found", "and");
  box.words(halves_differ_words(card), true);
  box.words(
      cut_nothing(card)
          ? "More apart than that: shift the line by half of it. Both longer or both shorter: X or what "
            "is in hand is another. Stop, measure again."
          : fmt::format("More than {} otherwise: a mark was laid from the wrong end, or by another "
                        "knot. Lay out again.",
                        card.amount(apart_at_most(card))),
      false);
  return box.close();
}

/// Blanks for a cord that is measured after all: "X =", "+ 1003 mm = CUT", "- 610 mm = body".
double draw_blanks(const CardPiece& card, double width, PaperPoint at, ShapeGroup& into) {
  const auto more = [&](CardLength length) {
    return (length.parts < 0 ? "- " : "+ ") +
           card.amount(CardLength{false, length.parts < 0 ? -length.parts : length.parts});
  };
  SideBox box(into, at, width);
  box.words("Only when X has been measured", true);
  box.blank("X =", true);
  box.blank(more(card.cut) + " = CUT", true);
  box.blank(more(card.body) + " = body", true);
  return box.close();
}

/// What lies outside the bearings, and why.
std::string drawn_in_words(const CardPiece& card) {
  const CardCord& cord = *card.cord;
  std::vector<std::string> parts;
  if (cord.drawn_in_upper.parts != 0)
    parts.push_back(card.amount(cord.drawn_in_upper) + " aloft");
  if (cord.drawn_in_lower.parts != 0)
    parts.push_back(card.amount(cord.drawn_in_lower) + " below");
  std::string words;
  if (!parts.empty())
    words =
        "Rope that the splices draw in lies outside the bearings: " + joined(parts, Join::and_word) + ".";
  if (cord.behaves.parts != 0)
    add_words(words, " ",
              fmt::format("What the line stretches is laid out at the end below: {} {} its bearing.",
                          card.amount(CardLength{false, std::abs(cord.behaves.parts)}),
                          cord.behaves.parts < 0 ? "inside" : "outside"));
  return words;
}

} // namespace

void add_cord_head(const CardPiece& card, const std::string& known, PageFlow& page) {
  const std::string& title = card.stay->title;
  page.text("BENCH CARD FROM THE CORD", {.size = 3.8, .bold = true, .indent = 0.0});
  page.text(card.piece->name, {.size = 6.2, .bold = true, .indent = 0.0});
  page.text(fmt::format("{}{}; {}{}: {}, {}", title.empty() ? "" : title + ", ",
                        side_words(card.stay->side), card.line->name,
                        card.line->title.empty() ? "" : " \"" + card.line->title + "\"",
                        card.line->construction.text, card.line->size.name),
            {.size = 3.6, .bold = false, .indent = 0.0});
  page.space(1.0);
  constexpr double inside = 3.0;
  const std::string definition = joined(x_words(card), " ");
  const std::vector<std::string> lines = wrap_label(definition, 3.4, page.width() - 2.0 * inside, true);
  const double words_height = 2.0 + 3.4 * line_spacing * static_cast<double>(lines.size());
  constexpr double cells = 13.5;
  page.drawing(words_height + cells + 1.5, [&](ShapeGroup& into, PaperPoint at) {
    const double right = at.x + page.width();
    const double bottom = at.y + words_height + cells;
    into.add(RectangleShape{{at.x, at.y, right, bottom}, stroke(0.9), ""});
    into.add(LineShape{{at.x, at.y + words_height}, {right, at.y + words_height}, stroke(0.35), ""});
    for (std::size_t i = 0; i < lines.size(); ++i)
      write(into, {at.x + inside, at.y + 4.2 + 3.4 * line_spacing * static_cast<double>(i)}, lines[i], 3.4,
            true);
    const double second = at.x + page.width() * 0.46;
    const double third = at.x + page.width() * 0.72;
    for (const double x : {second, third})
      into.add(LineShape{{x, at.y + words_height}, {x, bottom}, stroke(0.35), ""});
    const auto cell = [&](double x, const std::string& name, const std::string& amount, double size) {
      write(into, {x + inside, at.y + words_height + 4.0}, name, 2.8, true);
      write(into, {x + inside, at.y + words_height + 11.4}, amount, size, true);
    };
    cell(at.x,
         card.state == PieceState::on_record ? "ALREADY CUT, WAS"
         : cut_nothing(card)                 ? "CUT NOTHING, USE"
                                             : "CUT",
         card.amount(card.cut), 7.0);
    cell(second, "body, bearing to bearing", card.amount(card.body), 5.0);
    cell(third, "state", card.stamp.empty() ? "READY" : card.stamp, 4.0);
  });
  page.text(card.state_line, {.size = 2.8, .bold = card.state != PieceState::ready, .indent = 0.0});
  page.text(
      fmt::format("{} Lengths in {}; past an end is outside the cord, inside is towards the other end.{}{}",
                  known, unit_words(card.unit), card.unit.remark.empty() ? "" : " ", card.unit.remark),
      {.size = 2.8, .bold = false, .indent = 0.0});
}

void add_cord_marks(const CardPiece& card, const CordLook& look, PageFlow& page) {
  const std::vector<CordRow> rows = cord_rows(card);
  page.space(1.0);
  page.drawing(layout_height,
               [&](ShapeGroup& into, PaperPoint at) { draw_layout(card, rows, page.width(), at, into); });
  if (card.rope() && look.finished)
    page.drawing(finished_height, [&](ShapeGroup& into, PaperPoint at) {
      draw_finished(card, rows, page.width(), at, into);
    });
  const double table = page.width() * table_share;
  const auto draw_boxes = [&](ShapeGroup& into, PaperPoint at) {
    const double width = page.width() - table - 3.0;
    const PaperPoint corner{at.x + table + 3.0, at.y + 1.0};
    const double below = card.rope() ? draw_halves(card, rows, width, corner, into) + 1.5 : corner.y;
    return draw_blanks(card, width, {corner.x, below}, into);
  };
  ShapeGroup measured;
  const double boxes = draw_boxes(measured, {});
  const double marks = heading_height + look.row_height * static_cast<double>(rows.size());
  page.drawing(std::max(marks, boxes) + 1.5, [&](ShapeGroup& into, PaperPoint at) {
    draw_marks(card, rows, look.row_height, table, at, into);
    draw_boxes(into, at);
  });
  if (const std::string words = drawn_in_words(card); !words.empty())
    page.text(words, {.size = 2.8, .bold = true, .indent = 0.0});
}

void add_cord_stop(const std::string& words, PageFlow& page) {
  constexpr double high = 14.6;
  page.drawing(high + 1.0, [&](ShapeGroup& into, PaperPoint at) {
    const double right = at.x + page.width();
    into.add(RectangleShape{{at.x, at.y, right, at.y + high}, stroke(0.9), ""});
    write(into, {at.x + 3.0, at.y + 4.8}, words, 3.6, true);
    const char* names[] = {"laid out and dry-fitted by, day", "second pass by, day"};
    for (std::size_t i = 0; i < 2; ++i) {
      const double left = at.x + 3.0 + page.width() * 0.5 * static_cast<double>(i);
      const double end = at.x + page.width() * 0.5 * static_cast<double>(i + 1) - 5.0;
      into.add(LineShape{{left, at.y + 10.4}, {end, at.y + 10.4}, stroke(0.2), ""});
      write(into, {left, at.y + 13.4}, names[i], 2.4);
    }
  });
}

} // namespace sheerpole
