#include "backend/order/order_items.hpp"
#include "plugins/spool-plan/spool_plan_backend.hpp"
#include "wording/say.hpp"

#include <fmt/format.h>

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
    flags += "; DRAFT";
  if (piece.estimated)
    flags += "; " + x_taken_words(piece.stay_of_x, piece.ordered) + ", not to be cut to";
  if (!piece.note.empty())
    flags += "; " + say(*piece.rig, piece.note);
  return flags;
}

void print_rules(TextPage& page) {
  page.line("How to read it");
  for (const std::string_view rule :
       {"Whole millimetres. A piece is the cut of the cut list with the spare that is stated, rounded up; "
        "what is in hand is rounded down. Every sum is the sum of the rows as printed.",
        "Positions run from the free end of the stock to the cut, each piece with its kerf behind it; feet "
        "and inches are the same position to the nearest 1/16 in. Measure from the free end anew for each "
        "stock, cut in this order, and check each piece against the cut list before you cut.",
        "As little as can be is cut off spools and coils, so offcuts go first, the shorter ones where that "
        "is alike, and are filled as far as they can be. A rest that is too short to be kept is waste.",
        "The plan knows kind, size and length of what is in hand and nothing of its age or state. Look at "
        "it before you use it."})
    page.wrapped("  - ", rule);
  page.blank();
}

void print_summary(const SpoolPlan& plan, TextPage& page) {
  page.line("Summary");
  page.line("pieces  from stock mm       to buy mm  line");
  page.line("------  -------------  --------------  " + std::string(61, '-'));
  for (const LinePlan& line : plan.lines) {
    if (line.order.pieces.empty() && line.order.unplanned.empty())
      continue;
    std::string words = line_words(line.order);
    if (!line.order.unplanned.empty())
      words +=
          fmt::format("; {} not planned",
                      counted(static_cast<std::int64_t>(line.order.unplanned.size()), "piece", "pieces"));
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
      add(fmt::format(
              "the length is X, planned by {}: before it is cut X is laid out by its cord, or known",
              estimate_words(piece.ordered.by)),
          piece);
  }
  if (shared.empty())
    return;
  page.line("   DRAFT - not to be cut yet");
  for (const SharedReason& one : shared) {
    page.wrapped("     * ", one.reason);
    page.wrapped("         holds back  ", one.pieces);
  }
  page.blank();
}

void print_use(const LineOrder& line, const SpoolUse& use, std::size_t& number, TextPage& page) {
  page.wrapped("   ", stock_words(line, use));
  page.line("     no.   from mm     to mm  to ft in          piece mm  kerf mm  piece");
  page.line("     ---  --------  --------  ----------------  --------  -------  " + std::string(33, '-'));
  for (const SpoolCut& cut : use.cuts) {
    const WantedPiece& piece = line.pieces[cut.piece];
    const std::string place =
        piece.draft() ? padded_left("not yet", 10) + padded_left("not yet", 10) + std::string(18, ' ')
                      : right(cut.start_mm, 10) + right(cut.end_mm, 10) + "  " +
                            padded(format_feet_inches(as_length(cut.end_mm)), 16);
    page.wrapped("     " + right(static_cast<std::int64_t>(++number), 3) + place +
                     (piece.draft() ? padded_left("not yet", 10) : right(piece.length_mm, 10)) +
                     right(cut.kerf_mm, 9) + "  ",
                 piece_words(piece) + flags_of(piece));
  }
  const bool any_draft = std::any_of(use.cuts.begin(), use.cuts.end(),
                                     [&](const SpoolCut& cut) { return line.pieces[cut.piece].draft(); });
  if (any_draft)
    page.line("     " + std::string(57, ' ') + "    = " + planned_words(use.pieces_mm + use.kerf_mm, true) +
              " taken or kept");
  else
    page.line("     " + std::string(41, ' ') + right(use.pieces_mm, 10) + right(use.kerf_mm, 9) + "  = " +
              std::to_string(use.pieces_mm + use.kerf_mm) + " mm taken");
  if (any_draft)
    page.wrapped(
        "     not yet:  ",
        "room is kept for it behind all that may be cut, and it has no place to be cut at. The rest "
        "is reckoned as if all of that room were used.");
  page.wrapped("     left:  ", rest_words(line, use));
  page.blank();
}

void print_totals(const LinePlan& plan, TextPage& page) {
  const SpoolTotals& totals = plan.totals;
  page.line("   Sum of what is begun");
  if (any_draft(plan.order))
    page.line("     pieces          " + padded_left(planned_words(totals.pieces_mm, true), 13));
  else
    page.line("     pieces          " + right(totals.pieces_mm, 10) + " mm");
  page.line("     kerf            " + right(totals.kerf_mm, 10));
  page.line("     kept            " + right(totals.kept_mm, 10));
  page.line("     waste           " + right(totals.waste_mm, 10));
  page.line("     = stock begun   " + right(totals.stock_mm, 10) + " mm");
  page.wrapped("   Bound    ", proof_words(plan));
  page.blank();
}

/// "spool-9 of batch lot 12".
std::string stock_and_batch(const StockInHand& stock) {
  return stock.name + led_by(" of batch ", stock.batch);
}

void print_pairs(const LinePlan& plan, TextPage& page) {
  const std::vector<SplitPair> pairs = split_pairs(plan);
  for (const SplitPair& pair : pairs) {
    const WantedPiece& port = plan.order.pieces[pair.port];
    page.wrapped("   Pair    ", port.boat + ": " + port.stay + " comes from two stocks, port from " +
                                    stock_and_batch(plan.order.stocks[pair.stock_of_port]) +
                                    ", starboard from " +
                                    stock_and_batch(plan.order.stocks[pair.stock_of_starboard]) +
                                    ". Two batches do not stretch, shrink and creep alike.");
  }
  if (!pairs.empty())
    page.blank();
}

/// What is kept back and would do for a piece that is to be bought.
void print_spare(const LinePlan& plan, TextPage& page) {
  for (const StockInHand& stock : plan.order.stocks) {
    const auto fits =
        std::find_if(plan.short_pieces.begin(), plan.short_pieces.end(), [&](const ShortPiece& one) {
          return plan.order.pieces[one.piece].length_mm <= stock.kept_back_mm;
        });
    if (fits != plan.short_pieces.end())
      page.wrapped("     ", fmt::format("{} mm of {} are kept back as its spare; {} would go into them.",
                                        stock.kept_back_mm, stock.name,
                                        piece_words(plan.order.pieces[fits->piece])));
  }
}

void print_to_buy(const LinePlan& plan, TextPage& page) {
  if (plan.short_pieces.empty())
    return;
  if (plan.order.stocks.empty())
    page.line("   Nothing of it is in stock.");
  page.wrapped("   To buy  ", to_buy_words(plan));
  for (const ShortPiece& missing : plan.short_pieces) {
    const WantedPiece& piece = plan.order.pieces[missing.piece];
    const bool too_long = missing.reason == UncutReason::longer_than_every_stock;
    page.wrapped("     " + padded_left(planned_words(piece.length_mm, piece.draft()), 12) + "  ",
                 piece_words(piece) + flags_of(piece) +
                     (too_long ? "; longer than every stock in hand" : ""));
  }
  print_spare(plan, page);
  page.blank();
}

void print_line(const LinePlan& plan, std::size_t& number, TextPage& page) {
  const LineOrder& line = plan.order;
  page.rule('=');
  page.wrapped("", line_words(line));
  page.wrapped("   made of  ", made_of(line));
  page.wrapped("   cutting  ", cutting_words(line));
  page.blank();
  if (line.pieces.empty() && line.unplanned.empty()) {
    page.line("   In stock, and nothing is cut from it.");
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
    page.line("   Not planned, and in no sum");
    for (const UnplannedPiece& piece : line.unplanned)
      page.wrapped("     ", piece.boat + ": " + piece.name + "; " + say(*piece.rig, piece.reason));
    page.blank();
  }
}

} // namespace

std::string plan_text(const FleetBoats& fleet, const SpoolPlan& plan) {
  TextPage page;
  page.ends("SPOOL PLAN", any_draft(plan) ? "DRAFT" : "");
  page.wrapped("", fleet.titles);
  page.rule('=');
  page.blank();
  if (plan.lines.empty()) {
    page.line("There is nothing to cut and nothing in stock.");
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
