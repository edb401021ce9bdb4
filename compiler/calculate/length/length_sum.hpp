#pragma once

#include "model/line_material.hpp"
#include "model/provenance.hpp"
#include "model/splice.hpp"
#include "units/length.hpp"

#include <string>
#include <vector>

namespace sheerpole {

/// A length without its sign.
constexpr Length magnitude(Length length) {
  return length < Length{} ? -length : length;
}

/// One named part of a length. A term that takes away has a negative amount.
struct Term {
  std::string name; ///< "bury aloft", "turnbuckle-58, 50 % open"
  Length amount;
  std::string how; ///< how the amount came about: "72 d x 9 mm"; may be empty
  Provenance provenance;
  /// A length that is marked off on the line and only lies there: a bury, a tail. What it is off by moves
  /// no bearing.
  bool marked_off = false;
  bool of_standing_part = false; ///< what the line does along its whole length, not what an end uses
};

/// A derived length: a sum of named terms, never a bare number. With `unknown`, the length X that exists
/// only as a mark on a cord is one more term.
struct LengthSum {
  std::string name; ///< "pin-to-pin", "body", "cut"
  bool unknown = false;
  std::vector<Term> terms;
  Provenance unknown_source; ///< with `unknown`: where X exists; the note names the mark on the cord

  /// Sum of the known terms: the whole length, or what is to be added to X.
  Length known() const {
    Length sum;
    for (const Term& term : terms)
      sum += term.amount;
    return sum;
  }
};

/// A number without which a length can not be final, or can not be had at all.
struct MissingInput {
  std::string what; ///< "contraction of splice long-bury"
  std::string mend; ///< "make a test splice on this rope and state contraction"
  Span place;
};

/// Adds the names in `more` that are not there yet, at the end and in their order.
void add_assumptions(std::vector<std::string>& assumptions, const std::vector<std::string>& more);

/// Where a number is from that was made of several: their common source class, or computed when they
/// differ; the place of the first that has one; every assumption of any of them. `parts` must not be empty.
Provenance combine(const std::vector<const Provenance*>& parts, std::string note);

/// The value of a sum: "11381.73 mm"; with an unknown length "X", "X + 1003.3 mm", "X - 609.6 mm".
std::string sum_text(const LengthSum& sum);

/// A whole sum as one term of another. Its amount is what is known of the sum.
Term term_of(const LengthSum& sum);

/// A measure in diameters becomes a length at the rope at hand: 72 d of 9 mm is 648 mm, and `how` says so.
/// The source stays that of the measure; the diameter adds its assumptions.
Term rope_measure_term(std::string name, const Sourced<RopeMeasure>& measure, const LineMaterial& material);

} // namespace sheerpole
