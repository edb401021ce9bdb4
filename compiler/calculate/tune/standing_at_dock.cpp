#include "calculate/tune/standing_at_dock.hpp"

#include "calculate/tune/tuned_rig.hpp"
#include "model/fact_name.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

Span place_of(const Rig& rig, const Remark& of) {
  if (of.arguments().empty())
    return rig.stays.empty() ? Span{} : rig.stays.front().place;
  const RemarkArgument& what = of.arguments().front();
  if (const auto* stay = std::get_if<StayId>(&what))
    return rig[*stay].place;
  if (const auto* line = std::get_if<MaterialId>(&what))
    return rig[*line].place;
  const std::string name = std::holds_alternative<Words>(what) ? std::get<Words>(what).text : "";
  for (const Spreader& spreader : rig.spreaders)
    if (spreader.name == name)
      return spreader.place;
  for (const Spar& spar : rig.spars)
    if (spar.name == name)
      return spar.place;
  for (const Stay& stay : rig.stays)
    if (stay.name == name)
      return stay.place;
  return rig.stays.empty() ? Span{} : rig.stays.front().place;
}

void add_missing(const Rig& rig, const TuneModel& model, StandingAtDock& standing) {
  for (const TuneInput& input : model.inputs) {
    if (!input.value.empty())
      continue;
    const Span place = place_of(rig, input.of);
    // Both sides are one declaration.
    const bool told = std::ranges::any_of(standing.missing, [&](const StandingAtDock::Missing& other) {
      return other.place == place && other.property == input.property;
    });
    if (!told)
      standing.missing.push_back({input.of, input.property, {}, place});
  }
  for (const Remark& words : model.lacking) {
    const Span place = place_of(rig, words);
    const bool told = std::ranges::any_of(standing.missing, [&](const StandingAtDock::Missing& other) {
      return other.place == place && other.words.subject() == words.subject() &&
             other.words.number() == words.number() && words.arguments().size() == 1;
    });
    if (!told)
      standing.missing.push_back({{}, "", words, place});
  }
}

} // namespace

bool states_tune(const Rig& rig) {
  const auto stated = [](const auto& all, FactName name) {
    return std::ranges::any_of(
        all, [&](const auto& one) { return find_fact(one.particulars, name) != nullptr; });
  };
  return stated(rig.stays, fact_names.taken_up) || stated(rig.spars, fact_names.axial_stiffness) ||
         stated(rig.spreaders, fact_names.axial_stiffness) ||
         std::ranges::any_of(rig.records, [](const Record& record) {
           return record.kind == RecordKind::tension_wish || record.kind == RecordKind::mast_wish;
         });
}

std::optional<StandingAtDock> standing_at_dock(const Rig& rig, const Derived& derived) {
  if (!states_tune(rig))
    return std::nullopt;
  const TunedRig tuned = tuned_rig(rig, derived);
  StandingAtDock standing;
  add_missing(rig, tuned.model, standing);
  standing.trouble = tuned.trouble;
  if (!tuned.stands())
    return standing;
  for (const TuneStay& stay : tuned.model.stays) {
    const statics::StayState& deck = tuned.state.stays[stay.at_deck().index()];
    StandingAtDock::Stay& made = standing.stays.emplace_back();
    made.stay = stay.stay;
    made.newtons = deck.tension_newtons;
    made.slack_mm = deck.slack_mm;
    for (const statics::StayId leg : stay.legs)
      made.most_newtons = std::max(made.most_newtons, tuned.state.stays[leg.index()].tension_newtons);
    made.break_newtons = stay.break_newtons;
  }
  if (tuned.state.softest && tuned.state.softest->node) {
    standing.softest_newtons_per_mm = tuned.state.softest->stiffness_newtons_per_mm;
    standing.softest_at = name_of_node(rig, tuned.model, *tuned.state.softest->node);
  }
  return standing;
}

} // namespace sheerpole
