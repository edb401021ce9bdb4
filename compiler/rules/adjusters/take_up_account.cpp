#include "rules/by_side.hpp"
#include "rules/check_table.hpp"
#include "units/quantity_text.hpp"
#include "wording/checks/adjuster_phrases.hpp"
#include "wording/checks/any_check_phrases.hpp"

/// Whether what the adjusters can give out and take up lasts.
namespace sheerpole::take_up_account {

namespace {

using Common = AnyCheckPhrase;

using P = AdjusterCheckPhrase;

Diagnostic spent_finding(const Rig& rig, const Stay& stay, const std::string& name, const AccountLeft& left,
                         bool tightening) {
  return diagnose("take-up-spent",
                  {{"stay", name},
                   {"short", length_text(-(tightening ? left.to_tighten : left.to_slacken))},
                   {"direction", said(tightening ? P::taking_up : P::giving_out)},
                   {"after", say(rig, left.after)}})
      .at(stay.stack_place.begin == stay.stack_place.end ? stay.place : stay.stack_place)
      .about(name)
      .build();
}

void check_take_up_spent(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
                  const Account& account = stay.account;
                  // An adjuster that is set beyond its range has been reported as such.
                  if (account.to_tighten < Length{} || account.to_slacken < Length{})
                    return;
                  std::string unknown;
                  for (const AccountEntry& entry : account.entries)
                    if (!entry.not_checked.empty())
                      unknown += (unknown.empty() ? "" : "; ") + say(rig, entry.name) + ": " +
                                 say(rig, entry.not_checked);
                  if (!unknown.empty())
                    of_stay.not_checked(unknown);
                  bool spent = false;
                  for (const bool tightening : {true, false})
                    for (const AccountLeft& left : account.left)
                      if ((tightening ? left.to_tighten : left.to_slacken) < -threshold::negligible) {
                        of_stay.find(spent_finding(rig, rig[stay.stay], name, left, tightening));
                        spent = true;
                        break; // the first date says it; later ones are worse
                      }
                  if (!spent && !account.left.empty() && account.left.back().complete)
                    of_stay.pass({P::left_after,
                                  {Remarks{{account.left.back().after}}, account.left.back().to_tighten,
                                   account.left.back().to_slacken}});
                });
}

void check_no_fit(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(
      rig, derived, report, [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
        for (const Fit& fit : stay.fits) {
          if (!fit.not_checked.empty()) {
            of_stay.not_checked(fit.not_checked);
            continue;
          }
          if (!fit.ways.empty()) {
            of_stay.pass({P::can_be_made_to_fit, {fit.line}});
            continue;
          }
          const bool too_wide = fit.short_by > Length{};
          of_stay.find(diagnose("no-fit", {{"stay", name},
                                           {"line", length_text(fit.line)},
                                           {"off", length_text(too_wide ? fit.short_by : -fit.short_by)},
                                           {"direction", said(too_wide ? P::too_short : P::too_long)}})
                           .at(fit.place)
                           .about(name));
        }
      });
}

} // namespace

const CheckTable checks{CheckRow{"take-up-spent", check_take_up_spent}, CheckRow{"no-fit", check_no_fit}};

} // namespace sheerpole::take_up_account
