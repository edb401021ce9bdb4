#include "calculate/strength/weakest_link.hpp"

#include "calculate/physics/finite_value.hpp"

namespace sheerpole {

std::optional<Force> reduced_break_load(Force break_load, std::span<const double> factors) {
  if (break_load <= Force())
    return std::nullopt;
  double left = break_load.newtons();
  for (const double factor : factors) {
    if (!(factor > 0.0) || !(factor <= 1.0))
      return std::nullopt;
    left *= factor;
  }
  return finite_force(left);
}

std::optional<WeakestLink> weakest_link(std::span<const std::optional<Force>> break_loads) {
  if (break_loads.empty())
    return std::nullopt;
  WeakestLink result;
  for (std::size_t i = 0; i < break_loads.size(); ++i) {
    const std::optional<Force>& load = break_loads[i];
    if (!load) {
      result.unknown.push_back(i);
      continue;
    }
    if (*load < Force())
      return std::nullopt;
    if (!result.at_most || *load < *result.at_most) {
      result.at_most = load;
      result.weakest_known = i;
    }
  }
  if (result.unknown.empty())
    result.strength = result.at_most;
  return result;
}

} // namespace sheerpole
