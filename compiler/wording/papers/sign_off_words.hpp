#pragma once

#include "wording/phrase.hpp"

namespace sheerpole {

/// What the sign-off sheets say.
enum class SignOffPhrase : std::uint16_t {
  pin,
  pin_shackle,
  split_pin,
  stud_in_its_thread,
  hook,
  tee_in_its_slot,
  lashing_passes,
  lashing_or_lanyard_passes,
  eye,
  eye_spliced_or_seized,
  terminal_look_for_crack_broken,
  sleeve_look_for_crack_broken,
  wire_eye_look_at_tucks,
  nothing_to_secure,
  bow_shackle,
  not_stated_pin,
  line,
  what_it_hangs_on_to,
  to_what_holds_it,
  soft_eye_round_what_it,
  lashing_or_lanyard,
  right_and_left_hand,
  thread,
  thread_of,
  not_reached_or_not_seen,
  looked_at_by_day,
  looked_at_second_time_by,
  aloft,
  in_the_stay,
  below,
  place,
  stay,
  joint,
  what,
  secured_by,
  in,
  secured,
  again,
  on_no_mast_file,
  the,
  pin_word,
  pins,
  none,
  of_them_unknown,
  sign_off_joints_and_threads,
  sign_off,
  pieces_of_line,
  joints,
  every_joint_and_thread_from,
  aloft_two_lines_harness_second,
  rig_file_states_no_joint,
  line_in_place_what_secures,
  sign_off_of,
  every_joint_and_thread_with,
  one_stay_at_time,
  one_stay_at_time_capitals,
  number_stays_in_order_in,
  mast_that_has_lost_one,
  order,
  held_meanwhile_by,
  tight,
  old_off,
  new_on,
  pinned,
  rig_file_states_no_stays,
  compare_each_old_stay_with,
  local_codes_and_licensed_professional,
  replacing_stays,
  one_stay_at_time_with,
  sign_off_begins,
  every_joint_and_thread_to,
};

constexpr std::string_view table_of(SignOffPhrase) {
  return "sign-off";
}

std::string_view words(SignOffPhrase phrase);

} // namespace sheerpole
