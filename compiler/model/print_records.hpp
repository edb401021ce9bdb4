#pragma once

#include "model/rig.hpp"

#include <string>

namespace sheerpole {

/// The part of print_rig() about states, records, limits, rules, waivers, expectations, the inspection log
/// and differences.
std::string print_records(const Rig& rig);

} // namespace sheerpole
