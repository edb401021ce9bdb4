#pragma once

#include "calculate/geometry/near_lines.hpp"
#include "model/rig.hpp"

#include <cstddef>
#include <optional>
#include <vector>

namespace sheerpole {

/// Two stays, or a stay and a spreader, that come near each other.
struct NearMiss {
  StayId stay;             ///< of two stays the one that stands first in the file
  std::size_t other = 0;   ///< in Rig::stays, or in Rig::spreaders
  std::size_t segment = 0; ///< of the stay's path, counted from its upper end
  Length clear;            ///< from surface to surface; of a spreader, to its middle
  SpacePoint place;        ///< on the stay
};

struct NearMisses {
  std::vector<NearMiss> found; ///< for each two the nearest, in the order of the stays
  bool complete = true;        ///< false: too many lie close together to look at all
};

/// How far apart two stays may be to be told as neighbours.
inline constexpr Length neighbours_within = Length::millimetres(500.0);

/// Each two stays that come nearer than `reach` and meet at no place: no end and no tip of one is at one of
/// the other, or within `limit` of it, and their eyes do not sit one above the other. Where so many lie
/// close together that not all are looked at within the reach, those within the limit are.
NearMisses neighbouring_stays(const Rig& rig, Length reach, Length limit);

/// Each stay that comes nearer to a spreader than the limit and meets neither its tip nor its root.
NearMisses stays_on_spreaders(const Rig& rig, Length limit);

/// The straight pieces of a stay from aloft to deck.
std::vector<SpaceSegment> segments_of(const Rig& rig, const Stay& stay);

/// A spar as far as it can be run into.
struct SparBody {
  SpaceSegment axis;
  Length radius; ///< girth / (2 pi)
};
/// Nothing when its girth or its length is not stated.
std::optional<SparBody> spar_body(const Spar& spar);

/// Where a stay is nearest to running into a spar.
struct SparClearance {
  std::size_t segment = 0;
  Length clear;     ///< from the surface of the spar, inside it less than 0
  bool hit = false; ///< it is nearer than it may be
  SpacePoint place; ///< on the stay
};
/// A part of the stay that ends at the spar must not go on inside its surface, or deeper than the fitting
/// stands; any other part must keep clear by `limit`. The worst part of the stay is returned.
SparClearance spar_clearance(const Rig& rig, const Stay& stay, const Spar& spar, const SparBody& body,
                             Length limit);

} // namespace sheerpole
