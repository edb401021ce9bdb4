#pragma once

#include "calculate/joints/joint.hpp"

#include <cstdint>
#include <optional>

namespace sheerpole {

/// How a pin plays in its hole at this joint, or in the bush that fills it, once the joint is compared;
/// null when that is not known.
const JointCheck* pin_in_hole(const Joint& joint);

/// Why the shape of a thimble cannot be held against its length.
enum class CrownUnknown : std::uint8_t {
  none,
  length_not_measured, ///< a drawing's length of a thimble need not be the way to the crown
  seat_not_stated,
  bore_not_stated
};

/// Where the crown of the eye round a thimble lies: by its length, and by its shape.
struct Crown {
  PartId part;
  Sourced<Length> length; ///< as it is stated: from the pin towards the line
  /// Beyond the pin, away from the line, by the shape: half the seat less half the play. Nothing where
  /// `unknown` says why.
  std::optional<Length> beyond = {};
  CrownUnknown unknown = CrownUnknown::none;

  /// Whether the length lies towards the line, though the shape says that the crown lies beyond the pin.
  bool on_the_wrong_side() const;
  /// By how much the stay comes out short at this end then.
  Length short_by() const { return length.value + *beyond; }
};

/// Nothing unless one side of the joint alone is a thimble with a length, which hangs by an eye on a pin
/// and has a seat for a rope. A rope goes round the far side of the pin that its thimble hangs on, so the
/// length of the thimble, counted towards the line, is negative. The joint is compared already. Source:
/// plane geometry.
std::optional<Crown> crown_at(const Rig& rig, const Stay& stay, const Joint& joint);

} // namespace sheerpole
