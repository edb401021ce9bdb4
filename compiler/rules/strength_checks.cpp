#include "rules/strength_checks.hpp"

#include <array>

namespace sheerpole {

namespace {

constexpr std::array rows{
    CheckRow{"weakest-part", check_weakest_part},
    CheckRow{"factor-low", check_factor_low},
    CheckRow{"pin-bearing-high", check_pin_bearing_high},
    CheckRow{"shared-pin-weak", check_shared_pin_weak},
    CheckRow{"pair-stretch-differs", check_pair_stretch_differs},
    CheckRow{"creep-load-high", check_creep_load_high},
    CheckRow{"rope-hot", check_rope_hot},
    CheckRow{"cold-slack", check_cold_slack},
    CheckRow{"modulus-on-wrong-area", check_modulus_on_wrong_area},
    CheckRow{"break-load-unlikely", check_break_load_unlikely},
    CheckRow{"pretension-low", check_pretension_low},
    CheckRow{"pretension-high", check_pretension_high},
    CheckRow{"panel-overloaded", check_panel_overloaded},
};

} // namespace

std::span<const CheckRow> strength_checks() {
  return rows;
}

} // namespace sheerpole
