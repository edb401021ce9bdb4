#include "calculate/strength/load_screening.hpp"

#include "calculate/facts.hpp"
#include "calculate/strength/screening_inputs.hpp"
#include "calculate/strength/strength_phrases.hpp"
#include "model/fact_name.hpp"
#include "model/kind_words.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

bool same_number(const ScreeningNumber& a, const ScreeningNumber& b) {
  return a.name == b.name && a.value.si == b.value.si && a.value.dimension == b.value.dimension &&
         a.how == b.how;
}

bool alike(const LoadScreening& a, const LoadScreening& b) {
  return std::equal(a.inputs.begin(), a.inputs.end(), b.inputs.begin(), b.inputs.end(), same_number) &&
         std::equal(a.results.begin(), a.results.end(), b.results.begin(), b.results.end(), same_number) &&
         a.not_checked == b.not_checked && a.notes == b.notes;
}

LoadScreening screen(const Rig& rig, const Record& record, StayId id) {
  LoadScreening screening;
  screening.method =
      fact_text(record.facts, fact_names.method) == name_of(ScreeningMethod::joint_equilibrium)
          ? ScreeningMethod::joint_equilibrium
          : ScreeningMethod::righting_moment_share;
  screening.of = rig[id].name;
  screening.stays = {id};
  screening.place = record.place;
  if (screening.method == ScreeningMethod::joint_equilibrium)
    screen_by_equilibrium(rig, record, rig[id], screening);
  else
    screen_by_share(rig, record, rig[id], screening);
  return screening;
}

} // namespace

std::string_view name_of(ScreeningMethod method) {
  switch (method) {
  case ScreeningMethod::righting_moment_share:
    return "righting-moment-share";
  case ScreeningMethod::joint_equilibrium:
    return "joint-equilibrium";
  }
  return "";
}

Remark publication_of(ScreeningMethod method) {
  return method == ScreeningMethod::joint_equilibrium ? StrengthPhrase::published_equilibrium
                                                      : StrengthPhrase::published_share;
}

std::vector<LoadScreening> load_screenings(const Rig& rig) {
  std::vector<LoadScreening> result;
  for (const Record& record : rig.records) {
    if (record.kind != RecordKind::load_screening)
      continue;
    std::vector<LoadScreening> sides;
    for (const StayId id : record.stays)
      sides.push_back(screen(rig, record, id));
    if (sides.size() == 2 && alike(sides[0], sides[1])) {
      sides[0].of = rig[record.stays.front()].base;
      sides[0].stays = record.stays;
      sides.pop_back();
    }
    result.insert(result.end(), sides.begin(), sides.end());
  }
  return result;
}

} // namespace sheerpole
