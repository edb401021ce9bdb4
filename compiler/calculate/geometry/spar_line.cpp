#include "calculate/geometry/spar_line.hpp"

namespace sheerpole {

namespace {

SpaceVector axis(const Spar& spar, std::size_t which) {
  return {spar.axes[which][0], spar.axes[which][1], spar.axes[which][2]};
}

bool near(const FromSpar& place) {
  return place.off.metres() <= fitting_from_mast_metres &&
         place.along.metres() >= -fitting_from_mast_metres;
}

} // namespace

SparLine spar_line(const Spar& spar) {
  // In the frame of a spar a mast goes up, a bowsprit forward, and what reaches aft lies at negative x.
  const SpaceVector along = stands(spar)              ? axis(spar, 2)
                            : spar.sort == "bowsprit" ? axis(spar, 0)
                                                      : -1.0 * axis(spar, 0);
  return {space_point(spar.heel), along};
}

FromSpar from_spar(const SparLine& line, const SpacePoint& place) {
  const SpaceVector way = vector_between(line.heel, place);
  const double along = dot_product(way, line.along);
  return {Length::metres(along), Length::metres(magnitude(way - along * line.along))};
}

bool stands(const Spar& spar) {
  return spar.sort == "mast" || spar.sort == "mizzen" || spar.sort == "topmast";
}

const Spar* find_spar(const Rig& rig, std::string_view name) {
  for (const Spar& spar : rig.spars)
    if (spar.name == name)
      return &spar;
  return nullptr;
}

std::optional<MastOfPoint> mast_of(const Rig& rig, const Point& point) {
  const SpacePoint place = space_point(point.position);
  if (!point.spar.empty()) {
    const Spar* spar = find_spar(rig, point.spar);
    if (spar == nullptr || !stands(*spar) || !near(from_spar(spar_line(*spar), place)))
      return std::nullopt;
    return MastOfPoint{spar, OnMast::stated};
  }
  std::optional<MastOfPoint> result;
  Length least;
  for (const Spar& spar : rig.spars) {
    if (!stands(spar))
      continue;
    const FromSpar seen = from_spar(spar_line(spar), place);
    if (!near(seen) || (result && !(seen.off < least)))
      continue;
    result = MastOfPoint{&spar, OnMast::near};
    least = seen.off;
  }
  return result;
}

} // namespace sheerpole
