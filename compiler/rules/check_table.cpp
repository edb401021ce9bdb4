#include "rules/check_table.hpp"

#include <algorithm>

namespace sheerpole {

using CheckRows = std::span<const CheckRow>;

// lengths/
namespace stay_lengths {
CheckRows checks();
}
namespace cut_inputs {
CheckRows checks();
}
namespace expectations {
CheckRows checks();
}
// joints/
namespace joint_comparisons {
CheckRows checks();
}
// securing/
namespace pins_and_threads {
CheckRows checks();
}
namespace articulation_checks {
CheckRows checks();
}
namespace metals {
CheckRows checks();
}
namespace access {
CheckRows checks();
}
namespace rope_bearing {
CheckRows checks();
}
// adjusters/
namespace adjuster_range {
CheckRows checks();
}
namespace take_up_account {
CheckRows checks();
}
namespace screws {
CheckRows checks();
}
namespace reserve {
CheckRows checks();
}
namespace lashings {
CheckRows checks();
}
// splices/
namespace buries {
CheckRows checks();
}
namespace eyes {
CheckRows checks();
}
// geometry/
namespace spreaders {
CheckRows checks();
}
namespace leads {
CheckRows checks();
}
namespace clearance {
CheckRows checks();
}
namespace whole_rig {
CheckRows checks();
}
// strength/
namespace chain {
CheckRows checks();
}
namespace shared_pins {
CheckRows checks();
}
namespace line_behaviour {
CheckRows checks();
}
namespace line_numbers {
CheckRows checks();
}
namespace mast_loads {
CheckRows checks();
}
// evidence/
namespace readings {
CheckRows checks();
}
namespace sources {
CheckRows checks();
}
namespace ages {
CheckRows checks();
}
namespace inspections {
CheckRows checks();
}

namespace {

/// Made once; it is asked for with every boat.
const std::vector<CheckRow>& every_row() {
  static const std::vector<CheckRow> all = [] {
    std::vector<CheckRow> rows;
    for (const CheckRows subject : {stay_lengths::checks(),
                                    cut_inputs::checks(),
                                    expectations::checks(),
                                    joint_comparisons::checks(),
                                    pins_and_threads::checks(),
                                    articulation_checks::checks(),
                                    metals::checks(),
                                    access::checks(),
                                    rope_bearing::checks(),
                                    adjuster_range::checks(),
                                    take_up_account::checks(),
                                    screws::checks(),
                                    reserve::checks(),
                                    lashings::checks(),
                                    buries::checks(),
                                    eyes::checks(),
                                    spreaders::checks(),
                                    leads::checks(),
                                    clearance::checks(),
                                    whole_rig::checks(),
                                    chain::checks(),
                                    shared_pins::checks(),
                                    line_behaviour::checks(),
                                    line_numbers::checks(),
                                    mast_loads::checks(),
                                    readings::checks(),
                                    sources::checks(),
                                    ages::checks(),
                                    inspections::checks()})
      rows.insert(rows.end(), subject.begin(), subject.end());
    return rows;
  }();
  return all;
}

} // namespace

std::span<const CheckRow> all_checks() {
  return every_row();
}

std::vector<LimitUse> limit_uses() {
  std::vector<LimitUse> uses;
  for (const LimitRow& limit : all_limits())
    for (const CheckRow& check : all_checks())
      if (check.limits.contains(limit.limit))
        uses.push_back({limit.limit, std::string(check.slug)});
  return uses;
}

std::string checks_of(Limit limit) {
  std::string slugs;
  for (const CheckRow& check : all_checks())
    if (check.limits.contains(limit))
      slugs += (slugs.empty() ? "" : " ") + std::string(check.slug);
  return slugs;
}

const CheckRow* find_check(std::string_view slug) {
  const auto found = std::find_if(every_row().begin(), every_row().end(),
                                  [&](const CheckRow& row) { return row.slug == slug; });
  return found == every_row().end() ? nullptr : &*found;
}

} // namespace sheerpole
