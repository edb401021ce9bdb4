#include "names/resolved_tree.hpp"

#include <algorithm>
#include <tuple>

namespace sheerpole {

std::vector<NameUse> ResolvedTree::sorted_uses() const {
  std::vector<NameUse> result;
  result.reserve(uses_.size());
  for (const auto& [place, symbol] : uses_)
    result.push_back({SourceId{static_cast<std::uint32_t>(place >> 32)},
                      static_cast<std::uint32_t>(place & 0xFFFFFFFFu), symbol});
  std::sort(result.begin(), result.end(), [](const NameUse& a, const NameUse& b) {
    return std::tie(a.source, a.offset) < std::tie(b.source, b.offset);
  });
  return result;
}

} // namespace sheerpole
