#include "calculate/geometry/plate_lead.hpp"

#include "calculate/facts.hpp"
#include "calculate/geometry/spar_line.hpp"

#include <algorithm>
#include <cmath>

namespace sheerpole {

namespace {

/// Far below any real offset of a plate, far above rounding.
constexpr double on_centreline_metres = 0.001;

} // namespace

std::optional<PartId> plate_of(const Rig& rig, const Stay& stay) {
  if (stay.stack.empty() || stay.stack.back().kind != StackItem::Kind::part ||
      rig[stay.stack.back().part].kind != "chainplate")
    return std::nullopt;
  return stay.stack.back().part;
}

double off_plate_plane(double x, double y, double z, double lean_radians, double y_metres) {
  // Square to the plane, outboard: the plate's top leans inboard, so this direction points upwards too.
  const double outboard = y_metres < 0.0 ? -1.0 : 1.0;
  const SpaceVector normal{0.0, outboard * std::cos(lean_radians), std::sin(lean_radians)};
  const SpaceVector way{x, y, z};
  const double share = std::abs(dot_product(way, normal)) / magnitude(way);
  return std::asin(std::min(share, 1.0));
}

std::optional<PlateLead> plate_lead(const Rig& rig, const Stay& stay) {
  const auto plate = plate_of(rig, stay);
  if (!plate || stay.path.size() < 2)
    return std::nullopt;
  const SpacePoint end = place_of(rig, stay.path.back().point);
  const SpacePoint before = place_of(rig, stay.path[stay.path.size() - 2].point);
  const auto pull = direction_between(end, before);
  const auto lean = fact_number(rig[*plate].particulars, "plane-lean");
  if (!pull || (!lean && std::abs(end.y.metres()) > on_centreline_metres))
    return std::nullopt;
  PlateLead result{.plate = *plate,
                   .lean_radians = lean ? lean->value : 0.0,
                   .lean_stated = lean.has_value(),
                   .off_radians = 0.0};
  result.off_radians = off_plate_plane(pull->x, pull->y, pull->z, result.lean_radians, end.y.metres());
  return result;
}

} // namespace sheerpole
