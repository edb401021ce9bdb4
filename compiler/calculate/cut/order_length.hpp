#pragma once

#include "calculate/cut/piece.hpp"
#include "calculate/length/length_sum.hpp"
#include "model/rig.hpp"

#include <cstdint>
#include <optional>

namespace sheerpole {

struct DerivedStay;

/// Where a length comes from that is good enough to order by, and that nothing is cut to.
enum class EstimateBy : std::uint8_t {
  nothing,
  statement, ///< `estimate` of the stay
  path,      ///< the points of its path
  stated     ///< its stated pin-to-pin length, which the cord outranks
};

/// How much is ordered for one piece.
struct OrderLength {
  bool unknown = false; ///< the cut is X and `plus`
  Length plus;          ///< the whole cut when it is known
  EstimateBy by = EstimateBy::nothing;
  Length x; ///< of an unknown one: what X is taken to be

  /// Nothing when the cut is X and nobody says about how long.
  std::optional<Length> whole() const {
    if (unknown && by == EstimateBy::nothing)
      return std::nullopt;
    return unknown ? x + plus : plus;
  }
};

/// The cut of a piece as it is ordered. X is what the cord gives, so an estimate of the pin-to-pin length
/// has taken from it what the reading states off it. Source: arithmetic.
OrderLength order_length(const Rig& rig, const DerivedStay& stay, const Piece& piece);

/// What the greedier of the two ends uses of the cut: so much more is carried where one may be made twice.
Length greedier_end(const Piece& piece);

/// Rope for one test splice: the longest bury that this rope is to have, once for the tail and once for the
/// part that it is buried in, the eye that goes with it, and half a metre to hold and to measure by.
/// Nothing when no end of this rope is buried, or a test splice of it is on record. Source: common
/// practice, no source.
std::optional<Length> rope_for_test_splice(const Rig& rig, MaterialId rope);

/// Whether a piece is made of what is there already, so that nothing is ordered or planned for it.
bool made_of_what_is_there(const Piece& piece);

} // namespace sheerpole
