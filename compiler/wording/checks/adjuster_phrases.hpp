#pragma once

#include "model/remark.hpp"

#include <string_view>

namespace sheerpole {

/// What the checks on adjusters and lashings say.
enum class AdjusterCheckPhrase : std::uint16_t {
  beyond_shortest,
  beyond_longest,
  shortest_is,
  longest_is,
  write_this,
  set_within,
  thread_in_body,
  at_the_longest,
  to_tighten,
  to_slacken,
  of_thread,
  engagement_not_stated,
  thread_not_stated,
  left_both_ways,
  from_hole,
  in_a_hole,
  set_in_state,
  stowed_is_x,
  its_range,
  taking_up,
  giving_out,
  left_after,
  can_be_made_to_fit,
  too_short,
  too_long,
  hand_of_upper,
  hand_of_lower,
  two_hands,
  handed,
  like_the_other,
  closed_share,
  left_of_range,
  to_tighten_as_set,
  no_bound,
  at_worst,
  give_out,
  take_up,
  alike_on_both_sides,
  load_of_stay,
  break_load_of,
  are_not_stated,
  lacks_of,
  comes_to,
  nothing_to_hold,
  wanted_times,
  holds_what_is_wanted,
  rove_between,
  in_the_knot,
  nothing,
  pins_stay,
  only_pin_here,
  leave_it_in,
};

constexpr PhraseSubject subject_of(AdjusterCheckPhrase) {
  return PhraseSubject::adjuster_check;
}

std::string_view words(AdjusterCheckPhrase phrase);

} // namespace sheerpole
