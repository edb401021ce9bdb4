#pragma once

#include "calculate/derived.hpp"

#include <string>

namespace sheerpole {

/// Every calculated length as the sum of its terms, stay by stay, in millimetres with two decimals. For
/// people who look into the compiler; documents are made by back ends.
std::string print_derived(const Rig& rig, const Derived& derived);

} // namespace sheerpole
