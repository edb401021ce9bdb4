#pragma once

#include "model/limits.hpp"

#include <string_view>

namespace sheerpole {

/// Whether a check uses a threshold: whether its name stands in the row's list, which has blanks between.
bool uses(const LimitRow& row, std::string_view check);

} // namespace sheerpole
