#include "wording/papers/emergency_card_words.hpp"

namespace sheerpole {

std::string_view words(EmergencyCardPhrase phrase) {
  using enum EmergencyCardPhrase;
  switch (phrase) {
  case which_is_longest_is_not:
    return "Which is the longest is not known: {} are each X, without an estimate. Lay the cords side by "
           "side and carry for the longest X.";
  case not_compared_each_is_x:
    return "Not compared: {}. Each is X, without an estimate: lay its cord beside that of {} and carry for "
           "the longer.";
  case to_be_cut_and_not:
    return "{} to be cut, and not compared: {}. See the bench cards.";
  case emergency:
    return "EMERGENCY   {}";
  case one_of_them:
    return "one of them";
  case the_longest:
    return "the longest";
  case longest_that_is_known:
    return "the longest that is known";
  case for_any_stay_it_made:
    return "{}, {}; made for {}, {}";
  case its_end_aloft_does_not_fit:
    return "Made at home with {} aloft. These stays have another part there: {}. For one of them make the "
           "end aloft anew, by its bench card.";
  case set_at:
    return "set at";
  case adjuster_as_table_says:
    return "its adjuster set as the table says";
  case seize_it_and_hang_it:
    return "Seize the eye below at its marks, tail outside, and hang it: it must reach. If it does not, "
           "stop.";
  case cut_at_its_mark:
    return "Take it down and cut at the mark of the cut end. ";
  case carry:
    return "CARRY";
  case carry_capitals:
    return "CARRY  {}";
  case for_and_to_make_one:
    return "{} for {} and {} to make one end twice. Lengths in {}.{}{}";
  case first_mast_halyards_to_rail:
    return "First the mast: halyards to the rail or the plates, sheets eased, nobody under it. A stay that "
           "carries load is not opened. Going aloft at sea can kill; whether anyone goes is the skipper's "
           "to decide.";
  case longer:
    return "longer";
  case shorter:
    return "shorter";
  case it_came_out_than_this:
    return " It was made {} {} than this body and hangs with {} set {} than stated. Take the body with it "
           "set as stated.";
  case bodies_bearing_to_bearing_stays:
    return "Bodies, bearing to bearing, of the stays of this line";
  case stay:
    return "stay";
  case body:
    return "body";
  case aloft:
    return "aloft";
  case below:
    return "below";
  case pin_to_pin_no_reading:
    return "pin to pin, not measured yet";
  case from_upper_end_u_cord:
    return "From the upper end U of a cord to its knot L: {}.";
  case marks_aloft_made_at_home:
    return "Marks: aloft, made at home, from its cut end; below, aboard, from the first bearing";
  case mark:
    return "mark";
  case from_cut_end:
    return "from the cut end";
  case from_the_bearing:
    return "from the bearing";
  case done:
    return "done";
  case body_is_length_from_bearing:
    return "The body is the length from bearing to bearing by the messenger cord, with the adjuster as "
           "stated.";
  case no_mark:
    return "No mark: {}";
  case buried:
    return "Buried: {}.";
  case stay_itself_is_made_all:
    return "The stay itself is made of all that was in hand, and nothing was cut off. The spare has the "
           "same burys.";
  case marks_end_below_from_mouth:
    return "Marks of the end below, from the mouth of the closed end";
  case from_mouth_aloft:
    return "from the mouth aloft";
  case terminals_this_file_that_take:
    return "Terminals of this file that take this wire";
  case part:
    return "part";
  case wire:
    return "wire";
  case goes_in:
    return "goes in";
  case thread:
    return "thread";
  case in_hand:
    return "in hand";
  case closed_by_hand:
    return "closed by hand";
  case file_states_none:
    return "The file states none.";
  case terminal_that_needs_press_cannot:
    return "A terminal that needs a press cannot be closed aboard. Tick those that close by hand, and "
           "carry two of them with what their maker says they need: cones, sealing, spanners. The file "
           "does not say it.";
  case where_nothing_can_be_spliced:
    return "If you can neither splice nor close anything, what you tie, lash or clamp is your own "
           "judgement; ask a rigger ashore. The file does not say what it would hold. Sail as little as "
           "you can, on the other tack, to the nearest shelter.";
  case this_card_follows_from_rig:
    return "This card follows from the rig file alone. A licensed professional rigger looks over a stay "
           "made aboard before it is sailed on; local rules come first.";
  case order_this_line:
    return "Order {} of this line.";
  case no_estimate_its_length_is:
    return "No estimate of its length is given.";
  case cut_nothing_to_it_carry:
    return "{} Cut nothing to it. Carry the spare in one length with fid or terminals and their tools. "
           "When all of the above is in the rig file, print this card again.";
  case emergency_splice_card:
    return "Emergency splice card {}";
  case at_home:
    return "At home";
  case aboard_when_stay_is_gone:
    return "Aboard, when a stay is gone";
  case emergency_splice_card_begins:
    return "Emergency splice card of {}";
  case spare_length_to_carry_and:
    return "The spare length to carry, and how a stay is made of it aboard.";
  case emergency_splice_card_word:
    return "Emergency splice card";
  case rig_file_states_no_stay:
    return "The rig file states no stay of rope or wire. Rod and chain are not made up aboard: ask a "
           "rigger what to carry.";
  case there_is_nothing_rope_or:
    return "There is nothing of rope or wire.";
  case emergency_splice_cards:
    return "Emergency splice cards";
  case for_each_rope_and_wire:
    return "for each rope and wire: the spare length to carry, and how a stay is made of it aboard";
  case round:
    return " round {}";
  case round_part_of_stay:
    return " round the part that this stay has below, {}";
  case or_word:
    return " or ";
  case another_splice_by_its_card:
    return "Another splice, by the bench card: {}.";
  case marks_of_other_stays:
    return "The end below of other stays, measured the same way";
  case stays:
    return "stays";
  case marks_below_are_of:
    return "The marks below are those of {}.";
  case at:
    return "{} at {}";
  case parts_hung_as_they_will:
    return "the parts hung as they will hang";
  case take_body_with_messenger_cord:
    return "Take the body with the messenger cord from bearing to bearing, pulled straight, with {}. "
           "Compare it with the table: a large difference is a slip, or the mast has moved.";
  case splice_second_eye_file_names:
    return "Splice the second eye. The file names no splice for it: follow the maker of the rope.";
  case taper_tail_file_does_not:
    return "Taper the tail. The file does not say how: follow the maker of the rope.";
  case taper_the_tail:
    return "Taper the tail: {}.";
  case lead_tail_throat_mark_to:
    return "Lead the tail{}, throat mark to throat mark, into the standing part, and bury all of it: {}. A "
           "short bury slips.";
  case smooth_cover_from_throat_outwards:
    return "Milk the rope over the tail, from the throat outwards, until no slack is left in it.";
  case lock_it_before_it_is:
    return "Lock it before it is slack again: a bury that is not under load works out. The file does not "
           "say how.";
  case lock_it:
    return "Lock it: {}.";
  case body_before:
    return "body - ";
  case body_word:
    return "body + ";
  case cut_same_rope_batch_that:
    return "Cut {} of the same rope, of a batch that a test splice was made of.";
  case make_eye_aloft_load_it:
    return "Make the eye aloft{}{}. Load it as its bench card says.";
  case and_a:
    return " and a ";
  case whip_other_end_bag_it:
    return "Whip the other end. Bag it dry and dark. With it: fid, needle, twine, knife, marker, rule, a "
           "messenger cord that does not stretch, this card{}.";
  case mark_end_below_from_bearing:
    return "Mark the end below from the bearing of the first eye. A second person measures again. Cut "
           "nothing yet.";
  case hang_it_pin_it_secure:
    return "Hang it, pin it, secure the pins, haul tight by hand.";
  case load_it_little_by_little:
    return "Load it little by little. Check the throats after minutes and after an hour, and haul tight "
           "again: a new splice beds in.";
  case cut_same_wire_and_bind:
    return "Cut {} of the same wire, {} {}, and bind its ends.";
  case file_names_no_part:
    return "the file names no part";
  case close_end_aloft_first_try:
    return "Close the end aloft first: {}. Try the whole job once on a short end.";
  case coil_it_large_and_bound:
    return "Coil it large and bind it in four places. With it: terminals, spanners, a cutter or saw for "
           "this wire, a messenger cord that does not stretch, gloves, this card.";
  case as_terminal_below_asks:
    return "as the terminal below asks";
  case end_aloft_is_closed_its:
    return "The end aloft is closed: its mouth is the zero. Lay the cord along the wire from there and "
           "mark the mouth below and the cut end, {}, by the depth of the terminal of {}; another terminal "
           "takes another depth. A second person measures again before the cut.";
  case bind_wire_on_both_sides:
    return "Bind the wire on both sides of the cut. Gloves and goggles: cut wire springs.";
  case mark_depth_on_wire_close:
    return "Mark the depth on the wire. Close the terminal as its maker says, and see that the mark has "
           "gone in.";
  case hang_it_pin_it_secure_pins:
    return "Hang it, pin it, secure the pins and the screw, and load it little by little.";
  case not_stated:
    return "not stated";
  }
  return {};
}

} // namespace sheerpole
