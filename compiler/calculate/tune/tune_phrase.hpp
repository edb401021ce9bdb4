#pragma once

#include "model/remark.hpp"

#include <cstdint>

namespace sheerpole {

/// What is said about how a rig stands at the dock and what its turns do; in English in
/// wording/tune_words.cpp.
enum class TunePhrase : std::uint16_t {
  // What an input is of.
  spar,
  spreader,
  line,
  stay,
  station,
  // What is lacking beyond a property that is not stated.
  no_path,
  no_mast,
  no_stay,
  too_many_stays,
  sort_not_in_model,
  stands_on_spar,
  no_station_at_heel,
  no_station_at_head,
  root_on_no_spar,
  places_are_one,
  no_line_left,
  length_of_part_missing,
  no_tension_known,
  turns_without_screw,
  partners_off_mast,
  stiffness_out_of_range,
  place_out_of_range,
  length_out_of_range,
  cannot_be_worked,
  // How the search for a state ended.
  no_balance,
  something_loose,
  knife_edge,
  ran_away,
  readings_do_not_fit,
  does_not_stand_with,
  // The likeliest slip.
  wrong_hand,
  miscounted_more,
  miscounted_less,
  stands_tighter,
  stands_slacker,
  took_more,
  took_less,
  gauge_of_another_size,
  // Wishes that cannot be looked at.
  wish_of_no_stay,
  wish_without_break_load,
  wish_of_no_mast,
  wish_of_no_place,
  wished_twice,
  // What was taken so, and what is not in the model.
  mast_taken_not_twisting,
  tapered_evenly,
  left_out,
  wedged_in_partners,
  by_dock_tension,
  rake_not_read,
  reading_without_bound,
  earlier_reading,
  readings_of_several_days,
  hardware_is_rigid,
  rests_on_assumed,
  // What is suggested where something is not stated.
  put_in_with_value,
  if_end_is_meant,
  // Which way something loose goes.
  fore_and_aft,
  athwart,
  up_and_down,
};
constexpr PhraseSubject subject_of(TunePhrase) {
  return PhraseSubject::tune;
}

} // namespace sheerpole
