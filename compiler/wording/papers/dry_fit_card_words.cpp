#include "wording/papers/dry_fit_card_words.hpp"

namespace sheerpole {

std::string_view words(DryFitCardPhrase phrase) {
  using enum DryFitCardPhrase;
  switch (phrase) {
  case in:
    return "in";
  case out:
    return "out";
  case turns:
    return ", {} turns {}";
  case as_set:
    return "as set";
  case closed:
    return "closed";
  case open:
    return "open";
  case dry_fit:
    return "DRY FIT   {}";
  case hang:
    return "HANG";
  case nothing_is_cut_pressed_or:
    return "Nothing is cut, pressed or buried yet.";
  case end_aloft_is_closed_first:
    return "The end aloft is closed, to lay the cord along from it. The end below is not, and nothing is "
           "cut.";
  case lengths_in:
    return "{} Lengths in {}.{}{}";
  case made_with_mast_down_lay:
    return "Made with the mast down: lay the mast on trestles, hang the stay on it there and set it up "
           "before the mast goes up. Nobody goes aloft for it.";
  case aloft_two_lines_harness_second:
    return "Aloft: two lines, a harness, a second person on deck, nobody below. One stay at a time, and "
           "only when something else holds the mast. Never pull the pin of a loaded stay.";
  case eyes_formed_at_their_marks:
    return "eyes formed at their marks and seized, tails outside";
  case terminals_laid_beside_it_at:
    return "held by a gripping hitch on a halyard; terminals on their pins beside it, marks at their "
           "mouths, nothing pressed";
  case terminals_laid_beside_on_trestles:
    return "laid along the mast; terminals on their pins beside it, marks at their mouths, nothing "
           "pressed";
  case closed_aloft_laid_below:
    return "closed aloft; the terminal below laid beside it at its mark, not pressed";
  case hang_from_aloft_to_deck:
    return "Hang, from aloft to deck";
  case hang_from_to:
    return "Hang, from the {} to the {}";
  case what:
    return "what";
  case set_to:
    return "set to";
  case fast:
    return "secured";
  case line:
    return "line";
  case from_bearing_to_bearing_line:
    return "From bearing to bearing of the line, hand-tight";
  case from_bearing_to_bearing_pulled:
    return "From bearing to bearing of the line, nothing buried, pulled straight";
  case from_mouth_to_mouth_line:
    return "From mouth to mouth of the terminals, pulled straight by hand";
  case from_drawing_mast_up:
    return " From drawing: hang it once the mast is up.";
  case adjuster:
    return "adjuster";
  case its_length:
    return "its length";
  case found:
    return "found";
  case none:
    return "none";
  case not_known:
    return "not known";
  case takes_what_is_left:
    return "takes what the others leave";
  case piece_of:
    return "piece {} of {}";
  case has_length_its_own:
    return "has a length of its own";
  case each_row_line_that_just:
    return "Each row: the line that just hangs with the adjuster so. Longer than \"closed\" it cannot be "
           "made tight; under \"open\" it does not reach.";
  case each_row_line_when_buried:
    return "Each row: the line now, for that setting once all is buried. Longer than \"closed\" it cannot "
           "be made tight; under \"open\" it does not reach.";
  case hangs_slack_with_adjuster:
    return "As set it hangs {} slack now: the splices take that. Do not take it up with the adjuster.";
  case hangs_slack:
    return "It hangs {} slack now: the splices take that.";
  case spliced_at_first_fit_after:
    return "Spliced: {} at first fit, {} after setting; the splices give {} back as they set, and until "
           "then the adjuster gives it out.";
  case lengths_wait_for_what_is:
    return "The lengths wait for what is missing above. Hang it all the same and write down what you find.";
  case while_it_is_off_or:
    return "While it is off, or if it parts: {}";
  case held_meanwhile_by:
    return "Held meanwhile by:";
  case swings_free_both_ways_fore:
    return "{} swings free both ways, fore and aft and athwart.";
  case nothing_is_stated_that_swings:
    return "no toggle is given: move it fore and aft and athwart, and see what binds.";
  case hardware_follows_line_both_ways:
    return "the hardware follows the line both ways, fore and aft and athwart, and nothing binds.";
  case at_both_ends:
    return "at both ends";
  case thread_left_in_body_each:
    return "{}, thread left in the body, each stud (not stated); found:";
  case thread_left_in_body_each_stud:
    return "{}, thread left in the body, each stud: {}";
  case at_least:
    return ", at least {}";
  case found_colon:
    return "{}; found:";
  case look_at:
    return "Check";
  case every_pin_goes_in_by:
    return "Every pin goes in by hand to its head, and its split pin or ring through it.";
  case look_along_stay_and_from:
    return "Look along the stay {} and {}, from ahead and from the side: it pulls in line with what it is "
           "pinned to, and bends neither.";
  case at_each_tip_it_lies:
    return "At each tip it lies where it will lie, with nothing under it and nothing sharp beside it.";
  case each_eye_lies_in_its:
    return "Each eye lies in its seat all round, and its throat is clear of the edge.";
  case adjuster_when_hand_tight_length:
    return "Adjuster when hand-tight: length, or turns from closed:";
  case line_pulled_straight_and_slack:
    return "Line pulled straight, from bearing to bearing; slack with the adjuster as set:";
  case pull_temperature_afloat_or_ashore:
    return "Pull, temperature, afloat or ashore, wind:";
  case hung_by_looked_at_second:
    return "Hung by; checked by; day:";
  case this_card_follows_from_rig:
    return "This card follows from the rig file and nothing else. Local rules and a licensed professional "
           "rigger come before it.";
  case when_it_does_not_come:
    return "When it hangs wrong";
  case nothing_is_cut_so_all:
    return "Nothing is cut, so all can still be mended. ";
  case look_for_cause_before_you:
    return "{}Look for the cause before you move a mark: a part that was left out or put in twice, an "
           "adjuster set otherwise, another hole, the reading. Put the number right in the rig file and "
           "print the cards again.";
  case stay_has_no_adjuster:
    return "The stay has no adjuster of its own. Too long:";
  case from_its_setting_adjuster_takes:
    return "From its setting the adjuster takes up {} and gives out {}. Too long beyond that:";
  case with_whole_bury:
    return ", with the whole bury";
  case pressed_terminal_is_cut_off:
    return "; cut off a pressed terminal and do not use it again";
  case after_cutting_too_long_beyond:
    return "After cutting. {} one end is made again{}. Too short: a "
           "toggle or a link may fill the gap if it is strong enough and its pins fit; else a new piece. "
           "Nothing is spliced or joined in.";
  case dry_fit_begins:
    return "Dry fit {}";
  case there_is_nothing_to_hang:
    return "There is nothing to hang yet: the marks for eyes and terminals may still move. Check tang, "
           "chainplate and pins, and measure the stay in place. When all of the above is in the rig file, "
           "print this card again.";
  case dry_fit_of:
    return "Dry fit of {}";
  case what_to_hang_before_anything:
    return "What to hang before anything is cut, where its bearings should be, what to check.";
  case dry_fit_cards:
    return "Dry-fit cards";
  case page_for_each_stay_what:
    return "a page for each stay: what to hang before cutting, where it should come, what to see";
  case under:
    return "under {}";
  case over:
    return "over {}";
  case to:
    return "{} to {}";
  case within:
    return "within {}";
  case lower:
    return " lower";
  case higher:
    return " higher";
  case right:
    return "RIGHT";
  case over_long:
    return "over {} long";
  case over_short:
    return "over {} short";
  case short_word:
    return " short";
  case long_word:
    return " long";
  case up_to:
    return "up to {}{}";
  case it_hangs_at:
    return "IT HANGS AT";
  case it_hangs:
    return "IT HANGS";
  case so_it_is:
    return "SO IT IS";
  case do_word:
    return "DO";
  case sign_below:
    return "Sign below.";
  case off_by:
    return "OFF BY";
  case likely_slip:
    return "LIKELY SLIP";
  case look_for_slip_first:
    return "First look for a slip below. None: {}.";
  case any_other:
    return "any other";
  case or_another_stays:
    return "{}, or another stay's";
  case lead_it_over_tips:
    return "Lead it over {} as it will lie: hung clear of that it reads lower.";
  case hoisted_dry_fit:
    return "The hoisted dry fit";
  case piece_on_its_halyard_beside:
    return "The piece on its halyard beside the pin aloft, its lower bearing above the pin below. Not to "
           "scale.";
  case pin_aloft:
    return "pin aloft";
  case halyard:
    return "halyard";
  case seizing:
    return "seizing";
  case tail_outside:
    return "tail, outside";
  case hoist_gap:
    return "hoist gap";
  case hangs_at:
    return "hangs at";
  case hardware_below:
    return "hardware below";
  case pin_below_not_to_scale:
    return "pin below; not to scale";
  case lower_bearing_hangs_at:
    return "LOWER BEARING HANGS AT";
  case less_the_gap:
    return "{} less the gap";
  case from_pin_below_up_to:
    return "from the pin below up to where the rope bears";
  case less_hoist_gap:
    return "less the hoist gap";
  case found_begins:
    return "Found";
  case x_has_no_number_and:
    return "X has no number, and this card needs none: both ends hang by the boat's own pins.";
  case not_known_begins:
    return "Not known: {}.";
  case measure_hoist_gap_as_it:
    return "Measure the hoist gap as it hangs, from the pin aloft down to the halyard's hold, and take it "
           "off.";
  case since_gap_itself_is_known:
    return ", since the gap itself is known to no better";
  case hung_with_all_its_hardware:
    return "Hung with all its hardware aloft. Within {} it is right{}. From its setting the adjuster takes "
           "up {} and gives out {}; what the dry fit uses of it is gone for later.";
  case hung_with_hardware_no_adjuster:
    return "Hung with all its hardware aloft. Within {} it is right{}. The stay has no adjuster of its "
           "own.";
  case spliced_stay_has_two_lengths:
    return "Spliced, the stay has two lengths: at first fit {} short, after setting as worked out. The "
           "adjuster gives out {}.";
  case spliced_stay_is_short_at:
    return "Spliced, the stay is short at first fit until its splices have set; no test splice says by how "
           "much.";
  case of:
    return " of {}";
  case by:
    return " by {}";
  case not_released_do_not_open:
    return "NOT RELEASED: do not open the weave.";
  case not_released_it_waits_for:
    return "NOT RELEASED: it waits, for {}: do not open the weave.";
  case released:
    return "RELEASED.";
  case dry_fit_hung_at_worked:
    return "Dry fit{}{}: hung at {}, {} worked out. {}. {}";
  case stop_open_weave_only_when:
    return "STOP. Open the weave only when it hangs right.";
  case hoisted_by_day:
    return "hoisted by, day";
  case seen_by_second_person_day:
    return "seen by a second person, day";
  case pull_temperature_wind:
    return "pull, temperature, wind";
  case before_this_mark_piece_by:
    return "Before this: mark the piece by its bench card. After this: cut and splice by it. This card "
           "says nothing of whether the rig is strong enough. Local rules and a licensed professional "
           "rigger come before it.";
  case dry_fit_hoisted:
    return "Dry fit, hoisted {}";
  case dry_fit_hoisted_capitals:
    return "DRY FIT, HOISTED   {}";
  case pin_aloft_is_pin_below:
    return "The pin aloft is {}, the pin below {}.";
  case eyes_seized_with_their_hardware:
    return "Eyes seized with their hardware in them. Nothing is cut, opened or buried. Lengths in {}.";
  case while_it_hangs_old_stay:
    return "While it hangs: the old stay holds the mast and stays until the new one is loaded. One stay at "
           "a time. Nobody below the piece: a seizing that slips drops all of it. Aloft: two lines, a "
           "harness, a second person on deck.";
  case while_it_hangs_mast_is_held:
    return "While it hangs: something else holds the mast until this stay is loaded. One stay at a time. "
           "Nobody below the piece: a seizing that slips drops all of it. Aloft: two lines, a harness, a "
           "second person on deck.";
  case any_other_slip:
    return "Another mark, or another stay's";
  case hoisted_dry_fit_begins:
    return "Hoisted dry fit of {}";
  case how_high_lower_bearing_should:
    return "How high the lower bearing should hang before the line is opened, and what it means when it "
           "does not.";
  }
  return {};
}

} // namespace sheerpole
