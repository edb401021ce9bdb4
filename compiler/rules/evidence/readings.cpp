#include "calculate/adjust/piece_history.hpp"
#include "calculate/reading/reading_length.hpp"
#include "model/fact_name.hpp"
#include "model/kind_words.hpp"
#include "rules/by_side.hpp"
#include "rules/check_table.hpp"
#include "rules/evidence/dated_facts.hpp"
#include "units/quantity_text.hpp"
#include "wording/checks/any_check_phrases.hpp"
#include "wording/checks/evidence_phrases.hpp"
#include "wording/state_words.hpp"

#include <algorithm>
#include <utility>

/// The readings that lengths rest on.
namespace sheerpole::readings {

namespace {

using Common = AnyCheckPhrase;

using P = EvidenceCheckPhrase;

const Reading* used_reading(const Rig& rig, const DerivedStay& stay) {
  if (stay.route != LengthRoute::reading || !stay.readings.taken)
    return nullptr;
  return &rig[stay.stay].readings[*stay.readings.taken];
}

/// "11640 mm by tape, 2026-05-02"; of a cord without a number what marks it.
std::string said_by(const Rig& rig, const DerivedStay& stay, std::size_t number, Length length) {
  const Reading& reading = rig[stay.stay].readings[number];
  const Words name{reading_name(reading)};
  return reading.is_mark_alone() ? say(rig, {P::x_by, {name}}) : say(rig, {P::length_by, {length, name}});
}

Diagnostic contradiction_finding(const Rig& rig, const DerivedStay& stay, const std::string& name,
                                 const OtherReading& other) {
  const std::size_t taken = *stay.readings.taken;
  const Length length = stay.pin_to_pin.known();
  Length of_other;
  for (const Term& term : reading_length(rig, rig[stay.stay], rig[stay.stay].readings[other.reading]).terms)
    of_other += term.amount;
  const Remark apart = other.apart ? Remark(P::readings_apart, {magnitude(*other.apart), other.allowed})
                                   : Remark(P::readings_not_comparable);
  const Reading& reading = rig[stay.stay].readings[other.reading];
  return diagnose("readings-contradict", {{"stay", name},
                                          {"one", said_by(rig, stay, taken, length)},
                                          {"other", said_by(rig, stay, other.reading, of_other)},
                                          {"apart", say(rig, apart)}})
      .at(rig[stay.stay].readings[taken].place, said_by(rig, stay, taken, length))
      .and_at(reading.place, said_by(rig, stay, other.reading, of_other))
      .about(name)
      .build();
}

void check_readings_contradict(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
                  if (stay.readings.others.empty())
                    return;
                  if (const OtherReading* other = stay.readings.contradiction())
                    of_stay.find(contradiction_finding(rig, stay, name, *other));
                  else
                    of_stay.pass({P::one_reading_counts,
                                  {Words{reading_name(rig[stay.stay].readings[*stay.readings.taken])}}});
                });
}

Span place_of_measurement(const Stay& stay, const DerivedStay& derived) {
  if (derived.readings.taken)
    return stay.readings[*derived.readings.taken].place;
  if (derived.measurement.by == MeasuredBy::statement)
    return stay.stated_pin_to_pin->provenance.place.value_or(stay.place);
  return stay.place;
}

bool all_on_record(const Rig& rig, const DerivedStay& stay) {
  return !stay.pieces.empty() && std::all_of(stay.pieces.begin(), stay.pieces.end(),
                                             [&](const Piece& piece) { return is_on_record(rig, piece); });
}

void check_measured_once(const Rig& rig, const Derived& derived, CheckReport& report) {
  if (rig.limits.second_measure() == SecondMeasure::off)
    return;
  look_at_stays(
      rig, derived, report, [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
        if (stay.readings.contradiction() != nullptr)
          return; // there is more to say of it
        const Reading* taken =
            stay.readings.taken ? &rig[stay.stay].readings[*stay.readings.taken] : nullptr;
        if (taken != nullptr && is_assumed(*taken)) {
          of_stay.not_checked({P::reading_is_assumed});
          return;
        }
        if (!stay.measurement.in_place() || all_on_record(rig, stay))
          return; // what is drawn was not read, and what is cut is measured no more for it
        if (stay.measurement.confirmed)
          of_stay.pass(confirmed_words(rig, stay));
        else
          of_stay.find(diagnose("measured-once", {{"stay", name}, {"how", measured_words(rig, stay)}})
                           .at(place_of_measurement(rig[stay.stay], stay))
                           .about(name));
      });
}

void check_reading_bare(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(
      rig, derived, report, [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
        const Reading* reading = used_reading(rig, stay);
        if (reading == nullptr)
          return;
        if (is_assumed(*reading)) {
          of_stay.not_checked({P::reading_is_assumed});
          return;
        }
        const bool pull = find_fact(reading->particulars, fact_names.pull) != nullptr;
        const bool temperature = find_fact(reading->particulars, fact_names.temperature) != nullptr;
        // Light has no pull.
        const bool needs_pull = reading->method != ReadingMethod::laser;
        if ((pull || !needs_pull) && temperature)
          of_stay.pass({needs_pull ? P::pull_and_temperature : P::temperature_alone});
        else
          of_stay.find(
              diagnose("reading-bare", {{"stay", name},
                                        {"method", std::string(name_of(reading->method))},
                                        {"what", pull || !needs_pull ? "temperature"
                                                 : temperature       ? "pull"
                                                                     : said(P::pull_nor_temperature)},
                                        {"not", pull || temperature || !needs_pull ? "no" : "neither"}})
                  .at(reading->place)
                  .about(name));
      });
}

void check_tape_sags(const Rig& rig, const Derived& derived, CheckReport& report) {
  const Length most = *rig.limits.length(Limit::tape_sag);
  look_at_stays(
      rig, derived, report, [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
        const Reading* reading = used_reading(rig, stay);
        if (reading == nullptr || reading->method != ReadingMethod::tape)
          return;
        const auto& terms = stay.pin_to_pin.terms;
        const auto sag = std::find_if(terms.begin(), terms.end(),
                                      [](const Term& term) { return term.kind == TermKind::tape_sag; });
        if (sag == terms.end()) {
          const bool hung = find_fact(reading->particulars, fact_names.spans) != nullptr;
          of_stay.not_checked({hung ? P::sag_not_stated : P::spans_not_stated});
          return;
        }
        const Length amount = sag->amount < Length{} ? -sag->amount : sag->amount;
        if (amount <= most)
          of_stay.pass({P::tape_sagged, {amount}});
        else
          of_stay.find(
              diagnose("tape-sags",
                       {{"stay", name}, {"amount", length_text(amount)}, {"most", length_text(most)}})
                  .at(reading->place)
                  .about(name));
      });
}

void check_reading_old(const Rig& rig, const Derived& derived, CheckReport& report) {
  const double most = *rig.limits.value(Limit::reading_age);
  const auto today = report_day(rig);
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
                  const Reading* reading = used_reading(rig, stay);
                  if (reading == nullptr)
                    return;
                  const auto day = parse_day(reading->date);
                  if (!today || !day)
                    of_stay.not_checked({today ? P::reading_day_not_stated : P::report_date_not_stated});
                  else if (older_than(*day, *today, most))
                    of_stay.find(diagnose("reading-old", {{"stay", name},
                                                          {"date", reading->date},
                                                          {"age", say(rig, age_words(*day, *today))},
                                                          {"most", say(rig, years_words(most))}})
                                     .at(reading->place)
                                     .about(name));
                  else
                    of_stay.pass({P::read_before, {Remarks{{age_words(*day, *today)}}}});
                });
}

/// Whether the words of an offset say where the whole reading is from, a sheet or a table, and not which
/// hook it is of: its lengths say the same.
bool is_of_whole_reading(const Reading& reading) {
  const auto& lengths = reading.lengths();
  return !lengths.empty() && lengths.front().provenance.note == reading.offset->provenance.note;
}

/// The first reading whose offset is of the same thing, as the words of its source say, so that of two that
/// differ the later one is told. Null when it is this one, or when nothing is said of what it is.
std::pair<const Reading*, const Stay*> earlier_with_offset(const Rig& rig, const Reading& reading) {
  const Provenance& source = reading.offset->provenance;
  if (is_of_whole_reading(reading))
    return {};
  for (const Stay& stay : rig.stays)
    for (const Reading& other : stay.readings) {
      if (&other == &reading)
        return {};
      if (other.offset && other.method == reading.method && !source.note.empty() &&
          other.offset->provenance.note == source.note &&
          other.offset->provenance.source_class == source.source_class)
        return {&other, &stay};
    }
  return {};
}

void check_offsets_differ(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(
      rig, derived, report, [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
        for (const Reading& reading : rig[stay.stay].readings) {
          if (!reading.offset)
            continue;
          const auto [other, of] = earlier_with_offset(rig, reading);
          if (other == nullptr || other->offset->value == reading.offset->value) {
            of_stay.pass({P::offset_is, {reading.offset->value}});
            continue;
          }
          of_stay.find(diagnose("offsets-differ", {{"stay", name},
                                                   {"offset", length_text(reading.offset->value)},
                                                   {"what", reading.offset->provenance.note},
                                                   {"other", length_text(other->offset->value)},
                                                   {"of", of->name}})
                           .at(reading.offset->provenance.place.value_or(reading.place))
                           .and_at(other->offset->provenance.place.value_or(other->place), of->name)
                           .about(name));
        }
      });
}

void check_runs_apart(const Rig& rig, const Derived& derived, CheckReport& report) {
  const auto limit = rig.limits.length(Limit::routes_apart);
  if (!limit)
    return;
  look_at_stays(
      rig, derived, report, [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
        for (const Reading& reading : rig[stay.stay].readings) {
          const auto& runs = reading.lengths();
          if (runs.size() < 2)
            continue;
          const auto [least, most] = std::minmax_element(
              runs.begin(), runs.end(), [](const auto& a, const auto& b) { return a.value < b.value; });
          const Length spread = most->value - least->value;
          if (!(spread > *limit + threshold::negligible)) {
            of_stay.pass({P::runs_within, {least->value, most->value}});
            continue;
          }
          const Sourced<Length>& odd = odd_run(runs);
          of_stay.find(diagnose("runs-apart", {{"stay", name},
                                               {"least", length_text(least->value)},
                                               {"most", length_text(most->value)},
                                               {"spread", length_text(spread)},
                                               {"limit", length_text(*limit)}})
                           .at(odd.provenance.place.value_or(reading.place),
                               say(rig, {runs.size() == 2 ? P::both_runs : P::this_run, {odd.value}}))
                           .about(name));
        }
      });
}

} // namespace

const CheckTable checks{CheckRow{"readings-contradict", check_readings_contradict, {Limit::routes_apart}},
                        CheckRow{"runs-apart", check_runs_apart, {Limit::routes_apart}},
                        CheckRow{"offsets-differ", check_offsets_differ},
                        CheckRow{"measured-once", check_measured_once, {Limit::routes_apart}},
                        CheckRow{"reading-bare", check_reading_bare},
                        CheckRow{"tape-sags", check_tape_sags, {Limit::tape_sag}},
                        CheckRow{"reading-old", check_reading_old, {Limit::reading_age}}};

} // namespace sheerpole::readings
