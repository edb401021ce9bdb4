#include "rules/adjusters/adjuster_setting.hpp"

#include "model/kind_words.hpp"
#include "rules/check_table.hpp"

#include <algorithm>

namespace sheerpole {

bool low_thread(const TakeUp& adjuster) {
  return adjuster.engaged && adjuster.least_engagement && adjuster.to_slacken > -threshold::negligible &&
         *adjuster.engaged < *adjuster.least_engagement - threshold::negligible;
}

bool near_an_end(const Rig& rig, const TakeUp& adjuster) {
  if (rig[adjuster.part].kind == PartKind::lever || low_thread(adjuster))
    return false;
  const double reserve = rig.limits.value(Limit::adjuster_reserve).value_or(0.0);
  const Length left = std::min(adjuster.to_tighten, adjuster.to_slacken);
  const Length range = adjuster.to_tighten + adjuster.to_slacken;
  return left > -threshold::negligible && left < range * reserve - threshold::negligible;
}

bool mostly_closed(const Rig& rig, const TakeUp& adjuster) {
  const auto most = rig.limits.value(Limit::first_fit_closed);
  if (!most || rig[adjuster.part].kind != PartKind::turnbuckle || !in_range(adjuster) ||
      near_an_end(rig, adjuster))
    return false;
  const Length range = adjuster.to_tighten + adjuster.to_slacken;
  return adjuster.to_slacken > range * *most + threshold::negligible;
}

double closed_share(const TakeUp& adjuster) {
  return adjuster.to_slacken / (adjuster.to_tighten + adjuster.to_slacken);
}

bool in_range(const TakeUp& adjuster) {
  return std::min(adjuster.to_tighten, adjuster.to_slacken) > -threshold::negligible;
}

} // namespace sheerpole
