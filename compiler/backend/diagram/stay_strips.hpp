#pragma once

#include "backend/backend.hpp"
#include "backend/drawing/drawing.hpp"

#include <vector>

namespace sheerpole {

/// The strips of all stays, as many to a sheet as it holds; at least one sheet. A pair whose printed
/// numbers are all the same shares a strip.
std::vector<Drawing> stay_strips(const CheckedRig& checked);

} // namespace sheerpole
