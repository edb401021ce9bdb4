#include "calculate/geometry/held_directions.hpp"

#include "calculate/facts.hpp"
#include "calculate/geometry/spar_line.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

constexpr double leans = 0.01;

/// A stay that begins on a mast and leads away from it.
struct StayOnMast {
  const Stay* stay = nullptr;
  double height_metres = 0.0;
  SpaceVector pull; ///< of length 1
};

std::vector<std::vector<StayOnMast>> stays_by_spar(const Rig& rig) {
  std::vector<std::vector<StayOnMast>> result(rig.spars.size());
  for (const Stay& stay : rig.stays) {
    if (stay.path.size() < 2)
      continue;
    const PointId upper = stay.path.front().point;
    const PointId lower = stay.path.back().point;
    const auto above = mast_of(rig, rig[upper]);
    const auto below = mast_of(rig, rig[lower]);
    // Its lowest part is what it pulls by on its mast and the spreaders of that together.
    const auto pull =
        direction_between(place_of(rig, stay.path[stay.path.size() - 2].point), place_of(rig, lower));
    if (!pull || (above && below && above->mast == below->mast))
      continue;
    const auto add = [&](const Spar* mast, PointId end, SpaceVector way) {
      const auto spar = static_cast<std::size_t>(mast - rig.spars.data());
      const double height = from_spar(spar_line(*mast), place_of(rig, end)).along.metres();
      result[spar].push_back({&stay, height, way});
    };
    if (above)
      add(above->mast, upper, *pull);
    if (below)
      add(below->mast, lower, -1.0 * *pull);
  }
  return result;
}

void add_once(std::vector<std::string>& names, const std::string& name) {
  if (std::find(names.begin(), names.end(), name) == names.end())
    names.push_back(name);
}

} // namespace

std::vector<HeldDirections> held_directions(const Rig& rig) {
  std::vector<HeldDirections> result;
  const auto by_spar = stays_by_spar(rig);
  for (std::size_t i = 0; i < rig.spars.size(); ++i) {
    if (rig.spars[i].sort != "mast" || by_spar[i].empty())
      continue;
    HeldDirections held;
    held.spar = i;
    held.stays = by_spar[i].size();
    double height = 0.0;
    for (const StayOnMast& on : by_spar[i])
      height = std::max(height, on.height_metres);
    if (const auto length = fact_length(rig.spars[i].particulars, "length"))
      height = length->value.metres();
    held.half_height_metres = height / 2.0;
    for (const StayOnMast& on : by_spar[i]) {
      if (on.height_metres < held.half_height_metres)
        continue;
      const std::array<bool, 4> ways{on.pull.x > leans, on.pull.x < -leans,
                                     on.pull.y<-leans, on.pull.y> leans};
      for (std::size_t way = 0; way < ways.size(); ++way)
        if (ways[way])
          add_once(held.by_direction[way], on.stay->base);
    }
    result.push_back(std::move(held));
  }
  return result;
}

} // namespace sheerpole
