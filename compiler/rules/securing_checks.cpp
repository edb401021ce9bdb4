#include "rules/securing_checks.hpp"

#include <array>

namespace sheerpole {

namespace {

constexpr std::array rows{
    CheckRow{"pin-not-secured", check_pin_not_secured},
    CheckRow{"thread-not-locked", check_thread_not_locked},
    CheckRow{"no-toggle-aloft", check_no_toggle_aloft},
    CheckRow{"no-toggle-below", check_no_toggle_below},
    CheckRow{"pins-parallel", check_pins_parallel},
    CheckRow{"metals-differ", check_metals_differ},
    CheckRow{"no-witness-hole", check_no_witness_hole},
    CheckRow{"not-accessible", check_not_accessible},
    CheckRow{"edge-sharp", check_edge_sharp},
    CheckRow{"thimble-for-wire", check_thimble_for_wire},
    CheckRow{"no-chafe-gear", check_no_chafe_gear},
    CheckRow{"bearing-offset-zero", check_bearing_offset_zero},
};

} // namespace

std::span<const CheckRow> securing_checks() {
  return rows;
}

} // namespace sheerpole
