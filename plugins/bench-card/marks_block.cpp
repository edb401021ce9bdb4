#include "backend/card/card_in_hand.hpp"
#include "backend/drawing/label_text.hpp"
#include "backend/paper_words.hpp"
#include "plugins/bench-card/card_blocks.hpp"
#include "plugins/bench-card/card_ink.hpp"
#include "wording/papers/bench_card_words.hpp"
#include "wording/say.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cstdlib>
#include <string_view>
#include <utility>

namespace sheerpole {

namespace {

constexpr double gutter = 5.0;
constexpr double heading_height = 7.6;
constexpr double table_share = 0.74;
constexpr double text_size = 2.9;

/// What the two columns of a row print.
struct Places {
  std::string first;
  std::string second;
  bool first_is_bold = true;
};

Places places_of(const CardPiece& card, const MarkRow& row) {
  if (row.sort == MarkRow::Sort::not_given) {
    const std::string words(row.in_words ? say(BenchCardPhrase::in_words)
                                         : say(BenchCardPhrase::not_given));
    return {row.by_upper ? words : "", row.by_upper ? "" : words, false};
  }
  if (card.cord)
    return {cord_place(card.unit, row.from_u), cord_place(card.unit, row.from_l), row.by_upper};
  return {card_text(card.unit, row.from_u), card_text(card.unit, row.from_l), row.u_is_nearer()};
}

/// The words above the columns, in two lines.
struct Headings {
  std::pair<PhraseText, PhraseText> first, second, tick, write;
};

Headings headings_of(const CardPiece& card) {
  if (card.cord)
    return {{say(BenchCardPhrase::from_u), say(BenchCardPhrase::upper_end)},
            {say(BenchCardPhrase::from_l), say(BenchCardPhrase::its_knot)},
            {say(BenchCardPhrase::pass), say(BenchCardPhrase::pinned)},
            {say(BenchCardPhrase::pass_word), say(BenchCardPhrase::apart_by)}};
  return {{say(BenchCardPhrase::from), say(BenchCardPhrase::aloft_word)},
          {say(BenchCardPhrase::from), say(BenchCardPhrase::below_word)},
          {"", say(BenchCardPhrase::done)},
          {"", say(BenchCardPhrase::as_made)}};
}

/// Columns of the table of marks: where each begins, or ends where its texts stand to the right.
struct Columns {
  double sign, name, first, second, tick, write, end, name_room;
};

Columns columns_of(const CardPiece& card, const std::vector<MarkRow>& rows, PaperPoint at, double width) {
  double of_first = 12.0;
  double of_second = 12.0;
  for (const MarkRow& row : rows) {
    const Places places = places_of(card, row);
    of_first = std::max(of_first, text_width_in_ems(places.first, true) * text_size);
    of_second = std::max(of_second, text_width_in_ems(places.second, true) * text_size);
  }
  Columns to{};
  to.sign = at.x + 3.0;
  to.name = at.x + 7.0;
  to.end = at.x + width;
  to.write = to.end - 17.0;
  to.tick = to.write - 6.5;
  // At most so much that the name keeps its room; longer numbers are set smaller.
  const double most = (to.tick - 7.5 - to.name - 2.0 * gutter) * 0.33;
  to.second = to.tick - 7.5;
  to.first = to.second - std::min(of_second, most) - gutter;
  to.name_room = to.first - std::min(of_first, most) - gutter - to.name;
  return to;
}

void draw_row(const CardPiece& card, const MarkRow& row, const Columns& to, double top, double height,
              ShapeGroup& into) {
  const double middle = top + height / 2.0;
  const double base = middle + 1.0;
  const double half = std::min(2.0, height / 2.0 - 0.3);
  const double sign_size = (row.sign.size() > 1 ? 1.15 : 1.4) * half;
  const PaperPoint sign{to.sign, middle + 0.36 * sign_size};
  if (row.is_mark()) {
    into.add(CircleShape{{to.sign, middle}, half, ink(0.35), ""});
    write(into, sign, row.sign, sign_size, true, TextAnchor::middle);
  } else if (row.sort == MarkRow::Sort::place) {
    black_box(into, {to.sign - half, middle - half, to.sign + half, middle + half});
    write_white(into, sign, row.sign, sign_size, true, TextAnchor::middle);
  }
  const Places places = places_of(card, row);
  const double room = to.second - to.first - gutter;
  write(into, {to.name, base}, row.name, fitted(row.name, text_size, false, to.name_room));
  write(into, {to.first, base}, places.first, fitted(places.first, text_size, places.first_is_bold, room),
        places.first_is_bold, TextAnchor::end);
  const bool second_is_bold = !places.first_is_bold && row.sort != MarkRow::Sort::not_given;
  write(into, {to.second, base}, places.second, fitted(places.second, text_size, second_is_bold, room),
        second_is_bold, TextAnchor::end);
  if (!row.is_mark())
    return;
  const double box = std::min(1.75, height / 2.0 - 0.5);
  into.add(RectangleShape{{to.tick - box, middle - box, to.tick + box, middle + box}, ink(0.35), ""});
  into.add(LineShape{{to.write, top + height - 0.5}, {to.end, top + height - 0.5}, ink(0.2), ""});
}

void draw_table(const CardPiece& card, const std::vector<MarkRow>& rows, double row_height, double width,
                PaperPoint at, ShapeGroup& into) {
  const Columns to = columns_of(card, rows, at, width);
  const Headings words = headings_of(card);
  const auto heading = [&](double x, const std::pair<PhraseText, PhraseText>& lines, TextAnchor anchor) {
    write(into, {x, at.y + 2.9}, lines.first, 2.7, true, anchor);
    write(into, {x, at.y + 6.4}, lines.second, 2.7, true, anchor);
  };
  write(into, {to.name, at.y + 6.4}, say(BenchCardPhrase::mark), 2.7, true);
  heading(to.first, words.first, TextAnchor::end);
  heading(to.second, words.second, TextAnchor::end);
  heading(to.tick, words.tick, TextAnchor::middle);
  heading((to.write + to.end) / 2.0, words.write, TextAnchor::middle);
  double y = at.y + heading_height;
  into.add(LineShape{{at.x, y}, {to.end, y}, ink(0.5), ""});
  for (std::size_t i = 0; i < rows.size(); ++i) {
    draw_row(card, rows[i], to, y, row_height, into);
    y += row_height;
    const bool middle = i + 1 < rows.size() && rows[i].by_upper && !rows[i + 1].by_upper;
    into.add(LineShape{{at.x, y}, {to.write - 1.5, y}, ink(middle ? 0.6 : 0.18), ""});
  }
}

// ---- The boxes beside it ----

/// What lies past the bearings before anything is buried; both are sums of the marks as printed.
double draw_halves(const CardPiece& card, const std::vector<MarkRow>& rows, double width, PaperPoint at,
                   ShapeGroup& into) {
  const CardHalves parts = card_halves(card);
  SideBox box(into, at, width);
  box.head(say(BenchCardPhrase::halves_check));
  const auto place = [&](std::string_view sign, std::string_view else_sign) {
    const bool there =
        std::any_of(rows.begin(), rows.end(), [&](const MarkRow& row) { return row.sign == sign; });
    return there ? sign : else_sign;
  };
  box.row(say(BenchCardPhrase::to_rope_end, place("A", "U")), card.amount(parts.upper));
  const auto last =
      std::find_if(rows.rbegin(), rows.rend(), [](const MarkRow& row) { return row.is_mark(); });
  box.row(say(BenchCardPhrase::to_rope_end_of, place("B", "L"), last == rows.rend() ? "" : last->sign),
          card.amount(parts.lower));
  box.two_blanks(say(BenchCardPhrase::found), say(BenchCardPhrase::and_word));
  box.words(halves_differ_words(card), true);
  box.words(cut_nothing(card)
                ? say(BenchCardPhrase::more_apart_than_that_shift)
                : say(BenchCardPhrase::more_than_otherwise_mark_was, card.amount(apart_at_most(card))),
            false);
  return box.close();
}

/// For a cord that is measured after all: "X =", "+ 1003 mm = CUT", "- 610 mm = body".
std::vector<std::string> blanks_of(const CardPiece& card) {
  const auto more = [&](CardLength length) {
    return (length.parts < 0 ? "- " : "+ ") + card.amount(CardLength{false, std::abs(length.parts)});
  };
  if (card.measure_again())
    return {"X =", say(BenchCardPhrase::body, more(card.body))};
  return {"X =", say(BenchCardPhrase::cut_capitals, more(card.cut)),
          say(BenchCardPhrase::body, more(card.body))};
}

double draw_blanks(const CardPiece& card, double width, PaperPoint at, ShapeGroup& into) {
  SideBox box(into, at, width);
  box.words(say(BenchCardPhrase::when_x_has_been_measured), true);
  for (const std::string& words : blanks_of(card))
    box.blank(words, true);
  return box.close();
}

double draw_eyes(const CardPiece& card, const std::vector<std::string>& eyes, double width, PaperPoint at,
                 ShapeGroup& into) {
  SideBox box(into, at, width);
  box.head(say(eyes_by_rule(card) ? BenchCardPhrase::eyes_by_rule_wrap_first
                                  : BenchCardPhrase::eyes_disagree_wrap_again));
  for (const std::string& words : eyes)
    box.words(words, false);
  box.two_blanks(say(BenchCardPhrase::aloft_word), say(BenchCardPhrase::below_word));
  return box.close();
}

double draw_tip_table(const CardPiece& card, const std::vector<TipRow>& tips, double width, PaperPoint at,
                      ShapeGroup& into) {
  SideBox box(into, at, width);
  box.words(say(BenchCardPhrase::tips_from_bearings), true);
  for (const TipRow& tip : tips) {
    box.words(tip.sign + "  " + tip.name, false);
    if (tip.assumed) {
      box.words(say(BenchCardPhrase::tip_assumed), false);
      continue;
    }
    box.two_amounts(say(BenchCardPhrase::aloft_word), card_text(card.unit, tip.from_aloft),
                    say(BenchCardPhrase::below_word), card_text(card.unit, tip.from_below));
  }
  return box.close();
}

double draw_boxes(const CardPiece& card, const std::vector<MarkRow>& rows, double width, PaperPoint at,
                  ShapeGroup& into) {
  constexpr double apart = 1.6;
  double y = at.y;
  if (const std::vector<std::string> eyes = eyes_that_disagree(card); !eyes.empty())
    y = draw_eyes(card, eyes, width, {at.x, y}, into) + apart;
  // Without a cord laid along it nothing on the rope tells where a half begins.
  if (card.rope() && card.cord && card.marks.size() > 1)
    y = draw_halves(card, rows, width, {at.x, y}, into) + apart;
  if (card.cord)
    y = draw_blanks(card, width, {at.x, y}, into) + apart;
  if (const std::vector<TipRow> tips = tip_rows(card); !tips.empty())
    y = draw_tip_table(card, tips, width, {at.x, y}, into) + apart;
  return y;
}

// ---- The same on a narrow screen ----

std::vector<ReflowBlock> narrow_marks(const CardPiece& card, const std::vector<MarkRow>& rows) {
  std::vector<ReflowBlock> blocks;
  for (const std::string& eyes : eyes_that_disagree(card))
    blocks.emplace_back(ReflowText{ReflowText::Kind::notice, eyes, true});
  const Headings words = headings_of(card);
  const auto both = [](const std::pair<PhraseText, PhraseText>& lines) {
    return lines.first.empty() ? std::string(lines.second)
                               : fmt::format("{} {}", lines.first, lines.second);
  };
  FlowTable table{.columns = {{say(BenchCardPhrase::no)},
                              {say(BenchCardPhrase::mark)},
                              {both(words.first)},
                              {both(words.second)},
                              {both(words.tick)},
                              {both(words.write)}}};
  for (const MarkRow& row : rows) {
    const Places places = places_of(card, row);
    std::vector<FlowCell> cells{{.text = row.sign, .bold = true},
                                {.text = row.name + (row.by_upper ? say(BenchCardPhrase::end_aloft)
                                                                  : say(BenchCardPhrase::end_below))},
                                {.text = places.first, .bold = places.first_is_bold},
                                {.text = places.second, .bold = !places.first_is_bold}};
    cells.push_back(row.is_mark() ? cell_to_tick : FlowCell{});
    cells.push_back(row.is_mark() ? cell_to_write : FlowCell{});
    table.rows.push_back(std::move(cells));
  }
  blocks.emplace_back(std::move(table));
  for (const TipRow& tip : tip_rows(card))
    blocks.emplace_back(
        ReflowText{ReflowText::Kind::text,
                   tip.assumed ? led_by(tip.sign + " " + tip.name + ": ", say(BenchCardPhrase::tip_assumed))
                               : say(BenchCardPhrase::from_aloft_from_below_on, tip.sign, tip.name,
                                     card.amount(tip.from_aloft), card.amount(tip.from_below)),
                   false});
  if (card.cord && card.rope()) {
    const CardHalves parts = card_halves(card);
    blocks.emplace_back(
        ReflowText{ReflowText::Kind::notice,
                   say(BenchCardPhrase::halves_check_past_bearing_aloft, card.amount(parts.upper),
                       card.amount(parts.lower), halves_differ_words(card)),
                   true});
  }
  if (card.cord) {
    blocks.emplace_back(
        ReflowText{ReflowText::Kind::text, say(BenchCardPhrase::when_x_has_been_measured), true});
    for (const std::string& words : blanks_of(card))
      blocks.emplace_back(ReflowText{ReflowText::Kind::to_write, words, false});
  }
  return blocks;
}

/// What lies outside the bearings, and why.
std::string drawn_in_words(const CardPiece& card) {
  if (!card.cord)
    return {};
  const CardCord& cord = *card.cord;
  std::vector<std::string> parts;
  if (cord.drawn_in_upper.parts != 0)
    parts.push_back(say(BenchCardPhrase::aloft_each, card.amount(cord.drawn_in_upper)));
  if (cord.drawn_in_lower.parts != 0)
    parts.push_back(say(BenchCardPhrase::below_each, card.amount(cord.drawn_in_lower)));
  std::string words;
  if (!parts.empty())
    words = say(BenchCardPhrase::rope_that_splices_draw_in, joined(parts, Join::and_word));
  if (cord.behaves.parts != 0)
    add_words(words, " ",
              say(BenchCardPhrase::what_line_stretches_is_laid,
                  card.amount(CardLength{false, std::abs(cord.behaves.parts)}),
                  cord.behaves.parts < 0 ? say(BenchCardPhrase::inside) : say(BenchCardPhrase::outside)));
  return words;
}

} // namespace

void add_marks_block(const CardPiece& card, const CardLook& look, PageFlow& page) {
  const std::vector<MarkRow> rows = mark_rows(card);
  ShapeGroup measured;
  constexpr double apart = 4.0;
  const double beside = page.width() * (1.0 - table_share) - apart;
  const double boxes = draw_boxes(card, rows, beside, {}, measured);
  const double table = boxes > 0.0 ? page.width() * table_share : page.width();
  const double marks = heading_height + look.row_height * static_cast<double>(rows.size());
  page.space(0.6);
  page.drawing(
      std::max(marks, boxes) + 1.0,
      [&](ShapeGroup& into, PaperPoint at) {
        draw_table(card, rows, look.row_height, table, at, into);
        draw_boxes(card, rows, beside, {at.x + table + apart, at.y + 1.0}, into);
      },
      narrow_marks(card, rows));
  if (const std::string words = drawn_in_words(card); !words.empty())
    page.text(words, {.size = look.small + 0.1, .bold = true, .indent = 0.0});
}

void add_step(int number, const std::string& words, bool to_write, double size, PageFlow& page) {
  const double box = 1.1 * size;
  const double number_end = box + 1.5 * size;
  const double indent = number_end + 0.4 * size;
  constexpr double least_to_write = 24.0;
  const SetLines set = set_lines(words, page.width() - indent, false, {size});
  const double last = text_width_in_ems(set.lines.back()) * size + indent + 1.5;
  const bool below = to_write && page.width() - last < least_to_write;
  const double step = size * line_spacing;
  std::vector<ReflowBlock> narrow;
  narrow.emplace_back(ReflowText{ReflowText::Kind::tick, fmt::format("{}  {}", number, words), false});
  if (to_write)
    narrow.emplace_back(ReflowText{ReflowText::Kind::to_write, "", false});
  page.drawing(
      set.height() + (below ? 1.3 * step : 0.0) + 0.28 * size,
      [&](ShapeGroup& into, PaperPoint at) {
        into.add(RectangleShape{
            {at.x, at.y + size - 0.8 * box, at.x + box, at.y + size + 0.2 * box}, ink(0.35), ""});
        write(into, {at.x + number_end, at.y + size}, std::to_string(number), size, true, TextAnchor::end);
        const double y = write_lines(into, set, {at.x + indent, at.y}, false);
        const double line = y - 0.1 * size + (below ? 1.3 * step : 0.0);
        if (to_write)
          into.add(
              LineShape{{at.x + (below ? indent : last), line}, {at.x + page.width(), line}, ink(0.2), ""});
      },
      std::move(narrow));
}

void add_stop(const CardPiece& card, const std::string& words, PageFlow& page) {
  constexpr double high = 14.8;
  constexpr double black = 24.0;
  const std::vector<std::string> signed_for =
      card.cord
          ? std::vector<std::string>{say(BenchCardPhrase::laid_out_by_day),
                                     say(BenchCardPhrase::second_pass_by_day),
                                     say(BenchCardPhrase::dry_fit_passed_day)}
          : std::vector<std::string>{say(BenchCardPhrase::marked_by_day),
                                     say(BenchCardPhrase::checked_from_other_end_by),
                                     say(card.from_drawing() ? BenchCardPhrase::dry_fit_passed_or_no_mast_up
                                                             : BenchCardPhrase::dry_fit_passed_day)};
  std::vector<ReflowBlock> narrow;
  narrow.emplace_back(ReflowText{ReflowText::Kind::notice, say(BenchCardPhrase::stop, words), true});
  for (const std::string& name : signed_for)
    narrow.emplace_back(ReflowText{ReflowText::Kind::to_write, name, false});
  page.space(0.5);
  page.drawing(
      high + 1.4,
      [&](ShapeGroup& into, PaperPoint at) {
        const double right = at.x + page.width();
        black_box(into, {at.x, at.y, at.x + black, at.y + high});
        write_white(into, {at.x + black / 2.0, at.y + high / 2.0 + 2.2},
                    say(BenchCardPhrase::stop_capitals), 6.2, true, TextAnchor::middle);
        into.add(RectangleShape{{at.x, at.y, right, at.y + high}, ink(0.9), ""});
        const double left = at.x + black + 4.0;
        write(into, {left, at.y + 5.0}, words, fitted(words, 3.8, true, right - left - 3.0), true);
        const double each = (right - left) / 3.0;
        for (std::size_t i = 0; i < signed_for.size(); ++i) {
          const double from = left + each * static_cast<double>(i);
          into.add(LineShape{{from, at.y + 10.4}, {from + each - 4.0, at.y + 10.4}, ink(0.25), ""});
          write(into, {from, at.y + 13.4}, signed_for[i], fitted(signed_for[i], 2.6, false, each - 4.0));
        }
      },
      std::move(narrow));
}

} // namespace sheerpole
