#pragma once

#include "model/remark.hpp"

#include <cstdint>

namespace sheerpole {

/// What the calculations of strength have to say; in English in wording/strength_words.cpp.
enum class StrengthPhrase : std::uint16_t {
  // The names of things.
  named,
  splice_aloft,
  splice_below,
  end_aloft,
  end_below,
  line_aloft,
  line_below,
  cord_of,
  pin_of,
  hole_of,
  jaw_of,
  jaw_at,
  the_limits,
  // How a link holds what it holds.
  as_stated,
  as_stated_in_double_shear,
  double_shear,
  splice_share,
  lashing_sum,
  one_pass,
  several_passes,
  one_leg,
  several_legs,
  bearing_sum,
  // Properties that a link lacks.
  break_load,
  splice,
  efficiency,
  cord,
  passes,
  knot_factor,
  lashing_legs,
  pin_strength,
  pin,
  bearing_stress,
  thickness,
  // A stay on a cold day.
  not_stated,
  stiffness_not_stated,
  length_unknown,
  no_length_of_line,
  cold_loss_sum,
  // Screening: where the methods are from.
  published_share,
  published_equilibrium,
  // Screening: the numbers taken and where they are from.
  height_above_waterline,
  out_to,
  above,
  of_boat_at,
  of_boat_at_no_angle,
  from_middle_to,
  // Screening: what is lacking, and what the method does not hold for.
  boat_moment_at_other_angle,
  boat_moment_at_no_angle,
  no_half_beam,
  not_above_waterline,
  chainplate_in_middle,
  line_would_push,
  on_centreline,
  no_path,
  chainplate_not_outboard,
  leads_fore_or_aft,
  not_a_tip,
  spreader_swept,
  off_the_line,
  no_diagonal,
  diagonal_fore_or_aft,
  diagonal_to_other_tip,
  diagonal_to_other_plate,
  begins_higher,
  // Screening: results and how they came about.
  total_across,
  total_across_sum,
  load_of,
  load_sum,
  break_load_asked,
  break_load_sum,
  side_force_at,
  side_force_sum,
  compression_of,
  lines_from_to,
  from_upright,
  diagonal_from_to,
  to_the_mast,
  compression_below,
  side_force_alone,
  pull_on,
  upwards,
  moment,
  about_height,
  panel,
  partners,
  heel,
  // Screening: what was taken for granted.
  taken_for_granted,
  lengths_across,
  not_used
};

constexpr PhraseSubject subject_of(StrengthPhrase) {
  return PhraseSubject::strength;
}

} // namespace sheerpole
