#pragma once

#include "backend/page/document.hpp"
#include "backend/tenths.hpp"
#include "calculate/change/rig_change.hpp"
#include "results/checked_rig.hpp"

#include <string>
#include <vector>

namespace sheerpole {

/// What differs between two rigs; no piece of the old one that is a DRAFT and on no record is taken for one
/// that hangs there.
RigChange change_of(const CheckedRig& was, const CheckedRig& is);

/// One length before and after, as documents print it.
struct LengthRow {
  std::string name; ///< "pin-to-pin", "body", "cut", "to tighten"
  std::string was;  ///< empty: there was none
  std::string is;
  std::string change; ///< "+23.7"; empty when the two cannot be compared
};

/// A stay that changes, or a pair that changes alike, ready to print.
struct StayWords {
  std::string name;             ///< "cap-shroud.port"; "cap-shroud" for a pair
  std::string title;            ///< may be empty
  std::string side;             ///< "port and starboard alike"; else empty
  std::string kind;             ///< "is new", "is gone"; empty: changed
  std::vector<std::string> why; ///< "stack: deadeye-38, lashing-260 become thimble-16"
  std::vector<LengthRow> lengths;
  std::vector<std::string> lines; ///< "the rope can be remade: 52 mm too long; ..."
  StayChange change;              ///< of the first stay
};

/// The stays of a change from the rig `was` to the rig `is`, with the lengths that the cut lists of both
/// print. Of a pair that changes alike to the last word one stands for both.
std::vector<StayWords> stay_words(const CheckedRig& was, const CheckedRig& is, const RigChange& change);

/// "toggle-12, length: 82 mm becomes 90 mm".
std::string input_words(const ChangedInput& input);

/// "cap-shroud.port: expect +19.0 mm by the points; the reading of 2026-05-02 is older than the change,
/// measure again; because cap-tang.port, z: 8400.0 mm becomes 8419.0 mm".
std::vector<std::string> outdated_words(const RigChange& change);

/// What is said where no stay is listed: that none has to be made or set otherwise, that this cannot be
/// told before those that were measured have been measured again, or that no stay rests on what was set.
std::string no_stay_words(const CheckedRig& is, const RigChange& change);

/// "order 2 thimble-16"; "2 deadeye-38 are left over".
std::vector<std::string> parts_words(const RigChange& change);

/// "hmpe-9, 2 pieces of 26.0 m together"; where one of them is a DRAFT about so much.
std::vector<std::string> order_words(const CheckedRig& is, const RigChange& change);

/// Findings that stand in one of two rigs and not in the other. One that says the same of the same thing
/// with another number is one that changed.
struct FindingsChange {
  struct Changed {
    const Diagnostic* was = nullptr;
    const Diagnostic* is = nullptr;
  };
  std::vector<Changed> changed;
  std::vector<const Diagnostic*> appeared;
  std::vector<const Diagnostic*> gone;
};
FindingsChange findings_change(const CheckedRig& was, const CheckedRig& is);

/// What the changed findings say, and what they said.
std::vector<std::string> changed_messages(const FindingsChange& findings);

/// What differs between two rigs, at the end of the document: a heading of level 3 a stay with why, lengths
/// and what becomes of its line, and its strips before and after; parts, lines to order, findings that are
/// new or gone. Says so when nothing differs.
void add_change(const CheckedRig& was, const CheckedRig& is, Document& document);

} // namespace sheerpole
