#include "wording/papers/tables_words.hpp"

namespace sheerpole {

std::string_view words(TablesPhrase phrase) {
  using enum TablesPhrase;
  switch (phrase) {
  case take_up_how_far_every:
    return "Take-up: how far every adjuster can go from where it is set";
  case negative_amount_adjuster_is_set:
    return "A negative amount: the adjuster is set beyond its range.";
  case how_much_thread_is_to:
    return "How much thread is to be engaged is stated in the rig's own limits.";
  case least_engaged_one_diameter_thread:
    return "Least engaged: one diameter of thread; 1.25 of stainless, bronze and titanium, 2 of aluminium, "
           "where the part states its metal (common practice, no source).";
  case account_every_adjuster:
    return "The account of every adjuster";
  case creep_amount_that_date_counts:
    return "Of creep the amount of that date counts, of the coldest and the warmest day the worse.";
  case what_has_stretched_is_not:
    return "What has stretched is not counted as room to slacken: it may not have come yet.";
  case incomplete_entry_is_not_known:
    return "INCOMPLETE: an entry is not known and counts as nothing, so less may be left.";
  case as_set:
    return "as set";
  case not_checked:
    return "not checked: {}";
  case left_at_first_fit:
    return "left at first fit";
  case incomplete:
    return "INCOMPLETE";
  case left_after:
    return "left after {}";
  case not_checked_colon:
    return "not checked: ";
  case has_no_pin:
    return "{} has no pin";
  case does_not_fit:
    return "{} does not fit{}";
  case fits:
    return "{} fits{}{}";
  case nothing_swings_both_ways:
    return "nothing swings both ways {}";
  case and_word:
    return " and ";
  case out:
    return " out";
  case more:
    return " more";
  case by_adjuster_alone:
    return "by the adjuster alone";
  case play_what_taking_parts_out:
    return "Play: what taking parts out and putting parts in adds to the adjusters";
  case from_how_stay_is_set:
    return "From how the stay is set now. A row whose joints do not fit is not in the sum.";
  case all_of_them:
    return "all of them";
  case lines_in_hand_which_parts:
    return "Lines in hand: which parts and which setting make them fit";
  case to_fill_by_added_parts:
    return "To fill: by the added parts and the adjuster together. Fewest parts first, then the setting "
           "nearest the middle of the wanted band.";
  case what_stacks_use_is_not:
    return "What the stacks use is not in hand any more, and what one stay takes is not offered to the "
           "next.";
  case nothing:
    return "nothing";
  case mm_too_short:
    return " mm too short";
  case mm_too_long:
    return " mm too long";
  case none_fits_nearest_is:
    return "none fits; the nearest is {}{}";
  case temperature_what_each_stay_gains:
    return "Temperature: what each stay gains or loses, from how it is set up";
  case slack_above_nothing_stay_hangs:
    return "Slack, positive: slacker. Negative: tighter.";
  case take_up_slack_against_what:
    return "Of the take-up: slack against what can be tightened, tightening against what can be slackened.";
  case spars_grow_along_their_axis:
    return "Spars grow along their axis from the heel; hull and hardware are left as they are.";
  case tension_as_read_and_sag:
    return "Tension as read, and sag at the dock tension";
  case swing_or_pulse_reads_high:
    return "A swing or a pulse reads high in a short or stiff line; its error counts twice.";
  case not_checked_word:
    return "not checked";
  case mm_deep_over_mm_mm:
    return "{} mm deep over {} mm, {} mm longer";
  case pass_findings_not_checked_waived:
    return "{} pass, {} findings, {} not checked, {} waived.";
  case checks_how_often_each_passed:
    return "Checks: how often each passed, found something or was not checked";
  case not_checked_something_is_not:
    return "Not checked: something is not stated, which is no pass. A check that is not listed had nothing "
           "to check.";
  case results_what_every_check_came:
    return "Results of every check, one row for each thing checked";
  case limits_thresholds_checks:
    return "Limits: the thresholds of the checks";
  case rig_file_sets_limit_or:
    return "A rig file sets a limit, or switches it off, in its block `limits`.";
  case sources_and_meanings_are_in:
    return "Sources and meanings are in docs/calculations/thresholds.md.";
  case draft:
    return "DRAFT";
  case draft_incomplete:
    return "DRAFT, incomplete";
  case lengths_stays_by_each_way:
    return "Lengths of the stays, by each way";
  case each_row_sum_is_rounded:
    return "Each row of a sum is rounded to 0.1 mm; a total is the sum of its rounded rows.";
  case pieces_to_cut:
    return "Pieces to cut";
  case from_drawing:
    return ", from drawing";
  case marks_on_bench_from_one:
    return "Marks on the bench, from one zero and from the other end";
  case line_lies_straight_under_its:
    return "The line lies straight under its bench tension, before anything is opened.";
  case dry_fit_bearing_to_bearing:
    return "Dry fit: bearing to bearing with both eyes formed and nothing buried.";
  case draft_not_to_be_cut:
    return "DRAFT: not to be cut to";
  case draft_incomplete_cut_lacks_input:
    return "DRAFT, incomplete: the cut lacks an input";
  case measure_again_not_to_be_cut:
    return "MEASURE AGAIN: for the dry fit, not to be cut to";
  case dry_fit:
    return "dry fit";
  case not_known:
    return "not known";
  case readings_what_became_what_was:
    return "Readings: what became of what was read";
  case total_is_sum_its_rows:
    return "The total is the sum of its rows as printed.";
  case pin_to_pin:
    return "= pin-to-pin";
  case not_corrected:
    return "not corrected";
  case likely_slip:
    return "likely slip";
  case leaves_mm:
    return "leaves {} mm";
  case line_each_stay_against_one:
    return "The line of each stay against the one before";
  case ratios_new_over_old_kg:
    return "Ratios: the new over the old. kg m less: moment that is gone, about the lowest point of the "
           "path.";
  case what_became_pieces_bearing_to:
    return "What became of the pieces, bearing to bearing in mm";
  case nothing_has_been_written_down:
    return "Nothing has been written down of any piece.";
  case wanted_what_piece_was_to:
    return "Wanted: what the piece was to be at that stage. On the bench it is shorter by what the line "
           "stretches on the boat; before it has settled, by what its splices give back later.";
  case under_pull_that_is_not:
    return "* under a pull that is not counted: the stiffness of the line or its tension is not stated.";
  case the_boat:
    return "the boat";
  case reading_of:
    return "reading of {}";
  case position_of_in:
    return "position of {} in {}";
  case of:
    return " of ";
  case finding_of:
    return "finding of {}, {}";
  case piece_of_as:
    return "piece of {} as {}";
  case stated_for_record:
    return "Stated for the record";
  case no_length_check_or_order:
    return "No length, check or order rests on these.";
  case nothing_is_stated_for_record:
    return "Nothing is stated for the record alone.";
  case too_short_by_at:
    return "too short by {} at {}";
  case slack_from:
    return "slack from {}";
  case line:
    return "line";
  case points_boat_axes_from_waterline:
    return "Points, boat axes from the waterline under the mast";
  case parts:
    return "Parts";
  case stacks_from_aloft_to_deck:
    return "Stacks, from aloft to deck";
  case fittings_boat_take_no_length:
    return "Fittings of the boat take no length: pin-to-pin begins and ends at their pins.";
  case states_rig_adjusters_that_move:
    return "States of the rig: adjusters that move, stays that are made off elsewhere or lowered, in mm";
  case let_go:
    return "let go";
  case no_state_moves_anything:
    return "No state moves anything.";
  case needs_straight_from_its_upper:
    return "Needs: straight from its upper pin to where it is made off. Slack: what hangs loose, with a "
           "lowered spar at the end of its way; a minus says that it is too short.";
  case inspection_log_in_order_files:
    return "Inspection log, in the order of the files";
  case whole_stay:
    return "whole stay";
  case nothing_has_been_written_down_begins:
    return "Nothing has been written down.";
  case values_stated_over_others_in:
    return "Values stated over others, in the order in which they take effect";
  case not_stated:
    return "not stated";
  case layer:
    return "layer {}: {}";
  case sister_ship_of:
    return "sister ship of {}";
  case nothing_is_stated_over_anything:
    return "No value is stated over another.";
  case not_stated_colon:
    return "not stated: ";
  case weakest_known:
    return "weakest known";
  case meant_to_be:
    return "meant to be: ";
  case as_stated:
    return "as stated";
  case weakest_known_holds_times_it:
    return "the weakest known holds {} times it";
  case worked_out:
    return "worked out";
  case strength_what_each_link_stay:
    return "Strength: what each link of a stay holds, from aloft to deck";
  case stay_holds_no_more_than:
    return "A stay holds no more than its weakest link. What is not stated is never taken for strong.";
  case threads_cheeks_jaws_and_bend:
    return "Threads, the cheeks of jaws and the bend of a rope round its seat are not in it.";
  case loads_by_screening_no_rig:
    return "Loads by screening: no rig is sized by them";
  case this_screens_and_does_not:
    return "This screens and does not size a rig: what it has to carry is for licensed practice to decide.";
  case no_load_screening_is_stated:
    return "No load-screening is stated.";
  case joints_what_was_compared_where:
    return "Joints: what was compared where two things meet";
  case pass_findings_not_checked:
    return "{} pass, {} findings, {} not checked.";
  case not_checked_dimension_is_not:
    return "Not checked: a dimension is not stated, which is no pass. Negative play: so much is lacking.";
  case thread_engaged_at_longest_of:
    return "thread engaged at longest of {}";
  case contraction_given_back_of:
    return "contraction given back of {}";
  case pin_to_pin_of:
    return "pin-to-pin of {}";
  case thread_of:
    return "thread of {}";
  case opening_of:
    return "opening of {}";
  case setting_of:
    return "setting of {}";
  case length_of:
    return "length of {}";
  case spare_bury_at:
    return "spare bury at {}";
  case rope_in_hand_for:
    return "rope in hand for {}";
  case rope_in_hand_beyond_the_cut_of:
    return "rope in hand beyond the cut of {}";
  case point:
    return "point {}";
  case rule:
    return "rule {}";
  case limit:
    return "limit {}";
  case the_expected_of:
    return "the {} expected of {}";
  case finding_of_of:
    return "finding of {}";
  case of_of:
    return "{} of {}";
  case of_end_of:
    return "{} of {} end of {}";
  case run:
    return "{}, run {}";
  case cord_on_bench:
    return "{}, cord on the bench {}";
  case in:
    return "{} in {}";
  case as:
    return "{} as {}";
  case every_number_rig_files_and:
    return "Every number of the rig files and where it is from";
  case shows_points:
    return "every point with x, y, z and how it is known";
  case shows_lengths:
    return "pin-to-pin, hardware and body of every stay, each way to the length";
  case shows_pieces:
    return "every piece to cut: line, body and cut length";
  case shows_take_up:
    return "how far every adjuster can go both ways";
  case shows_marks:
    return "bench marks of every piece from both ends, and the dry fit";
  case shows_readings:
    return "what was read, each correction, and what could not be corrected";
  case shows_uncertainty:
    return "how well each cut is known: worst case, law of propagation, draws";
  case shows_measure_next:
    return "the inputs that make a cut uncertain, the largest share first";
  case shows_sensitivity:
    return "how far each stay moves for 10 mm of a point, a degree of a spar, 10 mm of a part";
  case shows_temperature:
    return "what each stay gains or loses from -10 to +40 degC";
  case shows_account:
    return "what each adjuster has left after bedding-in, creep, cold and heat";
  case shows_tension:
    return "tension as read by a gauge or from a swing, a pulse or a stretch; sag";
  case shows_standing:
    return "how the rig stands at the dock: tension of every stay, head and bend of every mast";
  case shows_tune:
    return "what one turn tighter on each adjuster does to every stay and mast";
  case shows_turns:
    return "the turns that bring what is wished for, in order";
  case shows_days:
    return "tension on the coldest and the warmest day, and after bedding-in and creep";
  case shows_tune_inputs:
    return "what the balance of the rig rests on, and what is lacking for it";
  case shows_tune_doubt:
    return "how far each number of `standing` may be off: worst case, law of propagation, draws";
  case shows_replaced:
    return "the line of each stay against the one before";
  case shows_fits:
    return "parts in hand and a setting with which a line fits";
  case shows_play:
    return "what parts that can be taken out or put in add to the adjusters";
  case shows_joints:
    return "what was compared where two things meet";
  case shows_strength:
    return "what each link of a stay holds, and the weakest that is known";
  case shows_loads:
    return "loads of shrouds and mast by named screening methods";
  case shows_checks:
    return "how often each check passed, found something or was not checked";
  case shows_results:
    return "the result of every check, one row for each thing checked";
  case shows_limits:
    return "the thresholds of the checks, what they rest on and what this rig sets";
  case shows_stack:
    return "every stack from aloft to deck with running distances";
  case shows_parts:
    return "the hardware: length or range, ends, source";
  case shows_states:
    return "how adjusters are set in the states of the rig";
  case shows_differences:
    return "values that a layer, a sister ship or the command line states over others";
  case shows_made:
    return "what became of each piece: as made, fitted and settled, against what was wanted";
  case shows_inspections:
    return "what was found at inspections, when and by whom";
  case shows_record:
    return "what is stated for the record: no length, check or order rests on it";
  case shows_sources:
    return "every number of the rig files with its source";
  }
  return {};
}

} // namespace sheerpole
