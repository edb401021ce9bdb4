#include "wording/papers/bench_card_words.hpp"

namespace sheerpole {

std::string_view words(BenchCardPhrase phrase) {
  using enum BenchCardPhrase;
  switch (phrase) {
  case accuracy_unknown_no_bound_is:
    return "Accuracy unknown: no tolerances given.";
  case at_worst:
    return "{} / +{} at worst";
  case known_to:
    return "Known to {}.";
  case accuracy_unknown_no_bound_for:
    return "Accuracy unknown: no tolerance given for {}. The rest is known to {}.";
  case from_aloft:
    return "From aloft";
  case from_aloft_to_below:
    return "From aloft, {}, to below, {}";
  case not_in_cut:
    return "Not included in the cut: {}.";
  case not_counted_in_how_well:
    return "Not counted in how well X is known: ";
  case reading_is_not_corrected_for:
    return "The reading is not corrected for: ";
  case both:
    return "both, ";
  case aloft:
    return "aloft, ";
  case below:
    return "below, {}";
  case eyes:
    return "Eyes: {}.";
  case for_the_line:
    return " {} for the line";
  case by_hand_body_for_ends:
    return "By hand: body {} {} for the ends{} = {}.";
  case zero_at_cut_end_aloft:
    return "; zero at the cut end aloft";
  case lengths_in:
    return "Lengths in {}{}.{}{}";
  case no_mark:
    return "No mark: {}";
  case before_anything_is_opened:
    return "Before anything is opened";
  case before_the_cut:
    return "Before the cut";
  case what_may_be_done_now:
    return "What may be done now";
  case loaded_line_and_loaded_terminal:
    return "A loaded line or terminal can maim. Replace one stay at a time, and hold the mast by something "
           "else meanwhile. This card follows from the rig file alone: nobody has judged whether the rig "
           "is strong enough. Local codes and a licensed professional rigger come before it.";
  case draft:
    return " DRAFT";
  case measure_again:
    return " MEASURE AGAIN";
  case bench_card:
    return "Bench card {}{}";
  case bench_card_of:
    return "Bench card of {}";
  case what_to_mark_on_this:
    return "What to mark on this piece, in which order to make it, and where to sign.";
  case bench_cards:
    return "Bench cards";
  case page_for_each_piece_marks:
    return "a page for each piece: marks from one zero, the order of work, where to sign";
  case port:
    return "PORT";
  case starboard:
    return "STARBOARD";
  case centreline:
    return "CENTRELINE";
  case draft_not_for_cutting:
    return "DRAFT, NOT FOR CUTTING";
  case measure_again_not_for_cutting:
    return "MEASURE AGAIN, NOT FOR CUTTING";
  case bench_card_from_cord:
    return "BENCH CARD FROM THE CORD";
  case bench_card_capitals:
    return "BENCH CARD";
  case piece_from_aloft:
    return ", piece {} of {} from aloft";
  case spool:
    return "spool";
  case batch:
    return "batch";
  case job:
    return "job";
  case cut:
    return "CUT";
  case draft_capitals:
    return "DRAFT";
  case it_waits_for:
    return "Held back for {}.";
  case what_settles_each_is_named:
    return "What settles each is named below. Cut nothing to its lengths.";
  case already_cut_was:
    return "ALREADY CUT, WAS";
  case cut_nothing_use:
    return "CUT NOTHING, USE";
  case dry_fit_nothing_buried:
    return "dry fit, nothing buried";
  case dry_fit_nothing_closed:
    return "dry fit, nothing closed";
  case dry_fit_end_below_not_closed:
    return "dry fit, end below not closed";
  case not_known:
    return "not known";
  case as_long_as_body:
    return "as long as the body";
  case to_go_in_splices:
    return "{} to go in the splices";
  case to_come_by_stretch:
    return "{} to come by stretch";
  case for_the_ends:
    return "{} for the ends";
  case ends_line:
    return "{} ends, {} line";
  case body_bearing_to_bearing:
    return "body, bearing to bearing";
  case body_mouth_to_mouth:
    return "body, mouth to mouth";
  case state:
    return "state";
  case ready:
    return "READY";
  case under_n:
    return "under {} N";
  case straight_and_hand_tight:
    return "straight and hand-tight";
  case set_splices_at_kn_as:
    return "Set the splices at {} kN, as the test splice was. Load and time:";
  case load_splices_as_test_splice:
    return "Load the splices as the test splice was loaded: no setting load is given. Load and time:";
  case make_marks_to_with_one:
    return "Make marks 1 to {} with one tape, zero at mark 1, the cut end aloft.";
  case check_every_mark_from_mark:
    return "Check every mark from mark {}. The two columns add up to {}.";
  case check_every_mark_alike:
    return "Check every mark from mark {}: its two columns add up to the same everywhere.";
  case pulled_with_n_as_it:
    return "pulled with {} N, as it was aloft";
  case pulled_as_hard_as_it:
    return "pulled as hard as it was aloft";
  case at_mark:
    return "at mark {}";
  case past:
    return "past";
  case inside:
    return "inside";
  case mark_is_it:
    return "mark {} is {} {} it";
  case its_terminal:
    return "its terminal";
  case close_end_aloft_first_mark:
    return "Close the end aloft first. Mark {} from its end, push the {} into {} up to the mark, "
           "close it, and see that the mark has gone in. From now on measure from its mouth, mark 2.";
  case close_no_terminal_yet:
    return "Close no terminal yet. The cord is laid along the {} when its end aloft is closed.";
  case at_u:
    return "at U";
  case mouth_closed_terminal:
    return "the mouth of the closed terminal";
  case mark_cut_end_aloft:
    return "mark 1, the cut end aloft,";
  case lay_cord_along_it_pin:
    return "Lay the cord along it, {}. Pin {} {}.";
  case pass_every_mark_from_bold:
    return "Pass 1: every mark from the bold column, from U or from L. A pin in each.";
  case pass_take_cord_up_pin:
    return "Pass 2: take the cord up, pin L first ({}), lay out again. More than {} apart: a third pass, "
           "the middle one counts.";
  case to:
    return "{} to {}";
  case check_the_halves:
    return "Check the halves. ";
  case seize_the_eyes:
    return "{}Seize the eyes.";
  case both_eyes:
    return "both eyes";
  case the_eyes:
    return "the eyes";
  case bring_seize:
    return "{}Bring {}, seize {}.";
  case nothing_cut_or_buried:
    return "nothing cut or buried";
  case nothing_cut_end_below_not:
    return "nothing cut, the end below not closed";
  case nothing_cut_or_closed:
    return "nothing cut or closed";
  case dry_fit_hang_it_dry:
    return "{}Dry fit, {}. {}";
  case dry_fit_from_bearing_to:
    return "{}Dry fit, {}: {} {}. {}";
  case from_bearing_to_bearing:
    return "from bearing to bearing";
  case from_mouth_to_mouth:
    return "from mouth to mouth";
  case hang_it_dry_fit_card:
    return "Hang it: dry-fit card.";
  case hang_it_once_mast_is_up:
    return "With the mast up, hang it: dry-fit card. With no mast up, sign for that instead: the drawing "
           "alone then holds the length.";
  case part_it_from_its_spool:
    return "Cut the line off its spool past mark {}, not at it.";
  case part_it_well_beyond:
    return "Take the line off its spool well past mark {}.";
  case hang_it_on_mast_as_it_lies:
    return "Hang it on the mast as it lies: dry-fit card.";
  case bearing_of_rope:
    return "Bearing: the crown of the eye.";
  case bearing_of_wire:
    return "Bearing: mouth of a terminal, crown of a finished eye, end of a bare wire.";
  case open_nothing_until_all_three:
    return "Open nothing until all three are signed.";
  case cut_nothing_and_close_nothing:
    return "Make no cut at a mark and close nothing more until all three are signed.";
  case cut_nothing_and_open_nothing:
    return "Make no cut at a mark and open nothing until all three are signed.";
  case cut_nothing_and_close_nothing_until:
    return "Make no cut at a mark and close nothing until all three are signed.";
  case cut_at_mark_from_mouth:
    return "Cut at mark {}, {} from the mouth of the closed end.";
  case take_off_seizings:
    return " Take off the seizings.";
  case cut_at_and_at:
    return "Cut at {} and at {}: {}.{}";
  case taper:
    return " Taper: {}.";
  case taper_from:
    return " Taper from {}{}.";
  case taper_not_given_follow_rope:
    return " Taper not given: follow the rope maker.";
  case aloft_colon:
    return "Aloft:";
  case below_colon:
    return "Below:";
  case round:
    return " round {}";
  case bring_to:
    return " Bring {} to {}.";
  case bury_from_out_at:
    return " Bury from {}, out at {}.";
  case throat_at_then:
    return " Throat at {}, then {}.";
  case throat:
    return " Throat: {}.";
  case trim_tail_at:
    return " Trim the tail at {}.";
  case nothing_locks_it:
    return "nothing locks it";
  case no_method_is_given_follow:
    return "No method is given: follow the rope maker";
  case at:
    return "At";
  case lock:
    return "Lock";
  case both_throats:
    return "both throats";
  case the_throat_aloft:
    return "the throat aloft";
  case the_throat_below:
    return "the throat below";
  case aloft_begins:
    return "Aloft";
  case below_begins:
    return "Below";
  case no_part_is_named_end:
    return "{}: no part named, leave the end bare.";
  case close_on_it:
    return "{}: close {} on it.";
  case lay_wire_round_with_mark:
    return "{}: lay the wire round {}, so that it is {} from its crown to {}. The {} beyond mark {} go "
           "round "
           "it and back into the sleeve; the mark does not end up at the crown. Hold it so while the "
           "sleeve "
           "is pressed.";
  case lay_wire_round_back_along_itself:
    return "{}: lay the wire round {}, so that it is {} from its crown to {}. The {} beyond mark {} go "
           "round "
           "it and back along the wire; the mark does not end up at the crown. Hold it so while the eye is "
           "tucked or seized.";
  case mark_of_other_end:
    return "mark {}";
  case bearing_made_aloft:
    return "the bearing aloft";
  case put_wire_into_to_mark:
    return "{}: put the {} into {} to mark {}, {} deep. Hold it at the mark while the terminal is "
           "closed.";
  case read_label_line_fill_in:
    return "Read the label of the line: {}, {}. Fill in spool and batch. Lay it out {}.";
  case wrap_eyes_again_another_length:
    return "Wrap the eyes again, pulled snug from throat to throat{}. If you find another length, state "
           "the "
           "wrap longer or shorter by as much, and print this card again.";
  case card_has_round:
    return ". The card has {}";
  case round_eye_aloft:
    return "{} aloft, {} to {}, for a wrap of {}";
  case round_eye_below:
    return "{} below, {} to {}, for a wrap of {}";
  case goes_on_before_second_end:
    return "Goes on before the second end is closed: {}.";
  case at_dock_tension:
    return " at the dock tension";
  case at_dock_tension_of:
    return " at the dock tension, {} N";
  case with_the_pull_let_off:
    return ", the pull let off, {}";
  case measure_again_as_made:
    return "Measure again{}: {} {}. As made, temperature, day:";
  case aloft_behind:
    return " aloft";
  case below_behind:
    return " below";
  case nothing:
    return "nothing";
  case taken:
    return "{} taken; {}.";
  case taper_begins:
    return "taper begins";
  case taper_of:
    return "taper: {}";
  case end_cord_bearing_aloft:
    return "end of the cord, bearing aloft";
  case upper_end_cord:
    return "upper end of the cord";
  case bearing_aloft:
    return "bearing aloft";
  case bearing_below:
    return "bearing below";
  case knot_cord_bearing_below:
    return "knot of the cord, bearing below";
  case knot_cord:
    return "knot of the cord";
  case past_behind:
    return " past";
  case inside_behind:
    return " inside";
  case both_ends:
    return "Both ends: {}";
  case aloft_of:
    return "Aloft: {}";
  case below_of:
    return "Below: {}";
  case in_words:
    return "no number";
  case not_given:
    return "not given";
  case from_u:
    return "from U,";
  case upper_end:
    return "upper end";
  case from_l:
    return "from L,";
  case its_knot:
    return "its knot";
  case pass:
    return "pass 1";
  case pinned:
    return "pinned";
  case pass_word:
    return "pass 2";
  case apart_by:
    return "apart by";
  case from:
    return "from";
  case aloft_word:
    return "aloft";
  case below_word:
    return "below";
  case done:
    return "done";
  case as_made:
    return "as made";
  case mark:
    return "mark";
  case halves_check:
    return "HALVES CHECK";
  case to_rope_end:
    return "{} to rope end 1";
  case to_rope_end_of:
    return "{} to rope end {}";
  case found:
    return "found";
  case and_word:
    return "and";
  case more_apart_than_that_shift:
    return "More apart than that: shift the line by half of it. Both longer or both shorter: X or the rope "
           "in hand is not what the file says. Stop and measure again.";
  case more_than_otherwise_mark_was:
    return "More than {} out: a mark was laid from the wrong end, or by another knot. Lay out again.";
  case when_x_has_been_measured:
    return "When X has been measured";
  case cut_capitals:
    return "{} = CUT";
  case body:
    return "{} = body";
  case eyes_by_rule_wrap_first:
    return "EYES BY RULE: WRAP BEFORE THE CUT";
  case eyes_disagree_wrap_again:
    return "EYES DISAGREE: WRAP AGAIN";
  case tips_from_bearings:
    return "Tips on the finished piece, from its bearings";
  case tip_assumed:
    return "assumed: hold the piece to its tip";
  case no:
    return "no.";
  case end_aloft:
    return ", end aloft";
  case end_below:
    return ", end below";
  case from_aloft_from_below_on:
    return "{} {}: {} from aloft, {} from below, on the finished piece";
  case halves_check_past_bearing_aloft:
    return "Halves check: {} past the bearing aloft, {} past the bearing below. {}";
  case aloft_each:
    return "{} aloft";
  case below_each:
    return "{} below";
  case rope_that_splices_draw_in:
    return "Rope that the splices draw in lies outside the bearings: {}.";
  case outside:
    return "outside";
  case what_line_stretches_is_laid:
    return "Stretch of the line is laid out at the end below: {} {} its bearing.";
  case laid_out_by_day:
    return "laid out by, day";
  case second_pass_by_day:
    return "second pass by, day";
  case dry_fit_passed_day:
    return "dry fit passed, day";
  case dry_fit_passed_or_no_mast_up:
    return "dry fit passed, or no mast up; day";
  case marked_by_day:
    return "marked by, day";
  case checked_from_other_end_by:
    return "checked from the other end by, day";
  case stop:
    return "STOP. {}";
  case stop_capitals:
    return "STOP";
  case aloft_capitals:
    return "ALOFT";
  case below_capitals:
    return "BELOW";
  case not_to_scale_past_outside:
    return "not to scale; past: outside the cord, inside: towards its other end";
  case not_to_scale:
    return "not to scale";
  case lock_word:
    return "lock";
  case bury:
    return "bury";
  case taper_word:
    return "taper";
  case in:
    return "in";
  case inside_from_to:
    return ", inside from {} to {}";
  case taper_not_given:
    return "taper not given";
  case taper_each:
    return "taper {}";
  case taper_from_of:
    return "taper from {}{}";
  case lock_not_given:
    return "lock not given";
  case locked:
    return "locked: {}";
  case no_part_named:
    return "no part named";
  case wire_inside_to_mark:
    return "{} {} inside, to mark {}";
  case sleeve:
    return "sleeve";
  case tucks_or_seizing:
    return "tucks or seizing";
  case wire_round_with_mark:
    return "{} beyond mark {} go round it and into the sleeve";
  case wire_round_back_along_itself:
    return "{} beyond mark {} go round it and back";
  case how_deep_wire_goes_in:
    return "how deep the {} goes in: not given";
  case both_ends_colon:
    return "both ends: ";
  case aloft_before:
    return "aloft: ";
  case below_before:
    return "below: ";
  case before:
    return "BEFORE";
  case rope_end:
    return "rope end";
  case after:
    return "AFTER";
  case test_splice_same_rope_same:
    return "The test splice: same rope, same part in the eye, same hands";
  case lay_rope_straight_mark_p:
    return "1  Lay the rope straight. Mark p where the throat of the eye will be, and q on the standing "
           "part, well past where the tail will come out. Measure p to q.";
  case wrap_eye_measure_how_much:
    return "2  Wrap the eye. Measure how much rope it takes beyond its crown.";
  case splice_as_stay_will_be:
    return "3  Splice as the stay will be spliced, throat at p. Pull as you will pull the stay. Measure p "
           "to q again.";
  case eye_takes:
    return "eye takes:";
  case p_to_q_before:
    return "p to q before:";
  case p_to_q_after:
    return "p to q after:";
  case pull_by_day:
    return "pull, by, day:";
  case what_releases_this_card:
    return "What releases this card";
  case what_releases_the_cut:
    return "What releases the cut";
  case cut_nothing_and_open_or_close:
    return "Make no cut at a mark and {} nothing: every mark may still move. {} What was found goes into "
           "the rig file. Then print this card again.";
  case hoisted_again_or_dry_fit:
    return "A cord that is hoisted again to its mark will do, and so will the dry fit.";
  case hoisted_again_will_do:
    return "A cord that is hoisted again to its mark will do.";
  case open_word:
    return "open";
  case close_word:
    return "close";
  case meanwhile:
    return "Meanwhile";
  case you_may_measure_stay_in:
    return "You may measure the stay in place, order line and parts, make tang and chainplate ready.";
  case leave_knife_and_fid_alone:
    return "Leave knife and fid alone: every mark may still move. When all of the above is in the rig "
           "file, print this card again.";
  }
  return {};
}

} // namespace sheerpole
