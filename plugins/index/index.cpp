#include "plugins/index/index.hpp"

#include "backend/card/card_piece.hpp"
#include "wording/model_words.hpp"
#include "wording/papers/index_words.hpp"

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

FlowTable sheets_table(const CheckedRig& checked, const std::vector<CardPiece>& cards) {
  FlowTable table{.columns = {{say(IndexPhrase::no), 0.5},
                              {say(IndexPhrase::step), 1.6},
                              {say(IndexPhrase::when), 3.6},
                              {say(IndexPhrase::sheet), 2.8},
                              {say(IndexPhrase::done), 0.8}},
                  .size = 3.3,
                  .gutter = card_gutter};
  // Nothing is ticked off while something may not be cut.
  const bool may_tick = std::all_of(cards.begin(), cards.end(),
                                    [](const CardPiece& card) { return card.waits_for().empty(); });
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
FlowTable stays_table(const std::vector<CardPiece>& cards) {
  FlowTable table{.columns = {{say(IndexPhrase::piece), 2.4},
                              {say(IndexPhrase::cut), 1.9},
                              {say(IndexPhrase::state), 3.3},
                              {say(IndexPhrase::bench), 1.2},
                              {say(IndexPhrase::dry_fit), 1.3}},
                  .size = 3.1,
                  .gutter = card_gutter};
  for (const CardPiece& card : cards) {
    const std::string state = card.draft() ? say(IndexPhrase::draft, reasons_counted(card.draft_reasons),
                                                 joined(draft_lines(card.draft_reasons), "; "))
                                           : card.state_line;
    table.rows.push_back(
        {{.text = card.piece->name +
                  led_by(", ", card.stay->title.empty() ? "" : titled(*card.rig, *card.stay)),
          .bold = true},
         {.text = card.may_be_cut() ? card.cut_words(card.amount(card.cut)) : not_yet(), .bold = true},
         {.text = state},
         {.text = say(IndexPhrase::bench_card), .link = bench_cards},
         {.text = say(IndexPhrase::dry_fit_card), .link = "dry-fit-cards.html"}});
  }
  return table;
}

/// What to do first, in one sentence: what the pieces that are drafts wait for, or what is to be measured.
std::string next_words(const CheckedRig& checked, const std::vector<CardPiece>& cards) {
  const std::vector<Awaited> waiting = awaited(checked.draft_reasons());
  if (!waiting.empty())
    return say(IndexPhrase::next, waiting.front().reason, led_by("; ", waiting.front().mend));
  const auto first = std::find_if(cards.begin(), cards.end(), [](const CardPiece& card) {
    return !card.settled && card.state != PieceState::on_record;
  });
  if (first != cards.end())
    return say(IndexPhrase::next_begins, first->piece->name, first->state_line);
  if (cards.empty())
    return say(IndexPhrase::rig_file_states_no_piece);
  const bool all_cut = std::all_of(cards.begin(), cards.end(), [](const CardPiece& card) {
    return card.state == PieceState::on_record;
  });
  return all_cut ? say(IndexPhrase::every_piece_is_on_record) : say(IndexPhrase::next_the_bench);
}

} // namespace

std::vector<SheetInTurn> sheets_in_turn(const CheckedRig& checked) {
  std::vector<SheetInTurn> sheets{
      {say(IndexPhrase::measure), say(IndexPhrase::before_anything_is_ordered),
       say(IndexPhrase::measuring_sheet), "measuring-sheet.html"},
      {"", say(IndexPhrase::where_every_stay_is), say(IndexPhrase::rig_drawing), "rig-drawing.svg"},
      {"", say(IndexPhrase::what_is_known_and_how), say(IndexPhrase::proof_sheet), "proof-sheet.txt"},
  };
  if (any_cord(checked.rig()))
    sheets.push_back(
        {"", say(IndexPhrase::cords_and_their_knots), say(IndexPhrase::cord_maps), "cord-maps.html"});
  for (const SheetInTurn& sheet : std::vector<SheetInTurn>{
           {say(IndexPhrase::order), say(IndexPhrase::when_every_size_is_known),
            say(IndexPhrase::order_list), "order-list.html"},
           {"", say(IndexPhrase::which_piece_from_which_spool), say(IndexPhrase::spool_plan),
            "spool-plan.svg"},
           {say(IndexPhrase::receive), say(IndexPhrase::before_you_pay), say(IndexPhrase::receiving_card),
            "receiving-card.html"},
           {say(IndexPhrase::bench), say(IndexPhrase::one_card_for_each_piece),
            say(IndexPhrase::bench_cards), bench_cards},
           {"", say(IndexPhrase::one_at_each_end_piece), say(IndexPhrase::labels), "labels.html"},
           {"", say(IndexPhrase::every_sum_worked_out), say(IndexPhrase::cut_list), "cut-list.txt"},
           {say(IndexPhrase::dry_fit), say(IndexPhrase::before_the_knife), say(IndexPhrase::dry_fit_cards),
            "dry-fit-cards.html"},
           {say(IndexPhrase::aloft), say(IndexPhrase::one_stay_at_time), say(IndexPhrase::sign_off),
            "sign-off.html"},
           {"", say(IndexPhrase::parts_each_stay_in_their), say(IndexPhrase::strips_stays),
            "stay-strips.svg"},
           {say(IndexPhrase::hand_over), say(IndexPhrase::to_owner_yard_surveyor),
            say(IndexPhrase::survey_report), "survey-report.html"},
           {say(IndexPhrase::every_year), say(IndexPhrase::and_after_hard_passage),
            say(IndexPhrase::take_up), "take-up.txt"},
           {"", say(IndexPhrase::carried_aboard), say(IndexPhrase::emergency_splice_cards),
            "emergency-splice-cards.html"}})
    sheets.push_back(sheet);
  return sheets;
}

Index::Index()
    : PagesBackend(
          {"index", "index", say(IndexPhrase::sheets), say(IndexPhrase::which_sheet_when_and_how)}) {}

std::vector<Drawing> Index::pages(const BackendRequest& request, const std::string& boat) const {
  const CheckedRig& checked = request.checked;
  const std::vector<CardPiece> cards = card_pieces(checked);
  PageFlow page(
      request.paper,
      {.name = say(IndexPhrase::which_sheet_when), .about = identity_words(checked), .draft = {}});
  page.text(say(IndexPhrase::which_sheet_when_capitals, boat), {.size = 7.0, .bold = true, .indent = 0.0});
  const std::string waiting = waiting_words(checked);
  page.notice(led_by(say(IndexPhrase::draft_capitals), waiting) + (waiting.empty() ? "" : ". ") +
                  next_words(checked, cards),
              {.size = 3.8, .bold = true, .indent = 0.0});
  if (const std::string states = states_of_pieces(checked); !states.empty())
    page.text(say(IndexPhrase::pieces_of_line, states), {.size = 3.4, .bold = true, .indent = 0.0});
  page.table(sheets_table(checked, cards));
  page.heading(say(IndexPhrase::piece_by_piece), 4.4, 30.0);
  page.table(stays_table(cards));
  if (std::any_of(cards.begin(), cards.end(),
                  [](const CardPiece& card) { return card.cut.unknown && card.may_be_cut(); }))
    page.text(say(IndexPhrase::x_is_what_cord_says), {.size = 3.0, .bold = false, .indent = 0.0});
  page.text(say(IndexPhrase::nobody_has_judged_whether_rig), {.size = 3.0, .bold = false, .indent = 0.0});
  return page.pages(say(IndexPhrase::sheets_of, boat), say(IndexPhrase::which_sheet_is_used_when));
}

} // namespace sheerpole
