#include "rules/joint_checks.hpp"

#include <array>

namespace sheerpole {

namespace {

constexpr std::array rows{
    CheckRow{"ends-do-not-join", check_ends_do_not_join},
    CheckRow{"jaws-meet", check_jaws_meet},
    CheckRow{"pin-too-big", check_pin_too_big},
    CheckRow{"pin-loose", check_pin_loose},
    CheckRow{"pin-too-short", check_pin_too_short},
    CheckRow{"split-pin-small", check_split_pin_small},
    CheckRow{"jaw-too-narrow", check_jaw_too_narrow},
    CheckRow{"jaw-too-wide", check_jaw_too_wide},
    CheckRow{"jaw-too-shallow", check_jaw_too_shallow},
    CheckRow{"hole-near-edge", check_hole_near_edge},
    CheckRow{"thread-differs", check_thread_differs},
    CheckRow{"hand-differs", check_hand_differs},
    CheckRow{"stud-engaged-short", check_stud_engaged_short},
    CheckRow{"stud-too-long", check_stud_too_long},
    CheckRow{"hook-too-small", check_hook_too_small},
    CheckRow{"tee-too-big", check_tee_too_big},
    CheckRow{"tee-pulls-through", check_tee_pulls_through},
    CheckRow{"wire-size-differs", check_wire_size_differs},
    CheckRow{"wire-construction-differs", check_wire_construction_differs},
    CheckRow{"seat-too-narrow", check_seat_too_narrow},
    CheckRow{"seat-too-wide", check_seat_too_wide},
    CheckRow{"seat-too-small", check_seat_too_small},
};

} // namespace

std::span<const CheckRow> joint_checks() {
  return rows;
}

} // namespace sheerpole
