#include "backend/card/card_piece.hpp"

#include "backend/card/card_in_hand.hpp"
#include "backend/paper_words.hpp"
#include "backend/printed_sums.hpp"
#include "calculate/cut/line_ends.hpp"
#include "calculate/facts.hpp"
#include "model/fact_name.hpp"
#include "model/kind_words.hpp"
#include "model/stated.hpp"
#include "units/format_length.hpp"
#include "wording/length_words.hpp"
#include "wording/model_words.hpp"
#include "wording/papers/chain_words.hpp"
#include "wording/papers/papers_words.hpp"
#include "wording/say.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cstdlib>

namespace sheerpole {

namespace {

/// The nearer end is rounded, the other is what the cut leaves, so that the two add up.
CardMark card_mark(const CardUnit& unit, const BenchMark& mark, CardLength cut) {
  const bool by_aloft = mark.from_upper.unknown == mark.from_lower.unknown
                            ? mark.from_upper.known <= mark.from_lower.known
                            : mark.from_lower.unknown;
  CardMark result;
  result.name = mark_name(mark);
  result.end = mark.end;
  if (by_aloft) {
    result.from_upper = unit.round(mark.from_upper.known);
    result.from_lower = cut - result.from_upper;
  } else {
    result.from_lower = unit.round(mark.from_lower.known);
    result.from_upper = cut - result.from_lower;
  }
  if (!mark.on_cord)
    return result;
  const CardLength x{true, 0};
  if (mark.end == WhichEnd::upper) {
    result.from_u = unit.round(mark.on_cord->from_upper.known);
    result.from_l = x - result.from_u;
  } else {
    result.from_l = unit.round(mark.on_cord->from_lower.known);
    result.from_u = x - result.from_l;
  }
  return result;
}

/// How deep the wire goes into, or comes back from, what it holds at one end, as the marks have it.
std::int64_t depth_at(const CardPiece& card, WhichEnd end) {
  for (std::size_t i = 0; i < card.marks.size(); ++i)
    if (const MarkKind kind = card.piece->bench.marks[i].kind;
        card.marks[i].end == end &&
        (kind == MarkKind::mouth_of_terminal || kind == MarkKind::crown_of_loop))
      return end == WhichEnd::upper ? card.marks[i].from_upper.parts : card.marks[i].from_lower.parts;
  return 0;
}

/// What lies between the bearings. Those of a wire are its marks, so it is what the marks leave of the cut:
/// rounded by itself it would be another number than the one between them.
CardLength card_body(const CardPiece& card, const PieceSum& sum) {
  if (card.rope())
    return card.unit.round(sum.body(), sum.unknown);
  const std::int64_t depths = depth_at(card, WhichEnd::upper) + depth_at(card, WhichEnd::lower);
  return {card.cut.unknown, card.cut.parts - depths - card.behaves.parts};
}

CardLength card_dry_fit(const CardPiece& card, const PieceSum& sum) {
  if (card.rope())
    return card.unit.round(printed_dry_fit(sum), sum.unknown);
  if (card.links) // where its ends should hang, whatever its links come to
    return card.worked_out;
  return {card.body.unknown, card.body.parts + card.behaves.parts};
}

/// A chain is cut by its links: their length is its cut, and its marks are the first and the last.
void count_links(CardPiece& card) {
  if (card.cut.unknown)
    return;
  card.links = whole_links(*card.line, card.piece->cut.known());
  if (!card.links)
    return;
  card.worked_out = card.cut;
  card.cut = card.unit.round(Tenths::of(card.links->length));
}

/// The marks of a wire lie on the cord as they lie on the wire: by its bearings and its depths.
void lay_wire_on_cord(CardPiece& card) {
  const CardLength x{true, 0};
  const std::int64_t begins = card.cord->upper.parts - depth_at(card, WhichEnd::upper);
  const std::int64_t ends = card.cord->lower.parts - card.behaves.parts - depth_at(card, WhichEnd::lower);
  for (CardMark& mark : card.marks)
    if (mark.end == WhichEnd::upper) {
      mark.from_u = {false, begins + mark.from_upper.parts};
      mark.from_l = x - mark.from_u;
    } else {
      mark.from_l = {false, ends + mark.from_lower.parts};
      mark.from_u = x - mark.from_l;
    }
}

/// The last mark is the cut end below: it lies where both cut ends and X make the cut of the card.
void close_the_cut(CardPiece& card) {
  if (card.marks.size() < 2)
    return;
  CardMark& last = card.marks.back();
  last.from_l = {false, -(card.cut.parts + card.marks.front().from_u.parts)};
  last.from_u = CardLength{true, 0} - last.from_l;
}

CardCord card_cord(const CardPiece& card, const CordLayout& layout) {
  const CardUnit& unit = card.unit;
  CardCord cord;
  cord.where = note_words(card.piece->cut.unknown_source);
  cord.upper = unit.round(layout.upper);
  cord.lower = {false, -(card.body.parts + cord.upper.parts)};
  cord.drawn_in_upper = unit.round(layout.drawn_in_upper);
  cord.drawn_in_lower = unit.round(layout.drawn_in_lower);
  cord.behaves = card.behaves;
  Length upper;
  Length lower;
  for (const Term& term : card.of_stay->pin_to_pin.terms)
    (term.kind == TermKind::below_knot ? lower : upper) -= term.amount;
  cord.pins_upper = unit.round(upper);
  cord.pins_lower = unit.round(lower);
  if (const Reading* reading = reading_of_x(*card.stay, *card.of_stay)) {
    if (const auto pull = fact_force(reading->particulars, fact_names.pull))
      cord.pull = pull->value;
    const Record* record =
        reading->cord.empty() ? nullptr : find_record(*card.rig, RecordKind::cord, reading->cord);
    if (record != nullptr)
      if (const auto width = fact_length(record->facts, fact_names.knot_width))
        cord.knot = width->value;
  }
  return cord;
}

/// The n-th line of the stack, from 1.
std::size_t line_item(const Stay& stay, int number) {
  int seen = 0;
  for (std::size_t i = 0; i < stay.stack.size(); ++i)
    if (stay.stack[i].kind == StackItem::Kind::line && ++seen == number)
      return i;
  return 0;
}

/// "35 mm inside U", "12 mm past L", "at U".
std::string from_end(const CardPiece& card, CardLength inside, std::string_view end) {
  if (inside.parts == 0)
    return say(PapersPhrase::at, end);
  return fmt::format("{} {} {}", card.amount(CardLength{false, std::abs(inside.parts)}),
                     inside.parts > 0 ? say(PapersPhrase::inside) : say(PapersPhrase::past), end);
}

CardPiece card_piece(const CheckedRig& checked, const CardUnit& unit, const DerivedStay& of_stay,
                     const Piece& piece) {
  const Rig& rig = checked.rig();
  CardPiece card;
  card.rig = &rig;
  card.derived = &checked.derived();
  card.of_stay = &of_stay;
  card.stay = &rig[of_stay.stay];
  card.piece = &piece;
  card.line = &rig[piece.material];
  card.item = line_item(*card.stay, piece.number);
  card.unit = unit;
  card.draft_reasons =
      checked.draft_reasons(piece, [&](Length length) { return note_amount(unit, length); });
  card.state = checked.state(piece);
  card.state_line = state_line(
      checked, piece, [&](Length length) { return card_amount(unit, unit.round_outwards(length)); });
  card.stamp = state_stamp(checked, piece);
  card.settled = is_settled(checked, piece);
  card.held_by = checked.held_by(piece);
  const PieceSum sum = piece_sum(rig, of_stay, piece);
  card.complete = sum.complete();
  card.cut = unit.round(sum.cut(), piece.cut.unknown);
  count_links(card);
  card.behaves = unit.round(behaviour(piece));
  for (const BenchMark& mark : piece.bench.marks)
    card.marks.push_back(card_mark(unit, mark, card.cut));
  if (card.links) {
    card.marks.front().name = say(ChainPhrase::inside_of_link, 1);
    card.marks.back().name = say(ChainPhrase::inside_of_link, card.links->count);
  }
  card.body = card_body(card, sum);
  card.ends = {false, card.cut.parts - card.body.parts - card.behaves.parts};
  if (piece.bench.cord) {
    if (card.rope())
      close_the_cut(card);
    card.cord = card_cord(card, *piece.bench.cord);
    if (!card.rope())
      lay_wire_on_cord(card);
  }
  if (piece.bench.dry_fit) {
    card.has_dry_fit = true;
    card.dry_fit = card_dry_fit(card, sum);
  }
  return card;
}

} // namespace

bool rigged_lying(const Stay& stay) {
  return fact_text(stay.particulars, fact_names.rigged) == "mast-down";
}

bool mouth_to_mouth(const Piece& piece) {
  const std::vector<BenchMark>& made = piece.bench.marks;
  return std::count_if(made.begin(), made.end(),
                       [](const BenchMark& mark) { return mark.kind == MarkKind::mouth_of_terminal; }) == 2;
}

bool CardPiece::mouth_to_mouth() const {
  return sheerpole::mouth_to_mouth(*piece);
}

std::string CardPiece::amount_of_stay(CardLength length) const {
  if (!length.unknown)
    return amount(length);
  return with_x(true, length.parts, amount(CardLength{false, std::abs(length.parts)}),
                x_of_stay(stay->name));
}

std::string CardPiece::cut_words(const std::string& length) const {
  if (links)
    return links_words(*links, length);
  return chain() ? say(ChainPhrase::nearest_whole_link, length) : length;
}

std::string CardPiece::links_off() const {
  const CardLength off{false, std::abs(links_longer().parts)};
  return links_off_words(*rig, *of_stay, *links, off.parts == 0, amount(off), amount(worked_out));
}

std::string CardPiece::spoken(const Remark& remark) const {
  return say(*rig, remark, [&](Length length) { return note_amount(unit, length); });
}

std::vector<std::string> CardPiece::spoken(const std::vector<Remark>& remarks) const {
  std::vector<std::string> texts;
  for (const Remark& remark : remarks)
    texts.push_back(spoken(remark));
  return texts;
}

std::vector<CardPiece> card_pieces(const CheckedRig& checked) {
  const CardUnit unit = card_unit(checked.rig());
  std::vector<CardPiece> cards;
  for (const DerivedStay& stay : checked.derived().stays)
    for (const Piece& piece : stay.pieces)
      cards.push_back(card_piece(checked, unit, stay, piece));
  return cards;
}

const Reading* reading_of_x(const Stay& stay, const DerivedStay& derived) {
  const auto& taken = derived.readings.taken;
  return taken && stay.readings[*taken].on_cord() ? &stay.readings[*taken] : nullptr;
}

std::vector<std::string> x_words(const CardPiece& card) {
  std::vector<std::string> words;
  if (!card.cord)
    return words;
  const CardCord& cord = *card.cord;
  words.push_back(reading_of_x(*card.stay, *card.of_stay) == nullptr
                      ? say(PapersPhrase::x_pin_to_pin_no)
                      : say(PapersPhrase::x_from_its_upper_end, cord.where));
  if (cord.pins_upper.parts != 0)
    words.push_back(say(PapersPhrase::pin_aloft_is, from_end(card, cord.pins_upper, "U")));
  if (cord.pins_lower.parts != 0)
    words.push_back(say(PapersPhrase::pin_below_is, from_end(card, cord.pins_lower, "L")));
  return words;
}

std::string side_words(Side side) {
  if (side == Side::centre)
    return say(PapersPhrase::centreline);
  return side == Side::port ? say(PapersPhrase::port_side) : say(PapersPhrase::starboard_side);
}

std::string shown(const std::string& name, const std::string& title) {
  return title.empty() ? name : name + " (" + title + ")";
}

std::vector<TakeUp> adjusters_as_hung(const CardPiece& card) {
  std::vector<TakeUp> adjusters = card.of_stay->adjusters;
  if (!card.links || card.links_longer().parts == 0 || adjusters.empty())
    return adjusters;
  TakeUp& first = adjusters.front();
  const Length longer = card.links->longer;
  if (longer > first.to_tighten || Length{} - longer > first.to_slacken)
    return adjusters; // the card says that it cannot
  first.set.value = first.set.value - longer;
  first.to_tighten = first.to_tighten - longer;
  first.to_slacken += longer;
  first.engaged.reset(); // as set otherwise
  return adjusters;
}

std::optional<Length> set_as_hung(const CardPiece& card, std::size_t item) {
  for (const TakeUp& adjuster : adjusters_as_hung(card))
    if (adjuster.item == item)
      return adjuster.set.value;
  const auto& stated = card.stay->stack[item].set_length;
  return stated ? std::optional(stated->value) : std::nullopt;
}

std::string stack_words(const CardPiece& card) {
  return joined(card.stay->stack, "  >  ", [&](const StackItem& item) {
    if (item.kind == StackItem::Kind::line)
      return std::string(&item == &card.stay->stack[card.item] ? say(PapersPhrase::this_piece)
                                                               : say(PapersPhrase::line));
    const auto set = set_as_hung(card, static_cast<std::size_t>(&item - card.stay->stack.data()));
    return (item.count > 1 ? std::to_string(item.count) + " x " : "") + (*card.rig)[item.part].name +
           (set ? say(PapersPhrase::set_to, card.amount(*set)) : "");
  });
}

std::string splice_words(const CardPiece& card, const PieceEnd& end) {
  if (!end.splice)
    return {};
  const Splice* splice = &(*card.rig)[*end.splice];
  const WhichEnd where = &end == &card.piece->lower ? WhichEnd::lower : WhichEnd::upper;
  std::string text = splice->name + ", " + bury_words(card, where);
  const Particular* over = find_fact(splice->particulars, fact_names.taper_over);
  if (!splice->taper.empty())
    text += say(PapersPhrase::taper, splice->taper);
  else if (over != nullptr)
    text += say(PapersPhrase::tapered_over, over->value.provenance.written);
  else if (holds_by_bury(*splice))
    text += say(PapersPhrase::taper_not_stated);
  text += led_by(say(PapersPhrase::throat), fact_text(splice->particulars, fact_names.throat));
  if (const std::string locking = fact_text(splice->particulars, fact_names.locking); !locking.empty())
    text += read_stated(locking).answer == Answer::nothing ? say(PapersPhrase::nothing_locks_it)
                                                           : ", " + locking;
  else if (holds_by_bury(*splice))
    text += say(PapersPhrase::locking_not_stated);
  return text;
}

} // namespace sheerpole
