#include "plugins/dry-fit-card/dry_fit_card.hpp"

#include "backend/card/card_in_hand.hpp"
#include "backend/card/card_piece.hpp"
#include "backend/card/card_release.hpp"
#include "backend/paper_words.hpp"
#include "calculate/facts.hpp"
#include "calculate/joints/articulation.hpp"
#include "model/fact_name.hpp"
#include "wording/model_words.hpp"
#include "wording/papers/chain_words.hpp"
#include "wording/papers/dry_fit_card_words.hpp"

#include <fmt/format.h>

namespace sheerpole {

namespace {

/// Where an adjuster stands: as set, and at the ends of its range.
enum class ScrewPosition { set, closed, open };

std::string position_words(const StayFit& fit, const TakeUp& adjuster, ScrewPosition position) {
  const CardPiece& card = fit.free();
  const Length length = position == ScrewPosition::closed ? adjuster.set.value - adjuster.to_tighten
                        : position == ScrewPosition::open ? adjuster.set.value + adjuster.to_slacken
                                                          : adjuster.set.value;
  std::string words = card.amount(length);
  if (fit.adjusters.size() > 1)
    words = (*fit.rig)[adjuster.part].name + " " + words;
  if (position == ScrewPosition::set)
    return words;
  const bool closed = position == ScrewPosition::closed;
  const Length travel = closed ? adjuster.to_tighten : adjuster.to_slacken;
  if (const std::string turns = format_turns(travel, adjuster.travel_per_turn); !turns.empty())
    words += say(DryFitCardPhrase::turns, turns,
                 closed ? say(DryFitCardPhrase::in) : say(DryFitCardPhrase::out));
  return words;
}

FitRow fit_row(const StayFit& fit, ScrewPosition position) {
  FitRow row;
  row.position = position == ScrewPosition::set      ? say(DryFitCardPhrase::as_set)
                 : position == ScrewPosition::closed ? say(DryFitCardPhrase::closed)
                                                     : say(DryFitCardPhrase::open);
  row.adjusters = joined(fit.adjusters, "; ",
                         [&](const TakeUp& adjuster) { return position_words(fit, adjuster, position); });
  const CardPiece& card = fit.free();
  if (!card.has_dry_fit)
    return row;
  const CardLength as_set = card.links ? card.cut : card.dry_fit;
  row.of_bearings = position == ScrewPosition::closed ? as_set + fit.to_tighten
                    : position == ScrewPosition::open ? as_set - fit.to_slacken
                                                      : as_set;
  return row;
}

void finish(StayFit& fit) {
  for (std::size_t i = 0; i < fit.pieces.size(); ++i) {
    if (!fit.stay->stack[fit.pieces[i].item].line_length)
      fit.free_piece = i;
    const auto& reasons = fit.pieces[i].draft_reasons;
    fit.draft_reasons.insert(fit.draft_reasons.end(), reasons.begin(), reasons.end());
  }
  fit.adjusters = adjusters_as_hung(fit.free());
  Length tighten;
  Length slacken;
  for (const TakeUp& adjuster : fit.adjusters) {
    tighten += adjuster.to_tighten;
    slacken += adjuster.to_slacken;
  }
  fit.to_tighten = fit.free().unit.round(tighten);
  fit.to_slacken = fit.free().unit.round(slacken);
  fit.rows.push_back(fit_row(fit, ScrewPosition::set));
  if (fit.adjusters.empty())
    return;
  fit.rows.push_back(fit_row(fit, ScrewPosition::closed));
  fit.rows.push_back(fit_row(fit, ScrewPosition::open));
}

constexpr TextLook small{.size = 3.0, .bold = false, .indent = 0.0};
constexpr TextLook plain{.size = 3.2, .bold = false, .indent = 0.0};

/// Whether its bench card closes the end aloft before the cord is laid along it.
bool closed_first(const CardPiece& card) {
  return card.cord && card.closed_aloft() && !card.measure_again();
}

void add_head(const StayFit& fit, PageFlow& page) {
  const CardPiece& card = fit.free();
  page.text(say(DryFitCardPhrase::dry_fit, fit.stay->name), {.size = 6.5, .bold = true, .indent = 0.0});
  page.text(fmt::format("{}{}: {}", fit.stay->title.empty() ? "" : titled(*fit.rig, *fit.stay) + ", ",
                        side_words(fit.stay->side), card.stamp),
            {.size = 4.2, .bold = true, .indent = 0.0});
  if (fit.draft())
    add_not_yet(say(DryFitCardPhrase::hang), fit.draft_reasons, page, 9.0);
  page.text(say(DryFitCardPhrase::lengths_in,
                card.state == PieceState::on_record ? card.state_line + "."
                : closed_first(card)                ? say(DryFitCardPhrase::end_aloft_is_closed_first)
                                                    : say(DryFitCardPhrase::nothing_is_cut_pressed_or),
                unit_words(card.unit), card.unit.remark.empty() ? "" : " ", card.unit.remark) +
                (card.from_drawing() && !rigged_lying(*fit.stay)
                     ? say(DryFitCardPhrase::from_drawing_mast_up)
                     : ""),
            plain);
  if (rigged_lying(*fit.stay)) {
    page.notice(say(DryFitCardPhrase::made_with_mast_down_lay), {.size = 3.0, .bold = true, .indent = 0.0});
    return;
  }
  page.notice(say(DryFitCardPhrase::aloft_two_lines_harness_second),
              {.size = 3.0, .bold = true, .indent = 0.0});
}

std::string line_words(const CardPiece& card) {
  if (card.chain())
    return say(ChainPhrase::hung_by_its_links, card.piece->name, card.line->construction.text,
               card.line->size.name);
  return fmt::format("{}: {}, {}; {}{}", card.piece->name, card.line->construction.text,
                     card.line->size.name,
                     card.rope()                ? say(DryFitCardPhrase::eyes_formed_at_their_marks)
                     : rigged_lying(*card.stay) ? say(DryFitCardPhrase::terminals_laid_beside_on_trestles)
                     : closed_first(card)       ? say(DryFitCardPhrase::closed_aloft_laid_below)
                                                : say(DryFitCardPhrase::terminals_laid_beside_it_at),
                     led_by(": ", tails_words(card)));
}

/// What the end of a stay is called in the middle of a sentence.
std::string end_of(const StayFit& fit, WhichEnd where) {
  return where_words(*fit.rig, *fit.stay, where);
}

void add_stack(const StayFit& fit, PageFlow& page) {
  page.heading(fit.stay->path.size() < 2
                   ? say(DryFitCardPhrase::hang_from_aloft_to_deck)
                   : say(DryFitCardPhrase::hang_from_to,
                         place_words(*fit.rig, (*fit.rig)[fit.stay->path.front().point]),
                         place_words(*fit.rig, (*fit.rig)[fit.stay->path.back().point])),
               4.0);
  FlowTable table{.columns = {{say(DryFitCardPhrase::what), 6.0},
                              {say(DryFitCardPhrase::set_to), 1.7},
                              {say(DryFitCardPhrase::in), 0.6},
                              {say(DryFitCardPhrase::fast), 0.9}},
                  .size = 3.0,
                  .gutter = card_gutter};
  std::size_t piece = 0;
  for (const StackItem& item : fit.stay->stack) {
    const FlowCell tick{.text = "", .bold = false, .tick = true, .rule = false};
    if (item.kind == StackItem::Kind::line) {
      const std::string words =
          piece < fit.pieces.size() ? line_words(fit.pieces[piece]) : say(DryFitCardPhrase::line);
      ++piece;
      table.rows.push_back({{.text = words, .bold = true}, {.text = ""}, tick, {.text = ""}});
      continue;
    }
    const Part& part = (*fit.rig)[item.part];
    const auto set = set_as_hung(fit.free(), static_cast<std::size_t>(&item - fit.stay->stack.data()));
    const std::string count = item.count > 1 ? std::to_string(item.count) + " x " : "";
    table.rows.push_back({{.text = count + shown(part.name, part.title)},
                          {.text = set ? fit.free().amount(*set) : ""},
                          tick,
                          tick});
  }
  page.table(table);
}

/// How much longer the line hangs than it will be: what its splices take when they are buried.
std::optional<CardLength> to_be_buried(const StayFit& fit) {
  const CardPiece& card = fit.free();
  if (!card.rope() || !card.has_dry_fit)
    return std::nullopt;
  const CardLength more = card.dry_fit - card.body;
  return more.parts > 0 ? std::optional(more) : std::nullopt;
}

void add_bearings(const StayFit& fit, PageFlow& page) {
  const CardUnit& unit = fit.free().unit;
  const auto slack = to_be_buried(fit);
  page.heading(slack                         ? say(DryFitCardPhrase::from_bearing_to_bearing_pulled)
               : fit.free().mouth_to_mouth() ? say(DryFitCardPhrase::from_mouth_to_mouth_line)
                                             : say(DryFitCardPhrase::from_bearing_to_bearing_line),
               4.0);
  FlowTable table{.columns = {{say(DryFitCardPhrase::adjuster), 1.2},
                              {say(DryFitCardPhrase::its_length), 3.2},
                              {say(DryFitCardPhrase::line), 2.0, true},
                              {say(DryFitCardPhrase::found), 2.2}},
                  .size = 3.4,
                  .gutter = card_gutter};
  const FlowCell rule{.text = "", .bold = false, .tick = false, .rule = true};
  const CardPiece& free = fit.free();
  const bool several = fit.pieces.size() > 1;
  for (const FitRow& row : fit.rows)
    table.rows.push_back(
        {{.text = !fit.adjusters.empty() ? row.position
                  : several ? say(DryFitCardPhrase::piece_of, free.piece->number, free.piece->of)
                            : std::string(say(DryFitCardPhrase::none))},
         {.text = fit.adjusters.empty() && several ? std::string(say(DryFitCardPhrase::takes_what_is_left))
                                                   : row.adjusters},
         {.text = row.of_bearings ? card_amount(unit, *row.of_bearings) : say(DryFitCardPhrase::not_known),
          .bold = true},
         rule});
  for (const CardPiece& card : fit.pieces)
    if (&card != &fit.free())
      table.rows.push_back(
          {{.text = say(DryFitCardPhrase::piece_of, card.piece->number, card.piece->of)},
           {.text = say(DryFitCardPhrase::has_length_its_own)},
           {.text = card.has_dry_fit ? card.amount(card.dry_fit) : say(DryFitCardPhrase::not_known)},
           rule});
  page.table(table);
  // A chain hangs by a link.
  for (const CardPiece& card : fit.pieces)
    if (card.links)
      page.text(say(ChainPhrase::of_piece, card.piece->name, card.cut_words(card.amount(card.cut)),
                    card.links_off()),
                {.size = 3.2, .bold = true, .indent = 0.0});
  if (slack) {
    const std::string amount = card_amount(unit, *slack);
    page.text(fit.adjusters.empty() ? say(DryFitCardPhrase::hangs_slack, amount)
                                    : say(DryFitCardPhrase::hangs_slack_with_adjuster, amount),
              {.size = 3.2, .bold = true, .indent = 0.0});
  }
  if (!fit.adjusters.empty())
    page.text(slack ? say(DryFitCardPhrase::each_row_line_when_buried)
                    : say(DryFitCardPhrase::each_row_line_that_just),
              small);
  if (fit.free().cut.unknown)
    page.text(joined(x_words(fit.free()), " "), small);
  if (const auto& first = fit.of_stay->first_fit; first && first->short_by)
    page.text(say(DryFitCardPhrase::spliced_at_first_fit_after,
                  card_amount(unit, fit.free().body - unit.round(*first->short_by)),
                  card_amount(unit, fit.free().body), card_amount(unit, unit.round(*first->short_by))),
              small);
  if (!fit.free().has_dry_fit)
    page.text(say(DryFitCardPhrase::lengths_wait_for_what_is), small);
}

/// What the stay holds, and what can fall while it is off.
void add_parting(const StayFit& fit, PageFlow& page) {
  const std::vector<std::string> words = parting_words(*fit.rig, fit.of_stay->stay);
  if (words.empty())
    return;
  page.text(say(DryFitCardPhrase::while_it_is_off_or, joined(words, " ")), plain);
  page.to_write(say(DryFitCardPhrase::held_meanwhile_by), plain);
}

/// What swings at one end: "toggle-12 swings free both ways, fore and aft and athwart."
std::string swing_words(const StayFit& fit, WhichEnd where) {
  const auto found = articulation(*fit.rig, *fit.stay, where);
  if (found && found->swings)
    return say(DryFitCardPhrase::swings_free_both_ways_fore, *found->swings);
  if (found)
    return say(DryFitCardPhrase::nothing_is_stated_that_swings);
  return say(DryFitCardPhrase::hardware_follows_line_both_ways);
}

/// To look at what swings at each end, in one sentence where the same is said of both.
void add_swings(const StayFit& fit, PageFlow& page) {
  const auto tick = [&](std::string ends, const std::string& words) {
    ends.front() = static_cast<char>(ends.front() - 'a' + 'A');
    page.tick(ends + ": " + words, plain);
  };
  const std::string upper = swing_words(fit, WhichEnd::upper);
  const std::string lower = swing_words(fit, WhichEnd::lower);
  if (upper == lower)
    return tick(say(DryFitCardPhrase::at_both_ends), upper);
  tick(end_of(fit, WhichEnd::upper), upper);
  tick(end_of(fit, WhichEnd::lower), lower);
}

std::string screw_words(const StayFit& fit, const TakeUp& adjuster) {
  const CardPiece& card = fit.free();
  const std::string& name = (*fit.rig)[adjuster.part].name;
  if (!adjuster.engaged)
    return say(DryFitCardPhrase::thread_left_in_body_each, name);
  std::string words =
      say(DryFitCardPhrase::thread_left_in_body_each_stud, name, card.amount(*adjuster.engaged));
  if (adjuster.least_engagement)
    words += say(DryFitCardPhrase::at_least, card.amount(*adjuster.least_engagement));
  return say(DryFitCardPhrase::found_colon, words);
}

void add_looks(const StayFit& fit, PageFlow& page) {
  page.heading(say(DryFitCardPhrase::look_at), 4.0);
  page.tick(say(DryFitCardPhrase::every_pin_goes_in_by), plain);
  page.tick(say(DryFitCardPhrase::look_along_stay_and_from, end_of(fit, WhichEnd::upper),
                end_of(fit, WhichEnd::lower)),
            plain);
  add_swings(fit, page);
  if (fit.stay->path.size() > 2)
    page.tick(say(DryFitCardPhrase::at_each_tip_it_lies), plain);
  if (fit.free().rope())
    page.tick(say(DryFitCardPhrase::each_eye_lies_in_its), plain);
  for (const TakeUp& adjuster : fit.adjusters)
    if (adjuster.travel_per_turn)
      page.to_write(screw_words(fit, adjuster), plain);
}

void add_found(const StayFit& fit, PageFlow& page) {
  page.to_write(to_be_buried(fit) ? say(DryFitCardPhrase::line_pulled_straight_and_slack)
                                  : say(DryFitCardPhrase::adjuster_when_hand_tight_length),
                plain);
  page.to_write(say(DryFitCardPhrase::pull_temperature_afloat_or_ashore), plain);
  page.to_write(say(DryFitCardPhrase::hung_by_looked_at_second), plain);
}

void add_last_words(PageFlow& page) {
  page.text(say(DryFitCardPhrase::this_card_follows_from_rig), {.size = 2.8, .bold = false, .indent = 0.0});
}

void add_mends(const StayFit& fit, PageFlow& page) {
  const CardPiece& card = fit.free();
  page.heading(say(DryFitCardPhrase::when_it_does_not_come), 4.0);
  constexpr TextLook look{.size = 2.8, .bold = false, .indent = 0.0};
  page.text(say(DryFitCardPhrase::look_for_cause_before_you,
                card.state == PieceState::on_record ? "" : say(DryFitCardPhrase::nothing_is_cut_so_all)),
            look);
  const std::string left = fit.adjusters.empty()
                               ? say(DryFitCardPhrase::stay_has_no_adjuster)
                               : say(DryFitCardPhrase::from_its_setting_adjuster_takes,
                                     card.amount(fit.to_tighten), card.amount(fit.to_slacken));
  page.text(say(DryFitCardPhrase::after_cutting_too_long_beyond, left,
                card.rope()    ? say(DryFitCardPhrase::with_whole_bury)
                : card.chain() ? say(ChainPhrase::chain_loses_a_link)
                               : say(DryFitCardPhrase::pressed_terminal_is_cut_off)),
            look);
  add_last_words(page);
}

} // namespace

std::vector<StayFit> stay_fits(const CheckedRig& checked) {
  std::vector<StayFit> fits;
  for (CardPiece& card : card_pieces(checked)) {
    if (fits.empty() || fits.back().of_stay != card.of_stay)
      fits.push_back({.rig = card.rig,
                      .of_stay = card.of_stay,
                      .stay = card.stay,
                      .pieces = {},
                      .to_tighten = {},
                      .to_slacken = {},
                      .draft_reasons = {}});
    fits.back().pieces.push_back(std::move(card));
  }
  for (StayFit& fit : fits)
    finish(fit);
  return fits;
}

std::vector<Drawing> fit_pages(const StayFit& fit, const std::string& boat, PaperSize size) {
  PageFlow page(size, {.name = say(DryFitCardPhrase::dry_fit_begins, fit.stay->name),
                       .about = boat,
                       .draft = draft_lines(fit.draft_reasons),
                       .hatched = fit.draft()});
  add_head(fit, page);
  if (fit.draft()) {
    add_release(fit.draft_reasons, say(DryFitCardPhrase::there_is_nothing_to_hang), page);
    add_parting(fit, page);
    add_last_words(page);
  } else {
    add_stack(fit, page);
    add_bearings(fit, page);
    add_looks(fit, page);
    add_parting(fit, page);
    add_found(fit, page);
    add_mends(fit, page);
  }
  return page.pages(say(DryFitCardPhrase::dry_fit_of, fit.stay->name),
                    say(DryFitCardPhrase::what_to_hang_before_anything));
}

DryFitCard::DryFitCard()
    : PagesBackend({"dry-fit-card", "dry-fit-cards", say(DryFitCardPhrase::dry_fit_cards),
                    say(DryFitCardPhrase::page_for_each_stay_what)}) {}

std::vector<Drawing> DryFitCard::pages(const BackendRequest& request, const std::string&) const {
  const std::string boat = identity_words(request.checked);
  return pages_of_each(stay_fits(request.checked), [&](const StayFit& fit) {
    std::vector<Drawing> pages = fit_pages(fit, boat, request.paper);
    // Lying there is no halyard to hoist it by; of a draft there is nothing to hoist, but what was hoisted
    // is to be read.
    if (!rigged_lying(*fit.stay) && (!fit.draft() || fit.hung()))
      for (Drawing& page : hoisted_pages(fit, boat, request.paper))
        pages.push_back(std::move(page));
    return pages;
  });
}

} // namespace sheerpole
