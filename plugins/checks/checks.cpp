#include "plugins/checks/checks.hpp"

#include "backend/table/rig_tables.hpp"
#include "wording/papers/index_words.hpp"

namespace sheerpole {

BackendDescription Checks::describe() const {
  return {.name = "checks",
          .summary = say(IndexPhrase::what_every_check_came_to),
          .outputs = {"checks.txt", "results.csv", "joints.txt", "joints.csv"}};
}

OutputBundle Checks::generate(const BackendRequest& request) const {
  const CheckedRig& checked = request.checked;
  const Table joints = joints_table(checked);
  return {{{"checks.txt", render_text(checks_table(checked))},
           {"results.csv", render_csv(results_table(checked))},
           {"joints.txt", render_text(joints)},
           {"joints.csv", render_csv(joints)}}};
}

} // namespace sheerpole
