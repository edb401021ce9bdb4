#include "rules/adjuster_checks.hpp"
#include "rules/adjuster_setting.hpp"
#include "rules/by_side.hpp"
#include "rules/thresholds.hpp"
#include "units/quantity_text.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

bool is_screw(const Rig& rig, const TakeUp& adjuster) {
  return rig[adjuster.part].kind == "turnbuckle";
}

/// Screws and plates with holes have an end that is reached in the course of years; cord is made off again,
/// a tackle and a lever are worked under way.
bool asks_for_reserve(const Rig& rig, const DerivedStay& stay) {
  return !stay.adjusters.empty() &&
         std::all_of(stay.adjusters.begin(), stay.adjusters.end(), [&](const TakeUp& adjuster) {
           return is_screw(rig, adjuster) || rig[adjuster.part].kind == "hole-adjuster";
         });
}

/// Whether a finding about how it is set says as much already.
bool said_of_setting(const Rig& rig, const DerivedStay& stay) {
  return std::any_of(stay.adjusters.begin(), stay.adjusters.end(), [&](const TakeUp& adjuster) {
    return !in_range(adjuster) || mostly_closed(rig, adjuster) ||
           (near_an_end(rig, adjuster) && adjuster.to_tighten < adjuster.to_slacken);
  });
}

const AccountLeft* last_complete(const Account& account) {
  const auto found = std::find_if(account.left.rbegin(), account.left.rend(),
                                  [](const AccountLeft& left) { return left.complete; });
  return found == account.left.rend() ? nullptr : &*found;
}

std::string unknown_of(const Account& account) {
  std::string words;
  for (const AccountEntry& entry : account.entries)
    if (!entry.not_checked.empty())
      words += (words.empty() ? "" : "; ") + entry.name + ": " + entry.not_checked;
  return words;
}

void look_at(const Rig& rig, const DerivedStay& stay, const std::string& name, double share,
             StayReport& report) {
  const AccountLeft* left = last_complete(stay.account);
  if (left == nullptr) {
    if (std::any_of(stay.adjusters.begin(), stay.adjusters.end(),
                    [&](const TakeUp& adjuster) { return is_screw(rig, adjuster); }))
      report.not_checked(unknown_of(stay.account));
    return;
  }
  if (left->to_tighten < -threshold::negligible)
    return; // spent, which is said by its own finding
  const Length range = stay.account.to_tighten + stay.account.to_slacken;
  const std::string words = "after " + left->after + " " + length_text(left->to_tighten) +
                            " of a range of " + length_text(range) + " are left to take up";
  if (left->to_tighten > range * share - threshold::negligible) {
    report.pass(words);
    return;
  }
  const TakeUp& adjuster = stay.adjusters.front();
  report.find(
      diagnose("take-up-low", {{"stay", name}, {"words", words}, {"least", length_text(range * share)}})
          .at(rig[stay.stay].stack[adjuster.item].place,
              length_text(stay.account.to_tighten) + " to tighten as set")
          .about(name));
}

} // namespace

void check_take_up_low(const Rig& rig, const Derived& derived, CheckReport& report) {
  const double share = rig.limits.value(Limit::take_up_left).value_or(0.0);
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
                  if (asks_for_reserve(rig, stay) && !said_of_setting(rig, stay))
                    look_at(rig, stay, name, share, of_stay);
                });
}

} // namespace sheerpole
