#pragma once

#include "calculate/cut/line_ends.hpp"
#include "calculate/length/length_sum.hpp"
#include "model/rig.hpp"

#include <optional>
#include <vector>

namespace sheerpole {

/// What a splice that was made to be measured says of a rope.
struct TestSplice {
  Sourced<double> contraction;              ///< (before - after) / bury
  std::optional<Sourced<double>> recovered; ///< (set - after) / (before - after)
  Span place;
};

/// The last test splice on this rope; nothing when there is none, or when its numbers make no sense: longer
/// after than before. Source: arithmetic of the two marks; the method is common practice, no source.
std::optional<TestSplice> test_splice(const Rig& rig, const LineMaterial& material);

/// How much a bury shortens one rope, and how that is known.
struct Contraction {
  std::optional<Sourced<double>> share;     ///< of the bury; nothing: not known, or not counted
  std::optional<Sourced<double>> recovered; ///< share of it that pre-tensioning gives back
  bool left_out = false;                    ///< by the named rule: the first creep gives it back
  Remark note;                              ///< what the card must say of it; may be empty
};

/// The splice's own statement, else the test splice on this rope, else the rule that the splice names. A
/// test splice that differs from the statement by more than a tenth of it is said in the note. The rule
/// "the contraction equals the first creep, neither is counted" is common practice, no source, and for
/// heat-set rope only: of another rope it is not taken.
Contraction contraction_of(const Rig& rig, const LineMaterial& material, const Splice& splice);

/// What opening the weave for a bury shortens the rope by, less what pre-tensioning gives back: share x
/// bury as one term, the same over the spare bury as another when there is one, and the recovered share of
/// both as a term that takes away. `contraction.share` must be there. Source: common practice, no source;
/// the share is a property of one rope and belongs to a test splice on it.
std::vector<Term> contraction_terms(const Contraction& contraction, const Term& bury,
                                    const Term* spare_bury);

} // namespace sheerpole
