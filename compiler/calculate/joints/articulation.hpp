#pragma once

#include "calculate/cut/line_ends.hpp"
#include "model/rig.hpp"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace sheerpole {

/// What stands between the line of a wire or rod stay and the boat, at one of its ends.
struct Articulation {
  std::vector<std::size_t> items; ///< in the stack, from aloft to deck; nothing that is only worn
  /// The name of what lets the stay swing in two planes; nothing when there is none.
  std::optional<std::string> swings;
  /// The adjuster whose own toggle is at its end towards the line alone: the line swings, it does not.
  std::optional<std::string> toggled_to_line;
  std::optional<std::size_t> parallel; ///< the first part that states parallel pins
  std::optional<std::size_t> two_pins; ///< the first link whose pins are not stated
  std::optional<std::size_t> tee;      ///< the first part that hangs by a tee
};

/// Nothing unless the stay's own line is wire or rod. A stay swings in two planes where it hangs by a
/// toggle, by a part whose pins are stated to be crossed or by an adjuster with a toggle of its own at its
/// end away from the line; by what is loose (a shackle, a hook, a thimble in a loop of the wire); or by
/// what bends (a soft eye, a lashing, a dead-eye on its lanyard, a tackle, a piece of rope or chain). Not
/// by a jaw on an eye, a link with parallel pins, an insulator, a lever. A part that states parallel pins
/// does not count, whatever it is. Source: common practice, no source.
std::optional<Articulation> articulation(const Rig& rig, const Stay& stay, WhichEnd where);

} // namespace sheerpole
