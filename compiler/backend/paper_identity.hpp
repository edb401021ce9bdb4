#pragma once

#include "results/checked_rig.hpp"

#include <string>
#include <vector>

namespace sheerpole {

/// Whose a paper is and of which state of her rig, for its foot: "Tern, revision C, 2026-05-02, rig
/// c86b17f0". Papers with the same eight signs are of one state of the rig. What is not stated is said to be
/// so: "revision not stated".
std::string identity_words(const CheckedRig& checked);

/// The same without the boat, for a foot that has no room for her name.
std::string edition_words(const CheckedRig& checked);

/// The same of several boats, one behind the other.
std::string identity_words(const std::vector<const CheckedRig*>& boats);

} // namespace sheerpole
