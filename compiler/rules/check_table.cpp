#include "rules/check_table.hpp"

namespace sheerpole {

std::vector<CheckRow> all_checks() {
  std::vector<CheckRow> all;
  for (const auto table : {length_checks(), joint_checks(), securing_checks(), adjuster_checks(),
                           splice_checks(), geometry_checks(), strength_checks(), record_checks()})
    all.insert(all.end(), table.begin(), table.end());
  return all;
}

} // namespace sheerpole
