#pragma once

#include "model/end.hpp"
#include "model/remark.hpp"
#include "model/rig.hpp"
#include "model/side.hpp"

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
  int times =
      1; ///< of `3 x toggle` the toggle bears on the next one twice; `upper` and `lower` are one item
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

/// The pin of a joint.
struct JointPin {
  std::size_t item = 0;       ///< in the stack: the part that brings it
  const Part* part = nullptr; ///< a `pin` that lies there in its own right, else the part with the jaw,
                              ///< else the shackle
  const End* jaw = nullptr;   ///< null where no end is a jaw
  bool own = false;           ///< it is a part of the kind `pin`
  std::optional<EndDimension> size = {}; ///< nothing: not stated
};

/// The pin of a joint, from whoever brings it: a pin that lies in the joint goes before that of the jaw,
/// and that before the pin of a shackle. Nothing when the joint has none that is stated: two eyes may be
/// joined by one all the same. Points into the rig.
std::optional<JointPin> pin_of(const Rig& rig, const Joint& joint);

/// The outermost part of a stack where that is no fitting of the boat: it hangs on something that the file
/// does not state, or on what other stays end in.
struct OuterEnd {
  std::size_t item = 0; ///< in the stack
  const Part* part = nullptr;
  const End* end = nullptr; ///< that faces away from the stay; may be not stated
  std::optional<JointPin> pin = {};
};

/// Nothing for a line, a fitting of the boat and a junction, whose other side the other stays hang on.
std::optional<OuterEnd> outer_end(const Rig& rig, const Stay& stay, const std::vector<Joint>& joints,
                                  WhichEnd where);

/// How a joint holds, as far as the file says.
enum class JoinedBy : std::uint8_t {
  pin,      ///< a clevis pin, known or not
  shackle,  ///< the bow or the pin of a shackle
  thread,   ///< a stud in a socket
  hook,     ///< a hook in an eye
  tee,      ///< a tee in a slot
  lashing,  ///< the turns of a lashing, a lanyard through holes
  rope_eye, ///< the eye of a rope round its seat
  terminal, ///< a wire or a rod in its terminal
  not_stated
};
JoinedBy joined_by(const Rig& rig, const Joint& joint);

/// Whether two ends are made for each other.
bool ends_mate(const End& a, const End& b);

/// Whether two ends are not to be joined, whatever their dimensions: two eyes, two jaws, a stud and an eye.
/// Of these two jaws alone may go together, the small one inside the large one. An
/// end that is not stated may be anything. The two halves of a thread, or a tee and its slot, join each
/// other and nothing else; a jaw takes an eye or a plate. Of what may be joined some way (a hook over the
/// pin of a jaw) it says no. Source: geometry.
bool ends_never_join(const End& a, const End& b);

} // namespace sheerpole
