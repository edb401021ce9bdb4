#pragma once

#include "driver/compile.hpp"

#include <string>

namespace sheerpole {

/// Findings in the form asked for: text, lines, json or sarif.
std::string show_findings(const Compilation& compilation, const std::string& form, bool colour);

} // namespace sheerpole
