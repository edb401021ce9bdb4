#include "rules/geometry_checks.hpp"

#include <array>

namespace sheerpole {

namespace {

constexpr std::array rows{
    CheckRow{"spreader-off-bisector", check_spreader_off_bisector},
    CheckRow{"spreader-far-off-bisector", check_spreader_far_off_bisector},
    CheckRow{"tip-pulled-out", check_tip_pulled_out},
    CheckRow{"tip-not-held", check_tip_not_held},
    CheckRow{"tip-held-twice", check_tip_held_twice},
    CheckRow{"stay-angle-small", check_stay_angle_small},
    CheckRow{"stay-angle-below-usual", check_stay_angle_below_usual},
    CheckRow{"plate-off-lead", check_plate_off_lead},
    CheckRow{"plate-far-off-lead", check_plate_far_off_lead},
    CheckRow{"junction-off-line", check_junction_off_line},
    CheckRow{"stays-cross", check_stays_cross},
    CheckRow{"stay-through-spar", check_stay_through_spar},
    CheckRow{"stay-through-deck", check_stay_through_deck},
    CheckRow{"direction-not-held", check_direction_not_held},
    CheckRow{"foretriangle-differs", check_foretriangle_differs},
};

} // namespace

std::span<const CheckRow> geometry_checks() {
  return rows;
}

} // namespace sheerpole
