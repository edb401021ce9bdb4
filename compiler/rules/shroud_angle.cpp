#include "rules/shroud_angle.hpp"

#include "calculate/geometry/stay_leads.hpp"
#include "calculate/strength/stay_directions.hpp"
#include "rules/by_side.hpp"
#include "rules/thresholds.hpp"
#include "units/format_length.hpp"
#include "units/quantity_text.hpp"
#include "wording/say.hpp"

namespace sheerpole {

namespace {

bool below(const Rig& rig, double angle, Limit limit) {
  const auto bound = rig.limits.value(limit);
  return bound && angle < *bound - threshold::negligible_radians;
}

Diagnostic finding_of(const Rig& rig, const Stay& stay, const ShroudAtMast& at, const std::string& name,
                      ShroudAngle check) {
  const Limit limit = check == ShroudAngle::least ? Limit::stay_angle_least : Limit::stay_angle_usual;
  return diagnose(check == ShroudAngle::least ? "stay-angle-small" : "stay-angle-below-usual",
                  {{"stay", name},
                   {"angle", angle_text(at.radians)},
                   {"against", say(rig, at.against)},
                   {"bound", rig.limits.text(limit)},
                   {"pull", format_fixed(tension_over_side_force(at.radians).value_or(0.0), 1)}})
      .at(stay.path.front().place, angle_text(at.radians) + " from " + say(rig, at.against))
      .about(name)
      .build();
}

} // namespace

void look_at_shroud_angles(const Rig& rig, const Derived& derived, CheckReport& report, ShroudAngle check) {
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& derived_stay, const std::string& name, StayReport& of_stay) {
                  const Stay& stay = rig[derived_stay.stay];
                  const auto at = shroud_at_mast(rig, stay);
                  if (!at)
                    return;
                  const bool small = below(rig, at->radians, Limit::stay_angle_least);
                  if (check == ShroudAngle::usual && small)
                    return; // the other check speaks
                  if (check == ShroudAngle::least ? small
                                                  : below(rig, at->radians, Limit::stay_angle_usual))
                    of_stay.find(finding_of(rig, stay, *at, name, check));
                  else
                    of_stay.pass(angle_text(at->radians) + " from " + say(rig, at->against));
                });
}

} // namespace sheerpole
