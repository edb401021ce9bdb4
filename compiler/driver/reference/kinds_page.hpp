#pragma once

#include <string>

namespace sheerpole {

/// What a rig file can declare and state, from the table of kinds: each kind, each end, and the word `line`
/// of a stack.
std::string kinds_page();

} // namespace sheerpole
