#include "base/edit_distance.hpp"

#include <algorithm>

namespace sheerpole {

std::size_t edit_distance(std::string_view a, std::string_view b) {
  // The last three rows of the table of costs are enough.
  std::vector<std::size_t> row(b.size() + 1);
  std::vector<std::size_t> above(b.size() + 1);
  std::vector<std::size_t> two_above(b.size() + 1);
  for (std::size_t j = 0; j <= b.size(); ++j)
    row[j] = j;
  for (std::size_t i = 1; i <= a.size(); ++i) {
    two_above.swap(above);
    above.swap(row);
    row[0] = i;
    for (std::size_t j = 1; j <= b.size(); ++j) {
      const std::size_t replace = above[j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
      row[j] = std::min({above[j] + 1, row[j - 1] + 1, replace});
      if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
        row[j] = std::min(row[j], two_above[j - 2] + 1);
    }
  }
  return row[b.size()];
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

std::string did_you_mean(std::string_view name, const std::vector<std::string>& candidates) {
  const auto near = nearest_name(name, candidates);
  return near ? "; did you mean `" + *near + "`?" : std::string();
}

} // namespace sheerpole
