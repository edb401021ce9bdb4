#include "calculate/strength/pin_hole.hpp"

#include "calculate/physics/finite_value.hpp"

namespace sheerpole {

std::optional<double> edge_distance_ratio(Length centre_to_edge, Length hole_diameter) {
  if (centre_to_edge <= Length() || hole_diameter <= Length())
    return std::nullopt;
  return finite_value(centre_to_edge / hole_diameter);
}

std::optional<double> ligament_ratio(Length centre_to_edge, Length hole_diameter) {
  const auto ratio = edge_distance_ratio(centre_to_edge, hole_diameter);
  return ratio ? std::optional(*ratio - 0.5) : std::nullopt;
}

std::optional<HoleClearance> hole_clearance(Length hole_diameter, Length pin_diameter) {
  if (hole_diameter <= Length() || pin_diameter <= Length())
    return std::nullopt;
  const Length clearance = hole_diameter - pin_diameter;
  const auto of_pin = finite_value(clearance / pin_diameter);
  if (!of_pin)
    return std::nullopt;
  return HoleClearance{clearance, *of_pin};
}

} // namespace sheerpole
