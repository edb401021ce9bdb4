#include "rules/latest_inspection.hpp"

#include <algorithm>

namespace sheerpole {

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
    return "the whole stay";
  std::string name;
  for (const PartId part : inspection.between)
    name += (name.empty() ? "" : " to ") + rig[part].name;
  return name;
}

} // namespace sheerpole
