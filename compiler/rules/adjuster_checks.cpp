#include "rules/adjuster_checks.hpp"

#include <array>

namespace sheerpole {

namespace {

constexpr std::array rows{
    CheckRow{"adjuster-out-of-range", check_adjuster_out_of_range},
    CheckRow{"thread-engagement-low", check_thread_engagement_low},
    CheckRow{"adjuster-near-end", check_adjuster_near_end},
    CheckRow{"adjuster-between-holes", check_adjuster_between_holes},
    CheckRow{"state-out-of-range", check_state_out_of_range},
    CheckRow{"take-up-spent", check_take_up_spent},
    CheckRow{"no-fit", check_no_fit},
};

} // namespace

std::span<const CheckRow> adjuster_checks() {
  return rows;
}

} // namespace sheerpole
