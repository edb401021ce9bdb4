#pragma once

#include "calculate/cut/line_ends.hpp"
#include "calculate/length/length_sum.hpp"
#include "model/rig.hpp"

#include <array>
#include <optional>
#include <string>

namespace sheerpole {

struct Derived;
struct Piece;

/// What one end does with what is in hand.
struct EndInHand {
  bool takes = false; ///< its bury may be longer than stated
  Length more;        ///< by how much it is; its contraction comes on top
  /// When there is too little: how much shorter its spare bury and its tail to trim may become, and what of
  /// both is given up. The bury itself is never shortened.
  Length spare_there;
  Length tail_there;
  Length spare_given_up;
  Length tail_given_up;
  double rope_per_spare = 1.0; ///< rope that one length of bury uses: itself and its contraction
};

/// A piece that is made of rope or wire that is there already.
struct InHand {
  /// From end to end, or with `beyond` what is left over the least cut without any spare bury.
  Sourced<Length> stated;
  bool beyond = false;
  std::string stock;       ///< the record of stock that it is; may be empty
  bool incomplete = false; ///< the cut lacks an input, so nothing is worked out
  /// The cut is X, and what is in hand is stated from end to end: how much is over cannot be told. It is
  /// enough as long as X is no more than this.
  std::optional<Length> longest_x;
  Length over;     ///< over the least cut, with the spare bury that is stated; below nothing: too short
  Length kept;     ///< of it: in the splices, with its contraction
  Length cut_away; ///< of it: what no splice can take
  Length lacking;  ///< too short, even when the ends give up all that they can
  std::array<EndInHand, 2> ends; ///< by WhichEnd

  bool worked_out() const { return !incomplete && !longest_x; }
  bool too_short() const { return worked_out() && over < Length::millimetres(-0.001); }
  /// All of it goes into the piece.
  bool cut_nothing() const { return worked_out() && !too_short() && cut_away < Length::millimetres(0.001); }
  const EndInHand& at(WhichEnd end) const { return ends[end == WhichEnd::upper ? 0 : 1]; }
  EndInHand& at(WhichEnd end) { return ends[end == WhichEnd::upper ? 0 : 1]; }
};

/// What is in hand for the line at stack[line], shared out. `least` is the piece with the spare bury that
/// is stated and none other.
///
/// What is over goes into longer burys, as much at each end that states no `spare-bury` of its own, so that
/// bury + (1 + contraction) x more is used there; a contraction that pre-tensioning gives back is less. The
/// tails are not made to meet: their burys together stay within the body less the throats, where that is a
/// number. The rest is cut away. Wire keeps nothing. When there is too little, spare bury is given up
/// first, at the end that has the most, then the tail that is only held. Source: arithmetic; the method is
/// common practice, no source. Nothing when the file states nothing in hand, or the record of stock is none
/// of this line.
std::optional<InHand> in_hand(const Rig& rig, const Stay& stay, std::size_t line, const Piece& least);

/// The record of stock that a line of a stack is to be made of; null when it names none, or what it names
/// is no stock of this line.
const Record* stock_of_line(const Rig& rig, const Stay& stay, const StackItem& line);

/// The two parts of a piece past its bearings, before anything is buried: what is laid out beyond the
/// bearing aloft and beyond the one below. The piece in hand lies right when they differ by just as much.
struct Halves {
  Length upper;
  Length lower;
};
Halves halves(const Piece& piece);

/// How much is buried at one end, as the cut has it.
struct Buried {
  Length bury;
  Length spare; ///< kept in the splice, as stated or shared out
  Length total() const { return bury + spare; }
};
Buried buried(const Piece& piece, WhichEnd end);

/// How far the tail may be tapered at most, when as much of the bury as the splice leaves whole is left
/// whole; nothing when the taper is not stated or there is no spare.
std::optional<Length> longest_taper(const Rig& rig, const Piece& piece, WhichEnd end);

/// The rig with what is shared out of what is in hand written down as spare bury, and nothing in hand: a
/// trial moves a length, and the burys stay as they were marked.
Rig with_shared_bury(const Rig& rig, const Derived& derived);

} // namespace sheerpole
