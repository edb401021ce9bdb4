#include "rules/geometry/envelope.hpp"

#include "calculate/facts.hpp"
#include "calculate/geometry/spar_lines.hpp"
#include "model/fact_name.hpp"

#include <algorithm>
#include <cmath>

namespace sheerpole::boat_envelope {

void Envelope::look_at_step(const Spar& spar) {
  Point heel;
  heel.name = spar.name;
  heel.position = spar.heel;
  heel.provenance.place = spar.place;
  Seen seen{&heel, spar.name};
  heights_on_deck(seen, false);
  if (seen.how != Stands::inside)
    tell(seen);
}

void Envelope::look_at_heel(const Spar& spar) {
  const auto off = from_mast(spar.heel.x.metres());
  if (!off)
    return;
  Point heel;
  heel.name = spar.name;
  heel.position = spar.heel;
  heel.provenance.place = spar.place;
  Seen seen{&heel, spar.name};
  along_boat(seen, *off, centre_from_mast, centre_from_mast);
  heights_on_deck(seen, true);
  tell(seen);
}

void Envelope::along_boat(Seen& seen, double off, const Bound& forward, const Bound& aft) {
  if (!overall_)
    return;
  const double share = off / overall_->value.metres();
  judge(seen, std::abs(share), share > 0.0 ? forward : aft, false,
        {share > 0.0 ? P::before_mast : P::behind_mast,
         {Fixed{std::abs(off), 3}, Fixed{overall_->value.metres(), 3}}},
        place(overall_), {P::the_length_overall});
}

void Envelope::heights_on_deck(Seen& seen, bool from_aloft) {
  if (!sheer_ || sheer_->value.metres() < least_sheer_metres)
    return;
  const double z = seen.point->position.z.metres();
  const double sheer = sheer_->value.metres();
  const Remark words(P::height_and_sheer, {Fixed{z, 3}, Fixed{sheer, 3}});
  judge(seen, (z - over_sheer_metres) / sheer, over_sheer, false, words, place(sheer_), {P::the_sheer});
  if (from_aloft)
    judge(seen, z / sheer, under_sheer, true, words, place(sheer_), {P::the_sheer});
}

void Envelope::look_on_deck(Seen& seen, const PointUses& use) {
  const Point& point = *seen.point;
  const double y = std::abs(point.position.y.metres());
  const bool pair = point.side != Side::centre;
  const auto off = from_mast(point.position.x.metres());
  if (off)
    along_boat(seen, *off, pair ? pair_forward : centre_from_mast, pair ? pair_aft : centre_from_mast);
  if (beam_) {
    const double half = beam_->value.metres() / 2.0;
    judge(seen, (y - 0.05) / half, over_half_beam, false,
          {P::wider_than_beam, {Fixed{y, 3}, Fixed{half, 3}}}, place(beam_), {P::the_beam});
  }
  heights_on_deck(seen, held_from_aloft(use));
  for (const Stay* stay : use.ends)
    look_at_stay(seen, *stay);
  if (!beam_ || !pair || !off || !overall_)
    return;
  const double half = beam_->value.metres() / 2.0;
  const double share = *off / overall_->value.metres();
  const bool from_sprit = std::any_of(use.ends.begin(), use.ends.end(), [&](const Stay* stay) {
    const Spar* spar = find_spar(rig_, rig_[stay->path.front().point].spar);
    return spar != nullptr && !stands(*spar);
  });
  if (share > 0.2 && !from_sprit) {
    // Twin forestays stand close together at the stem; of two hulls or three each has its own.
    if (2.0 * half > multihull_beam * overall_->value.metres())
      judge(seen, y / half, pair_on_hulls, true, {P::close_pair, {Fixed{2.0 * y, 3}, Fixed{2.0 * half, 3}}},
            place(beam_), {P::the_beam});
    return;
  }
  judge(seen, y / half,
        std::abs(share) < 0.2 && !from_sprit ? Bound{pair_amidships, pair_apart.outside} : pair_apart, true,
        {P::close_pair, {Fixed{2.0 * y, 3}, Fixed{2.0 * half, 3}}}, place(beam_), {P::the_beam});
}

void Envelope::look_at_stay(Seen& seen, const Stay& stay) {
  const Point& first = rig_[stay.path.front().point];
  const Spar* spar = find_spar(rig_, first.spar);
  if (spar == nullptr || stay.path.size() != 2)
    return;
  if (stands(*spar)) {
    const auto lead = direction_between(space_point(first.position), space_point(seen.point->position));
    if (!lead)
      return;
    const double angle = angle_between(*lead, -1.0 * spar_line(*spar).along);
    const auto hold = [&](const Bound& bound, bool least, P words) {
      judge(seen, degrees(angle), bound, least,
            {words, {Words{stay.base}, Words{spar->name}, Angle{angle}}}, first.provenance.place,
            {P::its_upper_end});
    };
    hold(along_mast_degrees, true, P::lies_along);
    hold(off_mast_degrees, false, P::leads_off);
  } else if (const auto length = fact_length(spar->particulars, fact_names.length)) {
    const double way =
        magnitude(vector_between(space_point(first.position), space_point(seen.point->position)));
    judge(seen, way / length->value.metres(), under_bowsprit, false,
          {P::long_under_sprit,
           {Words{stay.base}, Fixed{way, 3}, Words{spar->name}, Fixed{length->value.metres(), 3}}},
          length->provenance.place, {P::length_of_spar});
  }
}

} // namespace sheerpole::boat_envelope
