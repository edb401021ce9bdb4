#pragma once

#include "model/rig.hpp"

#include <string>

namespace sheerpole {

/// What the least engagement of a thread is, in words: "one diameter", or by the rig's own limits "150 % of
/// the diameter".
std::string least_engagement_words(const Rig& rig);

} // namespace sheerpole
