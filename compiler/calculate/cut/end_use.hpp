#pragma once

#include "calculate/cut/line_ends.hpp"
#include "calculate/length/length_sum.hpp"
#include "model/rig.hpp"

#include <optional>
#include <string>
#include <vector>

namespace sheerpole {

/// How a wire ends in or round a part.
enum class WireEnd {
  terminal, ///< inside it
  sleeve,   ///< round a thimble and back into a pressed sleeve
  by_hand,  ///< round a dead-eye or a mast and back along itself, tucked or seized
};

constexpr WireEnd wire_end(PartKind kind) {
  return kind == PartKind::thimble                                 ? WireEnd::sleeve
         : kind == PartKind::deadeye || kind == PartKind::soft_eye ? WireEnd::by_hand
                                                                   : WireEnd::terminal;
}

/// How one end of a piece is made.
struct PieceEnd {
  std::optional<PartId> part;     ///< nothing when the line ends bare
  std::optional<SpliceId> splice; ///< nothing for wire
  /// What else to know: two ways to the eye allowance that disagree, whole links of a chain.
  std::vector<Remark> notes = {};

  bool bare() const { return !part; }
  // In the rig of which the piece is; empty when there is none.
  std::string part_name(const Rig& rig) const { return part ? rig[*part].name : std::string(); }
  std::string part_title(const Rig& rig) const { return part ? rig[*part].title : std::string(); }
  std::string splice_name(const Rig& rig) const { return splice ? rig[*splice].name : std::string(); }
  Remark boxed = {}; ///< of these what must not be missed: a test eye that its seat contradicts
  /// By the rule that the first creep gives the contraction back: by how much its splice shortens the stay
  /// until then. With the rule and no test splice it is not known.
  bool by_first_creep = false;
  std::optional<Length> shortens_until_set = {};
};

/// How the rope or wire of one end lies along the piece, from the cut end inwards, before it is made.
struct LaidEnd {
  Length trimmed;                        ///< tail to hold on to, trimmed away at the end
  Length buried;                         ///< tail that is buried, with the spare
  std::optional<Length> tapered;         ///< how much of the buried tail is tapered
  std::optional<Length> eye_allowance;   ///< rope used beyond the bearing
  std::optional<Length> crown_to_throat; ///< of the seat, when its throat is stated
  Length contraction;                    ///< not given back; of the standing part beside the throat
  std::optional<Length> inserted; ///< wire: depth in its terminal, or what its eye uses beyond the bearing
  bool is_loop = false; ///< wire: it goes round a thimble, a dead-eye or a mast and back along itself
};

/// What one end of a piece uses beyond the body, how it is made, and what is missing to know it.
struct EndUse {
  std::vector<Term> terms;
  std::vector<MissingInput> missing;
  PieceEnd end;
  std::vector<MissingInput> blocked = {}; ///< every number is there, and it may not be cut to all the same
  LaidEnd laid = {};
};

/// What a spliced end uses beyond the bearing: eye allowance, bury, spare bury, tail to trim, contraction
/// less what pre-tensioning gives back. An allowance that nothing states is missing, never zero. A bare end
/// uses nothing. Source: the sum is common practice, no source; check: 72 d of 9 mm is 648 mm.
/// `kept`: spare bury that is not stated there and comes of what is in hand.
EndUse splice_allowance(const Rig& rig, const LineMaterial& material, const LineEnd& end,
                        const std::optional<Term>& kept = std::nullopt);

/// What a wire end uses beyond the shoulder of its terminal: the depth to which it is inserted. Of an eye
/// round a thimble, a dead-eye or a mast: what a test eye used beyond its bearing, laid out less finished.
/// Missing when the part has no wire-socket end or states no depth. A bare end uses nothing. Source: the
/// depth is the maker's; that it adds to the cut is common practice, no source.
EndUse insertion(const LineEnd& end);

} // namespace sheerpole
