#pragma once

#include "calculate/bench/bench_marks.hpp"
#include "calculate/cut/end_use.hpp"
#include "calculate/cut/in_hand.hpp"
#include "calculate/length/body.hpp"
#include "model/rig.hpp"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace sheerpole {

/// One piece to cut: a rope or wire in one length between two ends.
struct Piece {
  std::string name; ///< `cap-shroud.port`; `backstay-upper 2 of 3`
  StayId stay;
  int number = 1; ///< of `of`, from aloft to deck
  int of = 1;
  MaterialId material;
  LengthSum body; ///< bearing to bearing
  LengthSum cut;  ///< body plus what the ends use
  PieceEnd upper;
  PieceEnd lower;
  std::vector<MissingInput> missing; ///< not empty: the cut is a draft
  /// Not empty: a draft as well, though every number is there. Each says as a clause of its own why.
  std::vector<MissingInput> blocked = {};
  std::vector<Remark> not_counted = {}; ///< what the cut leaves out: the file says nothing of it
  BenchMarks bench = {};
  std::optional<InHand> in_hand = {}; ///< when it is made of what is there already
};

/// What the standing part of a piece gives and takes between the bench and the boat, added up.
Length behaviour(const Piece& piece);

/// Where in the stack the lines of a stay are, from aloft to deck; one piece each.
std::vector<std::size_t> lines_of(const Stay& stay);

/// The pieces to cut for a stay, from aloft to deck.
///   Rope: body plus, per end, eye allowance, bury, spare bury, tail to trim and contraction not given
///   back.
///     Check (common practice, no source): 9 mm rope, two burys of 25 1/2 in, two wraps of 6 1/4 in, 24 in
///     of screw and toggles: cut X + 39 1/2 in, body X - 24 in.
///   Wire and rod: body plus the insertion depth at each terminal.
///   Chain: its body, pin centre to pin centre. It can only be cut at a whole link, which the note of its
///     lower end says (whole_links.hpp); the rest is for the adjuster to take up.
/// What is in hand for a piece is shared out (in_hand.hpp); the cut then is all that goes into it.
/// The same input missing twice is said once.
std::vector<Piece> pieces_of(const Rig& rig, StayId stay, const LengthSum& pin_to_pin,
                             const Hardware& hardware);

} // namespace sheerpole
