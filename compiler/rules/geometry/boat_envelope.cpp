#include "calculate/facts.hpp"
#include "calculate/geometry/spar_lines.hpp"
#include "model/fact_name.hpp"
#include "rules/check_table.hpp"
#include "rules/geometry/envelope.hpp"

#include <algorithm>
#include <utility>

/// Whether each point can stand where it is stated, by what else is stated of the boat: her length, her
/// beam, her sheer, her spars. A number with a slip of a digit or a sign stands out by far; these bounds
/// are wide, and ask for that only.
namespace sheerpole::boat_envelope {

Envelope::Envelope(const Rig& rig, CheckReport& report)
    : rig_(rig), report_(report), errors_(report.check() == "point-outside"), uses_(point_uses(rig)) {
  const auto& facts = rig.boat.particulars;
  overall_ = fact_length(facts, fact_names.length_overall);
  beam_ = fact_length(facts, fact_names.beam);
  sheer_ = fact_length(facts, fact_names.sheer_at_mast);
  triangle_ = fact_length(facts, fact_names.foretriangle_height);
  hoist_ = fact_length(facts, fact_names.mainsail_hoist);
  lowered_ = std::any_of(rig.spars.begin(), rig.spars.end(),
                         [](const Spar& spar) { return stands(spar) && spar.axes[2][2] < upright; });
}

void Envelope::look() {
  for (std::size_t i = 0; i < rig_.points.size(); ++i)
    look_at(i);
  for (const Spar& spar : rig_.spars)
    if (spar.sort == SparSort::bowsprit && overall_) // a gaff or a boom stands on its mast
      look_at_heel(spar);
    else if (stands(spar) && spar.sort != SparSort::topmast)
      look_at_step(spar);
}

void Envelope::judge(Seen& seen, double value, const Bound& bound, bool least, const Remark& words,
                     std::optional<Span> other, const Remark& label) {
  if (lowered_)
    return; // as the boat is rigged nothing can be held against anything
  const auto beyond = [&](double edge) { return least ? is_below(value, edge) : is_below(edge, value); };
  const Stands how = beyond(bound.outside)    ? Stands::outside
                     : beyond(bound.unlikely) ? Stands::unlikely
                                              : Stands::inside;
  seen.looked = true;
  if (how > seen.how) {
    seen.how = how;
    seen.words = words;
    seen.other = other;
    seen.label = label;
  }
}

void Envelope::tell(const Seen& seen) {
  if (!seen.looked)
    report_.not_checked(seen.name, {P::nothing_to_hold_against});
  else if (seen.how == (errors_ ? Stands::outside : Stands::unlikely)) {
    auto finding = diagnose(report_.check(), {{"point", seen.name}, {"words", say(rig_, seen.words)}});
    if (seen.point->provenance.place)
      finding = std::move(finding).at(*seen.point->provenance.place);
    if (seen.other)
      finding = std::move(finding).and_at(*seen.other, say(rig_, seen.label));
    report_.find(std::move(finding).about(seen.name));
  } else if (errors_ || seen.how == Stands::inside)
    report_.pass(seen.name, {P::inside_the_boat});
}

std::optional<Span> Envelope::place(const std::optional<Sourced<Length>>& fact) const {
  return fact ? fact->provenance.place : std::nullopt;
}

void Envelope::look_at(std::size_t index) {
  const Point& point = rig_.points[index];
  const PointUses& use = uses_[index];
  if (told_by_twin(point) || (use.begins.empty() && use.ends.empty() && use.passes.empty() &&
                              use.tip_of == nullptr && use.root_of == nullptr))
    return;
  Seen seen{&point,
            point.overridden || !point.twin || rig_[*point.twin].overridden ? point.name : point.base};
  if (use.tip_of != nullptr)
    look_at_tip(seen, use);
  else if (on_deck(index))
    look_on_deck(seen, use);
  else if (aloft(index) || (mast(point) != nullptr && use.root_of == nullptr))
    look_aloft(seen, use, aloft(index));
  if (const Spar* spar = find_spar(rig_, point.spar); spar != nullptr && use.tip_of == nullptr)
    look_on_spar(seen, *spar, use);
  tell(seen);
}

namespace {

void check_envelope(const Rig& rig, const Derived& /*derived*/, CheckReport& report) {
  Envelope(rig, report).look();
}

} // namespace

const CheckTable checks{CheckRow{.slug = "point-outside", .run = check_envelope, .acceptable = true},
                        CheckRow{.slug = "point-unlikely", .run = check_envelope}};

} // namespace sheerpole::boat_envelope
