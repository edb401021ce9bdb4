#include "backend/order/spool_boat.hpp"

#include "backend/printed_sums.hpp"

#include <cstdint>
#include <utility>

namespace sheerpole {

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

} // namespace sheerpole
