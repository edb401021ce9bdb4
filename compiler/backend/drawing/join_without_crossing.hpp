#pragma once

#include "backend/drawing/drawing.hpp"

#include <cstddef>
#include <vector>

namespace sheerpole {

/// For each site the index of the port that it is joined to by a straight line, so that no two of the lines
/// cross. Ports all have the same x and different y. Any pair that crosses is exchanged; each exchange
/// makes the sum of the lengths smaller (triangle inequality), so this ends.
std::vector<std::size_t> join_without_crossing(const std::vector<PaperPoint>& sites,
                                               const std::vector<PaperPoint>& ports);

} // namespace sheerpole
