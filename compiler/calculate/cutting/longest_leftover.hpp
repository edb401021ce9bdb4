#pragma once

#include "calculate/cutting/search.hpp"

namespace sheerpole::cutting {

/// Among packings of the same cost and number of stocks one whose longest single leftover is long: by
/// cutting pairs of stocks anew, then, where there are few patterns, by an integer program, which is exact
/// when the search lists every pattern.
Packing with_longest_leftover(const Problem& problem, const SearchResult& found, int nodes);

} // namespace sheerpole::cutting
