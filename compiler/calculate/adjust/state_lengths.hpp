#pragma once

#include "calculate/derived.hpp"
#include "model/rig.hpp"

#include <cstddef>
#include <optional>
#include <vector>

namespace sheerpole {

/// A stay that is made off elsewhere in a state.
struct StowedStay {
  std::size_t state = 0;    ///< in Rig::states
  std::size_t position = 0; ///< in its positions
  StayId stay;
  Length needs;              ///< from its upper pin straight to where it is made off
  std::optional<Length> has; ///< pin to pin as its adjusters are set there; nothing for a length that is X

  /// What hangs loose; below nothing it does not reach.
  std::optional<Length> left() const { return has ? std::optional(*has - needs) : std::nullopt; }
};

/// What a stay does while a spar that carries one of its ends turns about its heel.
struct LoweredStay {
  std::size_t state = 0;
  StayId stay;
  Length slack;             ///< at the end of the way; below nothing it is too short by that
  Length tightest;          ///< by how much it is too short where that is most; nothing when it never is
  double tightest_at = 0.0; ///< radians from how the spar stands
  double slack_from = 0.0;  ///< radians from which on it hangs loose to the end; the whole way when never
};

/// The stays that a state makes off elsewhere, in the order of the states. Nothing for a stay without a
/// path, whose upper pin has no place, nor for one whose spar the state lowers. Source: Euclidean distance.
std::vector<StowedStay> stowed_stays(const Rig& rig, const Derived& derived);

/// What each stay does in the states that lower a spar: stays with some places of their path on it and some
/// not, as the state sets their adjusters; a stay that the state makes off elsewhere is let go. Its length
/// is that of the way as drawn. Looked at every degree. Source: rotation about the heel, in the plane of
/// the spar's own fore-and-aft and its length.
std::vector<LoweredStay> lowered_stays(const Rig& rig, const Derived& derived);

/// A place turned about the heel of its spar in the plane of the spar's own x and z, by an angle that takes
/// z to -x: a mast goes aft, what points forward goes up.
Vector3 turned_about_heel(const Vector3& place, const Spar& spar, double angle);

} // namespace sheerpole
