#include "calculate/sag.hpp"

#include "calculate/facts.hpp"
#include "calculate/path_length.hpp"
#include "calculate/physics/hanging_line.hpp"
#include "calculate/physics/physical_values.hpp"

#include <cmath>

namespace sheerpole {

std::optional<Sag> sag(const Rig& rig, const Stay& stay) {
  const auto tension = fact_force(stay.particulars, "dock-tension");
  const auto mass = fact_number(rig[stay.material].particulars, "linear-mass");
  if (!tension || !mass || stay.path.size() < 2)
    return std::nullopt;
  Sag result;
  double slope_cosine = 1.0;
  for (std::size_t i = 1; i < stay.path.size(); ++i) {
    const Vector3& from = rig[stay.path[i - 1].point].position;
    const Vector3& to = rig[stay.path[i].point].position;
    const Length run = distance(from, to);
    if (run <= result.span)
      continue;
    result.span = run;
    slope_cosine = std::hypot((to.x - from.x).metres(), (to.y - from.y).metres()) / run.metres();
  }
  const auto depth = parabola_sag(
      result.span, mass->value * standard_gravity_metres_per_second_squared * slope_cosine, tension->value);
  if (!depth)
    return std::nullopt;
  result.depth = *depth;
  result.tension = tension->value;
  if (const auto extra = parabola_extra_length(result.span, *depth))
    result.extra_length = *extra;
  return result;
}

} // namespace sheerpole
