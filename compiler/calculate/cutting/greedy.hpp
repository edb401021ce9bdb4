#pragma once

#include "calculate/cutting/problem.hpp"

#include <cstdint>
#include <span>
#include <vector>

namespace sheerpole::cutting {

/// The cheapest of a few packings of the pieces `demand` into the stocks `available`, each made by best fit
/// with the heaviest first; they differ in which kind of stock is begun when a piece fits nowhere. What
/// fits nowhere at all is skipped.
Packing greedy(const Problem& problem, std::span<const std::int64_t> demand,
               std::span<const std::int64_t> available);

} // namespace sheerpole::cutting
