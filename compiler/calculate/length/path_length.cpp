#include "calculate/length/path_length.hpp"

#include "calculate/length/length_sum.hpp"

#include <cmath>

namespace sheerpole {

namespace {

Span place_of(const PathStop& from, const PathStop& to) {
  return from.place.source == to.place.source ? cover(from.place, to.place) : from.place;
}

} // namespace

Length distance(const Vector3& a, const Vector3& b) {
  return Length::metres(std::hypot((b.x - a.x).metres(), (b.y - a.y).metres(), (b.z - a.z).metres()));
}

std::optional<LengthSum> path_length(const Rig& rig, const Stay& stay) {
  if (stay.path.size() < 2)
    return std::nullopt;
  LengthSum sum;
  for (std::size_t i = 1; i < stay.path.size(); ++i) {
    const PathLeg leg{stay.path[i - 1].point, stay.path[i].point};
    const Point& from = rig[leg.from];
    const Point& to = rig[leg.to];
    Provenance provenance;
    provenance.source_class = SourceClass::computed;
    provenance.derivation = Derivation::from_points;
    provenance.place = place_of(stay.path[i - 1], stay.path[i]);
    add_assumptions(provenance.assumptions, from.provenance.assumptions);
    add_assumptions(provenance.assumptions, to.provenance.assumptions);
    sum.terms.push_back({TermKind::leg, distance(from.position, to.position), std::move(provenance), leg});
  }
  return sum;
}

} // namespace sheerpole
