#include "rules/geometry_checks.hpp"
#include "rules/tip_words.hpp"

#include <algorithm>

namespace sheerpole {

void check_tip_held_twice(const Rig& rig, const Derived& /*derived*/, CheckReport& report) {
  look_at_tips(rig, report, [&](const SpreaderTip& tip, const std::string& name, StayReport& of_tip) {
    if (tip.lines.size() < 2)
      return;
    const auto clamped = std::count_if(tip.lines.begin(), tip.lines.end(),
                                       [](const LineOverTip& line) { return line.clamped; });
    const std::string who = who_carries(rig, tip);
    if (clamped < 2)
      of_tip.pass(who);
    else
      of_tip.find(diagnose("tip-held-twice", {{"spreader", name}, {"words", who}})
                      .at(rig.spreaders[tip.spreader].place)
                      .about(name));
  });
}

} // namespace sheerpole
