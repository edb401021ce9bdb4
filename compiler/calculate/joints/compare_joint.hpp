#pragma once

#include "calculate/joints/joint.hpp"

namespace sheerpole {

/// Compares the two ends of a joint, or an end with the line: every comparison that the two types of end
/// ask for, passed, found wanting or not checked because a dimension is missing. What is in the joint (a
/// bush) counts. Sources: geometry; the thresholds of model/limits.hpp.
void compare_joint(const Rig& rig, Joint& joint);

} // namespace sheerpole
