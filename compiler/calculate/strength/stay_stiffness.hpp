#pragma once

#include "calculate/derived.hpp"
#include "units/force.hpp"

#include <optional>
#include <string>
#include <vector>

namespace sheerpole {

/// EA of a stay's lines together.
struct StayStiffness {
  std::optional<Force> stiffness; ///< EA of one even line that stretches as much
  std::string not_stated;         ///< why there is none: "stiffness of hmpe-9 is not stated"
};

/// One line: its EA, as stated or modulus times metallic area. Several pieces: those of
/// axial_stiffness_in_series over their bodies, the hardware between them being rigid. Source: Hooke's law.
StayStiffness stay_stiffness(const Rig& rig, const std::vector<Piece>& pieces);

/// The bodies of all pieces together; nothing when one is not known.
std::optional<Length> length_of_lines(const std::vector<Piece>& pieces);

} // namespace sheerpole
