#include "calculate/spool_plan/wanted_piece.hpp"

#include "calculate/cutting/cutting_order.hpp"
#include "calculate/facts.hpp"
#include "calculate/spool_plan/whole_millimetres.hpp"
#include "units/quantity_text.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

std::string missing_words(const Piece& piece) {
  std::string words;
  for (const MissingInput& missing : piece.missing)
    words += (words.empty() ? "" : "; ") + missing.what + " is missing";
  return words.empty() ? "a part of its stack has no length yet" : words;
}

/// Whole links nearest to the cut, as the cut list has them; with spare the links up to it.
void to_whole_links(WantedPiece& wanted, Length pitch, double spare) {
  const double links = std::max(1.0, std::round(wanted.cut / pitch));
  const double with_spare = std::max(links, std::ceil(links * (1.0 + spare) - millimetre_noise));
  wanted.length_mm = up_to_millimetres(pitch * with_spare);
  wanted.note = std::to_string(static_cast<std::int64_t>(with_spare)) + " links of " + length_text(pitch);
}

} // namespace

std::variant<WantedPiece, UnplannedPiece> wanted_piece(const SpoolBoat& boat, const Piece& piece,
                                                       double spare) {
  const Stay& stay = (*boat.rig)[piece.stay];
  const auto not_planned = [&](std::string reason) {
    return UnplannedPiece{boat.title, piece.name, std::move(reason)};
  };
  const auto note = std::find_if(boat.notes.begin(), boat.notes.end(),
                                 [&](const PieceNote& one) { return one.piece == piece.name; });
  const bool noted = note != boat.notes.end();
  if (!piece.missing.empty() || (noted && !note->complete))
    return not_planned("its cut length is not complete: " + missing_words(piece));

  WantedPiece wanted;
  wanted.boat = boat.title;
  wanted.stay = stay.base;
  wanted.side = stay.side;
  wanted.name = piece.name;
  wanted.cut = piece.cut.known();
  if (noted) {
    wanted.draft_reasons = note->draft_reasons;
    if (note->listed_cut && *note->listed_cut > wanted.cut)
      wanted.cut = *note->listed_cut;
  }
  if (piece.cut.unknown) {
    const auto estimate = fact_length(stay.particulars, "estimate");
    if (!estimate)
      return not_planned("its length is X, and the stay states no estimate to order line by");
    wanted.estimated = true;
    wanted.cut += estimate->value;
  }
  if (wanted.cut <= Length{})
    return not_planned("nothing is left of its length");

  const LineMaterial& line = (*boat.rig)[piece.material];
  const auto pitch = fact_length(line.particulars, "pitch");
  if (line.kind == LineMaterial::Kind::chain && pitch && pitch->value > Length{})
    to_whole_links(wanted, pitch->value, spare);
  else
    wanted.length_mm = up_to_millimetres(wanted.cut * (1.0 + spare));
  wanted.length_mm = std::max<std::int64_t>(wanted.length_mm, 1);
  if (wanted.length_mm > longest_cutting_mm)
    return not_planned("it is longer than 100 km");
  return wanted;
}

} // namespace sheerpole
