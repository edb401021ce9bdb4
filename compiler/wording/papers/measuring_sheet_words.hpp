#pragma once

#include "wording/phrase.hpp"

namespace sheerpole {

/// What the measuring sheet asks.
enum class MeasuringSheetPhrase : std::uint16_t {
  aloft,
  below,
  from_middle_one_pin_to,
  from_middle_one_plate_to,
  from_to,
  middle_of_plate,
  middle_of_pin,
  where_the_eye_bears,
  not_to_its_hole,
  over,
  length_first,
  length_second,
  by_tape_cord_laser_or,
  pull_on_it,
  temperature,
  hook_or_cord_end_to,
  hook_or_cord_end_to_plate,
  hoisted_lower_than_pin_by,
  knot_to_pin_below,
  knot_to_plate_below,
  cord_its_colour,
  little_knots_in_its_tail,
  adjuster_stands_at,
  lashing_gap_passes,
  turns_still_to_take,
  aloft_begins,
  below_begins,
  pin_aloft_and_what_secures,
  seen_aloft_no_crack_no,
  measuring_sheet,
  measure_each_stay_twice_from,
  tape_pull_it_as_hard,
  fill_in_measuring_sheet_csv,
  cards_are_in,
  going_aloft_and_loaded_rigging,
  day_by,
  afloat_or_ashore_wind_temperature,
  measuring_sheet_begins,
  rig_file_states_no_stay,
  measuring_sheet_of,
  blanks_for_two_readings_each,
  blank_form_for_measuring_where,
};

constexpr std::string_view table_of(MeasuringSheetPhrase) {
  return "measuring-sheet";
}

std::string_view words(MeasuringSheetPhrase phrase);

} // namespace sheerpole
