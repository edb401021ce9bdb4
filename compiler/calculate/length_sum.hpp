#pragma once

#include "model/provenance.hpp"
#include "units/length.hpp"

#include <string>
#include <vector>

namespace sheerpole {

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

} // namespace sheerpole
