#pragma once

#include "model/rig.hpp"

#include <map>
#include <string>

namespace sheerpole {

/// Where each assumed value of the rig is written, by its name. A value that rests on an assumption made
/// elsewhere, as on a `let`, stands in for it when the assumption itself is nowhere in the rig.
std::map<std::string, Span> assumed_places(const Rig& rig);

} // namespace sheerpole
