#include "calculate/facts.hpp"
#include "calculate/geometry/junctions.hpp"
#include "model/fact_name.hpp"
#include "model/kind_words.hpp"
#include "rules/by_side.hpp"
#include "rules/check_report.hpp"
#include "rules/check_table.hpp"
#include "rules/stack_parts.hpp"
#include "units/format_length.hpp"
#include "units/quantity_text.hpp"
#include "wording/checks/adjuster_phrases.hpp"
#include "wording/checks/any_check_phrases.hpp"
#include "wording/model_words.hpp"

#include <optional>

/// Lashings and their knots.
namespace sheerpole::lashings {

namespace {

using Common = AnyCheckPhrase;

using P = AdjusterCheckPhrase;

/// What a lashing has to hold, before the factor.
struct Held {
  Force force;
  Remark words; ///< "the load of the stay (30 kN)", "the break load of hmpe-9 (92 kN)"
};

std::optional<Held> held_by(const Rig& rig, const Stay& stay) {
  if (const auto load = load_of(rig, StayId{static_cast<std::uint32_t>(&stay - rig.stays.data())}))
    return Held{load->value, {P::load_of_stay, {load->value}}};
  const LineMaterial& line = rig[stay.material];
  if (line.break_load)
    return Held{line.break_load->value, {P::break_load_of, {stay.material, line.break_load->value}}};
  return std::nullopt;
}

Remark missing_words(const ChainLink& link) {
  Remarks lacking;
  for (const UnstatedStrength& one : link.not_stated)
    lacking.all.push_back({P::lacks_of, {Remarks{{one.property}}, Remarks{{one.of}}}});
  if (link.not_stated.size() == 1)
    return {Common::not_stated, {lacking}};
  return {P::are_not_stated, {lacking}};
}

void look_at_lashing(const Rig& rig, const Stay& stay, const std::string& name, const ChainLink& lashing,
                     const std::optional<Held>& held, double factor, StayReport& report) {
  if (!lashing.break_load) {
    report.not_checked(missing_words(lashing));
    return;
  }

  if (!held) {
    report.not_checked({P::nothing_to_hold, {Remarks{{lashing.how}}, *lashing.break_load}});
    return;
  }
  const Force wanted = factor * held->force;
  const Remark sum(P::comes_to, {Remarks{{lashing.how}}, *lashing.break_load});
  const Remark bound(P::wanted_times, {Words{format_number(factor)}, Remarks{{held->words}}, wanted});
  if (!is_below(lashing.break_load->newtons(), wanted.newtons()))
    report.pass({P::holds_what_is_wanted, {Remarks{{sum}}, Remarks{{bound}}}});
  else
    find_once(report,
              diagnose("lashing-weak", {{"stay", name}, {"sum", say(rig, sum)}, {"bound", say(rig, bound)}})
                  .at(stay.stack[lashing.item].place, force_text(*lashing.break_load))
                  .about(name));
}

void check_lashing_weak(const Rig& rig, const Derived& derived, CheckReport& report) {
  const auto factor = rig.limits.value(Limit::lashing_strength);
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& derived_stay, const std::string& name, StayReport& of_stay) {
                  const Stay& stay = rig[derived_stay.stay];
                  for (const ChainLink& link : derived_stay.chain.links)
                    if (link.kind != LinkKind::lashing)
                      continue;
                    else if (!factor)
                      of_stay.not_checked({Common::switched_off, {Words{"lashing-strength"}}});
                    else
                      look_at_lashing(rig, stay, name, link, held_by(rig, stay), *factor, of_stay);
                });
}

void check_knot_factor_high(const Rig& rig, const Derived& derived, CheckReport& report) {
  const double most = rig.limits.value(Limit::knot_factor).value_or(1.0);
  look_at_stays(
      rig, derived, report,
      [&](const DerivedStay& derived_stay, const std::string& name, StayReport& of_stay) {
        const Stay& stay = rig[derived_stay.stay];
        for (const StackPart& one : parts_of(rig, stay)) {
          if (one.part->kind != PartKind::lashing)
            continue;
          const auto factor = fact_number(one.part->particulars, fact_names.knot_factor);
          if (!factor) {
            of_stay.not_checked({Common::of_not_stated, {Words{"knot-factor"}, Words{one.part->name}}});
          } else if (!is_below(most, factor->value)) {
            of_stay.pass({P::in_the_knot, {Words{one.part->name}, Share{factor->value}}});
          } else {
            auto finding = diagnose("knot-factor-high", {{"stay", name},
                                                         {"part", one.part->name},
                                                         {"factor", percent_text(factor->value)},
                                                         {"most", percent_text(most)}})
                               .at(stay.stack[one.item].place, said(Common::this_one))
                               .about(name);
            if (factor->provenance.place)
              finding = std::move(finding).and_at(*factor->provenance.place, said(Common::stated_here));
            of_stay.find(std::move(finding));
          }
        }
      });
}

/// The part that a lanyard is rove through on one side of it; null where the line or nothing is there.
const Part* rove_through(const Rig& rig, const DerivedStay& stay, std::size_t lashing, bool below) {
  for (const Joint& joint : stay.joints)
    if ((below ? joint.upper : joint.lower) == lashing && joint.upper != joint.lower) {
      const StackItem& other = rig[stay.stay].stack[below ? joint.lower : joint.upper];
      return other.kind == StackItem::Kind::part ? &rig[other.part] : nullptr;
    }
  return nullptr;
}

/// A dead-eye has one to answer it. A lanyard that goes straight to a plate of the boat has mostly lost the
/// lower one on the way into the file.
void check_lanyard_without_holes(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& derived_stay, const std::string& name, StayReport& of_stay) {
                  const Stay& stay = rig[derived_stay.stay];
                  for (const StackPart& one : parts_of(rig, stay)) {
                    if (one.part->kind != PartKind::lashing)
                      continue;
                    const Part* above = rove_through(rig, derived_stay, one.item, false);
                    const Part* below = rove_through(rig, derived_stay, one.item, true);
                    if (above == nullptr || below == nullptr ||
                        (above->kind != PartKind::deadeye && below->kind != PartKind::deadeye))
                      continue;
                    const Part& eye = above->kind == PartKind::deadeye ? *above : *below;
                    const Part& other = above->kind == PartKind::deadeye ? *below : *above;
                    const bool holes =
                        other.upper.type == EndType::holes || other.lower.type == EndType::holes;
                    if (other.role != Part::Role::boat_fitting || holes)
                      of_stay.pass({P::rove_between, {Words{eye.name}, Words{other.name}}});
                    else
                      of_stay.find(diagnose("lanyard-without-holes", {{"stay", name},
                                                                      {"lanyard", one.part->name},
                                                                      {"eye", eye.name},
                                                                      {"part", other.name}})
                                       .at(stay.stack[one.item].place, said(Common::this_one))
                                       .about(name));
                  }
                });
}

} // namespace

const CheckTable checks{
    CheckRow{"lashing-weak", check_lashing_weak, {Limit::lashing_strength, Limit::lashing_legs}},
    CheckRow{"knot-factor-high", check_knot_factor_high, {Limit::knot_factor}},
    CheckRow{"lanyard-without-holes", check_lanyard_without_holes}};

} // namespace sheerpole::lashings
