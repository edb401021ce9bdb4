#include "calculate/strength/force_text.hpp"
#include "calculate/strength/stay_stiffness.hpp"
#include "rules/by_side.hpp"
#include "rules/strength_checks.hpp"
#include "units/format_length.hpp"
#include "units/quantity_text.hpp"
#include "wording/say.hpp"

namespace sheerpole {

namespace {

std::string words_of(const Rig& rig, const ColdLoss& loss) {
  const std::string at = "at " + temperature_text(loss.kelvin) + " ";
  if (!(loss.slack > Length{}))
    return at + "it gets tighter, by " + length_text(-loss.slack);
  const std::string gains = at + "it gains " + length_text(loss.slack) + " on its path, which takes " +
                            force_text(loss.lost) + " (" + say(rig, loss.how) + ")";
  const std::string dock = force_text(loss.dock_tension) + " at the dock";
  return loss.share < 1.0 ? gains + ", " + percent_text(loss.share) + " of the " + dock
                          : gains + " and leaves nothing of the " + dock;
}

void look(const Rig& rig, const DerivedStay& derived, const std::string& name, double coldest, double most,
          StayReport& report) {
  if (derived.pieces.empty())
    return;
  const ColdLoss loss = cold_loss(rig, derived, coldest);
  if (!loss.not_checked.empty()) {
    report.not_checked(joined(say_each(rig, loss.not_checked), Join::semicolon));
    return;
  }
  const std::string words = words_of(rig, loss);
  if (is_below(most, loss.share))
    report.find(diagnose("cold-slack", {{"stay", name}, {"words", words}, {"most", percent_text(most)}})
                    .at(rig[derived.stay].place)
                    .about(name));
  else
    report.pass(words + (loss.slack > Length{} ? "; at most " + percent_text(most) : ""));
}

} // namespace

void check_cold_slack(const Rig& rig, const Derived& derived, CheckReport& report) {
  const auto most = rig.limits.value(Limit::cold_loss);
  if (!most)
    return;
  const auto coldest = stated_coldest(rig);
  if (!coldest) {
    report.not_checked("this rig", "coldest of take-up is not stated");
    return;
  }
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
                  look(rig, stay, name, *coldest, *most, of_stay);
                });
}

} // namespace sheerpole
