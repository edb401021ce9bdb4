#pragma once

#include "calculate/derived.hpp"

#include <optional>
#include <string>
#include <vector>

namespace sheerpole {

/// One stated thing that differs. Empty `was`: it was not stated; empty `is`: it is not stated any more.
struct ChangedInput {
  std::string subject;  ///< "cap-tang.port"; the stay itself for what is stated there
  std::string property; ///< "place", "stack"
  std::string was;
  std::string is;
};

/// A derived length before and after. With `unknown` the length X lies in it.
struct ChangedLength {
  bool unknown_was = false;
  bool unknown_is = false;
  Length was;
  Length is;
  /// Both are known to the same X, so that they can be told apart by a number.
  bool comparable = true;

  Length difference() const { return is - was; }
};

/// What becomes of a piece that hangs there, when it was made as the old rig says.
enum class LineFate {
  stays,      ///< nothing about it changes
  hangs,      ///< as it is, with its adjuster set otherwise
  remade,     ///< out of itself: an end is opened and spliced anew, or cut and given a new terminal
  replaced,   ///< by a new piece: too short, or of another line
  new_piece,  ///< there was none
  taken_off,  ///< the stay is gone
  not_checked ///< a length is missing that would tell
};

/// "stays as it is", "hangs as it is", "can be remade", "is to be replaced", "is new", "comes off", "not
/// checked".
std::string_view name_of(LineFate fate);

/// One piece of rope or wire before and after.
struct PieceChange {
  std::string name;     ///< `cap-shroud.port`; `backstay-upper 2 of 3`
  std::string line_was; ///< name of the material; empty: there was no such piece
  std::string line_is;
  ChangedLength body; ///< as made before, and as it has to be
  ChangedLength cut;
  std::optional<Length> too_long; ///< of the old piece over the new body; below nothing it is too short
  LineFate fate = LineFate::not_checked;
  std::string words; ///< "52 mm too long; can be re-spliced: ..."
};

/// How far the adjusters of a stay can go, all together, from where they are set.
struct AdjusterRange {
  Length to_tighten;
  Length to_slacken;
};

/// One stay that is not what it was.
struct StayChange {
  enum class Kind { changed, added, removed };
  Kind kind = Kind::changed;
  std::string stay;
  std::string title;
  std::vector<ChangedInput> why; ///< what is stated otherwise, of all on which the stay rests
  ChangedLength pin_to_pin;
  ChangedLength body; ///< of all its pieces together
  std::vector<PieceChange> pieces;
  std::optional<AdjusterRange> range_was;
  std::optional<AdjusterRange> range_is;
};

/// How many of a part the stacks hold, or how much of a line has to be ordered.
struct PartCount {
  std::string part;
  std::string title;
  int was = 0;
  int is = 0;
};
struct LineToOrder {
  std::string line;
  std::string title;
  int pieces = 0;
  Length cut;           ///< of the pieces together, as far as it is known
  bool complete = true; ///< every one of them is known
};

/// What differs between two rigs, or between a rig as it is and as it might be.
struct RigChange {
  std::vector<StayChange> stays;          ///< in the order of the new rig, then those that are gone
  std::vector<ChangedInput> without_move; ///< stated otherwise, but moves no length
  std::vector<PartCount> parts;           ///< of which there are more or fewer, in the order of their names
  std::vector<LineToOrder> lines;         ///< for pieces that are new or replaced

  bool empty() const { return stays.empty() && without_move.empty(); }
};

/// Lengths that differ by less than this are the same: half of the last printed digit.
inline constexpr Length least_change = Length::millimetres(0.05);

/// Compares two rigs stay by stay, by name. A stay that is made and set as it was is not in it. Source:
/// sums of the two; that a spliced rope can be opened and made shorter and that a wire needs a new terminal
/// is common practice, no source.
RigChange compare_rigs(const Rig& was, const Derived& was_derived, const Rig& is,
                       const Derived& is_derived);

} // namespace sheerpole
