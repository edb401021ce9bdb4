#pragma once

#include "calculate/cutting/pattern_program.hpp"
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

/// Looks for a packing cheaper than `best` by taking the most used pattern of the linear program as a whole
/// stock, solving for what is left, and so on; what is left is also packed greedily each time. `detour`: 0
/// for the plain way; d > 0 takes the second choice at one of the first takes instead. Stops when the bound
/// of what is left shows that nothing better comes, or `enough` is reached. The program is left set to some
/// rest.
void dive(const Problem& problem, PatternProgram& program, int detour, RankedCost enough, Packing& best,
          std::int64_t& steps);

} // namespace sheerpole::cutting
