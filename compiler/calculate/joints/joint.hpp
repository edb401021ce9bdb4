#pragma once

#include "model/end.hpp"
#include "model/remark.hpp"
#include "model/rig.hpp"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string_view>
#include <vector>

namespace sheerpole {

/// What one comparison at a joint came to. Waived is said of a finding, not here.
enum class JointResult { pass, finding, not_checked };

/// What is compared at a joint: each is the finding that it may be.
enum class JointFinding : std::uint8_t {
  ends, ///< whether the ends can be told at all; never found wanting
  ends_do_not_join,
  jaws_meet,
  pin_too_big,
  pin_loose,
  pin_too_short,
  split_pin_small,
  jaw_too_narrow,
  jaw_too_wide,
  jaw_too_shallow,
  hole_near_edge,
  hook_too_small,
  tee_too_big,
  tee_pulls_through,
  thread_differs,
  hand_differs,
  stud_engaged_short,
  stud_too_long,
  wire_size_differs,
  wire_construction_differs,
  seat_too_narrow,
  seat_too_wide,
  seat_too_small
};

/// The name of the finding: "pin-loose".
std::string_view slug_of(JointFinding finding);

/// One comparison of the two ends of a joint.
struct JointCheck {
  JointFinding finding = JointFinding::ends;
  JointResult result = JointResult::not_checked;
  Remark words;               ///< what was compared, with the amounts; what is missing when not checked
  std::optional<Length> play; ///< what one has over the other, when that is what was compared
};

/// Two things of a stack that bear on each other: two parts, or a part and the line.
struct Joint {
  StayId stay;
  std::size_t upper = 0; ///< in the stack
  std::size_t lower = 0;
  Remark name;               ///< "tang-10 to thimble-16"
  bool upper_turned = false; ///< the upper thing is used the other way round than its part states
  bool lower_turned = false;
  std::vector<JointCheck> checks;
};

/// The joints of a stay, from aloft to deck, with nothing compared yet. What is only worn (a pin, a bush, a
/// foil) lies in a joint and makes none. A part may be used either way round: each is taken the way in
/// which the fewest joints can not be made at all, of these the way in which most of the ends of the stack
/// fit each other, and as it is usually fitted where that makes no difference. The ends point into the rig.
std::vector<Joint> joints_of(const Rig& rig, StayId stay);

/// The end of the upper thing that faces down, and of the lower thing that faces up; null for the line.
const End* upper_end(const Rig& rig, const Joint& joint);
const End* lower_end(const Rig& rig, const Joint& joint);

/// Whether two ends are made for each other.
bool ends_mate(const End& a, const End& b);

/// Whether two ends are not to be joined, whatever their dimensions: two eyes, two jaws, a stud and an eye.
/// Of these two jaws alone may go together, the small one inside the large one. An
/// end that is not stated may be anything. The two halves of a thread, or a tee and its slot, join each
/// other and nothing else; a jaw takes an eye or a plate. Of what may be joined some way (a hook over the
/// pin of a jaw) it says no. Source: geometry.
bool ends_never_join(const End& a, const End& b);

} // namespace sheerpole
