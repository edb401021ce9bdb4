#pragma once

#include "results/checked_rig.hpp"

#include <functional>
#include <map>
#include <string>
#include <vector>

namespace sheerpole::service {

/// By what the list of assumptions calls a number, "length of first-thimble": the names of the pieces that
/// are a draft because of it, in the order of the stays.
using Waiting = std::map<std::string, std::vector<std::string>, std::less<>>;

/// Of every piece of a boat, so that a form can say of an assumed number what it releases.
Waiting pieces_waiting(const CheckedRig& checked);

} // namespace sheerpole::service
