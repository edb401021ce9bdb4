#include "rules/geometry/envelope.hpp"

#include "calculate/geometry/spar_lines.hpp"

#include <algorithm>
#include <cmath>

namespace sheerpole::boat_envelope {

Local local(const Spar& spar, const Vector3& place) {
  const SpaceVector way = vector_between(space_point(spar.heel), space_point(place));
  const auto on = [&](std::size_t axis) {
    return dot_product(way, {spar.axes[axis][0], spar.axes[axis][1], spar.axes[axis][2]});
  };
  return {on(0), on(1), on(2)};
}

bool Envelope::told_by_twin(const Point& point) const {
  return point.side == Side::port && point.twin && !point.overridden && !rig_[*point.twin].overridden;
}

const Spar* Envelope::mast(const Point& point) const {
  const Spar* spar = find_spar(rig_, point.spar);
  return spar != nullptr && stands(*spar) ? spar : nullptr;
}

bool Envelope::aloft(std::size_t index) const {
  const Point& point = rig_.points[index];
  const PointUses& use = uses_[index];
  return use.tip_of == nullptr && use.ends.empty() && !use.begins.empty() &&
         (point.spar.empty() || mast(point) != nullptr) &&
         std::none_of(use.begins.begin(), use.begins.end(),
                      [&](const Stay* stay) { return ends_in_plate(rig_, *stay, WhichEnd::upper); });
}

bool Envelope::on_deck(std::size_t index) const {
  const PointUses& use = uses_[index];
  return rig_.points[index].spar.empty() && !use.ends.empty() && use.begins.empty() &&
         use.tip_of == nullptr && use.root_of == nullptr &&
         (!mast_of(rig_, rig_.points[index]) || low_over_sheer(rig_.points[index]));
}

bool Envelope::held_from_aloft(const PointUses& use) const {
  return std::any_of(use.ends.begin(), use.ends.end(), [&](const Stay* stay) {
    const PointId before = stay->path[stay->path.size() - 2].point;
    if (stay->path.size() > 2)
      return uses_[before.index()].tip_of != nullptr && uses_[before.index()].tip_of->side != Side::centre;
    const Spar* spar = find_spar(rig_, rig_[before].spar);
    return uses_[before.index()].tip_of == nullptr && (spar == nullptr || stands(*spar));
  });
}

std::optional<double> Envelope::from_mast(double x) const {
  std::optional<double> nearest;
  const auto consider = [&](double mast_x) {
    if (!nearest || std::abs(x - mast_x) < std::abs(*nearest))
      nearest = x - mast_x;
  };
  for (const Spar& spar : rig_.spars)
    if (stands(spar))
      consider(spar.heel.x.metres());
  return nearest;
}

bool Envelope::high_over_sheer(const Point& point) const {
  return sheer_ && sheer_->value.metres() >= least_sheer_metres &&
         is_below(over_sheer.outside,
                  (point.position.z.metres() - over_sheer_metres) / sheer_->value.metres());
}

bool Envelope::low_over_sheer(const Point& point) const {
  return sheer_ && sheer_->value.metres() >= least_sheer_metres && !high_over_sheer(point);
}

} // namespace sheerpole::boat_envelope
