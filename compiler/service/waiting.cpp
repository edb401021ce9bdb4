#include "service/waiting.hpp"

#include <algorithm>

namespace sheerpole::service {

namespace {

void add(Waiting& waiting, const std::vector<std::string>& assumptions, const std::string& piece) {
  for (const std::string& assumption : assumptions) {
    std::vector<std::string>& pieces = waiting[assumption];
    if (std::find(pieces.begin(), pieces.end(), piece) == pieces.end())
      pieces.push_back(piece);
  }
}

} // namespace

Waiting pieces_waiting(const CheckedRig& checked) {
  Waiting waiting;
  for (const DerivedStay& stay : checked.derived().stays)
    for (const Piece& piece : stay.pieces)
      for (const LengthSum* sum : {&piece.body, &piece.cut}) {
        if (sum->unknown)
          add(waiting, sum->unknown_source.assumptions, piece.name);
        for (const Term& term : sum->terms)
          add(waiting, term.provenance.assumptions, piece.name);
      }
  return waiting;
}

} // namespace sheerpole::service
