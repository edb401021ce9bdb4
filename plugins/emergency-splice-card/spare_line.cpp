#include "plugins/emergency-splice-card/emergency_splice_card.hpp"

#include "backend/card/card_in_hand.hpp"
#include "backend/card/card_piece.hpp"
#include "calculate/cut/order_length.hpp"
#include "calculate/facts.hpp"
#include "model/fact_name.hpp"
#include "model/kind_words.hpp"
#include "model/stated.hpp"
#include "wording/length_words.hpp"
#include "wording/papers/emergency_card_words.hpp"

#include <algorithm>
#include <iterator>
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

/// From the first bearing the far cut end lies at the body, what the line does and what this end uses.
std::vector<SpareMark> second_end(const CardPiece& card) {
  const Length beyond = behaviour(*card.piece) + used_at(*card.piece, WhichEnd::lower);
  std::vector<SpareMark> marks;
  for (const BenchMark& mark : card.piece->bench.marks)
    if (mark.end == WhichEnd::lower)
      marks.push_back({mark_name(mark), card.unit.round(beyond - mark.from_lower.known)});
  return marks;
}

bool same_marks(const std::vector<SpareMark>& some, const std::vector<SpareMark>& others) {
  return std::equal(some.begin(), some.end(), others.begin(), others.end(),
                    [](const SpareMark& one, const SpareMark& other) {
                      return one.name == other.name && one.beyond_body.parts == other.beyond_body.parts;
                    });
}

void add_second_ends(SpareLine& spare) {
  spare.second = second_end(spare.longest);
  for (const CardPiece& card : spare.pieces) {
    std::vector<SpareMark> marks = second_end(card);
    if (!card.may_be_cut() || marks.empty())
      continue;
    if (same_marks(marks, spare.second)) {
      spare.as_second.push_back(card.piece->name);
      continue;
    }
    const auto found = std::find_if(spare.others.begin(), spare.others.end(),
                                    [&](const OtherEnd& other) { return same_marks(other.marks, marks); });
    if (found == spare.others.end())
      spare.others.push_back({{card.piece->name}, std::move(marks)});
    else
      found->pieces.push_back(card.piece->name);
  }
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
  Length end_again;
  for (const CardPiece& one : spare.pieces)
    end_again = std::max(end_again, greedier_end(*one.piece));
  spare.end_again = card.unit.round(end_again);
  spare.to_carry = card.cut + spare.end_again;
  if (const std::optional<Length> length = about(card))
    spare.about_to_carry = *length + end_again;
  for (const CardMark& mark : card.marks)
    if (mark.end == WhichEnd::upper)
      spare.first.push_back(mark);
  add_second_ends(spare);
}

const Splice* splice_of(const CardPiece& card, const PieceEnd& end) {
  return end.splice ? &(*card.rig)[*end.splice] : nullptr;
}

std::string shown_part(const CardPiece& card, const PieceEnd& end) {
  return shown(end.part_name(*card.rig), end.part_title(*card.rig));
}

std::string round_words(const CardPiece& card, const PieceEnd& end) {
  return end.bare() ? "" : say(EmergencyCardPhrase::round, shown_part(card, end));
}

/// "lashing-260 set to 160 mm"; of several each.
std::string adjusters(const CardPiece& card) {
  const std::string words = joined(card.of_stay->adjusters, ", ", [&](const TakeUp& adjuster) {
    return say(EmergencyCardPhrase::at, (*card.rig)[adjuster.part].name, card.amount(adjuster.set.value));
  });
  return words.empty() ? say(EmergencyCardPhrase::parts_hung_as_they_will) : words;
}

std::string cord_words(const SpareLine& spare) {
  const CardPiece& card = spare.longest;
  const bool alike = std::all_of(spare.pieces.begin(), spare.pieces.end(),
                                 [&](const CardPiece& one) { return set_words(one) == set_words(card); });
  return say(EmergencyCardPhrase::take_body_with_messenger_cord,
             alike ? adjusters(card) : std::string(say(EmergencyCardPhrase::adjuster_as_table_says)));
}

/// The parts below, each once: "deadeye-42 or stay-thimble-20".
std::string parts_below(const SpareLine& spare, std::string_view between) {
  std::vector<std::string> names;
  for (const CardPiece& card : spare.pieces)
    if (const std::string& name = card.piece->lower.part_name(*card.rig);
        !name.empty() && std::find(names.begin(), names.end(), name) == names.end())
      names.push_back(name);
  return joined(names, between);
}

/// What the tail goes round below: of several parts the one that the stay has.
std::string round_below(const SpareLine& spare) {
  const CardPiece& card = spare.longest;
  const bool alike = std::all_of(spare.pieces.begin(), spare.pieces.end(), [&](const CardPiece& one) {
    return one.piece->lower.part_name(*one.rig) == card.piece->lower.part_name(*card.rig);
  });
  return alike ? round_words(card, card.piece->lower)
               : say(EmergencyCardPhrase::round_part_of_stay,
                     parts_below(spare, say(EmergencyCardPhrase::or_word)));
}

/// The pieces that are spliced otherwise below than the longest.
std::string other_splices(const SpareLine& spare) {
  const std::string splice = splice_words(spare.longest, spare.longest.piece->lower);
  return joined(spare.pieces, ", ", [&](const CardPiece& one) {
    return splice_words(one, one.piece->lower) != splice ? one.piece->name : std::string();
  });
}

/// The numbers by which the second eye is made.
std::vector<std::string> splice_steps(const SpareLine& spare) {
  const CardPiece& card = spare.longest;
  const Splice* splice = splice_of(card, card.piece->lower);
  if (splice == nullptr)
    return {say(EmergencyCardPhrase::splice_second_eye_file_names)};
  std::vector<std::string> steps;
  steps.push_back(splice->taper.empty() ? say(EmergencyCardPhrase::taper_tail_file_does_not)
                                        : say(EmergencyCardPhrase::taper_the_tail, splice->taper));
  steps.push_back(say(EmergencyCardPhrase::lead_tail_throat_mark_to, round_below(spare),
                      bury_words(card, WhichEnd::lower)));
  steps.push_back(say(EmergencyCardPhrase::smooth_cover_from_throat_outwards));
  if (const std::string names = other_splices(spare); !names.empty())
    steps.front() += " " + say(EmergencyCardPhrase::another_splice_by_its_card, names);
  const std::string locking = fact_text(splice->particulars, fact_names.locking);
  steps.push_back(read_stated(locking).answer != Answer::stated
                      ? say(EmergencyCardPhrase::lock_it_before_it_is)
                      : say(EmergencyCardPhrase::lock_it, locking));
  return steps;
}

} // namespace

std::string set_words(const CardPiece& card) {
  return joined(card.of_stay->adjusters, ", ",
                [&](const TakeUp& adjuster) { return card.amount(adjuster.set.value); });
}

std::string of_body(const CardUnit& unit, CardLength beyond) {
  if (beyond.parts == 0)
    return say(EmergencyCardPhrase::body);
  const CardLength more{false, beyond.parts < 0 ? -beyond.parts : beyond.parts};
  return (beyond.parts < 0 ? say(EmergencyCardPhrase::body_before) : say(EmergencyCardPhrase::body_word)) +
         card_amount(unit, more);
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
  steps.push_back(say(EmergencyCardPhrase::cut_same_rope_batch_that, card.amount_of_stay(spare.to_carry)));
  const std::string splice = splice_words(card, card.piece->upper);
  steps.push_back(say(EmergencyCardPhrase::make_eye_aloft_load_it, round_words(card, card.piece->upper),
                      led_by(": ", splice)));
  steps.push_back(
      say(EmergencyCardPhrase::whip_other_end_bag_it,
          led_by(say(EmergencyCardPhrase::and_a), parts_below(spare, say(EmergencyCardPhrase::and_a)))));
  return steps;
}

std::vector<std::string> rope_aboard(const SpareLine& spare) {
  std::vector<std::string> steps{cord_words(spare), say(EmergencyCardPhrase::mark_end_below_from_bearing),
                                 say(EmergencyCardPhrase::seize_it_and_hang_it)};
  std::vector<std::string> made = splice_steps(spare);
  made.front().insert(0, say(EmergencyCardPhrase::cut_at_its_mark));
  steps.insert(steps.end(), std::make_move_iterator(made.begin()), std::make_move_iterator(made.end()));
  steps.push_back(say(EmergencyCardPhrase::hang_it_pin_it_secure));
  steps.push_back(say(EmergencyCardPhrase::load_it_little_by_little));
  return steps;
}

std::vector<std::string> wire_at_home(const SpareLine& spare) {
  const CardPiece& card = spare.longest;
  return {say(EmergencyCardPhrase::cut_same_wire_and_bind, card.amount_of_stay(spare.to_carry),
              card.line->construction.text, card.line->size.name),
          say(EmergencyCardPhrase::close_end_aloft_first_try,
              card.piece->upper.bare() ? say(EmergencyCardPhrase::file_names_no_part)
                                       : shown_part(card, card.piece->upper)),
          say(EmergencyCardPhrase::coil_it_large_and_bound)};
}

std::vector<std::string> wire_aboard(const SpareLine& spare) {
  const CardPiece& card = spare.longest;
  return {cord_words(spare),
          say(EmergencyCardPhrase::end_aloft_is_closed_its,
              spare.second.empty() ? say(EmergencyCardPhrase::as_terminal_below_asks)
                                   : of_body(card.unit, spare.second.back().beyond_body),
              card.piece->name),
          say(EmergencyCardPhrase::bind_wire_on_both_sides),
          say(EmergencyCardPhrase::mark_depth_on_wire_close),
          say(EmergencyCardPhrase::hang_it_pin_it_secure_pins)};
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
                           .wire = size == nullptr ? say(EmergencyCardPhrase::not_stated) : size->text,
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
