#pragma once

#include <string>

namespace sheerpole {

/// docs/calculations/thresholds.md: the thresholds of the checks with the class of each number.
std::string limits_page();

} // namespace sheerpole
