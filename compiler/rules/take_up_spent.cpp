#include "calculate/length_text.hpp"
#include "rules/by_side.hpp"
#include "rules/checks.hpp"
#include "rules/thresholds.hpp"

namespace sheerpole {

namespace {

Diagnostic finding_of(const Stay& stay, const std::string& name, const AccountLeft& left, bool tightening) {
  return diagnose("take-up-spent",
                  {{"stay", name},
                   {"short", length_text(-(tightening ? left.to_tighten : left.to_slacken))},
                   {"direction", tightening ? "taking up" : "giving out"},
                   {"after", left.after}})
      .at(stay.stack_place.begin == stay.stack_place.end ? stay.place : stay.stack_place)
      .about(name)
      .build();
}

} // namespace

void check_take_up_spent(const Rig& rig, const Derived& derived, DiagnosticSink& sink) {
  report_by_side(rig, derived, sink, [&](const DerivedStay& stay, const std::string& name) {
    std::vector<Diagnostic> found;
    const Account& account = stay.account;
    // An adjuster that is set beyond its range has been reported as such.
    if (account.to_tighten < Length{} || account.to_slacken < Length{})
      return found;
    for (const bool tightening : {true, false})
      for (const AccountLeft& left : account.left)
        if ((tightening ? left.to_tighten : left.to_slacken) < -threshold::negligible) {
          found.push_back(finding_of(rig[stay.stay], name, left, tightening));
          break; // the first date says it; later ones are worse
        }
    return found;
  });
}

} // namespace sheerpole
