#pragma once

#include "calculate/cutting/pattern_program.hpp"
#include "calculate/cutting/problem.hpp"

#include <cstdint>

namespace sheerpole::cutting {

/// Looks for a packing cheaper than `best` by taking the most used pattern of the linear program as a whole
/// stock, solving for what is left, and so on; what is left is also packed greedily each time. `detour`: 0
/// for the plain way; d > 0 takes the second choice at one of the first takes instead. Stops when the bound
/// of what is left shows that nothing better comes, or `enough` is reached. The program is left set to some
/// rest.
void dive(const Problem& problem, PatternProgram& program, int detour, RankedCost enough, Packing& best,
          std::int64_t& steps);

} // namespace sheerpole::cutting
