#pragma once

#include "model/remark.hpp"

#include <string_view>

namespace sheerpole {

/// What the checks on lengths say.
enum class LengthCheckPhrase : std::uint16_t {
  longest_line,
  longest_part,
  its_length_is_x,
  body_is,
  estimate_leaves,
  near_estimate,
  as_estimated,
  write_estimate,
  pin_to_pin_is,
  ropes_splice,
  line_is_a,
  on_a_rope,
  upper_by_path,
  higher,
  no_path,
  is_above,
  by_the_reading,
  as_stated,
  through_the_points,
  way_unknown,
  two_ways,
  comes_out_if,
  or_if,
  one_way,
  x_expected,
  two_sides,
  differs_most,
  alike_within,
  side_is_x,
  came_out_longer,
  came_out_shorter,
  is_then_set,
  nearest_hole_then,
  cannot_be_tightened,
  cannot_be_slackened,
  no_one_adjuster,
  pull_not_counted,
  nothing_to_hold_against,
  batch_of_port_missing,
  batch_of_starboard_missing,
  lacks_input,
  cut_complete,
  comes_out_short,
  comes_out_long,
  comes_out_either,
  piece_cut_complete,
  piece_of,
  on_both_sides,
  assumed_here,
  none_assumed,
  no_one_number,
  no_number_yet,
  several_numbers,
  the_stay,
  quantity_is,
  as_calculated,
  longer_after,
  before,
  shorter_when_set,
  after_splicing,
  longer_when_set,
  from_to,
  length_over_line,
  longest_over_shortest,
  inserted_over_line,
  pitch_over_line,
  seat_over_line,
  pin_over_line,
  thread_over_line,
  eye_over_line,
  run_apart,
  bury_over_line,
  contraction_of_bury,
  stretched_at_break,
  over_this,
  name_is_of_line,
  its_diameter_is,
  its_length_is,
  its_longest_is,
  other_way_assumed,
  and_so_many_more,
  every_piece
};

constexpr PhraseSubject subject_of(LengthCheckPhrase) {
  return PhraseSubject::length_check;
}

std::string_view words(LengthCheckPhrase phrase);

} // namespace sheerpole
