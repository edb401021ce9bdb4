#pragma once

#include "calculate/cutting/plan_cutting.hpp"
#include "calculate/cutting/problem.hpp"

#include <cstdint>
#include <optional>
#include <vector>

namespace sheerpole::cutting {

struct SearchResult {
  Packing packing;
  std::int64_t lower_cost = 0; ///< mm; no packing costs less
  bool cost_proven = false;
  bool too_large = false; ///< the search was not begun
  /// Patterns of which equally good packings can be made; every one that can stand in such a packing when
  /// `all_patterns`.
  std::vector<Pattern> patterns;
  bool all_patterns = false;
};

/// The cheapest packing, fewest stocks among equals; proven where the limits allow. start: a packing that
/// is known.
SearchResult search(const Problem& problem, const CuttingLimits& limits,
                    const std::optional<Packing>& start = std::nullopt);

/// Among packings of the same cost and number of stocks one whose longest single leftover is long: by
/// cutting pairs of stocks anew, then, where there are few patterns, by an integer program, which is exact
/// when the search lists every pattern.
Packing with_longest_leftover(const Problem& problem, const SearchResult& found, int nodes);

} // namespace sheerpole::cutting
