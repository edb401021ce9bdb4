#include "calculate/tune/tune_report.hpp"

namespace sheerpole {

TuneReport tune_report(const Rig& rig, const Derived& derived) {
  TuneReport report;
  report.tuned = tuned_rig(rig, derived);
  if (!report.tuned.stands())
    return report;
  report.effects = turn_effects(rig, report.tuned);
  report.doubt = tune_doubt(rig, derived, report.tuned, report.effects);
  report.slips = tune_slips(rig, derived, report.tuned);
  report.later = tune_later(rig, derived, report.tuned);
  report.planning = turn_planning(rig, report.tuned);
  return report;
}

} // namespace sheerpole
