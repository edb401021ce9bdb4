#include "plugins/emergency-splice-card/emergency_splice_card.hpp"

#include "backend/card/card_in_hand.hpp"
#include "backend/card/card_piece.hpp"
#include "calculate/cut/order_length.hpp"
#include "calculate/facts.hpp"
#include "model/fact_name.hpp"
#include "model/kind_words.hpp"
#include "model/stated.hpp"
#include "wording/length_words.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <optional>

namespace sheerpole {

namespace {

/// What one end uses of the cut.
Length used_at(const Piece& piece, WhichEnd end) {
  Length used;
  for (const Term& term : piece.cut.terms)
    if (term.is_of(end))
      used += term.amount;
  return used;
}

/// The cut, to compare pieces by; nothing where it is X and nobody says about how long that is.
std::optional<Length> about(const CardPiece& card) {
  return order_length(*card.rig, *card.of_stay, *card.piece).whole();
}

void finish(SpareLine& spare) {
  spare.longest = spare.pieces.front();
  for (const CardPiece& card : spare.pieces) {
    const std::optional<Length> length = about(card);
    if (!length)
      spare.not_compared.push_back(card.piece->name);
    else if (length > about(spare.longest)) // nothing is less than any length
      spare.longest = card;
  }
  const CardPiece& card = spare.longest;
  const Length aloft = used_at(*card.piece, WhichEnd::upper);
  const Length below = used_at(*card.piece, WhichEnd::lower);
  spare.end_again = card.unit.round(std::max(aloft, below));
  spare.to_carry = card.cut + spare.end_again;
  if (const std::optional<Length> length = about(card))
    spare.about_to_carry = *length + std::max(aloft, below);
  for (std::size_t i = 0; i < card.marks.size(); ++i) {
    const BenchMark& mark = card.piece->bench.marks[i];
    if (mark.end == WhichEnd::upper)
      spare.first.push_back(card.marks[i]);
    else
      // From the first bearing the far cut end lies at the body, what the line does and what this end uses.
      spare.second.push_back(
          {mark_name(mark), card.unit.round(behaviour(*card.piece) + below - mark.from_lower.known)});
  }
}

const Splice* splice_of(const CardPiece& card, const PieceEnd& end) {
  return end.splice ? &(*card.rig)[*end.splice] : nullptr;
}

std::string shown_part(const CardPiece& card, const PieceEnd& end) {
  return shown(end.part_name(*card.rig), end.part_title(*card.rig));
}

std::string round_words(const CardPiece& card, const PieceEnd& end) {
  return end.bare() ? "" : " round " + shown_part(card, end);
}

/// "lashing-260 set to 160 mm"; of several each.
std::string adjusters(const CardPiece& card) {
  const std::string words = joined(card.of_stay->adjusters, ", ", [&](const TakeUp& adjuster) {
    return (*card.rig)[adjuster.part].name + " at " + card.amount(adjuster.set.value);
  });
  return words.empty() ? "the parts hung as they will hang" : words;
}

std::string cord_words(const CardPiece& card) {
  return fmt::format(
      "Take the body with the messenger cord from bearing to bearing, pulled straight, with {}. "
      "Compare it with the table: a large difference is a slip, or the mast has moved.",
      adjusters(card));
}

/// The numbers by which the second eye is made.
std::vector<std::string> splice_steps(const CardPiece& card) {
  const Splice* splice = splice_of(card, card.piece->lower);
  if (splice == nullptr)
    return {"Splice the second eye. The file names no splice for it: follow the maker of the rope."};
  std::vector<std::string> steps;
  steps.push_back(splice->taper.empty()
                      ? "Taper the tail. The file does not say how: follow the maker of the rope."
                      : "Taper the tail: " + splice->taper + ".");
  steps.push_back(
      fmt::format("Lead the tail{}, throat mark to throat mark, into the standing part, and bury "
                  "all of it: {}. A short bury slips.",
                  round_words(card, card.piece->lower), bury_words(card, WhichEnd::lower)));
  steps.push_back("Smooth the cover from the throat outwards until no slack is left in it.");
  const std::string locking = fact_text(splice->particulars, fact_names.locking);
  steps.push_back(
      read_stated(locking).answer != Answer::stated
          ? "Lock it before it is slack again: a bury that is not under load works out. The file "
            "does not say how."
          : "Lock it: " + locking + ".");
  return steps;
}

} // namespace

std::string of_body(const CardUnit& unit, CardLength beyond) {
  if (beyond.parts == 0)
    return "body";
  const CardLength more{false, beyond.parts < 0 ? -beyond.parts : beyond.parts};
  return (beyond.parts < 0 ? "body - " : "body + ") + card_amount(unit, more);
}

std::vector<SpareLine> spare_lines(const CheckedRig& checked) {
  std::vector<SpareLine> spares;
  for (CardPiece& card : card_pieces(checked)) {
    if (card.line->kind != LineMaterial::Kind::rope && card.line->kind != LineMaterial::Kind::wire)
      continue;
    auto found = std::find_if(spares.begin(), spares.end(),
                              [&](const SpareLine& one) { return one.pieces.front().line == card.line; });
    if (found == spares.end())
      found = spares.insert(spares.end(), SpareLine{});
    found->pieces.push_back(std::move(card));
  }
  for (SpareLine& spare : spares)
    finish(spare);
  return spares;
}

std::vector<std::string> rope_at_home(const SpareLine& spare) {
  const CardPiece& card = spare.longest;
  std::vector<std::string> steps;
  steps.push_back(fmt::format("Cut {} of the same rope, of a batch that a test splice was made of.",
                              card.amount_of_stay(spare.to_carry)));
  const std::string splice = splice_words(card, card.piece->upper);
  steps.push_back(fmt::format("Make the eye aloft{}{}. Load it as its bench card says.",
                              round_words(card, card.piece->upper), led_by(": ", splice)));
  steps.push_back(
      fmt::format("Whip the other end. Bag it dry and dark with fid, needle, twine, knife, marker, "
                  "rule, a messenger cord that does not stretch, this card{}.",
                  led_by(" and a ", card.piece->lower.part_name(*card.rig))));
  return steps;
}

std::vector<std::string> rope_aboard(const SpareLine& spare) {
  const CardPiece& card = spare.longest;
  std::vector<std::string> steps{cord_words(card),
                                 "Mark the end below from the bearing of the first eye. A second person "
                                 "measures again. Cut nothing yet."};
  for (std::string& step : splice_steps(card))
    steps.push_back(std::move(step));
  steps.push_back("Hang it, pin it, secure the pins, haul tight by hand. Only now trim what is left over.");
  steps.push_back("Load it little by little. Look at the throats after minutes and after an hour, and haul "
                  "tight again: a new splice beds in.");
  return steps;
}

std::vector<std::string> wire_at_home(const SpareLine& spare) {
  const CardPiece& card = spare.longest;
  return {
      fmt::format("Cut {} of the same wire, {} {}, and bind its ends.", card.amount_of_stay(spare.to_carry),
                  card.line->construction.text, card.line->size.name),
      fmt::format("Close the end aloft first: {}. Try the whole job once on a short end.",
                  card.piece->upper.bare() ? "the file names no part"
                                           : shown_part(card, card.piece->upper)),
      "Coil it large and bound in four places, with the terminals, spanners, cutter or saw for this wire, "
      "a messenger cord that does not stretch, gloves and this card."};
}

std::vector<std::string> wire_aboard(const SpareLine& spare) {
  const CardPiece& card = spare.longest;
  return {cord_words(card),
          fmt::format(
              "The end aloft is closed: its mouth is the zero. Lay the cord along the wire from there and "
              "mark the mouth below and the cut end, {}, by the depth of the terminal of {}; another "
              "terminal takes another depth. A second person measures again before the cut.",
              spare.second.empty() ? "as the terminal below asks"
                                   : of_body(card.unit, spare.second.back().beyond_body),
              card.piece->name),
          "Bind the wire on both sides of the cut. Gloves and goggles: cut wire springs.",
          "Mark the depth on the wire, close the terminal as its maker says, and see that the mark has "
          "gone in.",
          "Hang it, pin it, secure the pins and the screw, and load it little by little."};
}

std::vector<SpareTerminal> spare_terminals(const SpareLine& spare) {
  const CardPiece& card = spare.longest;
  std::vector<SpareTerminal> result;
  for (const Part& part : card.rig->parts) {
    const End* socket = part.line_end(EndType::wire_socket);
    const EndDimension* size = socket == nullptr ? nullptr : socket->find(EndDimensionName::size);
    const bool of_stays = part.name == card.piece->upper.part_name(*card.rig) ||
                          part.name == card.piece->lower.part_name(*card.rig);
    if (socket == nullptr || (size == nullptr ? !of_stays : size->text != card.line->size.name))
      continue;
    SpareTerminal terminal{.name = shown(part.name, part.title),
                           .wire = size == nullptr ? "not stated" : size->text,
                           .inserted = {},
                           .thread = part.screw ? part.screw->thread.designation : "",
                           .in_hand = {}};
    if (const EndDimension* construction = socket->find(EndDimensionName::construction))
      terminal.wire += " " + construction->text;
    if (const EndDimension* inserted = socket->find(EndDimensionName::inserted))
      terminal.inserted = card.amount(inserted->length.value);
    if (const Record* in_hand = last_record_of(*card.rig, RecordKind::in_hand, part.name))
      terminal.in_hand = fact_text(in_hand->facts, fact_names.pieces);
    result.push_back(std::move(terminal));
  }
  return result;
}

} // namespace sheerpole
