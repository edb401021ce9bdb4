#include "rules/by_side.hpp"
#include "rules/check_table.hpp"
#include "rules/evidence/dated_facts.hpp"
#include "wording/checks/any_check_phrases.hpp"
#include "wording/checks/evidence_phrases.hpp"

#include <algorithm>

/// The inspection log.
namespace sheerpole::inspections {

namespace {

using Common = AnyCheckPhrase;

using P = EvidenceCheckPhrase;

std::vector<const Inspection*> latest_inspections(const Rig& rig, StayId stay) {
  std::vector<const Inspection*> latest;
  for (const Inspection& entry : rig.inspections) {
    if (std::find(entry.stays.begin(), entry.stays.end(), stay) == entry.stays.end())
      continue;
    const auto same = std::find_if(latest.begin(), latest.end(), [&](const Inspection* earlier) {
      return earlier->between == entry.between;
    });
    if (same == latest.end())
      latest.push_back(&entry);
    else if (entry.date >= (*same)->date) // ISO 8601 days are in order as texts
      *same = &entry;
  }
  return latest;
}

std::string inspected_thing(const Rig& rig, const Inspection& inspection) {
  if (inspection.between.empty())
    return said(P::whole_stay);
  std::string name;
  for (const PartId part : inspection.between)
    name = name.empty() ? rig[part].name : say(rig, {P::joint_of, {Words{name}, part}});
  return name;
}

/// What an entry of the log marks a thing as, for the finding.
std::string condition_words(const Inspection& entry) {
  return entry.condition == InspectionCondition::not_accessible ? said(P::not_accessible)
                                                                : std::string(name_of(entry.condition));
}

bool to_renew(const Inspection& entry) {
  return entry.condition == InspectionCondition::renew;
}

bool to_watch(const Inspection& entry) {
  return entry.condition == InspectionCondition::watch ||
         entry.condition == InspectionCondition::not_accessible;
}

/// What the last entries about a stay mark.
template <bool (*marked)(const Inspection&)>
void check_marked(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(
      rig, derived, report, [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
        for (const Inspection* entry : latest_inspections(rig, stay.stay)) {
          const std::string thing = inspected_thing(rig, *entry);
          if (marked(*entry))
            of_stay.find(
                diagnose(report.check(),
                         {{"stay", name},
                          {"thing", thing},
                          {"condition", condition_words(*entry)},
                          {"date", entry->date},
                          {"by", entry->by},
                          {"note", entry->note.empty() ? "" : say(rig, {P::noted, {Words{entry->note}}})}})
                    .at(entry->place)
                    .about(name));
          else
            of_stay.pass(
                {P::condition_on,
                 {Words{thing}, Words{std::string(name_of(entry->condition))}, Words{entry->date}}});
        }
      });
}

void check_inspection_old(const Rig& rig, const Derived& derived, CheckReport& report) {
  const double most = *rig.limits.value(Limit::inspection_age);
  const auto today = report_day(rig);
  look_at_stays(
      rig, derived, report, [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
        const auto entries = latest_inspections(rig, stay.stay);
        const auto last =
            std::max_element(entries.begin(), entries.end(),
                             [](const Inspection* a, const Inspection* b) { return a->date < b->date; });
        const auto day = last == entries.end() ? std::nullopt : parse_day((*last)->date);
        if (!today || !day)
          of_stay.not_checked({today ? P::no_inspection : P::report_date_not_stated});
        else if (older_than(*day, *today, most))
          of_stay.find(diagnose("inspection-old", {{"stay", name},
                                                   {"date", (*last)->date},
                                                   {"age", say(rig, age_words(*day, *today))},
                                                   {"most", say(rig, years_words(most))}})
                           .at((*last)->place)
                           .about(name));
        else
          of_stay.pass(passed(report.check(), {{"date", (*last)->date}}));
      });
}

} // namespace

const CheckTable checks{CheckRow{"marked-renew", check_marked<to_renew>},
                        CheckRow{"marked-watch", check_marked<to_watch>},
                        CheckRow{"inspection-old", check_inspection_old, {Limit::inspection_age}}};

} // namespace sheerpole::inspections
