#include "calculate/tune/standing_at_dock.hpp"

#include "calculate/tune/spar_sections.hpp"
#include "calculate/tune/tuned_rig.hpp"
#include "model/fact_name.hpp"

#include <algorithm>
#include <utility>

namespace sheerpole {

namespace {

/// Where something is said of the rig as a whole.
Span place_of_rig(const Rig& rig) {
  return !rig.stays.empty()    ? rig.stays.front().place
         : !rig.spars.empty()  ? rig.spars.front().place
         : rig.records.empty() ? Span{}
                               : rig.records.front().place;
}

/// Null when there is none, and when it is not a station that is meant.
const Record* station_of(const Rig& rig, const Remark& of) {
  if (!of.is(TunePhrase::station))
    return nullptr;
  for (const Record& record : rig.records)
    if (record.kind == RecordKind::spar_station && record.of == std::get<Words>(of.arguments()[0]).text)
      if (const Particular* at = find_fact(record.facts, from_heel);
          at != nullptr && station_place(*at) == std::get<Words>(of.arguments()[1]).text)
        return &record;
  return nullptr;
}

Span place_of(const Rig& rig, const Remark& of) {
  if (of.arguments().empty())
    return place_of_rig(rig);
  if (const Record* station = station_of(rig, of))
    return station->place;
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
  return place_of_rig(rig);
}

/// Where the first or the last station of a spar says how far it is from the heel.
std::optional<Span> end_station(const Rig& rig, const std::string& spar, bool last) {
  std::optional<Span> result;
  double metres = 0.0;
  for (const Record& record : rig.records) {
    if (record.kind != RecordKind::spar_station || record.of != spar)
      continue;
    const Particular* at = find_fact(record.facts, from_heel);
    if (at == nullptr || !at->value.provenance.place)
      continue;
    const double here = at->value.value.si;
    if (!result || (last ? here > metres : here < metres)) {
      result = at->value.provenance.place;
      metres = here;
    }
  }
  return result;
}

StandingAtDock::Missing lacking(const Rig& rig, const Remark& words) {
  StandingAtDock::Missing missing{.of = {}, .property = "", .words = words, .place = place_of(rig, words)};
  const bool at_head = words.is(TunePhrase::no_station_at_head);
  if (at_head || words.is(TunePhrase::no_station_at_heel)) {
    missing.station = end_station(rig, std::get<Words>(words.arguments().front()).text, at_head);
    missing.station_ought_mm = at_head ? std::get<Length>(words.arguments().back()).millimetres() : 0.0;
  }
  return missing;
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
      standing.missing.push_back({.of = input.of, .property = input.property, .words = {}, .place = place});
  }
  for (const Remark& words : model.lacking) {
    StandingAtDock::Missing missing = lacking(rig, words);
    const bool told = std::ranges::any_of(standing.missing, [&](const StandingAtDock::Missing& other) {
      return other.place == missing.place && other.words.subject() == words.subject() &&
             other.words.number() == words.number() && words.arguments().size() == 1;
    });
    if (!told)
      standing.missing.push_back(std::move(missing));
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
           return record.kind == RecordKind::tension_wish || record.kind == RecordKind::mast_wish ||
                  record.kind == RecordKind::spar_station;
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
