#pragma once

#include "calculate/length/length_sum.hpp"
#include "model/rig.hpp"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace sheerpole {

/// What a splice that was made to be measured says of a rope.
struct TestSplice {
  Sourced<double> contraction;              ///< (before - after) / bury
  std::optional<Sourced<double>> recovered; ///< (set - after) / (before - after)
  double read_to = 0.0; ///< what the share may be off by alone because the marks are read no finer, one
                        ///< standard uncertainty
  std::string date;     ///< ISO 8601; may be empty
  std::string by;       ///< may be empty
  Span place;
};

/// All test splices of one rope that count for one splice. Their order is that of their dates and amounts,
/// whatever it is in the file.
struct TestSplices {
  std::vector<TestSplice> all;
  std::optional<Sourced<double>> contraction; ///< mean; nothing without a test
  std::optional<Sourced<double>> recovered;   ///< mean of those that state it
  /// By how much one splice differs from the next in what it takes from the stay for good: standard
  /// deviation of the shares of the bury, less what is given back where every test states it and the
  /// splice does not. Not less than
  /// the marks are read to. Nothing with fewer than two tests: the repeatability is not known.
  std::optional<double> scatter;
};

/// The test splices on this rope that name this splice or none. One that is longer after than before is an
/// error of its own, and nothing is made of what comes of it here. Source: arithmetic of the marks, mean
/// and standard deviation of repeated observations (JCGM 100:2008, 4.2); the method is common practice, no
/// source.
TestSplices test_splices(const Rig& rig, const LineMaterial& material, const Splice& splice);

/// How much a bury shortens one rope, and how that is known.
struct Contraction {
  std::optional<Sourced<double>> share;     ///< of the bury; nothing: not known
  std::optional<Sourced<double>> recovered; ///< share of it that pre-tensioning gives back
  std::size_t tests = 0;                    ///< of how many test splices the share is the mean
  /// By the named rule the first creep gives it back, so that the cut does not count it. Until then the
  /// stay is short by the share, when that is known.
  bool by_first_creep = false;
  std::vector<Remark> notes; ///< what the card must say of it
};

/// What is measured counts: the test splices go before what the splice states, unless that is measured as
/// well. The rule "the contraction equals the first creep, neither is counted" is common practice, no
/// source, and for heat-set rope only: of another rope it is not taken, nor where setting is measured or
/// stated to give something else back, both of which the notes say.
Contraction contraction_of(const Rig& rig, const LineMaterial& material, const Splice& splice);

/// What opening the weave for a bury shortens the rope by, less what pre-tensioning gives back: share x
/// bury as one term, the same over the spare bury as another when there is one, and the recovered share of
/// both as a term that takes away. `contraction.share` must be there. Source: common practice, no source;
/// the share is a property of one rope and belongs to a test splice on it.
std::vector<Term> contraction_terms(const Contraction& contraction, const Term& bury,
                                    const Term* spare_bury);

} // namespace sheerpole
