#pragma once

#include "calculate/length_sum.hpp"
#include "model/rig.hpp"

#include <optional>
#include <string>
#include <vector>

namespace sheerpole {

/// A number without which a length can not be final, or can not be had at all.
struct MissingInput {
  std::string what; ///< "contraction of splice long-bury"
  std::string mend; ///< "make a test splice on this rope and state contraction"
  Span place;
};

/// How one end of a piece is made.
struct PieceEnd {
  std::string part; ///< name of the part there; empty when the line ends bare
  std::string title;
  std::string splice; ///< name of the splice; empty for wire
  std::string
      note; ///< what else to know: two ways to the eye allowance that disagree, whole links of a chain
};

/// One piece to cut: a rope or wire in one length between two ends.
struct Piece {
  std::string name; ///< `cap-shroud.port`; `backstay-upper 2 of 3`
  StayId stay;
  int number = 1; ///< of `of`, from aloft to deck
  int of = 1;
  MaterialId material;
  LengthSum body; ///< bearing to bearing
  LengthSum cut;  ///< body plus what the ends use
  PieceEnd above;
  PieceEnd below;
  std::vector<MissingInput> missing; ///< not empty: the cut is a draft
};

/// How far one adjuster can go from where it is set.
struct TakeUp {
  StayId stay;
  std::size_t item = 0; ///< in the stack
  PartId part;
  Sourced<Length> set;
  Length to_tighten; ///< set - shortest; negative when set beyond the range
  Length to_slacken; ///< longest - set; negative when set beyond the range
  std::optional<Length> travel_per_turn;
  std::optional<Length> engaged; ///< thread in the body, each stud, as set
  std::optional<Length>
      least_engagement; ///< diameters of thread by the rig's limits; else one (common practice, no source)
};

/// Which of the ways to the pin-to-pin length was taken.
enum class LengthRoute { reading, stated, path, unknown };

/// Two ways to one length, side by side.
struct RouteComparison {
  LengthRoute other = LengthRoute::path;
  Length length;     ///< by the other way
  Length difference; ///< the way taken minus the other way
  Provenance provenance;
};

/// Everything calculated for one stay.
struct DerivedStay {
  StayId stay;
  LengthRoute route = LengthRoute::unknown;
  LengthSum pin_to_pin;
  std::vector<RouteComparison> other_routes;
  LengthSum body;                ///< pin-to-pin less the hardware; all bodies of the stay together
  std::vector<Piece> pieces;     ///< from aloft to deck
  std::vector<TakeUp> adjusters; ///< from aloft to deck
};

/// One stay in one state of the rig.
struct DerivedPosition {
  std::size_t state = 0;    ///< in Rig::states
  std::size_t position = 0; ///< in its positions
  StayId stay;
  std::vector<TakeUp> adjusters; ///< as set in this state
  Length change;                 ///< how much longer the stay's hardware is than in its usual state
};

/// Everything calculated for the rig, in the order of its stays.
struct Derived {
  std::vector<DerivedStay> stays;
  std::vector<DerivedPosition> positions; ///< in the order of states and their positions
};

} // namespace sheerpole
