#pragma once

#include "model/rig.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace sheerpole {

/// One stated thing on which a stay rests.
struct StayInput {
  Remark subject;              ///< "cap-tang.port", "toggle-12", "long-bury", the stay's own name
  Remark property;             ///< "z", "length", "bury"
  std::string value;           ///< as a document prints it
  std::string setting_of = {}; ///< the part of the stack that is set like that; empty: it is no setting
};

/// A thing or a property by its name alone.
Remark input_name(std::string_view name);

/// Everything stated on which the length and the making of a stay rest, but for its stack: the places of
/// its path, its lines, its parts and how they are set, its splices, its readings, and what the stay itself
/// states. Each once, in the order of path, line, stack, readings, stay.
std::vector<StayInput> stay_inputs(const Rig& rig, const Stay& stay);

/// Whether a stay rests on what is stated of a thing: `plate-a`, both sides of it, `plate-a.port`, a part,
/// a line, the stay itself.
bool rests_on(const Rig& rig, const Stay& stay, std::string_view thing);

} // namespace sheerpole
