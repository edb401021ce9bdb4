#include "plugins/spool-plan/fleet_boats.hpp"

#include <algorithm>
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
      note.complete = sum.body_complete && sum.cut_complete;
      note.listed_cut = sum.cut().length();
      for (const DraftReason& reason : checked.draft_reasons(piece))
        note.draft_reasons.push_back(reason.reason);
      notes.push_back(std::move(note));
    }
  return notes;
}

SpoolBoat boat_of(const FleetRig& rig) {
  SpoolBoat boat;
  boat.title = rig.checked->rig().boat.title;
  boat.rig = &rig.checked->rig();
  boat.derived = &rig.checked->derived();
  boat.source_keys = rig.source_keys;
  for (std::uint32_t i = 0; i < rig.checked->sources().size(); ++i)
    boat.source_names.push_back(rig.checked->sources()[SourceId{i}].name());
  boat.notes = notes_of(*rig.checked);
  return boat;
}

/// How many boats before this one have its title.
std::size_t earlier(const std::vector<SpoolBoat>& boats, std::size_t number) {
  return static_cast<std::size_t>(
      std::count_if(boats.begin(), boats.begin() + static_cast<std::ptrdiff_t>(number),
                    [&](const SpoolBoat& boat) { return boat.title == boats[number].title; }));
}

bool shared(const std::vector<SpoolBoat>& boats, const std::string& title) {
  return std::count_if(boats.begin(), boats.end(),
                       [&](const SpoolBoat& boat) { return boat.title == title; }) > 1;
}

} // namespace

FleetBoats fleet_boats(const BackendRequest& request) {
  std::vector<FleetRig> rigs = request.fleet;
  if (rigs.empty())
    rigs.push_back({&request.checked, "", {}});
  FleetBoats fleet;
  for (const FleetRig& rig : rigs) {
    fleet.boats.push_back(boat_of(rig));
    if (fleet.boats.back().title.empty())
      fleet.boats.back().title = rig.file.empty() ? "boat without a name" : rig.file;
  }
  std::vector<SpoolBoat> as_titled = fleet.boats;
  for (std::size_t i = 0; i < rigs.size(); ++i)
    if (shared(as_titled, as_titled[i].title) && !rigs[i].file.empty())
      fleet.boats[i].title += " (" + rigs[i].file + ")";
  as_titled = fleet.boats;
  for (std::size_t i = 0; i < rigs.size(); ++i)
    if (const std::size_t before = earlier(as_titled, i); before > 0)
      fleet.boats[i].title += " " + std::to_string(before + 1);
  for (const SpoolBoat& boat : fleet.boats)
    fleet.titles += (fleet.titles.empty() ? "" : ", ") + boat.title;
  return fleet;
}

} // namespace sheerpole
