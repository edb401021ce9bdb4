#include "rules/adjuster_checks.hpp"
#include "rules/adjuster_setting.hpp"
#include "rules/by_side.hpp"
#include "rules/thresholds.hpp"
#include "units/quantity_text.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

void look_at(const Rig& rig, const DerivedStay& stay, const std::string& name, StayReport& report) {
  if (!stay.uncertainty) {
    report.not_checked("no bound is stated");
    return;
  }
  const Length shorter = -stay.uncertainty->worst_low;
  const Length longer = stay.uncertainty->worst_high;
  const Account& room = stay.account;
  const bool to_slacken = shorter > room.to_slacken + threshold::negligible;
  if (!to_slacken && longer < room.to_tighten + threshold::negligible) {
    report.pass("at worst " + length_text(shorter) + " shorter or " + length_text(longer) +
                " longer; the adjuster can give out " + length_text(room.to_slacken) + " and take up " +
                length_text(room.to_tighten));
    return;
  }
  report.find(
      diagnose("reach-in-doubt", {{"stay", name},
                                  {"doubt", length_text(to_slacken ? shorter : longer)},
                                  {"way", to_slacken ? "shorter" : "longer"},
                                  {"room", length_text(to_slacken ? room.to_slacken : room.to_tighten)},
                                  {"direction", to_slacken ? "give out" : "take up"}})
          .at(rig[stay.stay].stack[stay.adjusters.front().item].place,
              length_text(room.to_tighten) + " to tighten, " + length_text(room.to_slacken) + " to slacken")
          .about(name));
}

} // namespace

void check_reach_in_doubt(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(
      rig, derived, report, [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
        // An adjuster that is set beyond its range has been reported as such.
        if (!stay.adjusters.empty() && std::all_of(stay.adjusters.begin(), stay.adjusters.end(), in_range))
          look_at(rig, stay, name, of_stay);
      });
}

} // namespace sheerpole
