#include "rules/off_plate.hpp"

#include "calculate/geometry/stay_leads.hpp"
#include "rules/by_side.hpp"
#include "rules/thresholds.hpp"
#include "units/quantity_text.hpp"

#include <cmath>

namespace sheerpole {

namespace {

bool leans_more(const Rig& rig, double off, Limit limit) {
  const auto bound = rig.limits.value(limit);
  return bound && off > *bound + threshold::negligible_radians;
}

std::string plane_of(const PlateLead& lead) {
  if (std::abs(lead.lean_radians) < threshold::negligible_radians)
    return "which stands upright";
  return lead.lean_radians < 0.0 ? "which leans outboard by " + angle_text(-lead.lean_radians)
                                 : "which leans inboard by " + angle_text(lead.lean_radians);
}

Diagnostic finding_of(const Rig& rig, const Stay& stay, const PlateLead& lead, const std::string& name,
                      OffPlate check) {
  const Part& plate = rig[lead.plate];
  Diagnostic finding = diagnose(check == OffPlate::far ? "plate-far-off-lead" : "plate-off-lead",
                                {{"stay", name},
                                 {"plate", plate.name},
                                 {"off", angle_text(lead.off_radians)},
                                 {"plane", plane_of(lead)},
                                 {"share", percent_text(std::sin(lead.off_radians))}})
                           .at(stay.path.back().place, angle_text(lead.off_radians) + " out of its plane")
                           .about(name)
                           .build();
  finding.others.push_back({plate.place, "the plate"});
  return finding;
}

} // namespace

void look_at_plate_leads(const Rig& rig, const Derived& derived, CheckReport& report, OffPlate check) {
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& derived_stay, const std::string& name, StayReport& of_stay) {
                  const Stay& stay = rig[derived_stay.stay];
                  const auto plate = plate_of(rig, stay);
                  if (!plate)
                    return;
                  const auto lead = plate_lead(rig, stay);
                  if (!lead) {
                    of_stay.not_checked(stay.path.size() < 2
                                            ? "it has no path through points"
                                            : "plane-lean of " + rig[*plate].name + " is not stated");
                    return;
                  }
                  const bool far = leans_more(rig, lead->off_radians, Limit::plate_off_most);
                  if (check == OffPlate::usual && far)
                    return; // the other check speaks
                  if (check == OffPlate::far ? far
                                             : leans_more(rig, lead->off_radians, Limit::plate_off_usual))
                    of_stay.find(finding_of(rig, stay, *lead, name, check));
                  else
                    of_stay.pass(rig[*plate].name + ": " + angle_text(lead->off_radians) +
                                 " out of its plane, " + plane_of(*lead));
                });
}

} // namespace sheerpole
