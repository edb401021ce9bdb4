#include "wording/papers/tune_sheet_words.hpp"

namespace sheerpole {

std::string_view words(TuneSheetPhrase phrase) {
  using enum TuneSheetPhrase;
  switch (phrase) {
  case how_rig_stands:
    return "How the rig stands";
  case rig_from_starboard_and_from:
    return "The rig from starboard and from astern, as drawn and as it stands, with the tension of each "
           "stay.";
  case from_astern:
    return "From astern";
  case from_starboard:
    return "From starboard";
  case slack:
    return "slack";
  case kn:
    return ", kN";
  case mm_mast:
    return ", mm of the mast";
  case bend_from_straight_line_between:
    return "Bend of {} from the straight line between heel and head, mm";
  case from_heel_mm:
    return "from the heel, mm";
  case forward:
    return "forward";
  case to_starboard:
    return "to starboard";
  case as_she_stands:
    return "As she stands";
  case dashed_as_drawn_solid_as:
    return "Dashed: spars as drawn. Solid: the rig as it stands, every movement {} times as large; a slack "
           "stay is dotted. kN in the leg at the deck. Stays: {}.";
  case what_one_turn_does:
    return "What one turn does";
  case no_bound_is_stated_stiffness:
    return "No bound is given for a stiffness, a reading or a take-up: how far these numbers may be off is "
           "not known.";
  case turns_for_what_is_wished:
    return "The turns for what is wished for";
  case other_days:
    return "Other days";
  case tune_sheet_of:
    return "Tune sheet of {}";
  case tune_sheet:
    return "Tune sheet";
  case what_one_turn_does_at:
    return "What one turn does, at the dock";
  case draft:
    return "DRAFT, {}";
  case draft_turn_nothing_by_it:
    return "DRAFT: turn nothing by it alone. {}.";
  case not_worked_out:
    return "Not worked out";
  case state_these_in_rig_file:
    return "State these in the rig file; nothing is taken in their place.";
  case inputs:
    return "Inputs";
  case how_rig_stands_at_dock:
    return "how the rig stands at the dock, what one turn does, the turns for what is wished for";
  case a_reading:
    return "a reading";
  case what_was_taken_up:
    return "what was taken up";
  case dock_tension_not_read:
    return "dock-tension, not read";
  case tension_at_deck:
    return "tension at deck";
  case tension:
    return "tension";
  case slack_by_mm:
    return "slack by {} mm";
  case tension_leg:
    return "tension, leg {}";
  case tension_aloft:
    return "tension aloft";
  case is_slack:
    return "{} is slack";
  case none:
    return "none";
  case after_more_than:
    return ", after more than 50";
  case after_about:
    return ", after about {}";
  case pre_tension_at_dock_alone:
    return "Pre-tension at the dock only: no sail, no wind, no sea. It shows how this model of the rig "
           "stands and what turns do to it. It gives no verdict on the rig.";
  case ask_spars_maker_for_its:
    return "Ask the spar's maker for its stiffness, bend and pre-tension, and follow the maker where this "
           "differs. Where rules ask for a licensed rigger, have one set it up.";
  case not_in_model_sag_and:
    return "Not in the model: sag and weight of stays, friction at tips, chocks, shear of spars, and a "
           "hull whose give is not stated.";
  case what_balance_rig_rests_on:
    return "What the balance of the rig rests on";
  case not_stated:
    return "NOT STATED";
  case lacking:
    return "NOT ENOUGH STATED";
  case what_is_in_way:
    return "What is in the way";
  case is_not_stated:
    return "{} is not stated";
  case how_rig_stands_at_dock_begins:
    return "How the rig stands at the dock";
  case greatest_push_along_it:
    return "greatest push along it";
  case head_from_its_drawn_place:
    return "Head from its drawn place; bend from the straight line between heel and head, beyond the drawn "
           "one.";
  case beyond_its_break_load_number:
    return "BEYOND ITS BREAK LOAD: {}. A number has a slip in it, or the rig must not be set up so.";
  case least_tension_stay_that_pulls:
    return "Least tension of a stay that pulls: {} kN in {}.";
  case softest_motion_moves_mm_for:
    return "Softest motion: {} moves 1 mm for {} N.";
  case what_one_turn_tighter_does:
    return "What one turn tighter does";
  case no_whole_turn_is_left:
    return "; no whole turn is left";
  case columns_kn_on_then_mm:
    return "Columns: kN on {}; then mm of mast: head aft, head to starboard, bend forward.";
  case this_state_only_turn_look:
    return "Of this state only: turn, look again, work it out anew. A stay's own change need not be the "
           "greatest in its row.";
  case how_far_each_change_may:
    return "How far each change may be off, ±";
  case stated_bounds_stiffness_readings_and:
    return "{} stated bounds of stiffness, readings and what was taken up, each put in both ways; 95 % by "
           "the law of propagation. What is stated once moves together. Bounds of places and lengths are "
           "not "
           "in it, and nothing of what is not in the model.";
  case how_far_each_number_may_be_off:
    return "How far each number may be off, in three ways";
  case no_bound_is_stated:
    return "No bound is stated of a stiffness, a reading or what was taken up: how far these numbers may "
           "be off is not known.";
  case stated_bounds_put_in_both_ways:
    return "{} stated bounds of stiffness, readings and what was taken up, each put in both ways; what is "
           "stated once moves together. At worst: all of them at once. {} draws, the same each time. "
           "Bounds of places and lengths are not in it, and nothing of what is not in the model.";
  case on_other_days_and_after:
    return "On other days and after times, nothing turned";
  case mm:
    return ", mm";
  case not_checked:
    return "not checked";
  case does_not_stand:
    return "does not stand";
  case taken_as_they_are:
    return "taken as they are: ";
  case turn:
    return " turn";
  case turns:
    return " turns";
  case hole:
    return " hole";
  case holes:
    return " holes";
  case both:
    return "{}, both";
  case slacker:
    return " slacker";
  case tighter:
    return " tighter";
  case at:
    return " at {}";
  case head_aft:
    return "head aft";
  case head_to_starboard:
    return "head to starboard";
  case bend_forward:
    return "bend forward{}";
  case bend_to_starboard:
    return "bend to starboard{}";
  case aft:
    return "{}aft";
  case stb:
    return "{}stb";
  case bend:
    return "{}bend{}";
  case short_of:
    return " short of";
  case beyond:
    return " beyond";
  case cannot_be_had_is_what:
    return "OUT OF REACH: {} is {}{}{} what is wished for.";
  case at_end_its_thread_where:
    return "At the end of its thread where more would help: {}.";
  case no_thread_is_in_way:
    return "No thread is in the way: the wishes pull against each other, or lie between two steps of a "
           "screw.";
  case what_is_wished_for:
    return "What is wished for";
  case plan_of_turns:
    return "Plan of turns";
  case nothing_is_wished_for_state:
    return "Nothing is wished for: state a tension-wish or a mast-wish.";
  case no_plan_was_found:
    return "No plan was found.";
  case these_turns_in_all_but:
    return "These turns in all, but in no order of them does the rig stay up all the way: turn nothing by "
           "it.";
  case it_stands_as_wished_there:
    return "The rig is as wished: there is nothing to turn.";
  case turn_loaded_screw_by_small:
    return "Turn a loaded screw by small steps with the thread greased, both sides in turn, and lock it "
           "again. Look up the mast and read the tensions after each step; stop where they differ. Fewer "
           "turns may do: that is not proven.";
  case draft_capitals:
    return "DRAFT: {}";
  case wished_of:
    return "Wished of {}: {}.";
  case with_these_turns:
    return ", with these turns ";
  case now_wished:
    return "{}: now {}, wished {} ± {}{}";
  }
  return {};
}

} // namespace sheerpole
