#include "rules/geometry/envelope.hpp"

#include "calculate/geometry/spar_lines.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace sheerpole::boat_envelope {

bool Envelope::to_deck(const PointUses& use) const {
  return std::any_of(use.passes.begin(), use.passes.end(),
                     [&](const Stay* stay) { return on_deck(stay->path.back().point.index()); });
}

Envelope::Reach Envelope::reach(const Spreader& spreader) const {
  const SpaceVector way = vector_between(place_of(rig_, spreader.root), place_of(rig_, spreader.tip));
  return {std::abs(way.y), -way.x, way.z};
}

void Envelope::look_at_tip(Seen& seen, const PointUses& use) {
  const Spreader& spreader = *use.tip_of;
  if (spreader.side == Side::centre)
    return;
  const Point& root = rig_[spreader.root];
  const Reach way = reach(spreader);
  const double y = std::abs(seen.point->position.y.metres());
  if (beam_) {
    const double half = beam_->value.metres() / 2.0;
    judge(seen, y / half, over_half_beam, false, {P::wider_than_beam, {Fixed{y, 3}, Fixed{half, 3}}},
          place(beam_), {P::the_beam});
  }
  // A jumper looks forward; nothing sweeps far aft, the strut of a diamond neither.
  if (to_deck(use) || way.aft > 0.0)
    judge(seen, std::abs(degrees(way.sweep())), way.aft > 0.0 ? swept_aft : swept_forward, false,
          {P::swept_spreader, {Angle{std::abs(way.sweep())}}}, root.provenance.place, {P::the_root});
  if (!to_deck(use))
    return;
  const double length = std::hypot(way.out, way.aft, way.up);
  judge(seen, std::abs(way.up) / std::max(way.out, 0.001), spreader_rise, false,
        {P::steep_spreader, {Fixed{std::abs(way.up), 3}, Fixed{way.out, 3}}}, root.provenance.place,
        {P::the_root});
  if (beam_)
    judge(seen, length / (beam_->value.metres() / 2.0), spreader_share, true,
          {P::short_spreader, {Fixed{length, 3}, Fixed{beam_->value.metres() / 2.0, 3}}}, place(beam_),
          {P::the_beam});
  for (const Spreader& other : rig_.spreaders) {
    if (&other == &spreader || other.side != spreader.side || !to_deck(uses_[other.tip.index()]) ||
        rig_[other.root].spar != root.spar)
      continue;
    const double apart = std::abs(degrees(reach(other).sweep() - way.sweep()));
    // Which of the two is odd is not known: the upper one is told, and the other beside it.
    if (rig_[other.tip].position.z > seen.point->position.z)
      continue;
    judge(
        seen, apart / sweeps_apart_degrees, Bound{1.0, std::numeric_limits<double>::max()}, false,
        {P::sweeps_unlike, {Angle{way.sweep()}, Words{rig_[other.tip].base}, Angle{reach(other).sweep()}}},
        rig_[other.tip].provenance.place, {P::the_other_tip});
  }
}

} // namespace sheerpole::boat_envelope
