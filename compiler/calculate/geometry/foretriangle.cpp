#include "calculate/geometry/foretriangle.hpp"

#include "calculate/facts.hpp"
#include "calculate/geometry/spar_line.hpp"

#include <algorithm>

namespace sheerpole {

std::optional<StayId> forestay_of(const Rig& rig) {
  std::optional<StayId> result;
  Length foremost;
  for (std::size_t i = 0; i < rig.stays.size(); ++i) {
    const Stay& stay = rig.stays[i];
    if (stay.side != Side::centre || stay.path.size() < 2 ||
        std::find(stay.duties.begin(), stay.duties.end(), "carries-sail") == stay.duties.end())
      continue;
    const SpacePoint top = place_of(rig, stay.path.front().point);
    const SpacePoint foot = place_of(rig, stay.path.back().point);
    if (!(foot.x > top.x) || !(foot.z < top.z) || (result && !(foot.x > foremost)))
      continue;
    result = StayId{static_cast<std::uint32_t>(i)};
    foremost = foot.x;
  }
  return result;
}

std::optional<Foretriangle> foretriangle(const Rig& rig) {
  const auto id = forestay_of(rig);
  if (!id)
    return std::nullopt;
  const Stay& stay = rig[*id];
  const Point& pin = rig[stay.path.front().point];
  const SpacePoint top = space_point(pin.position);
  const SpacePoint foot = place_of(rig, stay.path.back().point);
  Foretriangle result;
  result.forestay = *id;
  if (const auto sheer = fact_length(rig.boat.particulars, "sheer-at-mast"))
    result.height = top.z - sheer->value;
  if (const auto mast = mast_of(rig, pin)) {
    // Down along the mast from the pin to the height of the foot.
    const SpaceVector along = spar_line(*mast->mast).along;
    if (along.z > 0.1)
      result.base = foot.x - (top.x - Length::metres((top.z - foot.z).metres() * along.x / along.z));
  }
  return result;
}

} // namespace sheerpole
