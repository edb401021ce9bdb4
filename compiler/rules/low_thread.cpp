#include "rules/low_thread.hpp"

#include "rules/thresholds.hpp"

namespace sheerpole {

bool low_thread(const TakeUp& adjuster) {
  return adjuster.engaged && adjuster.least_engagement && adjuster.to_slacken > -threshold::negligible &&
         *adjuster.engaged < *adjuster.least_engagement - threshold::negligible;
}

} // namespace sheerpole
