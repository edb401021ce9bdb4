#include "wording/papers/change_sheet_words.hpp"

namespace sheerpole {

std::string_view words(ChangeSheetPhrase phrase) {
  using enum ChangeSheetPhrase;
  switch (phrase) {
  case not_complete:
    return "not complete";
  case is_new:
    return "is new";
  case is_gone:
    return "is gone";
  case pin_to_pin:
    return "pin-to-pin";
  case of:
    return " of {}";
  case was_as_it_came_out:
    return ", was as made";
  case body:
    return "body{}{}";
  case cut:
    return "cut{}";
  case to_tighten:
    return "to tighten";
  case to_slacken:
    return "to slacken";
  case because:
    return "Because";
  case what_is_stated_otherwise:
    return "what the file now says";
  case lengths_mm:
    return "Lengths, mm";
  case length:
    return "length";
  case was:
    return "was";
  case is:
    return "is";
  case change:
    return "change";
  case is_added:
    return "{}{} is added";
  case is_left_out:
    return "{}{} is left out";
  case becomes:
    return "{}{} becomes {}";
  case port_and_starboard_alike:
    return "port and starboard alike";
  case the_stated_length:
    return "the stated length";
  case the_reading:
    return "the reading";
  case the_reading_of:
    return "the reading of {}";
  case because_behind:
    return "; because ";
  case expect_mm_by_points_is:
    return "{}: expect {} mm by the points; {} is older than the change, measure again{}";
  case no_stay_rests_on_so:
    return "No stay rests on {}, so what was set there can change none.";
  case no_stay_has_to_be:
    return "No stay has to be made or set otherwise.";
  case what_has_to_be_made:
    return "What has to be made or set otherwise is known when the stays below have been measured again.";
  case more_of:
    return "{} more of {}";
  case left_over_of:
    return "{} left over of {}";
  case piece:
    return " piece, ";
  case pieces_together:
    return " pieces, together ";
  case not_to_be_cut_to:
    return "{}, not to be cut to";
  case mm_to_cut:
    return "{} mm to cut";
  case as_far_as_it_is:
    return " as far as it is known";
  case it_was:
    return "{}; it was: {} ({})";
  case was_capitals:
    return "WAS";
  case is_capitals:
    return "IS";
  case measure_again:
    return "Measure again";
  case place_moved_under_stay_that:
    return "a place moved under a stay that was measured";
  case stated_otherwise_and_moves_no:
    return "Stated otherwise, and moves no length";
  case what:
    return "what";
  case parts:
    return "Parts";
  case more_or_fewer:
    return "more or fewer";
  case line_to_order:
    return "Line to order";
  case line:
    return "line";
  case findings_that_say_something_else:
    return "Findings that say something else";
  case finding:
    return "finding";
  case findings_that_are_new:
    return "Findings that are new";
  case findings_that_are_gone:
    return "Findings that are gone";
  case because_before:
    return "  because  ";
  case line_behind:
    return "  line     ";
  case change_sheet_of:
    return "Change sheet of {}";
  case from_to:
    return "From {} to {}";
  case new_rig:
    return "New rig: {}";
  case new_rig_begins:
    return "Of the new rig {}.";
  case one_stay_at_time_and:
    return "One stay at a time, and hold the mast by something else meanwhile. Measure a piece under its "
           "tension before you open a splice or cut off a terminal: afterwards you cannot.";
  case what_changes:
    return "What changes";
  case stays_that_are_not_named:
    return "Stays that are not named here stay as they are. The old pieces are taken to be as the old file "
           "says. Local codes and a licensed professional rigger come before this sheet.";
  case change_sheet:
    return "Change sheet";
  case new_rig_of:
    return "new rig: {}";
  case change_sheet_capitals:
    return "CHANGE SHEET   {}";
  case draft:
    return "DRAFT";
  case from:
    return "from  ";
  case to:
    return "to    ";
  case stays_that_are_not_named_here:
    return "Stays that are not named here stay as they are. The old pieces are taken to be as the old file "
           "says. One stay at a time, and hold the mast by something else meanwhile.";
  case measure_again_place_moved_under:
    return "Measure again: a place moved under a stay that was measured";
  case against_another_rig_stays_that:
    return "against another rig: the stays that change, why, and what becomes of their lines";
  }
  return {};
}

} // namespace sheerpole
