#include "backend/order/order_items.hpp"
#include "plugins/spool-plan/spool_plan_backend.hpp"
#include "wording/papers/spool_plan_words.hpp"
#include "wording/say.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

std::string right(std::int64_t number, std::size_t columns) {
  return padded_left(std::to_string(number), columns);
}

/// A sum in which a DRAFT has its share is no whole number of millimetres: planned_words().
std::string right(std::int64_t number, bool draft, std::size_t columns) {
  return draft && number != 0 ? padded_left(planned_words(number, true), columns) : right(number, columns);
}

Length as_length(std::int64_t mm) {
  return Length::millimetres(static_cast<double>(mm));
}

/// "DRAFT, estimate" behind a piece.
std::string flags_of(const WantedPiece& piece) {
  std::string flags;
  if (!piece.draft_reasons.empty())
    flags += say(SpoolPlanPhrase::draft);
  if (piece.estimated)
    flags += say(SpoolPlanPhrase::not_to_be_cut_to, x_taken_words(piece.stay_of_x, piece.ordered));
  if (!piece.note.empty())
    flags += "; " + say(*piece.rig, piece.note);
  return flags;
}

void print_rules(TextPage& page) {
  page.line(say(SpoolPlanPhrase::how_to_read_it));
  for (const std::string_view rule :
       {say(SpoolPlanPhrase::whole_millimetres_piece_is_cut),
        say(SpoolPlanPhrase::positions_run_from_free_end), say(SpoolPlanPhrase::as_little_as_can_be),
        say(SpoolPlanPhrase::plan_knows_kind_size_and)})
    page.wrapped("  - ", rule);
  page.blank();
}

void print_summary(const SpoolPlan& plan, TextPage& page) {
  page.line(say(SpoolPlanPhrase::summary));
  page.line(say(SpoolPlanPhrase::pieces_from_stock_mm_to));
  page.line("------  -------------  --------------  " + std::string(61, '-'));
  for (const LinePlan& line : plan.lines) {
    if (line.order.pieces.empty() && line.order.unplanned.empty())
      continue;
    std::string words = line_words(line.order);
    if (!line.order.unplanned.empty())
      words += say(SpoolPlanPhrase::not_planned,
                   counted(static_cast<std::int64_t>(line.order.unplanned.size()),
                           say(SpoolPlanPhrase::piece), say(SpoolPlanPhrase::pieces)));
    const bool draft = any_draft(line.order);
    const bool draft_to_buy =
        std::any_of(line.short_pieces.begin(), line.short_pieces.end(),
                    [&](const ShortPiece& missing) { return line.order.pieces[missing.piece].draft(); });
    page.wrapped(right(static_cast<std::int64_t>(line.order.pieces.size()), 6) +
                     right(line.totals.pieces_mm + line.totals.kerf_mm, draft, 15) +
                     right(line.to_buy_mm, draft_to_buy, 16) + "  ",
                 words);
  }
  page.blank();
}

struct SharedReason {
  std::string reason;
  std::string pieces;
};

void print_drafts(const LineOrder& line, TextPage& page) {
  std::vector<SharedReason> shared;
  const auto add = [&](const std::string& reason, const WantedPiece& piece) {
    const auto known = std::find_if(shared.begin(), shared.end(),
                                    [&](const SharedReason& one) { return one.reason == reason; });
    if (known == shared.end())
      shared.push_back({reason, piece_words(piece)});
    else
      known->pieces += ", " + piece_words(piece);
  };
  for (const WantedPiece& piece : line.pieces) {
    for (const std::string& reason : piece.draft_reasons)
      add(reason, piece);
    if (piece.estimated)
      add(say(SpoolPlanPhrase::length_is_x_planned_by, estimate_words(piece.ordered.by)), piece);
  }
  if (shared.empty())
    return;
  page.line(say(SpoolPlanPhrase::draft_not_to_be_cut));
  for (const SharedReason& one : shared) {
    page.wrapped("     * ", one.reason);
    page.wrapped(say(SpoolPlanPhrase::holds_back), one.pieces);
  }
  page.blank();
}

void print_use(const LineOrder& line, const SpoolUse& use, std::size_t& number, TextPage& page) {
  page.wrapped("   ", stock_words(line, use));
  page.line(say(SpoolPlanPhrase::no_from_mm_to_mm));
  page.line("     ---  --------  --------  ----------------  --------  -------  " + std::string(33, '-'));
  for (const SpoolCut& cut : use.cuts) {
    const WantedPiece& piece = line.pieces[cut.piece];
    const std::string place = piece.draft() ? padded_left(say(SpoolPlanPhrase::not_yet), 10) +
                                                  padded_left(say(SpoolPlanPhrase::not_yet), 10) +
                                                  std::string(18, ' ')
                                            : right(cut.start_mm, 10) + right(cut.end_mm, 10) + "  " +
                                                  padded(format_feet_inches(as_length(cut.end_mm)), 16);
    page.wrapped(
        "     " + right(static_cast<std::int64_t>(++number), 3) + place +
            (piece.draft() ? padded_left(say(SpoolPlanPhrase::not_yet), 10) : right(piece.length_mm, 10)) +
            right(cut.kerf_mm, 9) + "  ",
        piece_words(piece) + flags_of(piece));
  }
  const bool any_draft = std::any_of(use.cuts.begin(), use.cuts.end(),
                                     [&](const SpoolCut& cut) { return line.pieces[cut.piece].draft(); });
  if (any_draft)
    page.line(say(SpoolPlanPhrase::taken_or_kept, std::string(57, ' '),
                  planned_words(use.pieces_mm + use.kerf_mm, true)));
  else
    page.line(say(SpoolPlanPhrase::mm_taken, std::string(41, ' '), right(use.pieces_mm, 10),
                  right(use.kerf_mm, 9), use.pieces_mm + use.kerf_mm));
  if (any_draft)
    page.wrapped(say(SpoolPlanPhrase::not_yet_behind), say(SpoolPlanPhrase::room_is_kept_for_it));
  page.wrapped(say(SpoolPlanPhrase::left), rest_words(line, use));
  page.blank();
}

void print_totals(const LinePlan& plan, TextPage& page) {
  const SpoolTotals& totals = plan.totals;
  page.line(say(SpoolPlanPhrase::sum_what_is_begun));
  if (any_draft(plan.order))
    page.line(say(SpoolPlanPhrase::pieces_behind, padded_left(planned_words(totals.pieces_mm, true), 13)));
  else
    page.line(say(SpoolPlanPhrase::pieces_mm, right(totals.pieces_mm, 10)));
  page.line(say(SpoolPlanPhrase::kerf, right(totals.kerf_mm, 10)));
  page.line(say(SpoolPlanPhrase::kept, right(totals.kept_mm, 10)));
  page.line(say(SpoolPlanPhrase::waste_behind, right(totals.waste_mm, 10)));
  page.line(say(SpoolPlanPhrase::stock_begun_mm, right(totals.stock_mm, 10)));
  page.wrapped(say(SpoolPlanPhrase::bound_behind), proof_words(plan));
  page.blank();
}

/// "spool-9 of batch lot 12".
std::string stock_and_batch(const StockInHand& stock) {
  return stock.name + led_by(say(SpoolPlanPhrase::of_batch), stock.batch);
}

void print_pairs(const LinePlan& plan, TextPage& page) {
  const std::vector<SplitPair> pairs = split_pairs(plan);
  for (const SplitPair& pair : pairs) {
    const WantedPiece& port = plan.order.pieces[pair.port];
    page.wrapped(say(SpoolPlanPhrase::pair),
                 say(SpoolPlanPhrase::comes_from_two_stocks_port, port.boat, port.stay,
                     stock_and_batch(plan.order.stocks[pair.stock_of_port]),
                     stock_and_batch(plan.order.stocks[pair.stock_of_starboard])));
  }
  if (!pairs.empty())
    page.blank();
}

/// What is kept back and would do for a piece that is to be bought.
void print_spare(const LinePlan& plan, TextPage& page) {
  for (const StockInHand& stock : plan.order.stocks) {
    const auto fits =
        std::find_if(plan.short_pieces.begin(), plan.short_pieces.end(), [&](const ShortPiece& one) {
          return stock.pieces > 0 && plan.order.pieces[one.piece].length_mm <= stock.kept_back_mm;
        });
    if (fits != plan.short_pieces.end())
      page.wrapped("     ", say(SpoolPlanPhrase::mm_are_kept_back_as, stock.kept_back_mm, stock.name,
                                piece_words(plan.order.pieces[fits->piece])));
  }
}

void print_to_buy(const LinePlan& plan, TextPage& page) {
  if (plan.short_pieces.empty())
    return;
  if (plan.order.stocks.empty())
    page.line(say(SpoolPlanPhrase::nothing_it_is_in_stock_behind));
  page.wrapped(say(SpoolPlanPhrase::to_buy_behind), to_buy_words(plan));
  for (const ShortPiece& missing : plan.short_pieces) {
    const WantedPiece& piece = plan.order.pieces[missing.piece];
    const bool too_long = missing.reason == UncutReason::longer_than_every_stock;
    page.wrapped("     " + padded_left(planned_words(piece.length_mm, piece.draft()), 12) + "  ",
                 piece_words(piece) + flags_of(piece) +
                     (too_long ? say(SpoolPlanPhrase::longer_than_every_stock_in) : ""));
  }
  print_spare(plan, page);
  page.blank();
}

void print_line(const LinePlan& plan, std::size_t& number, TextPage& page) {
  const LineOrder& line = plan.order;
  page.rule('=');
  page.wrapped("", line_words(line));
  page.wrapped(say(SpoolPlanPhrase::made_of), made_of(line));
  page.wrapped(say(SpoolPlanPhrase::cutting), cutting_words(line));
  page.blank();
  if (line.pieces.empty() && line.unplanned.empty()) {
    page.line(say(SpoolPlanPhrase::in_stock_and_nothing_is));
    page.blank();
    return;
  }
  print_drafts(line, page);
  for (const SpoolUse& use : plan.uses)
    print_use(line, use, number, page);
  print_pairs(plan, page);
  if (plan.searched)
    print_totals(plan, page);
  print_to_buy(plan, page);
  if (!line.unplanned.empty()) {
    page.line(say(SpoolPlanPhrase::not_planned_and_in_no));
    for (const UnplannedPiece& piece : line.unplanned)
      page.wrapped("     ", piece.boat + ": " + piece.name + "; " + say(*piece.rig, piece.reason));
    page.blank();
  }
}

} // namespace

std::string plan_text(const FleetBoats& fleet, const SpoolPlan& plan) {
  TextPage page;
  page.ends(say(SpoolPlanPhrase::spool_plan_capitals),
            any_draft(plan) ? say(SpoolPlanPhrase::draft_capitals) : "");
  page.wrapped("", fleet.titles);
  page.rule('=');
  page.blank();
  if (plan.lines.empty()) {
    page.line(say(SpoolPlanPhrase::there_is_nothing_to_cut_and));
    return page.text();
  }
  print_rules(page);
  print_summary(plan, page);
  for (const LinePlan& line : plan.lines) {
    std::size_t number = 0;
    print_line(line, number, page);
  }
  return page.text();
}

} // namespace sheerpole
