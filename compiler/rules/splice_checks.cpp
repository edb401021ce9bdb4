#include "rules/splice_checks.hpp"

#include <array>

namespace sheerpole {

namespace {

constexpr std::array rows{
    CheckRow{"bury-short", check_bury_short},
    CheckRow{"bury-below-usual", check_bury_below_usual},
    CheckRow{"taper-short", check_taper_short},
    CheckRow{"burys-overlap", check_burys_overlap},
    CheckRow{"splice-not-locked", check_splice_not_locked},
    CheckRow{"eye-short", check_eye_short},
    CheckRow{"eye-below-usual", check_eye_below_usual},
    CheckRow{"eye-angle-wide", check_eye_angle_wide},
    CheckRow{"eye-ways-differ", check_eye_ways_differ},
};

} // namespace

std::span<const CheckRow> splice_checks() {
  return rows;
}

} // namespace sheerpole
