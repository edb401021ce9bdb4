#include "backend/order/order_plan.hpp"

#include "backend/printed_sums.hpp"
#include "calculate/spool_plan/spool_plan.hpp"
#include "wording/papers/spool_plan_words.hpp"
#include "wording/say.hpp"

#include <algorithm>
#include <cstdint>
#include <utility>

namespace sheerpole {

namespace {

/// What is left when the plan has been carried out.
LengthsInStock left_by(const LinePlan& plan) {
  LengthsInStock left;
  for (std::size_t i = 0; i < plan.order.stocks.size(); ++i) {
    const StockInHand& stock = plan.order.stocks[i];
    std::int64_t whole = stock.pieces;
    for (const SpoolUse& use : plan.uses) {
      if (use.stock != i)
        continue;
      --whole;
      if (use.fate == RestFate::stays || use.fate == RestFate::offcut)
        left.add(use.rest_mm - stock.kept_back_mm);
    }
    left.add(stock.length_mm - stock.kept_back_mm, whole);
  }
  return left;
}

} // namespace

namespace {

std::vector<PieceNote> notes_of(const CheckedRig& checked) {
  std::vector<PieceNote> notes;
  for (const DerivedStay& stay : checked.derived().stays)
    for (const Piece& piece : stay.pieces) {
      const PieceSum sum = piece_sum(checked.rig(), stay, piece);
      PieceNote note;
      note.piece = piece.name;
      note.complete = sum.complete();
      note.listed_cut = sum.cut().length();
      note.ways_differ = checked.state(piece) == PieceState::ways_differ;
      for (const DraftReason& reason : checked.held_by(piece))
        note.draft_reasons.push_back(reason.reason);
      notes.push_back(std::move(note));
    }
  return notes;
}

} // namespace

SpoolBoat spool_boat(const CheckedRig& checked) {
  SpoolBoat boat;
  boat.title = checked.rig().boat.title;
  boat.rig = &checked.rig();
  boat.derived = &checked.derived();
  for (std::uint32_t i = 0; i < checked.sources().size(); ++i)
    boat.source_names.push_back(checked.sources()[SourceId{i}].name());
  boat.notes = notes_of(checked);
  return boat;
}

OrderPlan::OrderPlan(const CheckedRig& checked, bool ask_stock) {
  SpoolBoat boat = spool_boat(checked);
  if (boat.title.empty())
    boat.title = say(SpoolPlanPhrase::boat_without_name); // the marks of what was taken are of this title
  SpoolPlan plan;
  if (ask_stock) {
    plan = plan_spools({boat});
  } else {
    for (LineOrder& line : spool_order({boat}).lines)
      plan.lines.emplace_back().order = std::move(line);
  }
  for (const LinePlan& line : plan.lines) {
    for (const NamedLine& name : line.order.names)
      place_of_line_[name.name] = left_.size();
    kerfs_mm_.push_back(line.order.kerf_mm.value);
    left_.push_back(ask_stock ? left_by(line) : LengthsInStock{});
    for (const WantedPiece& piece : line.order.pieces)
      lengths_mm_[piece.name] = piece.length_mm;
    for (const UnplannedPiece& piece : line.order.unplanned)
      if (piece.reason.is(StockPhrase::taken_before))
        taken_before_.insert(piece.name);
    for (const SpoolUse& use : line.uses)
      for (const SpoolCut& cut : use.cuts)
        in_stock_.insert(line.order.pieces[cut.piece].name);
  }
}

std::int64_t OrderPlan::length_mm(const std::string& piece) const {
  const auto known = lengths_mm_.find(piece);
  return known == lengths_mm_.end() ? 0 : known->second;
}

std::int64_t OrderPlan::kerf_mm(const std::string& line) const {
  const auto place = place_of_line_.find(line);
  return place == place_of_line_.end() ? 0 : kerfs_mm_[place->second];
}

LengthsInStock& OrderPlan::left_of(const std::string& line) {
  const auto place = place_of_line_.find(line);
  return place == place_of_line_.end() ? nothing_left_ : left_[place->second];
}

} // namespace sheerpole
