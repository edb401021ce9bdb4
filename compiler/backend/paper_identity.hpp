#pragma once

#include "results/checked_rig.hpp"

#include <string>
#include <vector>

namespace sheerpole {

/// Whose a paper is and of which state of her rig, for its foot: "Tern, revision C, 2026-05-02, as fitted
/// 2026-04-20, rig c86b17f0". Papers with the same eight signs are of one state of the rig. What is not
/// stated is said to be so: "revision not stated"; without layers there is no word of them.
std::string identity_words(const CheckedRig& checked);

/// The same without the boat, for a foot that has no room for her name.
std::string edition_words(const CheckedRig& checked);

/// "as fitted 2026-04-20"; empty without layers.
std::string layer_words(const Edition& edition);

/// The last layer after this day that states something on which the stay rests: "as fitted 2026-05-02".
/// Empty when there is none: its lengths are those of that day. A layer without a day comes after it when
/// it is that of the boat as fitted.
std::string layer_after(const Rig& rig, const Stay& stay, const std::string& date);

/// The same of several boats, one behind the other.
std::string identity_words(const std::vector<const CheckedRig*>& boats);

} // namespace sheerpole
