#include "rules/geometry/envelope.hpp"

#include "calculate/facts.hpp"
#include "calculate/geometry/spar_lines.hpp"
#include "model/fact_name.hpp"

#include <algorithm>
#include <cmath>

namespace sheerpole::boat_envelope {

void Envelope::look_aloft(Seen& seen, const PointUses& use, bool begins) {
  const Point& point = *seen.point;
  const double z = point.position.z.metres();
  if (overall_ && begins)
    for (const Stay* stay : use.begins) {
      const Point& last = rig_[stay->path.back().point];
      if (!on_deck(stay->path.back().point.index()) || high_over_sheer(last))
        continue; // an end that stands too high is told itself
      judge(seen, (z - last.position.z.metres()) / overall_->value.metres(), drop_to_deck, true,
            {P::low_aloft,
             {Fixed{z, 3}, Words{stay->base}, Words{last.base}, Fixed{last.position.z.metres(), 3}}},
            last.provenance.place, {P::its_lower_end});
    }
  if (sheer_ && (triangle_ || hoist_)) {
    // A mainsail is set at its boom, and there is a head and a crane above it; a fractional mast goes on
    // above the forestay.
    const double by_hoist = hoist_ ? 1.15 * hoist_->value.metres() + 1.0 : 0.0;
    const double by_triangle = triangle_ ? (hoist_ ? 1.0 : 1.35) * triangle_->value.metres() : 0.0;
    const bool hoist_counts = by_hoist > by_triangle;
    const double top = sheer_->value.metres() + std::max(by_hoist, by_triangle);
    const auto& fact = hoist_counts ? hoist_ : triangle_;
    judge(seen, z / top, over_sail_plan, false,
          {hoist_counts ? P::above_hoist : P::above_triangle,
           {Fixed{z, 3}, Fixed{fact->value.metres(), 3}, Fixed{sheer_->value.metres(), 3}}},
          place(fact), {P::stated_here_too});
  } else if (overall_) {
    judge(seen, z / overall_->value.metres(), over_length_overall, false,
          {P::high_for_length, {Fixed{z, 3}, Fixed{overall_->value.metres(), 3}}}, place(overall_),
          {P::the_length_overall});
  }
}

void Envelope::look_on_spar(Seen& seen, const Spar& spar, const PointUses& use) {
  const Local at = local(spar, seen.point->position);
  const auto length = fact_length(spar.particulars, fact_names.length);
  const double along = stands(spar) ? at.along : spar.sort == SparSort::bowsprit ? at.x : -at.x;
  const Remark spar_label(P::length_of_spar);
  if (length) {
    judge(seen, along / length->value.metres(), over_spar, false,
          {P::beyond_spar, {Words{spar.name}, Fixed{along, 3}, Fixed{length->value.metres(), 3}}},
          length->provenance.place, spar_label);
    if (!stands(spar)) {
      if (!use.begins.empty() || !use.ends.empty())
        judge(seen, along / length->value.metres(), inboard_on_sprit, true,
              {P::inboard_on_spar, {Words{spar.name}, Fixed{along, 3}, Fixed{length->value.metres(), 3}}},
              length->provenance.place, spar_label);
      const double off = std::max(std::abs(at.y), std::abs(at.along));
      judge(seen, off / length->value.metres(), off_sprit, false,
            {P::off_spar, {Fixed{off, 3}, Words{spar.name}}}, spar.place, {P::the_spar});
    }
  }
  if (!stands(spar))
    return;
  const MastLine line = line_of(spar, *seen.point);
  const double height = std::max(line.height, at.along);
  if (!(height > 0.0))
    return;
  if (!use.begins.empty() || !use.ends.empty())
    judge(seen, at.along / height, above_heel, true, {P::near_heel, {Fixed{at.along, 3}, Words{spar.name}}},
          spar.place, {P::the_spar});
  const double x = at.x - line.rake * at.along;
  const double off = std::max(std::abs(x), std::abs(at.y));
  // What stays only go over, though no spreader is declared, is the tip of one.
  if (!use.passes.empty() && use.begins.empty() && use.ends.empty() && use.root_of == nullptr)
    return;
  const Bound bound{std::max(off_mast.unlikely * height, off_mast_metres),
                    std::max(off_mast.outside * height, 2.0 * off_mast_metres)};
  // Off the mast as it is stated, and on it if its numbers are counted from the waterline and not from
  // the heel.
  const Local as_boat = local(spar, {Length::metres(at.x), Length::metres(at.y), Length::metres(at.along)});
  const bool in_boat_axes = std::abs(as_boat.x) < bound.unlikely && std::abs(as_boat.y) < bound.unlikely;
  judge(seen, off, bound, false,
        {in_boat_axes ? P::off_spar_in_boat_axes : P::off_spar, {Fixed{off, 3}, Words{spar.name}}},
        spar.place, {P::the_spar});
  for (const Stay* stay : use.begins)
    look_at_face(seen, spar, *stay, at, x);
}

Envelope::MastLine Envelope::line_of(const Spar& spar, const Point& without) const {
  MastLine line;
  struct Lean {
    double height = 0.0, least = 0.0, most = 0.0;
  };
  std::vector<Lean> at_heights;
  for (std::size_t i = 0; i < rig_.points.size(); ++i) {
    const Point& point = rig_.points[i];
    if (point.spar != spar.name || &point == &without || point.base == without.base ||
        uses_[i].tip_of != nullptr)
      continue;
    const Local at = local(spar, point.position);
    line.height = std::max(line.height, at.along);
    if (at.along < 1.0)
      continue;
    // What sits at one height says it once; the mast is between its fore and its after side.
    const double lean = at.x / at.along;
    const auto here = std::find_if(at_heights.begin(), at_heights.end(), [&](const Lean& other) {
      return std::abs(other.height - at.along) < one_height_metres;
    });
    if (here == at_heights.end())
      at_heights.push_back({at.along, lean, lean});
    else
      *here = {here->height, std::min(here->least, lean), std::max(here->most, lean)};
  }
  if (at_heights.size() > 2) {
    constexpr double most = 0.15; // 8.5 degrees; points that lean more are not a mast that does
    std::vector<double> leans;
    for (const Lean& here : at_heights)
      leans.push_back((here.least + here.most) / 2.0);
    std::sort(leans.begin(), leans.end());
    const double middle = leans[leans.size() / 2];
    line.rake = std::abs(middle) <= most ? middle : 0.0;
  }
  return line;
}

void Envelope::look_at_face(Seen& seen, const Spar& spar, const Stay& stay, const Local& at, double x) {
  const PointId last = stay.path.back().point;
  if (!on_deck(last.index()) && find_spar(rig_, rig_[last].spar) == nullptr)
    return;
  const Local end = local(spar, rig_[last].position);
  const double drop = at.along - end.along;
  if (!(drop > 1.0) || !(std::abs(x) > face_metres))
    return;
  const double lead = (end.x - at.x) / drop;
  const bool other_way = lead * x < 0.0 && std::abs(lead) > face_lead;
  judge(seen, other_way ? 1.0 : 0.0, Bound{0.5, 2.0}, false,
        {x > 0.0 ? P::fore_face_leads_aft : P::aft_face_leads_forward,
         {Fixed{std::abs(x), 3}, Words{spar.name}, Words{stay.base}, Words{rig_[last].base}}},
        rig_[last].provenance.place, {P::its_lower_end});
}

} // namespace sheerpole::boat_envelope
