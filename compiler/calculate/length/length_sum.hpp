#pragma once

#include "model/line_material.hpp"
#include "model/provenance.hpp"
#include "model/remark.hpp"
#include "model/splice.hpp"
#include "units/length.hpp"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace sheerpole {

/// A length without its sign.
constexpr Length magnitude(Length length) {
  return length < Length{} ? -length : length;
}

/// What a term of a length is. Its words are made in wording/, with what it is of.
enum class TermKind : std::uint8_t {
  // Of a pin-to-pin length.
  runs, ///< the mean of what was read; of Runs
  tape_standard,
  tape_temperature,
  tape_pull,
  tape_sag,
  hook_offset,
  cord_offset, ///< the same of a cord: from its upper end to the pin
  hoist_offset,
  old_stretch, ///< of the old stay that was measured
  knot,        ///< what the knot of a cord is taken to be off by, in trials of the uncertainty
  below_knot,  ///< from the knot of a cord to the bearing at the deck
  pins_as_stated,
  leg, ///< from one point of the path to the next; of PathLeg
  // Of a body.
  pin_to_pin, ///< the whole sum
  part,       ///< of TakenPart
  setting,    ///< an adjuster as it is set; of TakenPart
  line_as_stated,
  other_line, ///< another line of the stack with a length of its own; of LineOfStack
  // Of a cut.
  body,            ///< the whole sum
  stretch,         ///< from bench to dock
  stretch_spliced, ///< of that what the splices do not take part in
  bedding,         ///< first lasting stretch to come
  eye_allowance,   ///< this and what follows: of WhichEnd
  bury,
  spare_bury,
  tail_to_trim,
  contraction,
  contraction_of_spare,
  contraction_given_back,
  inserted,
  rounding ///< of the rows as printed; only where a sum is to come to a printed number
};

/// How many runs a mean is made of.
struct Runs {
  std::size_t count = 1;
};
struct PathLeg {
  PointId from;
  PointId to;
};
/// So many of one part; of an adjuster how far it is open, when that is what is stated.
struct TakenPart {
  PartId part;
  int count = 1;
  std::optional<double> open = {};
};
struct LineOfStack {
  int number = 1; ///< from aloft
  int of = 1;
};
using TermSubject = std::variant<std::monostate, Runs, PathLeg, TakenPart, LineOfStack, WhichEnd>;

/// One part of a length. A term that takes away has a negative amount.
struct Term {
  TermKind kind = TermKind::pins_as_stated;
  Length amount;
  Provenance provenance;
  TermSubject of = {};
  Remark how = {}; ///< how the amount came about: "72 d x 9 mm"; may be empty

  /// A length that is marked off on the line and only lies there: a bury, a tail. What it is off by moves
  /// no bearing.
  bool marked_off() const {
    return kind == TermKind::bury || kind == TermKind::spare_bury || kind == TermKind::tail_to_trim;
  }
  /// What the line does along its whole length, not what an end uses.
  bool of_standing_part() const {
    return kind == TermKind::stretch || kind == TermKind::stretch_spliced || kind == TermKind::bedding;
  }
  /// What a splice draws in as it is buried, and what of that is given back.
  bool of_contraction() const {
    return kind == TermKind::contraction || kind == TermKind::contraction_of_spare ||
           kind == TermKind::contraction_given_back;
  }
  /// Whether this end uses it.
  bool is_of(WhichEnd end) const {
    const WhichEnd* which = std::get_if<WhichEnd>(&of);
    return which != nullptr && *which == end;
  }
};

/// Which length a sum is.
enum class SumKind : std::uint8_t { pin_to_pin, body, cut };

/// A derived length: a sum of terms that say what they are, never a bare number. With `unknown`, the length
/// X that exists only as a mark on a cord is one more term.
struct LengthSum {
  SumKind kind = SumKind::pin_to_pin;
  bool unknown = false;
  std::vector<Term> terms;
  Provenance unknown_source; ///< with `unknown`: where X exists; its derivation names the mark on the cord

  /// Sum of the known terms: the whole length, or what is to be added to X.
  Length known() const {
    Length sum;
    for (const Term& term : terms)
      sum += term.amount;
    return sum;
  }
  /// Its first term when that stands for a whole sum of this kind.
  bool begins_with(TermKind whole) const { return !terms.empty() && terms.front().kind == whole; }
};

/// What is said about lengths, their parts and what they lack.
enum class LengthPhrase : std::uint16_t {
  x,
  x_plus,
  x_less,
  diameters,
  times,
  setting_missing,
  setting_mend,
  length_missing,
  length_mend
};
constexpr PhraseSubject subject_of(LengthPhrase) {
  return PhraseSubject::length;
}

/// A number without which a length cannot be final, or cannot be had at all.
struct MissingInput {
  Remark what; ///< "contraction of splice long-bury"
  Remark mend; ///< "make a test splice on this rope and state contraction"
  Span place;
  bool takes_off = false; ///< it would make the cut shorter: left out, the piece comes out too long
};

/// Adds the names in `more` that are not there yet, at the end and in their order.
void add_assumptions(std::vector<std::string>& assumptions, const std::vector<std::string>& more);

/// Where a number is from that was made of several: their common source class, or computed when they
/// differ; the place of the first that has one; every assumption of any of them. `parts` must not be empty.
Provenance combine(const std::vector<const Provenance*>& parts, Remark derivation = {});

/// Of a sum with an unknown length: "X", "X + 1003.3 mm", "X - 609.6 mm". Of a known one nothing.
Remark with_unknown(const LengthSum& sum);

/// Where a sum is from: with several terms they are combined, and it is told as its first is, of X where
/// that exists.
Provenance provenance_of(const LengthSum& sum);

/// A whole sum as one term of another. Its amount is what is known of the sum.
Term term_of(const LengthSum& sum);

/// A measure in diameters becomes a length at the rope at hand: 72 d of 9 mm is 648 mm, and `how` says so.
/// The source stays that of the measure; the diameter adds its assumptions.
Term rope_measure_term(TermKind kind, WhichEnd end, const Sourced<RopeMeasure>& measure,
                       const LineMaterial& material);

} // namespace sheerpole
