#pragma once

#include "model/remark.hpp"

#include <string_view>

namespace sheerpole {

/// What the checks on spreaders, leads and clearances say.
enum class GeometryCheckPhrase : std::uint16_t {
  falls,
  rises,
  off_clamped,
  off_free,
  would_halve,
  rises_off_bisector,
  and_others,
  past_without_bending,
  pulls_outwards,
  pressed_inwards,
  the_tip,
  the_spreader,
  no_stay_over,
  swings_at_root,
  fixed_at_root,
  hold_not_stated,
  clamped_one,
  clamped_several,
  ends_one,
  ends_several,
  free_one,
  free_several,
  angle_from,
  stands_upright,
  leans_outboard,
  leans_inboard,
  out_of_plane,
  the_plate,
  plane_of_plate,
  line_to_middle,
  plane_of_ends,
  stands_off,
  would_push,
  on_its_line,
  each_leg,
  one_leg,
  stay_that_ends,
  below_waterline,
  above_waterline,
  from_here_down,
  other_stay,
  none_within,
  too_many_stays,
  no_girth_no_length,
  no_length,
  no_girth,
  goes_through,
  passes_at,
  the_spreaders,
  clear_of,
  too_many_spreaders,
  no_deck_edge,
  on_the_way,
  not_through_deck,
  covers_not_stated,
  no_mast,
  no_stay_on_spar,
  rests_on,
  metres,
  height_of_foretriangle,
  base_of_foretriangle,
  no_sheer,
  end_on_no_mast,
  no_headstay,
  stated_and_points,
  stated_metres,
  points_metres,
};

constexpr PhraseSubject subject_of(GeometryCheckPhrase) {
  return PhraseSubject::geometry_check;
}

std::string_view words(GeometryCheckPhrase phrase);

} // namespace sheerpole
