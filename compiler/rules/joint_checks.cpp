#include "rules/joint_checks.hpp"

#include <array>

namespace sheerpole {

namespace {

constexpr std::array rows{
    CheckRow{"pin-too-big", check_pin_too_big},
    CheckRow{"pin-loose", check_pin_loose},
    CheckRow{"jaw-too-narrow", check_jaw_too_narrow},
    CheckRow{"jaw-too-wide", check_jaw_too_wide},
    CheckRow{"jaw-too-shallow", check_jaw_too_shallow},
    CheckRow{"hole-near-edge", check_hole_near_edge},
    CheckRow{"thread-differs", check_thread_differs},
    CheckRow{"hand-differs", check_hand_differs},
    CheckRow{"wire-size-differs", check_wire_size_differs},
    CheckRow{"wire-construction-differs", check_wire_construction_differs},
    CheckRow{"seat-too-narrow", check_seat_too_narrow},
    CheckRow{"seat-too-small", check_seat_too_small},
};

} // namespace

std::span<const CheckRow> joint_checks() {
  return rows;
}

} // namespace sheerpole
