#pragma once

#include "driver/compile.hpp"

#include <string>

namespace sheerpole {

/// What a phase handed on, as text. `phase` is one of phases(). Empty when an error kept the phase from
/// running.
std::string print_phase(const Compilation& compilation, const std::string& phase);

} // namespace sheerpole
