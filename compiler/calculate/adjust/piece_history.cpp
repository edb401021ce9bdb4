#include "calculate/adjust/piece_history.hpp"

#include "calculate/derived.hpp"
#include "calculate/facts.hpp"
#include "model/fact_name.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

bool is_of(const PieceRecord& record, const Piece& piece) {
  return record.number.value_or(piece.number) == piece.number;
}

/// What its splices take until it has settled; nothing when that is not known.
std::optional<Length> short_at_first(const Piece& piece) {
  Length sum;
  for (const PieceEnd* end : {&piece.upper, &piece.lower}) {
    if (!end->by_first_creep)
      continue;
    if (!end->shortens_until_set)
      return std::nullopt;
    sum += *end->shortens_until_set;
  }
  return sum;
}

std::optional<Length> wanted_at(PieceStage stage, const Piece& piece) {
  if (piece.body.unknown || !piece.missing.empty())
    return std::nullopt;
  Length wanted = piece.body.known();
  if (stage == PieceStage::cut || stage == PieceStage::made)
    wanted += behaviour(piece);
  if (stage != PieceStage::settled) {
    const auto shorter = short_at_first(piece);
    if (!shorter)
      return std::nullopt;
    wanted = wanted - *shorter;
  }
  return wanted;
}

PieceEntry entry_of(const Rig& rig, const Piece& piece, const PieceRecord& record) {
  PieceEntry entry{.record = &record, .body = {}, .wanted = {}};
  if (!record.body)
    return entry;
  entry.body = record.body->value;
  entry.wanted = wanted_at(record.stage, piece);
  if (!record.pull)
    return entry;
  // On the bench the wanted length is that at the bench tension, where what the line does is counted.
  const bool on_bench = record.stage == PieceStage::cut || record.stage == PieceStage::made;
  const auto tension = fact_force(rig[piece.stay].particulars,
                                  on_bench ? fact_names.bench_tension : fact_names.dock_tension);
  const auto stiffness = line_stiffness(rig[piece.material]);
  entry.pull_not_counted = !tension || !stiffness;
  if (!entry.pull_not_counted)
    entry.body = *entry.body * ((1.0 + tension->value / stiffness->value) /
                                (1.0 + record.pull->value / stiffness->value));
  return entry;
}

/// Of the records of a piece the last that `says` something of this kind.
std::string last_said(const PieceHistory& history, std::string PieceRecord::*what) {
  std::string said;
  for (const PieceEntry& entry : history.entries)
    if (!(entry.record->*what).empty())
      said = entry.record->*what;
  return said;
}

} // namespace

const PieceEntry* PieceHistory::last_measured() const {
  const auto found = std::find_if(entries.rbegin(), entries.rend(),
                                  [](const PieceEntry& one) { return one.body.has_value(); });
  return found == entries.rend() ? nullptr : &*found;
}

const PieceEntry* PieceHistory::last(PieceStage stage) const {
  const auto found = std::find_if(entries.rbegin(), entries.rend(),
                                  [&](const PieceEntry& one) { return one.record->stage == stage; });
  return found == entries.rend() ? nullptr : &*found;
}

std::span<const PieceRecord> piece_records_of(const Rig& rig, StayId stay) {
  const auto before = [](const PieceRecord& record, StayId id) { return record.stay.index() < id.index(); };
  const auto after = [](StayId id, const PieceRecord& record) { return id.index() < record.stay.index(); };
  const auto& all = rig.piece_records;
  const auto first = std::lower_bound(all.begin(), all.end(), stay, before);
  const auto behind = std::upper_bound(first, all.end(), stay, after);
  return std::span(all).subspan(static_cast<std::size_t>(first - all.begin()),
                                static_cast<std::size_t>(behind - first));
}

PieceHistory piece_history(const Rig& rig, const DerivedStay& stay, std::size_t i) {
  PieceHistory history;
  const Piece& piece = stay.pieces[i];
  for (const PieceRecord& record : piece_records_of(rig, piece.stay))
    if (is_of(record, piece))
      history.entries.push_back(entry_of(rig, piece, record));
  std::stable_sort(history.entries.begin(), history.entries.end(),
                   [](const PieceEntry& a, const PieceEntry& b) {
                     if (a.record->stage != b.record->stage)
                       return a.record->stage < b.record->stage;
                     return a.record->date < b.record->date; // ISO 8601 days are in order as texts
                   });
  return history;
}

bool is_on_record(const Rig& rig, const Piece& piece) {
  const auto records = piece_records_of(rig, piece.stay);
  return std::any_of(records.begin(), records.end(),
                     [&](const PieceRecord& record) { return is_of(record, piece); });
}

std::optional<Length> adjuster_with(const DerivedStay& stay, const PieceEntry& entry) {
  if (stay.adjusters.size() != 1 || stay.pieces.size() != 1 || !entry.longer())
    return std::nullopt;
  return stay.adjusters.front().set.value - *entry.longer();
}

std::optional<CameOut> came_out(const Rig& rig, const DerivedStay& stay) {
  if (rig.piece_records.empty() || stay.pieces.size() != 1)
    return std::nullopt;
  const PieceHistory history = piece_history(rig, stay, 0);
  const PieceEntry* const entry = history.last_measured();
  if (entry == nullptr || !adjuster_with(stay, *entry))
    return std::nullopt;
  const Length longer = *entry->longer();
  if (magnitude(longer) < Length::millimetres(0.05)) // half of the last printed digit
    return std::nullopt;
  const std::string stage(name_of(entry->record->stage));
  return CameOut{longer, Words{entry->record->date.empty() ? stage : stage + " " + entry->record->date}};
}

std::string stock_of(const Rig& rig, const DerivedStay& stay, std::size_t i) {
  if (rig.piece_records.empty()) // the usual case
    return rig[stay.stay].stack[lines_of(rig[stay.stay])[i]].stock;
  const std::string recorded = last_said(piece_history(rig, stay, i), &PieceRecord::stock);
  return recorded.empty() ? rig[stay.stay].stack[lines_of(rig[stay.stay])[i]].stock : recorded;
}

std::string batch_of(const Rig& rig, const DerivedStay& stay, std::size_t i) {
  if (!rig.piece_records.empty())
    if (std::string batch = last_said(piece_history(rig, stay, i), &PieceRecord::batch); !batch.empty())
      return batch;
  if (const std::string name = stock_of(rig, stay, i); !name.empty())
    if (const Record* stock = find_record(rig, RecordKind::stock, name))
      if (std::string batch = fact_text(stock->facts, fact_names.batch); !batch.empty())
        return batch;
  return fact_text(rig[stay.pieces[i].material].particulars, fact_names.batch);
}

} // namespace sheerpole
