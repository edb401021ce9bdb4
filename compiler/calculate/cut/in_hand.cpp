#include "calculate/cut/in_hand.hpp"

#include "calculate/cut/contraction.hpp"
#include "calculate/cut/piece.hpp"
#include "calculate/derived.hpp"
#include "calculate/facts.hpp"
#include "model/fact_name.hpp"
#include "model/kind_words.hpp"

#include <algorithm>
#include <initializer_list>

namespace sheerpole {

namespace {

constexpr WhichEnd both_ends[] = {WhichEnd::upper, WhichEnd::lower};

std::optional<SplicedEnd> spliced_end(const Rig& rig, const Stay& stay, std::size_t line, WhichEnd where) {
  for (SplicedEnd& end : spliced_ends(rig, stay))
    if (end.line == line && end.end.where == where)
      return std::move(end);
  return std::nullopt;
}

/// Rope that one length of bury uses: itself, and what of its contraction is not given back.
std::optional<double> rope_per_bury(const Rig& rig, const SplicedEnd& end) {
  const Contraction contraction = contraction_of(rig, *end.rope, *end.splice);
  if (contraction.by_first_creep)
    return 1.0;
  if (!contraction.share)
    return std::nullopt;
  const double recovered = contraction.recovered ? contraction.recovered->value : 0.0;
  return 1.0 + contraction.share->value * (1.0 - recovered);
}

Length term_of(const Piece& piece, TermKind kind, WhichEnd end) {
  Length sum;
  for (const Term& term : piece.cut.terms)
    if (term.kind == kind && term.is_of(end))
      sum += term.amount;
  return sum;
}

/// How much longer the burys together may become before the tails meet; nothing when the length is X.
std::optional<Length> room_for_burys(const Piece& least,
                                     const std::array<std::optional<SplicedEnd>, 2>& ends) {
  if (least.body.unknown)
    return std::nullopt;
  Length room = least.body.known();
  for (const WhichEnd where : both_ends) {
    const auto& end = ends[where == WhichEnd::upper ? 0 : 1];
    if (!end)
      continue;
    if (const auto shape = eye_shape(*end))
      room -= shape->bearing_to_throat;
    room -= buried(least, where).total();
  }
  return std::max(room, Length{});
}

void share_out(const Piece& least, const std::array<std::optional<SplicedEnd>, 2>& ends, InHand& result) {
  double rope = 0.0;
  int takers = 0;
  for (const EndInHand& end : result.ends)
    if (end.takes) {
      rope += end.rope_per_spare;
      ++takers;
    }
  result.cut_away = result.over;
  if (takers == 0)
    return;
  Length more = result.over / rope;
  if (const auto room = room_for_burys(least, ends))
    more = std::min(more, *room / takers);
  for (EndInHand& end : result.ends)
    if (end.takes) {
      end.more = more;
      result.kept += more * end.rope_per_spare;
    }
  result.cut_away = std::max(result.over - result.kept, Length{});
}

/// Spare bury first, then the tails that are only held; each time at the end that has more of it.
void give_up(InHand& result) {
  Length need = -result.over;
  std::array<EndInHand*, 2> order{&result.ends[0], &result.ends[1]};
  std::stable_sort(order.begin(), order.end(),
                   [](const EndInHand* a, const EndInHand* b) { return a->spare_there > b->spare_there; });
  for (EndInHand* end : order) {
    end->spare_given_up = std::min(end->spare_there, need / end->rope_per_spare);
    need -= end->spare_given_up * end->rope_per_spare;
  }
  for (EndInHand* end : order) {
    end->tail_given_up = std::min(end->tail_there, need);
    need -= end->tail_given_up;
  }
  result.lacking = std::max(need, Length{});
}

} // namespace

const Record* stock_of_line(const Rig& rig, const Stay& stay, const StackItem& line) {
  if (line.stock.empty())
    return nullptr;
  const Record* record = find_record(rig, RecordKind::stock, line.stock);
  if (record == nullptr || record->of != rig[line.material.value_or(stay.material)].name)
    return nullptr;
  return record;
}

std::optional<InHand> in_hand(const Rig& rig, const Stay& stay, std::size_t line, const Piece& least) {
  const StackItem& item = stay.stack[line];
  InHand result;
  if (item.in_hand_over) {
    result.stated = *item.in_hand_over;
    result.beyond = true;
  } else if (item.in_hand) {
    result.stated = *item.in_hand;
  } else if (const Record* stock = stock_of_line(rig, stay, item)) {
    const auto length = fact_length(stock->facts, fact_names.length);
    if (!length)
      return std::nullopt;
    result.stated = *length;
    result.stock = stock->name;
  } else {
    return std::nullopt;
  }
  if (!least.missing.empty()) {
    result.incomplete = true;
    return result;
  }
  if (least.cut.unknown && !result.beyond) {
    result.longest_x = result.stated.value - least.cut.known();
    return result;
  }
  std::array<std::optional<SplicedEnd>, 2> ends;
  for (const WhichEnd where : both_ends) {
    auto& spliced = ends[where == WhichEnd::upper ? 0 : 1] = spliced_end(rig, stay, line, where);
    EndInHand& end = result.at(where);
    end.tail_there = term_of(least, TermKind::tail_to_trim, where);
    if (!spliced)
      continue;
    const auto rope = rope_per_bury(rig, *spliced);
    end.rope_per_spare = rope.value_or(1.0);
    end.spare_there = term_of(least, TermKind::spare_bury, where);
    end.takes = rope && spliced->is_bury() && !spliced->end.item->spare_bury;
  }
  result.over = result.beyond ? result.stated.value : result.stated.value - least.cut.known();
  if (result.beyond) // over a cut without any spare bury
    for (const EndInHand& end : result.ends)
      result.over -= end.spare_there * end.rope_per_spare;
  if (result.over < Length{})
    give_up(result);
  else
    share_out(least, ends, result);
  return result;
}

Halves halves(const Piece& piece) {
  Halves result;
  for (const Term& term : piece.cut.terms) {
    if (term.is_of(WhichEnd::upper))
      result.upper += term.amount;
    if (term.is_of(WhichEnd::lower))
      result.lower += term.amount;
  }
  return result;
}

Buried buried(const Piece& piece, WhichEnd end) {
  return {term_of(piece, TermKind::bury, end), term_of(piece, TermKind::spare_bury, end)};
}

std::optional<Length> longest_taper(const Rig& rig, const Piece& piece, WhichEnd end) {
  const Length spare = buried(piece, end).spare;
  const Stay& stay = rig[piece.stay];
  const std::vector<std::size_t> lines = lines_of(stay);
  const auto spliced = spliced_end(rig, stay, lines[static_cast<std::size_t>(piece.number - 1)], end);
  const auto tapered = spliced ? spliced->tapered() : std::nullopt;
  if (!tapered || spare <= Length{})
    return std::nullopt;
  return *tapered + spare;
}

namespace {

/// An amount that is so many times another, with what is not known of that.
Sourced<Length> share_of(const Sourced<Length>& whole, Length amount, double factor) {
  Sourced<Length> result = whole;
  result.value = amount;
  if (result.tolerance)
    result.tolerance = *result.tolerance * factor;
  for (Influence& influence : result.influences)
    influence.amount *= factor;
  return result;
}

} // namespace

Rig with_shared_bury(const Rig& rig, const Derived& derived) {
  Rig result = rig;
  for (const DerivedStay& stay : derived.stays) {
    const std::vector<std::size_t> lines = lines_of(rig[stay.stay]);
    for (std::size_t i = 0; i < stay.pieces.size(); ++i) {
      const auto& kept = stay.pieces[i].in_hand;
      if (!kept)
        continue;
      Stay& changed = result.stays[stay.stay.index()];
      StackItem& line = changed.stack[lines[i]];
      line.in_hand.reset();
      line.in_hand_over.reset();
      line.stock.clear();
      double rope = 0.0;
      for (const EndInHand& end : kept->ends)
        rope += end.takes ? end.rope_per_spare : 0.0;
      for (const WhichEnd where : both_ends)
        if (kept->at(where).more > Length{})
          if (const LineEnd end = line_end(result, changed, lines[i], where); !end.bare())
            changed.stack[static_cast<std::size_t>(end.item - changed.stack.data())].spare_bury =
                share_of(kept->stated, kept->at(where).more, 1.0 / rope);
    }
  }
  return result;
}

} // namespace sheerpole
