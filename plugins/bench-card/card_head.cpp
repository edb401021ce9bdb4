#include "backend/card/card_in_hand.hpp"
#include "backend/drawing/label_text.hpp"
#include "backend/paper_words.hpp"
#include "calculate/adjust/piece_history.hpp"
#include "calculate/facts.hpp"
#include "model/fact_name.hpp"
#include "plugins/bench-card/card_blocks.hpp"
#include "plugins/bench-card/card_ink.hpp"
#include "wording/model_words.hpp"
#include "wording/papers/bench_card_words.hpp"
#include "wording/papers/chain_words.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cstdlib>
#include <utility>

namespace sheerpole {

namespace {

constexpr double bar = 1.4;
constexpr double inside = 3.0;
constexpr double cells_height = 16.4;

std::string badge_words(Side side) {
  return side == Side::port        ? say(BenchCardPhrase::port)
         : side == Side::starboard ? say(BenchCardPhrase::starboard)
                                   : say(BenchCardPhrase::centreline);
}

/// Port is white on black, starboard black in a heavy frame.
void draw_badge(Side side, double right, double top, double width, ShapeGroup& into) {
  const std::string words = badge_words(side);
  const PaperBox box{right - width, top, right, top + 6.8};
  const PaperPoint at{right - width / 2.0, top + 4.9};
  if (side == Side::port) {
    black_box(into, box);
    write_white(into, at, words, 4.2, true, TextAnchor::middle);
    return;
  }
  into.add(RectangleShape{box, ink(side == Side::starboard ? 0.7 : 0.35), ""});
  write(into, at, words, 4.2, true, TextAnchor::middle);
}

std::string kind_words(const CardPiece& card) {
  const PhraseText kind = card.draft()           ? say(BenchCardPhrase::draft_not_for_cutting)
                          : card.measure_again() ? say(BenchCardPhrase::measure_again_not_for_cutting)
                          : card.cord            ? say(BenchCardPhrase::bench_card_from_cord)
                                                 : say(BenchCardPhrase::bench_card_capitals);
  return fmt::format("{}   {}", kind, card.piece->name);
}

std::string title_words(const CardPiece& card) {
  std::string words = card.stay->title.empty() ? card.piece->name : titled(*card.rig, *card.stay);
  if (card.piece->of > 1)
    words += say(BenchCardPhrase::piece_from_aloft, card.piece->number, card.piece->of);
  return words;
}

std::string line_words(const CardPiece& card) {
  return fmt::format("{}{}: {}, {}", card.line->name,
                     card.line->title.empty() ? "" : " \"" + card.line->title + "\"",
                     card.line->construction.text, card.line->size.name);
}

/// A word with what the file says of it, or with a line to write on.
using Entry = std::pair<std::string, std::string>;

std::vector<Entry> entries(const CardPiece& card) {
  const auto number = static_cast<std::size_t>(card.piece->number - 1);
  const PieceHistory history = piece_history(*card.rig, *card.of_stay, number);
  const PieceEntry* made = history.last(PieceStage::made);
  std::string job = made == nullptr ? "" : made->record->job;
  if (job.empty())
    job = fact_text(card.stay->particulars, fact_names.job);
  return {Entry{say(BenchCardPhrase::spool), stock_of(*card.rig, *card.of_stay, number)},
          Entry{say(BenchCardPhrase::batch), batch_of(*card.rig, *card.of_stay, number)},
          Entry{say(BenchCardPhrase::job), std::move(job)}};
}

void draw_entry(const Entry& entry, PaperPoint at, double width, ShapeGroup& into) {
  const auto& [word, value] = entry;
  constexpr double size = 3.2;
  write(into, at, word, 3.0);
  const double from = at.x + text_width_in_ems(word) * 3.0 + 1.5;
  if (value.empty())
    into.add(LineShape{{from, at.y + 0.5}, {at.x + width - 4.0, at.y + 0.5}, ink(0.2), ""});
  else
    write(into, {from, at.y}, value, fitted(value, size, true, at.x + width - 4.0 - from), true);
}

void draw_entries(const CardPiece& card, PaperPoint at, double right, ShapeGroup& into) {
  const double each = (right - at.x) / 3.0;
  for (const Entry& entry : entries(card)) {
    draw_entry(entry, at, each, into);
    at.x += each;
  }
}

/// "+ 1720 mm", "- 12 mm": with its sign, to be read in a sum.
std::string added(const CardPiece& card, CardLength length) {
  return (length.parts < 0 ? "- " : "+ ") + card.amount(CardLength{length.unknown, std::abs(length.parts)});
}

/// One cell of the frame.
struct Cell {
  std::string name;
  std::string amount;
  std::string below;
  double share = 0.2;
  double size = 5.0; ///< of the amount, em
  bool black = false;
  bool in_sentences = false; ///< amount and below
};

std::vector<Cell> cells_of_draft(const CardPiece& card) {
  return {{say(BenchCardPhrase::cut), not_yet(), "", 0.4, 9.4},
          {say(BenchCardPhrase::draft_capitals),
           say(BenchCardPhrase::it_waits_for, reasons_counted(card.draft_reasons)),
           say(BenchCardPhrase::what_settles_each_is_named), 0.6, 4.4, false, true}};
}

Cell cell_of_cut(const CardPiece& card) {
  if (card.measure_again())
    return {say(BenchCardPhrase::cut), std::string(not_yet()), "", 0.38, 9.4};
  const PhraseText name = card.state == PieceState::on_record ? say(BenchCardPhrase::already_cut_was)
                          : cut_nothing(card)                 ? say(BenchCardPhrase::cut_nothing_use)
                          : card.chain() && !card.links       ? say(ChainPhrase::cut_at_nearest_whole_link)
                                                              : say(BenchCardPhrase::cut);
  return {name, card.links ? card.cut_words(card.amount(card.cut)) : card.amount(card.cut), "", 0.38, 9.4};
}

Cell cell_of_dry_fit(const CardPiece& card) {
  const PhraseText nothing = card.rope() ? say(BenchCardPhrase::dry_fit_nothing_buried)
                             : card.cord && card.closed_aloft() && !card.measure_again()
                                 ? say(BenchCardPhrase::dry_fit_end_below_not_closed)
                                 : say(BenchCardPhrase::dry_fit_nothing_closed);
  if (!card.has_dry_fit)
    return {nothing, say(BenchCardPhrase::not_known), "", 0.22};
  const CardLength to_go = card.dry_fit - card.body;
  const std::string below = to_go.parts == 0  ? say(BenchCardPhrase::as_long_as_body)
                            : to_go.parts > 0 ? say(BenchCardPhrase::to_go_in_splices, card.amount(to_go))
                                              : say(BenchCardPhrase::to_come_by_stretch,
                                                    card.amount(CardLength{false, -to_go.parts}));
  return {nothing, card.amount(card.dry_fit), below, 0.22};
}

/// In place of the dry fit of a chain that goes by its links: what they are reckoned from.
Cell cell_of_what_was_worked_out(const CardPiece& card) {
  return {say(ChainPhrase::worked_out), card.amount(card.worked_out),
          card.links_longer().parts == 0 ? std::string()
                                         : links_taken_up(*card.rig, *card.of_stay, card.links->longer),
          0.22};
}

/// What the cut has beyond the body; of a chain, which has nothing there, how its links come out.
std::string beyond_the_body(const CardPiece& card) {
  if (card.links && card.links_longer().parts == 0)
    return say(ChainPhrase::as_worked_out);
  if (card.links)
    return say(card.links_longer().parts < 0 ? ChainPhrase::shorter : ChainPhrase::longer,
               card.amount(CardLength{false, std::abs(card.links_longer().parts)}));
  if (card.chain())
    return {};
  return card.behaves.parts == 0
             ? say(BenchCardPhrase::for_the_ends, added(card, card.ends))
             : say(BenchCardPhrase::ends_line, added(card, card.ends), added(card, card.behaves));
}

std::vector<Cell> cells_of(const CardPiece& card) {
  if (card.draft())
    return cells_of_draft(card);
  return {cell_of_cut(card),
          {say(card.mouth_to_mouth() ? BenchCardPhrase::body_mouth_to_mouth
                                     : BenchCardPhrase::body_bearing_to_bearing),
           card.amount(card.body), beyond_the_body(card), 0.22},
          card.links ? cell_of_what_was_worked_out(card) : cell_of_dry_fit(card),
          {say(BenchCardPhrase::state), card.stamp.empty() ? say(BenchCardPhrase::ready) : card.stamp, "",
           0.18, 3.8,
           !card.settled && card.state != PieceState::on_record && card.state != PieceState::not_yet}};
}

void draw_cell(const Cell& cell, const PaperBox& box, ShapeGroup& into) {
  const double left = box.left + inside;
  const double room = box.width() - 1.6 * inside;
  if (cell.black) {
    black_box(into, box);
    const double size = fitted(cell.amount, cell.size, true, room);
    write_white(into, {box.left + box.width() / 2.0, box.top + box.height() / 2.0 + 0.36 * size},
                cell.amount, size, true, TextAnchor::middle);
    return;
  }
  const bool large = cell.size > 6.0;
  write(into, {left, box.top + 4.4}, cell.name, fitted(cell.name, large ? 3.2 : 2.9, large, room), large);
  write(into, {left, box.top + (large ? 14.6 : 10.4)}, cell.amount,
        fitted(cell.amount, cell.size, true, room), true);
  write(into, {left, box.top + 14.5}, cell.below, fitted(cell.below, 2.6, false, room));
}

void draw_frame(const CardPiece& card, const SetLines& x, double x_height, double width, PaperPoint at,
                ShapeGroup& into) {
  const double right = at.x + width;
  const double top = at.y + x_height;
  if (x_height > 0.0) {
    write_lines(into, x, {at.x + inside, at.y + 1.2}, true);
    into.add(LineShape{{at.x, top}, {right, top}, ink(0.35), ""});
  }
  double left = at.x;
  for (const Cell& cell : cells_of(card)) {
    const double end = left + width * cell.share;
    draw_cell(cell, {left, top, end, top + cells_height}, into);
    if (left > at.x)
      into.add(LineShape{{left, top}, {left, top + cells_height}, ink(0.35), ""});
    left = end;
  }
  into.add(RectangleShape{{at.x, at.y, right, top + cells_height}, ink(0.9), ""});
}

std::vector<ReflowBlock> head_on_narrow(const CardPiece& card, const std::string& x) {
  using Kind = ReflowText::Kind;
  std::vector<ReflowBlock> narrow;
  narrow.emplace_back(ReflowText{Kind::heading, kind_words(card), true});
  narrow.emplace_back(ReflowText{Kind::text, title_words(card) + ", " + side_words(card.stay->side), true});
  narrow.emplace_back(ReflowText{Kind::text, line_words(card), false});
  for (const auto& [word, value] : card.draft() ? std::vector<Entry>{} : entries(card))
    narrow.emplace_back(value.empty() ? ReflowText{Kind::to_write, word, false}
                                      : ReflowText{Kind::text, word + " " + value, false});
  if (!x.empty())
    narrow.emplace_back(ReflowText{Kind::notice, x, true});
  for (const Cell& cell : cells_of(card)) {
    const std::string words =
        cell.name + "  " + cell.amount + led_by(cell.in_sentences ? " " : "; ", cell.below);
    narrow.emplace_back(ReflowText{cell.black || cell.size > 6.0 ? Kind::notice : Kind::text, words, true});
  }
  return narrow;
}

} // namespace

void add_card_head(const CardPiece& card, bool low, PageFlow& page) {
  const double width = page.width();
  const double badge = text_width_in_ems(badge_words(card.stay->side), true) * 4.2 + 8.0;
  const double beside = width - badge - 5.0;
  const SetLines kind = set_lines(kind_words(card), beside, true, {3.6, 3.0});
  const SetLines title = set_lines(title_words(card), beside, true, {low ? 6.0 : 8.2, 7.0, 6.0, 5.0, 4.4});
  const SetLines line = set_lines(line_words(card), width, false, {3.8, 3.3});
  // Spool, batch and job stand beside the line where it leaves them room. A draft is cut from no spool.
  const double line_end =
      line.lines.size() > 1 ? width : text_width_in_ems(line.lines.front()) * line.size + 6.0;
  const bool beside_line = width - line_end > 70.0;
  const std::string definition = card.draft() ? std::string() : joined(x_words(card), " ");
  const SetLines x = set_lines(definition, width - 2.0 * inside, true, {3.6, 3.2});
  const double x_height = definition.empty() ? 0.0 : x.height() + 2.2;
  const double words = bar + 1.6 + std::max(kind.height() + title.height(), 8.0) + 0.8 + line.height();
  const double entries_height = card.draft() || beside_line ? 1.8 : 6.6;
  page.drawing(
      words + entries_height + x_height + cells_height + 1.8,
      [&](ShapeGroup& into, PaperPoint at) {
        black_box(into, {at.x, at.y, at.x + width, at.y + bar});
        draw_badge(card.stay->side, at.x + width, at.y + bar + 2.2, badge, into);
        double y = write_lines(into, kind, {at.x, at.y + bar + 1.6}, true);
        write_lines(into, title, {at.x, y}, true);
        y = write_lines(into, line, {at.x, at.y + words - line.height()}, false);
        if (!card.draft())
          draw_entries(card, {at.x + (beside_line ? line_end : 0.0), y + (beside_line ? -1.2 : 4.0)},
                       at.x + width, into);
        draw_frame(card, x, x_height, width, {at.x, y + entries_height}, into);
      },
      head_on_narrow(card, definition));
}

} // namespace sheerpole
