#include "rules/geometry/point_uses.hpp"

namespace sheerpole {

std::vector<PointUses> point_uses(const Rig& rig) {
  std::vector<PointUses> uses(rig.points.size());
  for (const Stay& stay : rig.stays) {
    if (stay.path.size() < 2)
      continue;
    uses[stay.path.front().point.index()].begins.push_back(&stay);
    uses[stay.path.back().point.index()].ends.push_back(&stay);
    for (std::size_t i = 1; i + 1 < stay.path.size(); ++i)
      uses[stay.path[i].point.index()].passes.push_back(&stay);
  }
  for (const Spreader& spreader : rig.spreaders) {
    uses[spreader.root.index()].root_of = &spreader;
    uses[spreader.tip.index()].tip_of = &spreader;
  }
  return uses;
}

} // namespace sheerpole
