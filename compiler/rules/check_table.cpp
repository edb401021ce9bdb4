#include "rules/check_table.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

/// Made once; it is asked for with every boat.
const std::vector<CheckRow>& every_row() {
  static const std::vector<CheckRow> all = [] {
    std::vector<CheckRow> rows;
    for (const CheckTable* subject : {&stay_lengths::checks,
                                      &boat_envelope::checks,
                                      &neighbouring_points::checks,
                                      &usual_sizes::checks,
                                      &cut_inputs::checks,
                                      &expectations::checks,
                                      &joint_comparisons::checks,
                                      &pins_and_threads::checks,
                                      &articulation_checks::checks,
                                      &metals::checks,
                                      &access::checks,
                                      &rope_bearing::checks,
                                      &odd_words::checks,
                                      &adjuster_range::checks,
                                      &take_up_account::checks,
                                      &screws::checks,
                                      &reserve::checks,
                                      &lashings::checks,
                                      &removable_part_checks::checks,
                                      &buries::checks,
                                      &eyes::checks,
                                      &contractions::checks,
                                      &dry_fits::checks,
                                      &in_hand_checks::checks,
                                      &spreaders::checks,
                                      &leads::checks,
                                      &clearance::checks,
                                      &whole_rig::checks,
                                      &chain::checks,
                                      &shared_pins::checks,
                                      &line_behaviour::checks,
                                      &line_numbers::checks,
                                      &mast_loads::checks,
                                      &standing_rig::checks,
                                      &readings::checks,
                                      &repeated_readings::checks,
                                      &cord_checks::checks,
                                      &sources::checks,
                                      &ages::checks,
                                      &inspections::checks,
                                      &made_pieces::checks,
                                      &state_checks::checks})
      rows.insert(rows.end(), subject->begin(), subject->end());
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
