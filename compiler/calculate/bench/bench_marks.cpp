#include "calculate/bench/bench_marks.hpp"

#include <algorithm>
#include <utility>

namespace sheerpole {

namespace {

struct NamedPlace {
  std::string name;
  Length from_end;
};

/// From the cut end of one side inwards.
std::vector<NamedPlace> places(const LaidEnd& end, const std::string& where, const PieceEnd& made,
                               std::vector<std::string>& not_known) {
  std::vector<NamedPlace> result;
  result.push_back({"cut end " + where, Length{}});
  if (end.inserted) {
    result.push_back({"mouth of the terminal " + where, *end.inserted});
    return result;
  }
  if (end.buried == Length{})
    return result;
  if (end.trimmed > Length{})
    result.push_back({"trim the tail " + where, end.trimmed});
  const Length throat = end.trimmed + end.buried;
  if (end.tapered)
    result.push_back({"taper begins " + where, end.trimmed + std::min(*end.tapered, end.buried)});
  result.push_back({"throat " + where + ", on the tail", throat});
  if (end.eye_allowance && end.crown_to_throat)
    result.push_back(
        {"throat " + where + ", on the standing part", throat + *end.eye_allowance + *end.crown_to_throat});
  else
    not_known.push_back("throat " + where + " on the standing part: the throat of the rope-seat of " +
                        made.part + " is not stated");
  return result;
}

} // namespace

BenchMarks bench_marks(const LengthSum& body, const LengthSum& cut, bool complete, const EndUse& upper,
                       const EndUse& lower) {
  BenchMarks result;
  const Length whole = cut.known();
  const bool unknown = cut.unknown;
  for (const NamedPlace& place : places(upper.laid, "aloft", upper.end, result.not_known))
    result.marks.push_back({place.name, {false, place.from_end}, {unknown, whole - place.from_end}});
  std::vector<NamedPlace> from_lower = places(lower.laid, "below", lower.end, result.not_known);
  std::reverse(from_lower.begin(), from_lower.end());
  for (const NamedPlace& place : from_lower)
    result.marks.push_back({place.name, {unknown, whole - place.from_end}, {false, place.from_end}});
  if (complete) {
    Length hang = body.known() + upper.laid.contraction + lower.laid.contraction;
    for (const Term& term : cut.terms)
      if (term.of_standing_part)
        hang += term.amount;
    result.dry_fit = MarkPlace{unknown, hang};
  }
  return result;
}

} // namespace sheerpole
