#pragma once

#include "wording/phrase.hpp"

namespace sheerpole {

/// What the change sheet says.
enum class ChangeSheetPhrase : std::uint16_t {
  not_complete,
  is_new,
  is_gone,
  pin_to_pin,
  of,
  was_as_it_came_out,
  body,
  cut,
  to_tighten,
  to_slacken,
  because,
  what_is_stated_otherwise,
  lengths_mm,
  length,
  was,
  is,
  change,
  is_added,
  is_left_out,
  becomes,
  port_and_starboard_alike,
  the_stated_length,
  the_reading,
  the_reading_of,
  because_behind,
  expect_mm_by_points_is,
  no_stay_rests_on_so,
  no_stay_has_to_be,
  what_has_to_be_made,
  more_of,
  left_over_of,
  piece,
  pieces_together,
  not_to_be_cut_to,
  mm_to_cut,
  as_far_as_it_is,
  it_was,
  was_capitals,
  is_capitals,
  measure_again,
  place_moved_under_stay_that,
  stated_otherwise_and_moves_no,
  what,
  parts,
  more_or_fewer,
  line_to_order,
  line,
  findings_that_say_something_else,
  finding,
  findings_that_are_new,
  findings_that_are_gone,
  because_before,
  line_behind,
  change_sheet_of,
  from_to,
  new_rig,
  new_rig_begins,
  one_stay_at_time_and,
  what_changes,
  stays_that_are_not_named,
  change_sheet,
  new_rig_of,
  change_sheet_capitals,
  draft,
  from,
  to,
  stays_that_are_not_named_here,
  measure_again_place_moved_under,
  against_another_rig_stays_that,
};

constexpr std::string_view table_of(ChangeSheetPhrase) {
  return "change-sheet";
}

std::string_view words(ChangeSheetPhrase phrase);

} // namespace sheerpole
