#include "calculate/facts.hpp"
#include "calculate/reading/reading_length.hpp"
#include "model/fact_name.hpp"
#include "rules/by_side.hpp"
#include "rules/check_table.hpp"
#include "wording/checks/evidence_phrases.hpp"

#include <cstdint>
#include <map>
#include <set>
#include <string>

/// The messenger cords: whether each keeps a stay, and whether its pull can be counted.
namespace sheerpole::cord_checks {

namespace {

using P = EvidenceCheckPhrase;

/// How many stays have a reading that is kept on each cord.
std::map<std::string, std::int64_t> stays_by_cord(const Rig& rig) {
  std::map<std::string, std::int64_t> stays;
  for (const Stay& stay : rig.stays) {
    std::set<std::string> cords;
    for (const Reading& reading : stay.readings)
      if (!reading.cord.empty())
        cords.insert(reading.cord);
    for (const std::string& cord : cords)
      ++stays[cord];
  }
  return stays;
}

/// Files that state stays. One without may declare more cords than one boat uses.
std::set<SourceId> files_of_stays(const Rig& rig) {
  std::set<SourceId> files;
  for (const Stay& stay : rig.stays)
    files.insert(stay.place.source);
  return files;
}

/// The one reading by messenger that names no cord, when there is one only: its knot may be on this cord.
/// Both sides of a pair have one reading.
const Reading* reading_without_cord(const Rig& rig) {
  const Reading* only = nullptr;
  for (const Stay& stay : rig.stays)
    for (const Reading& reading : stay.readings) {
      if (reading.method != ReadingMethod::messenger || !reading.cord.empty() || !reading.runs.empty())
        continue;
      if (only != nullptr && only->place != reading.place)
        return nullptr;
      only = &reading;
    }
  return only;
}

void find_not_used(const Record& cord, const Reading* perhaps, CheckReport& report) {
  auto finding = diagnose("cord-not-used", {{"cord", cord.name}}).at(cord.place).about(cord.name);
  if (perhaps != nullptr)
    finding = std::move(finding).and_at(perhaps->place, said(P::names_no_cord));
  report.find(std::move(finding));
}

void check_cord_not_used(const Rig& rig, const Derived&, CheckReport& report) {
  const std::map<std::string, std::int64_t> stays = stays_by_cord(rig);
  const std::set<SourceId> files = files_of_stays(rig);
  const Reading* perhaps = reading_without_cord(rig);
  for (const Record& cord : rig.records) {
    if (cord.kind != RecordKind::cord)
      continue;
    const auto kept = stays.find(cord.name);
    if (kept == stays.end() && files.contains(cord.place.source))
      find_not_used(cord, perhaps, report);
    else if (kept != stays.end())
      report.pass(cord.name, kept->second == 1 ? Remark(P::cord_keeps_one)
                                               : Remark(P::cord_keeps, {Count{kept->second}}));
  }
}

/// What a reading on a cord lacks so that its pull can be counted; nothing when it lacks nothing, or states
/// nothing of it at all. What a tape read off the cord is looked at with the other readings by tape.
void look_at_reading(const Rig& rig, const Reading& reading, const std::string& name, StayReport& report) {
  const Record* cord = reading.cord.empty() ? nullptr : find_record(rig, RecordKind::cord, reading.cord);
  if (cord == nullptr || !reading.is_mark_alone())
    return;
  const Particular* pull = find_fact(reading.particulars, fact_names.pull);
  const Particular* stretch = find_fact(cord->facts, fact_names.stretch);
  if (pull == nullptr && stretch == nullptr)
    report.not_checked({P::neither_pull_nor_stretch, {Words{cord->name}}});
  else if (pull != nullptr && stretch != nullptr)
    report.pass({P::pull_and_stretch, {Words{cord->name}}});
  else
    report.find(
        diagnose("cord-pull-lost",
                 {{"stay", name},
                  {"words", say(rig, {pull != nullptr ? P::pull_without_stretch : P::stretch_without_pull,
                                      {Words{cord->name}}})}})
            .at(reading.place)
            .and_at(cord->place, said(P::the_cord))
            .about(name));
}

void check_cord_pull_lost(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
                  for (const Reading& reading : rig[stay.stay].readings)
                    look_at_reading(rig, reading, name, of_stay);
                });
}

} // namespace

const CheckTable checks{CheckRow{"cord-not-used", check_cord_not_used},
                        CheckRow{"cord-pull-lost", check_cord_pull_lost}};

} // namespace sheerpole::cord_checks
