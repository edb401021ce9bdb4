#include "rules/geometry_checks.hpp"
#include "rules/tip_words.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

bool is_held(const SpreaderTip& tip) {
  return !tip.ending.empty() || std::any_of(tip.lines.begin(), tip.lines.end(),
                                            [](const LineOverTip& line) { return line.clamped; });
}

} // namespace

void check_tip_not_held(const Rig& rig, const Derived& /*derived*/, CheckReport& report) {
  look_at_tips(rig, report, [&](const SpreaderTip& tip, const std::string& name, StayReport& of_tip) {
    const Spreader& spreader = rig.spreaders[tip.spreader];
    const std::string who = who_carries(rig, tip);
    if (is_held(tip)) {
      of_tip.pass(who);
    } else if (spreader.hold == "swinging") {
      of_tip.find(diagnose("tip-not-held",
                           {{"spreader", name}, {"words", who.empty() ? "no stay goes over its tip" : who}})
                      .at(spreader.place, "it swings at its root")
                      .about(name));
    } else if (spreader.hold == "fixed") {
      of_tip.pass("it is fixed at its root" + (who.empty() ? "" : "; " + who));
    } else {
      of_tip.not_checked("whether it swings or is fixed at its root is not stated (hold)" +
                         (who.empty() ? "" : "; " + who));
    }
  });
}

} // namespace sheerpole
