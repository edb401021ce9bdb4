#include "model/kind_words.hpp"
#include "rules/adjusters/adjuster_setting.hpp"
#include "rules/by_side.hpp"
#include "rules/check_table.hpp"
#include "units/parse_quantity.hpp"
#include "units/quantity_text.hpp"
#include "wording/checks/adjuster_phrases.hpp"
#include "wording/checks/any_check_phrases.hpp"
#include "wording/length_words.hpp"

#include <algorithm>
#include <cmath>

/// Whether an adjuster is set where it can be, and with thread enough.
namespace sheerpole::adjuster_range {

namespace {

using Common = AnyCheckPhrase;

using P = AdjusterCheckPhrase;

/// The end of the range as the part's maker wrote it, when that is a quantity by itself; else in
/// millimetres.
std::string spelling_of(const Sourced<Length>& end) {
  const std::string& written = end.provenance.written;
  return !written.empty() && parse_quantity(written).ok() ? written : length_text(end.value);
}

/// The place of the setting when it was written as a length and stands there alone.
std::optional<Span> written_length(const StackItem& item) {
  const Provenance& provenance = item.set_length->provenance;
  if (item.open || !provenance.place || provenance.written.empty() ||
      provenance.place->end - provenance.place->begin != provenance.written.size())
    return std::nullopt;
  return provenance.place;
}

Diagnostic range_finding(const Rig& rig, const Stay& stay, const TakeUp& adjuster,
                         const std::string& name) {
  const Part& part = rig[adjuster.part];
  const StackItem& item = stay.stack[adjuster.item];
  const bool short_of = adjuster.to_tighten < Length{};
  const Sourced<Length>& end = short_of ? *part.shortest : *part.longest;
  const Length beyond = -(short_of ? adjuster.to_tighten : adjuster.to_slacken);
  const std::string which = short_of ? "shortest" : "longest";
  Diagnostic finding = diagnose("adjuster-out-of-range", {{"stay", name},
                                                          {"part", part.name},
                                                          {"set", length_text(adjuster.set.value)},
                                                          {"amount", length_text(beyond)},
                                                          {"beyond", short_of ? "shorter" : "longer"},
                                                          {"which", which},
                                                          {"end", length_text(end.value)}})
                           .at(adjuster.set.provenance.place.value_or(item.place),
                               say(rig, {short_of ? P::beyond_shortest : P::beyond_longest, {beyond}}))
                           .about(name)
                           .build();
  if (end.provenance.place)
    finding.others.push_back(
        {*end.provenance.place, say(rig, {short_of ? P::shortest_is : P::longest_is, {end.value}})});
  if (const auto place = written_length(item))
    finding.edit = Edit{*place, spelling_of(end), say(rig, {P::write_this, {Words{spelling_of(end)}}})};
  return finding;
}

void check_adjuster_out_of_range(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(
      rig, derived, report, [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
        for (const TakeUp& adjuster : stay.adjusters)
          if (adjuster.to_tighten < -threshold::negligible || adjuster.to_slacken < -threshold::negligible)
            of_stay.find(range_finding(rig, rig[stay.stay], adjuster, name));
          else
            of_stay.pass({P::set_within,
                          {adjuster.part, adjuster.set.value, adjuster.to_tighten, adjuster.to_slacken}});
      });
}

Diagnostic engagement_finding(const Rig& rig, const Stay& stay, const TakeUp& adjuster,
                              const std::string& name) {
  const Part& part = rig[adjuster.part];
  const StackItem& item = stay.stack[adjuster.item];
  Diagnostic finding = diagnose("thread-engagement-low",
                                {{"stay", name},
                                 {"part", part.name},
                                 {"engaged", length_text(*adjuster.engaged)},
                                 {"amount", length_text(*adjuster.least_engagement - *adjuster.engaged)},
                                 {"least", length_text(*adjuster.least_engagement)},
                                 {"bound", least_engagement_words(rig, part)},
                                 {"thread", part.screw->thread.designation}})
                           .at(adjuster.set.provenance.place.value_or(item.place),
                               say(rig, {P::thread_in_body, {*adjuster.engaged}}))
                           .about(name)
                           .build();
  if (part.engaged_at_longest->provenance.place)
    finding.others.push_back({*part.engaged_at_longest->provenance.place,
                              say(rig, {P::at_the_longest, {part.engaged_at_longest->value}})});
  return finding;
}

void check_thread_engagement_low(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
                  for (const TakeUp& adjuster : stay.adjusters) {
                    const Part& part = rig[adjuster.part];
                    if (low_thread(adjuster))
                      of_stay.find(engagement_finding(rig, rig[stay.stay], adjuster, name));
                    else if (adjuster.engaged)
                      of_stay.pass({P::of_thread, {adjuster.part, *adjuster.engaged}});
                    else if (part.kind == PartKind::turnbuckle)
                      of_stay.not_checked(
                          {part.screw ? P::engagement_not_stated : P::thread_not_stated, {adjuster.part}});
                  }
                });
}

/// By the rig's limits; else the project's own.
double reserve(const Rig& rig) {
  return rig.limits.value(Limit::adjuster_reserve).value_or(0.0);
}

Diagnostic near_end_finding(const Rig& rig, const Stay& stay, const TakeUp& adjuster,
                            const std::string& name) {
  const Part& part = rig[adjuster.part];
  const StackItem& item = stay.stack[adjuster.item];
  const bool tight = adjuster.to_tighten < adjuster.to_slacken;
  const Length left = tight ? adjuster.to_tighten : adjuster.to_slacken;
  const Length range = adjuster.to_tighten + adjuster.to_slacken;
  return diagnose("adjuster-near-end", {{"stay", name},
                                        {"part", part.name},
                                        {"amount", length_text(left)},
                                        {"way", said(tight ? P::to_tighten : P::to_slacken)},
                                        {"range", length_text(range)},
                                        {"share", percent_text(reserve(rig))}})
      .at(adjuster.set.provenance.place.value_or(item.place),
          say(rig, {Common::sides_of_adjuster, {adjuster.to_tighten, adjuster.to_slacken}}))
      .about(name)
      .build();
}

void check_adjuster_near_end(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(
      rig, derived, report, [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
        for (const TakeUp& adjuster : stay.adjusters)
          if (near_an_end(rig, adjuster))
            of_stay.find(near_end_finding(rig, rig[stay.stay], adjuster, name));
          else if (rig[adjuster.part].kind != PartKind::lever)
            of_stay.pass({P::left_both_ways, {adjuster.part, adjuster.to_tighten, adjuster.to_slacken}});
      });
}

/// The nearest hole to the length as set, counted from 1, within the row of holes.
double nearest_hole(const Part& part, Length set) {
  const double steps = std::round((set - part.shortest->value) / part.step->value);
  const double last = std::floor((part.longest->value - part.shortest->value) / part.step->value + 1e-9);
  return std::clamp(steps, 0.0, last) + 1.0;
}

std::optional<Diagnostic> hole_finding(const Rig& rig, const Stay& stay, const TakeUp& adjuster,
                                       const std::string& name) {
  const Part& part = rig[adjuster.part];
  if (!part.step)
    return std::nullopt;
  const double hole = nearest_hole(part, adjuster.set.value);
  const Length there = part.shortest->value + part.step->value * (hole - 1.0);
  const Length off = adjuster.set.value - there;
  const Length size = off < Length{} ? -off : off;
  if (size <= threshold::negligible)
    return std::nullopt;
  const std::string number = std::to_string(static_cast<int>(hole));
  return diagnose("adjuster-between-holes", {{"stay", name},
                                             {"part", part.name},
                                             {"set", length_text(adjuster.set.value)},
                                             {"hole", number},
                                             {"there", length_text(there)},
                                             {"off", length_text(size)},
                                             {"way", off < Length{} ? "longer" : "shorter"}})
      .at(adjuster.set.provenance.place.value_or(stay.stack[adjuster.item].place),
          say(rig, {P::from_hole, {size, Words{number}}}))
      .about(name)
      .build();
}

void check_adjuster_between_holes(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
                  for (const TakeUp& adjuster : stay.adjusters)
                    if (auto finding = hole_finding(rig, rig[stay.stay], adjuster, name))
                      of_stay.find(std::move(*finding));
                    else if (rig[adjuster.part].step)
                      of_stay.pass({P::in_a_hole, {adjuster.part}});
                });
}

void check_state_out_of_range(const Rig& rig, const Derived& derived, CheckReport& report) {
  for (const DerivedPosition& position : derived.positions) {
    const State& state = rig.states[position.state];
    const std::string& stay = rig[position.stay].name;
    for (const TakeUp& adjuster : position.adjusters) {
      const bool short_of = adjuster.to_tighten < -threshold::negligible;
      const bool long_of = adjuster.to_slacken < -threshold::negligible;
      if (!short_of && !long_of) {
        report.pass(stay, {P::set_in_state, {Words{state.name}, adjuster.part, adjuster.set.value}});
        continue;
      }
      const Part& part = rig[adjuster.part];
      const Sourced<Length>& end = short_of ? *part.shortest : *part.longest;
      auto builder =
          diagnose("state-out-of-range",
                   {{"state", state.name},
                    {"stay", stay},
                    {"part", part.name},
                    {"set", length_text(adjuster.set.value)},
                    {"amount", length_text(-(short_of ? adjuster.to_tighten : adjuster.to_slacken))},
                    {"which", short_of ? "shortest" : "longest"},
                    {"end", length_text(end.value)}})
              .at(adjuster.set.provenance.place.value_or(state.positions[position.position].place))
              .about(stay);
      if (end.provenance.place)
        builder = std::move(builder).and_at(*end.provenance.place, said(P::its_range));
      report.find(std::move(builder));
    }
  }
}

} // namespace

const CheckTable checks{
    CheckRow{"adjuster-out-of-range", check_adjuster_out_of_range},
    CheckRow{"thread-engagement-low",
             check_thread_engagement_low,
             {Limit::thread_engaged, Limit::thread_engaged_stainless, Limit::thread_engaged_aluminium}},
    CheckRow{"adjuster-near-end", check_adjuster_near_end, {Limit::adjuster_reserve}},
    CheckRow{"adjuster-between-holes", check_adjuster_between_holes},
    CheckRow{"state-out-of-range", check_state_out_of_range},
};

} // namespace sheerpole::adjuster_range
