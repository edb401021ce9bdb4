#include "rules/strength_checks.hpp"

#include <array>

namespace sheerpole {

namespace {

constexpr std::array rows{
    CheckRow{"weakest-part", check_weakest_part},
    CheckRow{"factor-low", check_factor_low},
    CheckRow{"pin-bearing-high", check_pin_bearing_high},
    CheckRow{"shared-pin-weak", check_shared_pin_weak},
};

} // namespace

std::span<const CheckRow> strength_checks() {
  return rows;
}

} // namespace sheerpole
