#include "wording/papers/rig_words.hpp"

namespace sheerpole {

std::string_view words(RigPhrase phrase) {
  using enum RigPhrase;
  switch (phrase) {
  case no_source_given:
    return "no source given";
  case boat_fitting:
    return "boat fitting";
  case of_the:
    return " of the {}";
  case at_the:
    return "at the {}";
  case plate:
    return "plate";
  case aloft:
    return "aloft";
  case spar:
    return "spar";
  case deck:
    return "deck";
  case at_deg_carries:
    return "{} at {} deg carries {}";
  case at_tension:
    return "At the {}, of the tension of {}: {}.";
  case is_still_held_by:
    return "The {} is still held {} by {}{}.";
  case little_of_their_pull:
    return " Little of their pull goes that way: add a halyard.";
  case up_to_above_waterline:
    return ", up to {} m above the waterline. Above that nothing holds it that way; whether the mast bears "
           "that is "
           "not worked out";
  case the:
    return "The";
  case then_the:
    return "Then the";
  case else_word:
    return "else ";
  case is_held_by_nothing_above:
    return "{} {} is held {} by nothing {}above half of its height: it can fall {}.";
  case off:
    return "off";
  case none_stated:
    return "none stated";
  case layer:
    return "layer {}";
  case sister_ship:
    return "sister ship";
  case command_line:
    return "command line";
  case shop:
    return "shop {}";
  case bench_cards:
    return "bench cards";
  case millimetres:
    return "millimetres";
  case rounded_to:
    return ", rounded to {}";
  case one_run:
    return "one run";
  case mean_of_runs:
    return "mean of {} runs";
  case to:
    return "{} to {}";
  case open:
    return "{}, {} open";
  case gap:
    return ", gap ";
  case set_to:
    return ", set to ";
  case line_of:
    return "line {} of {}";
  case tape_standard:
    return "tape standard";
  case tape_temperature:
    return "tape temperature";
  case tape_pull:
    return "tape pull";
  case tape_sag:
    return "tape sag";
  case hook_offset:
    return "hook offset";
  case cord_offset:
    return "end of the cord to the pin";
  case hoist_offset:
    return "hoist offset";
  case stretch_old_stay:
    return "stretch of the old stay";
  case mark_knot:
    return "mark of the knot";
  case below_the_knot:
    return "below the knot";
  case pin_to_pin_as_stated:
    return "pin-to-pin as stated";
  case length_as_stated:
    return "length as stated";
  case body:
    return "body";
  case stretch_from_bench_to_dock:
    return "stretch from bench to dock";
  case less_stretch_where_it_is:
    return "less stretch where it is spliced";
  case bedding_to_come:
    return "bedding to come";
  case eye_allowance:
    return "eye allowance";
  case bury:
    return "bury";
  case spare_bury:
    return "spare bury";
  case tail_to_trim:
    return "tail to trim";
  case contraction:
    return "contraction";
  case contraction_over_spare_bury:
    return "contraction over the spare bury";
  case contraction_given_back:
    return "contraction given back";
  case inserted:
    return "inserted";
  case rounding_rows:
    return "rounding of the rows";
  case cut_end:
    return "cut end {}";
  case mouth_terminal:
    return "mouth of the terminal {}";
  case crown_of_loop:
    return "bearing of the eye {}";
  case trim_the_tail:
    return "trim the tail {}";
  case taper_begins:
    return "taper begins {}";
  case throat_on_tail:
    return "throat {}, on the tail";
  case throat_on_standing_part:
    return "throat {}, on the standing part";
  case tail_comes_out:
    return "tail comes out {}";
  case stays_as_it_is:
    return "stays as it is";
  case hangs_as_it_is:
    return "hangs as it is";
  case can_be_remade:
    return "can be remade";
  case is_to_be_replaced:
    return "is to be replaced";
  case is_new:
    return "is new";
  case comes_off:
    return "comes off";
  case not_checked:
    return "not checked";
  case mm_forward:
    return "10 mm forward";
  case mm_to_starboard:
    return "10 mm to starboard";
  case mm_up:
    return "10 mm up";
  case deg_further_aft:
    return "1 deg further aft";
  case deg_further_up:
    return "1 deg further up";
  case mm_longer:
    return "10 mm longer";
  case set_mm_longer:
    return "set 10 mm longer";
  case one_diameter:
    return "one diameter";
  case diameters:
    return "{} diameters";
  case of_the_diameter:
    return "{} of the diameter";
  case no_least_engagement:
    return "no least engagement";
  case the_cord:
    return "the cord";
  case the_old_stay:
    return "the old stay";
  case a_reading:
    return "a reading";
  case as_stated:
    return "as stated";
  case by_measured_points:
    return "by measured points";
  case in_place:
    return "in place";
  case by:
    return "by {}";
  case to_behind:
    return " to {}";
  case confirmed_by_second_run:
    return "confirmed by a second run{}";
  case confirmed_by_stated_length:
    return "confirmed by the stated length{}";
  case confirmed_by_measured_points:
    return "confirmed by measured points{}";
  case of:
    return " of {},";
  case confirmed_by_dry_fit:
    return "confirmed by the dry fit{}{}";
  case on:
    return " on {}";
  case confirmed_cord_came_to_same:
    return "confirmed: the cord gave the same mark{}";
  case confirmed_by:
    return "confirmed by {}{}{}";
  case from_drawing_not_measured_in:
    return "FROM DRAWING: not measured in place; ";
  case not_measured_nothing_was_read:
    return "NOT MEASURED: nothing was read in place; order by it and cut nothing";
  case from_drawing:
    return "; FROM DRAWING, ";
  case not_yet_this_is_draft:
    return "NOT YET: this is a DRAFT, cut nothing{}";
  case on_record_cut_no_second:
    return "ON RECORD: cut no second one";
  case measured_once_measure_again_before:
    return "MEASURED ONCE: {}; measure again before you cut";
  case ways_differ_measure_again:
    return "WAYS DIFFER: {}; {}. Measure again before you cut";
  case ready_length_its_own_as:
    return "READY: a length of its own, as stated";
  case ready_measured:
    return "READY: measured {}; {}";
  case ways_differ_find_out_why:
    return "WAYS DIFFER: measured {}; {}; {}. Find out why before you cut";
  case stated_length_gives:
    return "the stated length gives {} {}";
  case its_points_give:
    return "its points give {} {}";
  case more:
    return "more";
  case less:
    return "less";
  case on_record:
    return "ON RECORD";
  case from_bearing_to_bearing:
    return ", {} from bearing to bearing";
  case cut_no_second_one:
    return "{}. Cut no second one";
  case an_older_one:
    return "an older one";
  case another_one_is_stated_to:
    return "another is stated to count";
  case agrees_with_one_used:
    return "agrees with the one used";
  case contradicts_one_used_no_date:
    return "CONTRADICTS the one used: no date tells which is later";
  case this_cord:
    return "this cord";
  case the_cord_used:
    return "the cord used";
  case cannot_be_compared_has_no:
    return "cannot be compared: {} has no number";
  case rectangular:
    return "rectangular";
  case triangular:
    return "triangular";
  case normal_bound_two_standard:
    return "normal, the bound two standard uncertainties";
  case mean_repeated_readings:
    return "mean of repeated readings";
  case forward:
    return "forward";
  case aft:
    return "aft";
  case to_port:
    return "to port";
  case to_starboard:
    return "to starboard";
  case of_of:
    return "{} of {}";
  case an:
    return "an {}";
  case below:
    return "below";
  case and_word:
    return " and ";
  case or_word:
    return " or ";
  case a_thing:
    return "a {}";
  case state_not_measured:
    return "not measured";
  case state_not_yet:
    return "not yet";
  case state_measured_once:
    return "measured once";
  case state_ready:
    return "ready";
  case state_ways_differ:
    return "whose ways differ";
  case state_on_record:
    return "on record";
  case stamp_not_measured:
    return "NOT MEASURED";
  case stamp_measured_once:
    return "MEASURED ONCE";
  case stamp_ready:
    return "READY";
  case stamp_ways_differ:
    return "WAYS DIFFER";
  }
  return {};
}

} // namespace sheerpole
