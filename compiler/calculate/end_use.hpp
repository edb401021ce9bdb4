#pragma once

#include "calculate/derived.hpp"

#include <optional>
#include <vector>

namespace sheerpole {

/// How the rope or wire of one end lies along the piece, from the cut end inwards, before it is made.
struct LaidEnd {
  Length trimmed;                        ///< tail to hold on to, trimmed away at the end
  Length buried;                         ///< tail that is buried, with the spare
  std::optional<Length> tapered;         ///< how much of the buried tail is tapered
  std::optional<Length> eye_allowance;   ///< rope used beyond the bearing
  std::optional<Length> crown_to_throat; ///< of the seat, when its throat is stated
  Length contraction;                    ///< not given back; of the standing part beside the throat
  std::optional<Length> inserted;        ///< wire: depth in its terminal
};

/// What one end of a piece uses beyond the body, how it is made, and what is missing to know it.
struct EndUse {
  std::vector<Term> terms;
  std::vector<MissingInput> missing;
  PieceEnd end;
  LaidEnd laid = {};
};

} // namespace sheerpole
