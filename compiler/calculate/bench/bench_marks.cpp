#include "calculate/bench/bench_marks.hpp"

#include "calculate/length/body.hpp"

#include <algorithm>
#include <utility>

namespace sheerpole {

namespace {

struct MarkedPlace {
  MarkKind kind;
  Length from_end;
};

/// From the cut end of one side inwards.
std::vector<MarkedPlace> places(const EndUse& use, WhichEnd where, std::vector<Remark>& not_known) {
  const LaidEnd& end = use.laid;
  std::vector<MarkedPlace> result;
  result.push_back({MarkKind::cut_end, Length{}});
  if (end.inserted) {
    result.push_back({end.is_loop ? MarkKind::crown_of_loop : MarkKind::mouth_of_terminal, *end.inserted});
    return result;
  }
  if (end.buried == Length{})
    return result;
  if (end.trimmed > Length{})
    result.push_back({MarkKind::trim_of_tail, end.trimmed});
  const Length throat = end.trimmed + end.buried;
  if (end.tapered)
    result.push_back({MarkKind::taper_begins, end.trimmed + std::min(*end.tapered, end.buried)});
  result.push_back({MarkKind::throat_on_tail, throat});
  if (end.eye_allowance && end.crown_to_throat) {
    const Length standing = throat + *end.eye_allowance + *end.crown_to_throat;
    result.push_back({MarkKind::throat_on_standing_part, standing});
    result.push_back({MarkKind::tail_comes_out, standing + end.buried});
  } else
    not_known.push_back({BenchPhrase::throat_not_stated, {where, *use.end.part}});
  return result;
}

} // namespace

BenchMarks bench_marks(const LengthSum& body, const LengthSum& cut, bool complete, const EndUse& upper,
                       const EndUse& lower) {
  BenchMarks result;
  const Length whole = cut.known();
  const bool unknown = cut.unknown;
  for (const MarkedPlace& place : places(upper, WhichEnd::upper, result.not_known))
    result.marks.push_back(
        {place.kind, WhichEnd::upper, {false, place.from_end}, {unknown, whole - place.from_end}});
  std::vector<MarkedPlace> lower_places = places(lower, WhichEnd::lower, result.not_known);
  std::reverse(lower_places.begin(), lower_places.end());
  for (const MarkedPlace& place : lower_places)
    result.marks.push_back(
        {place.kind, WhichEnd::lower, {unknown, whole - place.from_end}, {false, place.from_end}});
  if (complete) {
    Length hang = body.known() + upper.laid.contraction + lower.laid.contraction;
    for (const Term& term : cut.terms)
      if (term.of_standing_part())
        hang += term.amount;
    result.dry_fit = MarkPlace{unknown, hang};
  }
  return result;
}

CordBearings cord_bearings(const Rig& rig, const Stay& stay, std::size_t line,
                           const LengthSum& pin_to_pin) {
  CordBearings bearings;
  for (const Term& term : pin_to_pin.terms)
    (term.kind == TermKind::below_knot ? bearings.lower : bearings.upper) -= term.amount;
  for (std::size_t i = 0; i < stay.stack.size(); ++i) {
    if (i == line)
      continue;
    const StackItem& item = stay.stack[i];
    const auto taken = item.line_length ? std::optional(item.line_length->value) : taken_length(rig, item);
    if (taken)
      (i < line ? bearings.upper : bearings.lower) += *taken;
  }
  return bearings;
}

void lay_on_cord(const CordBearings& bearings, const LengthSum& cut, const EndUse& upper,
                 const EndUse& lower, BenchMarks& marks) {
  Length used_upper;
  Length used_lower;
  Length behaves;
  for (const Term& term : cut.terms) {
    if (term.is_of(WhichEnd::upper))
      used_upper += term.amount;
    else if (term.is_of(WhichEnd::lower))
      used_lower += term.amount;
    else if (term.of_standing_part())
      behaves += term.amount;
  }
  marks.cord =
      CordLayout{bearings.upper, bearings.lower, upper.laid.contraction, lower.laid.contraction, behaves};
  for (BenchMark& mark : marks.marks) {
    if (mark.end == WhichEnd::upper) {
      const Length inside = bearings.upper - used_upper + mark.from_upper.known;
      mark.on_cord = CordPlace{{false, inside}, {true, -inside}};
    } else {
      const Length inside = bearings.lower - used_lower - behaves + mark.from_lower.known;
      mark.on_cord = CordPlace{{true, -inside}, {false, inside}};
    }
  }
}

} // namespace sheerpole
