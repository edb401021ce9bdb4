#include "calculate/bench_marks.hpp"

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

BenchMarks bench_marks(const Piece& piece, const LaidEnd& aloft, const LaidEnd& below) {
  BenchMarks result;
  const Length cut = piece.cut.known();
  const bool unknown = piece.cut.unknown;
  for (const NamedPlace& place : places(aloft, "aloft", piece.above, result.not_known))
    result.marks.push_back({place.name, {false, place.from_end}, {unknown, cut - place.from_end}});
  std::vector<NamedPlace> lower = places(below, "below", piece.below, result.not_known);
  std::reverse(lower.begin(), lower.end());
  for (const NamedPlace& place : lower)
    result.marks.push_back({place.name, {unknown, cut - place.from_end}, {false, place.from_end}});
  if (piece.missing.empty()) {
    Length hang = piece.body.known() + aloft.contraction + below.contraction;
    for (const Term& term : piece.cut.terms)
      if (term.of_standing_part)
        hang += term.amount;
    result.dry_fit = MarkPlace{unknown, hang};
  }
  return result;
}

} // namespace sheerpole
