#include "plugins/dry-fit-card/stay_fit.hpp"

#include <fmt/format.h>

namespace sheerpole {

namespace {

/// Where an adjuster stands: as set, and at the ends of its range.
enum class Position { set, closed, open };

std::string position_words(const StayFit& fit, const TakeUp& adjuster, Position position) {
  const CardPiece& card = fit.free();
  const Length length = position == Position::closed ? adjuster.set.value - adjuster.to_tighten
                        : position == Position::open ? adjuster.set.value + adjuster.to_slacken
                                                     : adjuster.set.value;
  std::string words = card.amount(length);
  if (fit.of_stay->adjusters.size() > 1)
    words = (*fit.rig)[adjuster.part].name + " " + words;
  if (position == Position::set)
    return words;
  const bool closed = position == Position::closed;
  const Length travel = closed ? adjuster.to_tighten : adjuster.to_slacken;
  if (const std::string turns = format_turns(travel, adjuster.travel_per_turn); !turns.empty())
    words += fmt::format(", {} turns {}", turns, closed ? "in" : "out");
  return words;
}

FitRow fit_row(const StayFit& fit, Position position) {
  FitRow row;
  row.position = position == Position::set ? "as set" : position == Position::closed ? "closed" : "open";
  for (const TakeUp& adjuster : fit.of_stay->adjusters)
    row.adjusters += (row.adjusters.empty() ? "" : "; ") + position_words(fit, adjuster, position);
  const CardPiece& card = fit.free();
  if (!card.has_dry_fit)
    return row;
  row.of_bearings = position == Position::closed ? card.dry_fit + fit.to_tighten
                    : position == Position::open ? card.dry_fit - fit.to_slacken
                                                 : card.dry_fit;
  return row;
}

void finish(StayFit& fit) {
  for (std::size_t i = 0; i < fit.pieces.size(); ++i) {
    if (!fit.stay->stack[fit.pieces[i].item].line_length)
      fit.free_piece = i;
    const auto& reasons = fit.pieces[i].draft_reasons;
    fit.draft_reasons.insert(fit.draft_reasons.end(), reasons.begin(), reasons.end());
  }
  Length tighten;
  Length slacken;
  for (const TakeUp& adjuster : fit.of_stay->adjusters) {
    tighten += adjuster.to_tighten;
    slacken += adjuster.to_slacken;
  }
  fit.to_tighten = fit.free().unit.round(tighten);
  fit.to_slacken = fit.free().unit.round(slacken);
  fit.rows.push_back(fit_row(fit, Position::set));
  if (fit.of_stay->adjusters.empty())
    return;
  fit.rows.push_back(fit_row(fit, Position::closed));
  fit.rows.push_back(fit_row(fit, Position::open));
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
                      .rows = {},
                      .to_tighten = {},
                      .to_slacken = {},
                      .draft_reasons = {}});
    fits.back().pieces.push_back(std::move(card));
  }
  for (StayFit& fit : fits)
    finish(fit);
  return fits;
}

} // namespace sheerpole
