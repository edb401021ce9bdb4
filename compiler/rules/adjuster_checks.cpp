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
    CheckRow{"screw-same-hand", check_screw_same_hand},
    CheckRow{"adjuster-mostly-closed", check_adjuster_mostly_closed},
    CheckRow{"take-up-low", check_take_up_low},
    CheckRow{"reach-in-doubt", check_reach_in_doubt},
    CheckRow{"adjusters-differ", check_adjusters_differ},
    CheckRow{"lashing-weak", check_lashing_weak},
    CheckRow{"knot-factor-high", check_knot_factor_high},
};

} // namespace

std::span<const CheckRow> adjuster_checks() {
  return rows;
}

} // namespace sheerpole
