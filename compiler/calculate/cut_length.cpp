#include "calculate/cut_length.hpp"

#include "calculate/bench_marks.hpp"
#include "calculate/body.hpp"

#include <algorithm>
#include <utility>

namespace sheerpole {

namespace {

void add(Piece& piece, std::vector<Term>& terms, std::vector<MissingInput>& missing) {
  for (Term& term : terms)
    piece.cut.terms.push_back(std::move(term));
  for (MissingInput& input : missing) {
    const bool said =
        std::any_of(piece.missing.begin(), piece.missing.end(), [&](const MissingInput& earlier) {
          return earlier.what == input.what && earlier.place == input.place;
        });
    if (!said)
      piece.missing.push_back(std::move(input));
  }
}

} // namespace

void add_ends(Piece& piece, EndUse aloft, EndUse below, LineStretch stretch) {
  piece.cut = {.name = "cut",
               .unknown = piece.body.unknown,
               .terms = {},
               .unknown_source = piece.body.unknown_source};
  piece.cut.terms.push_back(term_of(piece.body));
  add(piece, stretch.terms, stretch.missing);
  piece.not_counted = std::move(stretch.not_counted);
  add(piece, aloft.terms, aloft.missing);
  add(piece, below.terms, below.missing);
  piece.above = std::move(aloft.end);
  piece.below = std::move(below.end);
  piece.bench = bench_marks(piece, aloft.laid, below.laid);
}

} // namespace sheerpole
