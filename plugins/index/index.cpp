#include "plugins/index/index.hpp"

#include "backend/card/card_piece.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace sheerpole {

namespace {

constexpr const char* bench_cards = "bench-cards.html";

bool any_cord(const Rig& rig) {
  return std::any_of(rig.stays.begin(), rig.stays.end(), [](const Stay& stay) {
    return std::any_of(stay.readings.begin(), stay.readings.end(),
                       [](const Reading& reading) { return !reading.cord.empty(); });
  });
}

FlowTable sheets_table(const CheckedRig& checked) {
  FlowTable table{.columns = {{"no.", 0.5}, {"step", 1.6}, {"when", 3.6}, {"sheet", 2.8}, {"done", 0.8}},
                  .size = 3.3,
                  .gutter = card_gutter};
  // Nothing is ticked off while something may not be cut.
  const bool may_tick = checked.draft_reasons().empty();
  int number = 0;
  for (const SheetInTurn& sheet : sheets_in_turn(checked)) {
    const bool begins = !sheet.step.empty();
    number += begins ? 1 : 0;
    table.rows.push_back({{.text = begins ? std::to_string(number) : "", .bold = true},
                          {.text = sheet.step, .bold = true},
                          {.text = sheet.when},
                          {.text = sheet.name, .link = sheet.file},
                          begins && may_tick ? cell_to_tick : FlowCell{}});
  }
  return table;
}

/// One row a piece: what it is, its cut or NOT YET, its state, its sheets.
FlowTable stays_table(const CheckedRig& checked) {
  FlowTable table{
      .columns = {{"piece", 2.4}, {"cut", 1.9}, {"state", 3.3}, {"bench", 1.2}, {"dry fit", 1.3}},
      .size = 3.1,
      .gutter = card_gutter};
  for (const CardPiece& card : card_pieces(checked)) {
    const std::string state = card.draft()
                                  ? fmt::format("DRAFT, {}: {}", reasons_counted(card.draft_reasons),
                                                joined(draft_lines(card.draft_reasons), "; "))
                                  : card.state_line;
    table.rows.push_back(
        {{.text = card.piece->name + led_by(", ", card.stay->title), .bold = true},
         {.text = card.draft() ? std::string(not_yet) : card.amount(card.cut), .bold = true},
         {.text = state},
         {.text = "Bench card", .link = bench_cards},
         {.text = "Dry-fit card", .link = "dry-fit-cards.html"}});
  }
  return table;
}

} // namespace

std::vector<SheetInTurn> sheets_in_turn(const CheckedRig& checked) {
  std::vector<SheetInTurn> sheets{
      {"measure", "before anything is ordered", "Measuring sheet", "measuring-sheet.html"},
      {"", "where every stay is", "Rig drawing", "rig-drawing.svg"},
      {"", "what is known, and how well", "Proof sheet", "proof-sheet.txt"},
  };
  if (any_cord(checked.rig()))
    sheets.push_back({"", "the cords and their knots", "Cord maps", "cord-maps.html"});
  for (const SheetInTurn& sheet : std::vector<SheetInTurn>{
           {"order", "when every size is known", "Order list", "order-list.html"},
           {"", "which piece from which spool", "Spool plan", "spool-plan.svg"},
           {"receive", "before you pay", "Receiving card", "receiving-card.html"},
           {"bench", "one card for each piece", "Bench cards", bench_cards},
           {"", "one at each end of a piece", "Labels", "labels.html"},
           {"", "every sum worked out", "Cut list", "cut-list.txt"},
           {"dry fit", "before the knife", "Dry-fit cards", "dry-fit-cards.html"},
           {"aloft", "one stay at a time", "Sign-off", "sign-off.html"},
           {"", "the parts of each stay in their order", "Strips of the stays", "stay-strips.svg"},
           {"hand over", "to the owner, the yard, a surveyor", "Survey report", "survey-report.html"},
           {"every year", "and after a hard passage", "Take-up", "take-up.txt"},
           {"", "carried aboard", "Emergency splice cards", "emergency-splice-cards.html"}})
    sheets.push_back(sheet);
  return sheets;
}

std::string next_words(const CheckedRig& checked) {
  const std::vector<Awaited> waiting = awaited(checked.draft_reasons());
  if (!waiting.empty())
    return fmt::format("Next: {}{}.", waiting.front().reason, led_by("; ", waiting.front().mend));
  const std::vector<CardPiece> cards = card_pieces(checked);
  const auto first = std::find_if(cards.begin(), cards.end(), [](const CardPiece& card) {
    return card.state != PieceState::ready && card.state != PieceState::on_record;
  });
  if (first != cards.end())
    return fmt::format("Next: {}. {}.", first->piece->name, first->state_line);
  if (cards.empty())
    return "The rig file states no piece of line.";
  const bool all_cut = std::all_of(cards.begin(), cards.end(), [](const CardPiece& card) {
    return card.state == PieceState::on_record;
  });
  return all_cut ? "Every piece is on record as cut." : "Next: the bench.";
}

Index::Index()
    : PagesBackend({"index", "index", "Sheets", "which sheet when, and how far each stay is: begin here"}) {
}

std::vector<Drawing> Index::pages(const BackendRequest& request, const std::string& boat) const {
  const CheckedRig& checked = request.checked;
  PageFlow page(request.paper, {.name = "Which sheet when", .about = identity_words(checked), .draft = {}});
  page.text("WHICH SHEET WHEN   " + boat, {.size = 7.0, .bold = true, .indent = 0.0});
  const std::string waiting = waiting_words(checked);
  page.notice(led_by("DRAFT: ", waiting) + (waiting.empty() ? "" : ". ") + next_words(checked),
              {.size = 3.8, .bold = true, .indent = 0.0});
  if (const std::string states = states_of_pieces(checked); !states.empty())
    page.text("Pieces of line: " + states + ".", {.size = 3.4, .bold = true, .indent = 0.0});
  page.table(sheets_table(checked));
  page.heading("Piece by piece", 4.4, 30.0);
  page.table(stays_table(checked));
  page.text("Nobody has judged whether the rig is strong enough. Local codes and a licensed professional "
            "rigger come before these sheets.",
            {.size = 3.0, .bold = false, .indent = 0.0});
  return page.pages("Sheets of " + boat, "Which sheet is used when, and how far each stay is.");
}

} // namespace sheerpole
