#pragma once

#include "calculate/joints/articulation.hpp"

namespace sheerpole {

/// What the checks on articulation say of one end of a stay.
enum class Swing {
  no_matter,   ///< no wire there, or nothing that asks for a toggle
  lets,        ///< something lets it swing in two planes
  parallel,    ///< nothing does, and what might has parallel pins
  not_checked, ///< it hangs by a tee, of which it is not stated how far it swings
  lacks        ///< nothing does
};

/// Aloft a stay that carries a sail asks for a toggle; below, on its way to a chainplate, one that ends in
/// a screw or a terminal. A toggle with parallel pins is said by its own finding.
Swing swing_of(const Rig& rig, const Stay& stay, const Articulation& end, WhichEnd where);

} // namespace sheerpole
