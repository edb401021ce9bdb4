#include "calculate/cut/piece.hpp"

#include "calculate/cut/cut_phrase.hpp"
#include "calculate/cut/line_ends.hpp"
#include "calculate/cut/line_stretch.hpp"
#include "calculate/cut/whole_links.hpp"
#include "calculate/facts.hpp"
#include "model/fact_name.hpp"

#include <algorithm>
#include <array>
#include <utility>

namespace sheerpole {

namespace {

void add(Piece& piece, std::vector<Term>& terms, std::vector<MissingInput>& missing) {
  for (Term& term : terms)
    piece.cut.terms.push_back(std::move(term));
  for (MissingInput& input : missing) {
    const bool said =
        std::any_of(piece.missing.begin(), piece.missing.end(), [&](const MissingInput& earlier) {
          return earlier.place == input.place && earlier.what == input.what;
        });
    if (!said)
      piece.missing.push_back(std::move(input));
  }
}

/// Puts what the line does and what the two ends use onto the body: fills cut, both ends, what is missing
/// and the marks of `piece`, whose body is known already.
void add_ends(Piece& piece, const CordBearings& bearings, EndUse upper, EndUse lower, LineStretch stretch) {
  piece.cut = {SumKind::cut, piece.body.unknown, {}, piece.body.unknown_source};
  piece.cut.terms.reserve(1 + stretch.terms.size() + upper.terms.size() + lower.terms.size());
  piece.cut.terms.push_back(term_of(piece.body));
  add(piece, stretch.terms, stretch.missing);
  piece.not_counted = std::move(stretch.not_counted);
  add(piece, upper.terms, upper.missing);
  add(piece, lower.terms, lower.missing);
  for (EndUse* use : {&upper, &lower})
    for (MissingInput& input : use->blocked)
      piece.blocked.push_back(std::move(input));
  piece.upper = upper.end;
  piece.lower = lower.end;
  piece.bench = bench_marks(piece.body, piece.cut, piece.missing.empty(), upper, lower);
  if (piece.body.unknown)
    lay_on_cord(bearings, piece.cut, upper, lower, piece.bench);
}

EndUse shackled(const LineEnd& end) {
  EndUse use;
  if (end.bare())
    return use;
  use.end.part = end.item->part;
  return use;
}

/// A chain parts at a link, so the length that is worked out is not the one that can be had.
Remark links_note(const Rig& rig, const Piece& piece) {
  const std::string pitch = pitch_words(rig[piece.material]);
  if (pitch.empty())
    return CutPhrase::pitch_not_stated;
  if (piece.body.unknown)
    return {CutPhrase::whole_links_of_unknown, {Words{pitch}}};
  const WholeLinks links = *whole_links(rig[piece.material], piece.body.known());
  return {links.longer < Length{} ? CutPhrase::whole_links_shorter : CutPhrase::whole_links_longer,
          {Count{links.count}, Words{links.pitch}, links.length, magnitude(links.longer)}};
}

void cut_chain(const Rig& rig, const Stay& stay, std::size_t line, const CordBearings& bearings,
               Piece& piece) {
  EndUse lower = shackled(line_end(rig, stay, line, WhichEnd::lower));
  lower.end.notes = {links_note(rig, piece)};
  add_ends(piece, bearings, shackled(line_end(rig, stay, line, WhichEnd::upper)), std::move(lower), {});
}

/// What is shared out to one end, as a term of its own.
std::optional<Term> kept_at(const InHand& there, WhichEnd end) {
  if (there.at(end).more <= Length{})
    return std::nullopt;
  return Term{TermKind::spare_bury,
              there.at(end).more,
              there.stated.provenance,
              end,
              {CutPhrase::kept_of_in_hand, {there.over}}};
}

SplicedPart spliced_part(const Rig& rig, const EndUse& use) {
  SplicedPart part{use.laid.buried, {}};
  if (use.end.splice)
    part.stretch_share = fact_number(rig[*use.end.splice].particulars, fact_names.stretch_share);
  return part;
}

/// `there`: what is in hand and shared out to the ends; null when it is not known yet or there is none.
void add_rope(const Rig& rig, const CordBearings& bearings, const LineEnd& upper, const LineEnd& lower,
              const InHand* there, Piece& piece) {
  const LineMaterial& material = rig[piece.material];
  const auto kept = [&](WhichEnd end) { return there == nullptr ? std::nullopt : kept_at(*there, end); };
  EndUse upper_use = splice_allowance(rig, material, upper, kept(WhichEnd::upper));
  EndUse lower_use = splice_allowance(rig, material, lower, kept(WhichEnd::lower));
  const std::array spliced{spliced_part(rig, upper_use), spliced_part(rig, lower_use)};
  LineStretch stretch = line_stretch(rig, rig[piece.stay], material, piece.body, spliced);
  add_ends(piece, bearings, std::move(upper_use), std::move(lower_use), std::move(stretch));
}

std::string piece_name(const Stay& stay, std::size_t number, std::size_t of) {
  if (of == 1)
    return stay.name;
  return stay.name + " " + std::to_string(number) + " of " + std::to_string(of);
}

} // namespace

Length behaviour(const Piece& piece) {
  Length sum;
  for (const Term& term : piece.cut.terms)
    if (term.of_standing_part())
      sum += term.amount;
  return sum;
}

std::vector<std::size_t> lines_of(const Stay& stay) {
  std::vector<std::size_t> lines;
  for (std::size_t i = 0; i < stay.stack.size(); ++i)
    if (stay.stack[i].kind == StackItem::Kind::line)
      lines.push_back(i);
  return lines;
}

std::vector<Piece> pieces_of(const Rig& rig, StayId id, const LengthSum& pin_to_pin,
                             const Hardware& hardware) {
  const Stay& stay = rig[id];
  const std::vector<std::size_t> lines = lines_of(stay);
  std::vector<LengthSum> bodies = piece_bodies(stay, pin_to_pin, hardware);
  std::vector<Piece> pieces;
  for (std::size_t i = 0; i < lines.size(); ++i) {
    Piece piece;
    piece.name = piece_name(stay, i + 1, lines.size());
    piece.stay = id;
    piece.number = static_cast<int>(i + 1);
    piece.of = static_cast<int>(lines.size());
    piece.material = stay.stack[lines[i]].material.value_or(stay.material);
    piece.body = std::move(bodies[i]);
    if (!stay.stack[lines[i]].line_length)
      piece.missing = hardware.missing;
    const LineMaterial& material = rig[piece.material];
    const LineEnd upper = line_end(rig, stay, lines[i], WhichEnd::upper);
    const LineEnd lower = line_end(rig, stay, lines[i], WhichEnd::lower);
    const CordBearings bearings = cord_bearings(rig, stay, lines[i], pin_to_pin);
    Piece least = piece;
    switch (material.kind) {
    case LineMaterial::Kind::rope:
      add_rope(rig, bearings, upper, lower, nullptr, least);
      break;
    case LineMaterial::Kind::wire:
    case LineMaterial::Kind::rod:
      add_ends(least, bearings, insertion(upper), insertion(lower),
               line_stretch(rig, stay, material, piece.body));
      break;
    case LineMaterial::Kind::chain:
      cut_chain(rig, stay, lines[i], bearings, least);
      break;
    }
    auto there = in_hand(rig, stay, lines[i], least);
    if (there && there->kept > Length{}) {
      add_rope(rig, bearings, upper, lower, &*there, piece);
      least = std::move(piece);
    }
    least.in_hand = std::move(there);
    pieces.push_back(std::move(least));
  }
  return pieces;
}

} // namespace sheerpole
