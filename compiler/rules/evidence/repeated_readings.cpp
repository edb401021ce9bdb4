#include "calculate/reading/reading_choice.hpp"
#include "rules/by_side.hpp"
#include "rules/check_table.hpp"
#include "wording/checks/evidence_phrases.hpp"
#include "wording/state_words.hpp"

#include <algorithm>
#include <map>
#include <string>

/// What was written twice: one reading pasted again, one mark for two stays.
namespace sheerpole::repeated_readings {

namespace {

using P = EvidenceCheckPhrase;

void check_reading_repeated(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(
      rig, derived, report, [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
        if (!stay.readings.taken || stay.readings.others.empty())
          return; // nothing to hold against each other
        const std::vector<Reading>& readings = rig[stay.stay].readings;
        const Reading& taken = readings[*stay.readings.taken];
        const auto& others = stay.readings.others;
        const auto again = std::find_if(others.begin(), others.end(), [&](const OtherReading& other) {
          return word_for_word(taken, readings[other.reading]);
        });
        if (again == others.end()) {
          of_stay.pass({P::readings_told_apart, {Count{static_cast<std::int64_t>(others.size() + 1)}}});
          return;
        }
        of_stay.find(diagnose("reading-repeated", {{"stay", name}, {"how", reading_name(taken)}})
                         .at(readings[again->reading].place)
                         .and_at(taken.place, said(P::the_same_reading))
                         .about(name));
      });
}

/// A mark without a cord that has a name is known by its words alone.
void check_mark_shared(const Rig& rig, const Derived& /*derived*/, CheckReport& report) {
  std::map<std::string, std::pair<const Stay*, const Reading*>> first;
  for (const Stay& stay : rig.stays)
    for (const Reading& reading : stay.readings) {
      if (reading.mark.empty() || !reading.cord.empty() || !reading.is_mark_alone())
        continue;
      const auto [found, is_new] = first.try_emplace(reading.mark, &stay, &reading);
      const auto& [of, other] = found->second;
      if (is_new || of == &stay) { // hoisted again
        if (is_new)
          report.pass(stay.name, {P::mark_of_its_own, {Words{reading.mark}}});
        continue;
      }
      report.find(
          diagnose("mark-shared", {{"stay", stay.name}, {"other", of->name}, {"mark", reading.mark}})
              .at(reading.place)
              .and_at(other->place, of->name)
              .about(stay.name));
    }
}

} // namespace

const CheckTable checks{CheckRow{"reading-repeated", check_reading_repeated},
                        CheckRow{"mark-shared", check_mark_shared}};

} // namespace sheerpole::repeated_readings
