#pragma once

#include "model/remark.hpp"

#include <string_view>

namespace sheerpole {

/// What the checks on securing, swinging and bearing say.
enum class SecuringCheckPhrase : std::uint16_t {
  split_pin,
  pin_not_stated,
  its_pin,
  threads_not_stated,
  nothing_to_mast,
  carries_a_sail,
  goes_between,
  the_deck,
  and_where,
  nothing_above,
  lets_it_swing,
  slot_not_stated,
  parallel_pins,
  metal_to_metal,
  metal_not_stated,
  open_body,
  closed_with_holes,
  can_be_looked_at,
  foil_not_stated,
  tip_of,
  edge_of,
  radius_not_stated,
  radius_under_rope,
  rope_bears,
  the_radius,
  which_line,
  made_for,
  on_a_part_made_for,
  at_the_tip_of,
  bore_not_stated,
  length_not_measured,
  seat_not_stated,
  crown_beyond_pin,
  write_negative_length,
  its_length,
  this_joint,
};

constexpr PhraseSubject subject_of(SecuringCheckPhrase) {
  return PhraseSubject::securing_check;
}

std::string_view words(SecuringCheckPhrase phrase);

} // namespace sheerpole
