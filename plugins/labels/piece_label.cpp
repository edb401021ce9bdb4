#include "plugins/labels/piece_label.hpp"

#include "backend/boat_title.hpp"
#include "backend/card/card_piece.hpp"
#include "calculate/facts.hpp"

#include <fmt/format.h>

namespace sheerpole {

namespace {

std::string_view side_word(Side side) {
  return side == Side::port ? " PORT" : side == Side::starboard ? " STARBOARD" : "";
}

std::string end_words(const char* end, const PieceEnd& made) {
  return made.part.empty() ? fmt::format("END {}", end) : fmt::format("END {}: {}", end, made.part);
}

PieceLabel label_of(const CardPiece& card, const std::string& boat, bool aloft) {
  const std::vector<Particular>& of_stay = card.stay->particulars;
  PieceLabel label;
  label.stay = fmt::format(
      "{}{}{}", card.stay->base, side_word(card.stay->side),
      card.piece->of > 1 ? fmt::format(", piece {} of {}", card.piece->number, card.piece->of) : "");
  label.end = aloft ? end_words("ALOFT", card.piece->upper) : end_words("BELOW", card.piece->lower);
  label.boat = boat;
  label.line = fmt::format("{}: {}, {}", card.line->name, card.line->construction, card.line->size.name);
  // A draft may still change, so its number is no record of what was made.
  label.length =
      card.draft_reasons.empty() && card.complete
          ? fmt::format("cut {}, bearing to bearing {}", card.amount(card.cut), card.amount(card.body))
          : "";
  label.made = fact_text(of_stay, "made");
  label.job = fact_text(of_stay, "job");
  label.batch = fact_text(card.line->particulars, "batch");
  label.made_by = fact_text(of_stay, "made-by");
  return label;
}

} // namespace

std::vector<PieceLabel> piece_labels(const CheckedRig& checked) {
  const std::string boat = boat_title(checked);
  std::vector<PieceLabel> labels;
  for (const CardPiece& card : card_pieces(checked)) {
    labels.push_back(label_of(card, boat, true));
    labels.push_back(label_of(card, boat, false));
  }
  return labels;
}

} // namespace sheerpole
