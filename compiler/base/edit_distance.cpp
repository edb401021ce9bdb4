#include "base/edit_distance.hpp"

#include <algorithm>

namespace sheerpole {

std::size_t edit_distance(std::string_view a, std::string_view b) {
  std::vector<std::vector<std::size_t>> cost(a.size() + 1, std::vector<std::size_t>(b.size() + 1));
  for (std::size_t i = 0; i <= a.size(); ++i)
    cost[i][0] = i;
  for (std::size_t j = 0; j <= b.size(); ++j)
    cost[0][j] = j;
  for (std::size_t i = 1; i <= a.size(); ++i) {
    for (std::size_t j = 1; j <= b.size(); ++j) {
      const std::size_t replace = cost[i - 1][j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
      cost[i][j] = std::min({cost[i - 1][j] + 1, cost[i][j - 1] + 1, replace});
      if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
        cost[i][j] = std::min(cost[i][j], cost[i - 2][j - 2] + 1);
    }
  }
  return cost[a.size()][b.size()];
}

std::optional<std::string> nearest_name(std::string_view name, const std::vector<std::string>& candidates) {
  const std::size_t limit = std::max<std::size_t>(1, name.size() / 3);
  std::optional<std::string> best;
  std::size_t best_distance = limit + 1;
  for (const std::string& candidate : candidates) {
    const std::size_t longer = std::max(name.size(), candidate.size());
    const std::size_t shorter = std::min(name.size(), candidate.size());
    if (longer - shorter >= best_distance)
      continue;
    const std::size_t distance = edit_distance(name, candidate);
    if (distance < best_distance && distance < longer) {
      best_distance = distance;
      best = candidate;
    }
  }
  return best;
}

} // namespace sheerpole
