#include "calculate/cut_length.hpp"

#include "calculate/body.hpp"

#include <algorithm>
#include <utility>

namespace sheerpole {

namespace {

void add_end(Piece& piece, EndUse& use) {
  for (Term& term : use.terms)
    piece.cut.terms.push_back(std::move(term));
  for (MissingInput& input : use.missing) {
    const bool said =
        std::any_of(piece.missing.begin(), piece.missing.end(), [&](const MissingInput& earlier) {
          return earlier.what == input.what && earlier.place == input.place;
        });
    if (!said)
      piece.missing.push_back(std::move(input));
  }
}

} // namespace

void add_ends(Piece& piece, EndUse aloft, EndUse below) {
  piece.cut = {.name = "cut",
               .unknown = piece.body.unknown,
               .terms = {},
               .unknown_source = piece.body.unknown_source};
  piece.cut.terms.push_back(term_of(piece.body));
  add_end(piece, aloft);
  add_end(piece, below);
  piece.above = std::move(aloft.end);
  piece.below = std::move(below.end);
}

} // namespace sheerpole
