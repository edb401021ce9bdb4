#pragma once

#include "model/remark.hpp"

#include <cstdint>

namespace sheerpole {

/// What the comparisons at a joint have to say; in English in wording/joint_words.cpp.
enum class JointPhrase : std::uint16_t {
  from_to,  ///< the name of a joint: its upper and its lower thing
  together, ///< several remarks as one
  // What is lacking.
  end_of_upper_not_stated,
  end_of_lower_not_stated,
  line_end_not_stated,
  dimension_not_stated, ///< the dimension and the type of end that lacks it
  grip_not_stated,
  engaged_not_stated,
  limit_off,
  // What is usual and what is the least, of a ratio.
  usual_and_least,
  usual,
  least,
  // Two ends.
  ends,
  ends_against,
  line_at_end,
  // Jaw and eye.
  pin_in_hole,
  pin_in_bush,
  pin_in_jaw,
  size_of_pin_not_stated,
  pin_has_play,
  pin_plays_too_much,
  hole_of_other_pin,
  plate_in_jaw,
  plate_plays_too_much,
  edge_in_depth,
  edge_from_hole,
  pin_over_cheeks,
  split_pin_in_no_table,
  split_pin_through,
  // Hook and eye.
  eye_in_hook,
  // Tee and slot.
  neck_in_slot,
  head_in_slot,
  head_behind_slot,
  // Stud and socket.
  thread_in_thread,
  hand_in_hand,
  stud_in_body,
  stud_in_depth,
  // An end and the line.
  wire_in_terminal,
  construction_in_terminal,
  rope_in_groove,
  groove_at_most,
  seat_over_rope,
};

constexpr PhraseSubject subject_of(JointPhrase) {
  return PhraseSubject::joint;
}

} // namespace sheerpole
