#include "wording/papers/cut_list_words.hpp"

namespace sheerpole {

std::string_view words(CutListPhrase phrase) {
  using enum CutListPhrase;
  switch (phrase) {
  case on_the_centreline:
    return "on the centreline";
  case port_side_left_when_looking:
    return "port side (left when looking forward)";
  case starboard_side_right_when_looking:
    return "starboard side (right when looking forward)";
  case not_given:
    return "not given";
  case runs_free:
    return " (runs free)";
  case clamped:
    return " (clamped)";
  case bare_end:
    return "bare end";
  case splice:
    return ", splice {}";
  case turns:
    return " = {} turns";
  case set_to_mm:
    return "{} set to {} mm";
  case to_tighten_to_slacken:
    return "to tighten {}, to slacken {}";
  case thread_engaged_mm_each_stud:
    return "thread engaged {} mm each stud";
  case is_mm:
    return " ({} is {} mm)";
  case mm_spare_mm_mm:
    return "{} {} mm + spare {} mm = {} mm";
  case cut_lacks_input_so_nothing:
    return "{}; the cut lacks an input, so nothing is shared out yet";
  case nothing_is_shared_out_while:
    return "{}; nothing is shared out while it is a DRAFT";
  case enough_while_x_is_no:
    return "{}; enough while X is no more than {} mm";
  case too_short_by_mm:
    return "{}, TOO SHORT by {} mm";
  case over_least_cut:
    return "{} over the least cut";
  case mm_over_least_cut:
    return "{}, {} mm over the least cut";
  case cut_nothing_all_it_goes:
    return "; CUT NOTHING, all of it goes into the piece";
  case mm_is_cut_away:
    return "; {} mm is cut away";
  case length_that_stack_states_for:
    return "the length that the stack states for this line";
  case gives_mm_so_x_is:
    return "{} gives {} mm, so X is expected at {} mm; for ordering, not to cut by ({})";
  case not_used_gives_mm_one:
    return "{}, not used, gives {} mm; the one used differs by {} mm ({})";
  case not_corrected:
    return "not corrected: {}";
  case cut:
    return "CUT";
  case sum_rows_above_not_to:
    return "the sum of the rows above; not to be cut to";
  case rows_above_are_incomplete:
    return "the rows above are INCOMPLETE";
  case so_far_incomplete:
    return " so far, INCOMPLETE";
  case mm:
    return "mm";
  case how_it_is_known:
    return "   {}{}   how it is known";
  case see_draft_below:
    return "{}, {}; see DRAFT below";
  case mm_of:
    return "{} mm = {}";
  case number_off:
    return "number off";
  case off_equal_within_stated:
    return "2 off: {}, {} (equal within the stated {})";
  case each:
    return "{} (each)";
  case piece_from_aloft:
    return ", piece {} of {} from aloft";
  case one_for_each_side:
    return "one for each side";
  case draft:
    return "DRAFT";
  case state:
    return "state";
  case line:
    return "line";
  case size:
    return "size";
  case path:
    return "path";
  case length_from:
    return "length from";
  case upper_end:
    return "upper end";
  case lower_end:
    return "lower end";
  case buried:
    return "buried";
  case in_hand:
    return "in hand";
  case take_up:
    return "take-up";
  case draft_since:
    return "DRAFT since";
  case the_sum:
    return "the sum";
  case the_sum_of:
    return "the sum, {}";
  case every_piece_to_cut_with:
    return "every piece to cut with its length as a worked sum, ends and take-up";
  case cut_list:
    return "Cut list, {}";
  case cut_list_begins:
    return "Cut list";
  case marks_where_x_is:
    return "marks, where X is";
  case marks:
    return "marks";
  case from_aloft_mm:
    return "from aloft mm";
  case from_below_mm:
    return "from below mm";
  case no_mark:
    return "   no mark: ";
  case by_hand:
    return "   by hand";
  case body:
    return "body";
  case what_ends_use:
    return "what the ends use";
  case what_line_does:
    return "what the line does";
  case cut_capitals:
    return "= CUT";
  case known_to:
    return "   known to   ";
  case to_mm_of_draws_at_worst:
    return "{} mm (95 % of the draws), at worst {} mm; see the proof sheet";
  case accuracy:
    return "   accuracy   ";
  case unknown_no_tolerances:
    return "unknown: no tolerances given";
  case unknown_no_tolerance_for:
    return "unknown: no tolerance given for {}. The rest is known to {}";
  case adjuster_reaches_in_before_creep:
    return "the adjuster reaches in {}, before creep and cold";
  case draft_nothing_that_waits_here:
    return "DRAFT: cut nothing that waits here, for {}";
  case holds_back:
    return "      holds back  ";
  case to_do:
    return "      to do       ";
  case before_you_begin:
    return "Before you begin";
  case these_lengths_follow_from_rig:
    return "These lengths follow from the rig file and nothing else. Nobody has judged whether the rig is "
           "strong enough.";
  case work_aloft_and_work_on:
    return "Work aloft and work on loaded rigging can maim and kill. Take the load off before you undo "
           "anything.";
  case replace_one_stay_at_time:
    return "Replace one stay at a time, and hold the mast in its place by something else meanwhile.";
  case dry_fit_every_piece_on:
    return "Dry-fit every piece on the boat before you cut it. What is cut off cannot be put back.";
  case local_codes_and_licensed_professional:
    return "Local codes and a licensed professional rigger come before this list.";
  case how_to_read_it:
    return "How to read it";
  case pin_to_pin_runs_from:
    return "Pin-to-pin runs from pin centre to pin centre, body from bearing to bearing; cut is the piece "
           "to cut off.";
  case each_row_is_rounded_to:
    return "Each row is rounded to 0.1 mm, halves away from zero. Each total is the sum of the rows above "
           "it as printed. Feet and inches are the total rounded to the nearest 1/16 in.";
  case x_stay_is_length_that:
    return "X(STAY) is the length of that stay, which is not known as a number. Each stay has its own, the "
           "two of a pair too; the first row of its sum says what keeps it.";
  case summary:
    return "Summary";
  case no_off_cut_mm_cut:
    return "no.     off        cut mm  cut ft in           draft  piece; line, size";
  case of:
    return "1 of 2";
  case lines_before_spare:
    return "Lines, before spare";
  case piece:
    return "piece";
  case pieces:
    return "pieces";
  case them_draft_to_order_by:
    return "{}: {} {}, {} of them {}; to order by, not to cut to";
  case no_piece_known_length:
    return "{}: no piece of known length";
  case incomplete:
    return "incomplete";
  case not_in_it_whose_length:
    return "left out: {}, length {}";
  case each_is_sum_printed_cut:
    return "Each is the sum of the printed cut lengths, without spare, loss at the saw or whole spools.";
  case marks_behind:
    return "   marks         ";
  case none_while_it_is_draft:
    return "none while it is a DRAFT";
  case none_until_it_is_settled:
    return "none until its length is settled; the bench card has those for the dry fit";
  case dry_fit:
    return "   dry fit    ";
  case eyes_formed_and_nothing_buried:
    return "eyes formed and nothing buried";
  case ends_laid_beside_line_at:
    return "the ends laid beside the line at their marks";
  case mm_bearing_to_bearing:
    return "{} mm bearing to bearing, {}";
  case mm_mouth_to_mouth:
    return "{} mm mouth to mouth, {}";
  case not_in_it:
    return "   not in it  ";
  case cut_list_capitals:
    return "CUT LIST";
  case there_is_nothing_to_cut:
    return "There is nothing to cut: no stay of this rig has a line.";
  }
  return {};
}

} // namespace sheerpole
