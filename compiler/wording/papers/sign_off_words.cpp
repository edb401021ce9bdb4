#include "wording/papers/sign_off_words.hpp"

namespace sheerpole {

std::string_view words(SignOffPhrase phrase) {
  using enum SignOffPhrase;
  switch (phrase) {
  case pin:
    return "pin {}";
  case pin_shackle:
    return "pin of the shackle, {}";
  case split_pin:
    return "split pin {}";
  case stud_in_its_thread:
    return "stud in its thread";
  case hook:
    return "hook";
  case tee_in_its_slot:
    return "tee in its slot";
  case lashing_passes:
    return "lashing, passes {}";
  case lashing_or_lanyard_passes:
    return "lashing or lanyard, passes {}";
  case eye:
    return "eye, {}";
  case eye_spliced_or_seized:
    return "eye, spliced or seized: {}";
  case terminal_look_for_crack_broken:
    return "terminal: look for a crack, a broken wire";
  case sleeve_look_for_crack_broken:
    return "eye in its sleeve: look for a crack, slip, a broken wire";
  case wire_eye_look_at_tucks:
    return "eye in the wire: look at its tucks or seizing, for a broken wire";
  case nothing_to_secure:
    return "nothing to secure";
  case bow_shackle:
    return "bow of the shackle";
  case not_stated_pin:
    return "not stated; pin {}";
  case line:
    return "line";
  case what_it_hangs_on_to:
    return "what it hangs on to {}";
  case to_what_holds_it:
    return "{} to what holds it";
  case soft_eye_round_what_it:
    return "soft eye, where it bears";
  case lashing_or_lanyard:
    return "lashing or lanyard";
  case right_and_left_hand:
    return ", right and left hand";
  case thread:
    return "thread {}{}";
  case thread_of:
    return "thread {}";
  case not_reached_or_not_seen:
    return "Not reached or not seen, and why:";
  case looked_at_by_day:
    return "Checked by, day:";
  case looked_at_second_time_by:
    return "Checked again by, day:";
  case in_the_stay:
    return "in the stay";
  case aloft:
    return "aloft";
  case below:
    return "below";
  case place:
    return "place";
  case stay:
    return "stay";
  case joint:
    return "joint";
  case what:
    return "what";
  case secured_by:
    return "secured by";
  case in:
    return "in";
  case secured:
    return "secured";
  case again:
    return "again";
  case on_no_mast_file:
    return "On no mast of the file";
  case the:
    return "The {}";
  case pin_word:
    return "pin";
  case pins:
    return "pins";
  case none:
    return "none";
  case of_them_unknown:
    return "{} {}, {} of them unknown";
  case sign_off_joints_and_threads:
    return "Sign-off, joints and threads";
  case sign_off:
    return "SIGN-OFF";
  case pieces_of_line:
    return "Pieces of line: {}.";
  case joints:
    return "joints";
  case every_joint_and_thread_from:
    return "Every joint and thread from aloft to deck, by the height of its end of the stay above the "
           "waterline. Tick what you have seen with your own eyes; leave open what you did not reach. A "
           "blank: the file does not say. Measure the pin and write its size. A joint that the file does "
           "not describe counts as an unknown pin.";
  case aloft_two_lines_harness_second:
    return "Aloft: two lines, a harness, a second person on deck, and nobody below. Sharp ends of split "
           "pins cut hands and sails. Do not undo a pin of a loaded stay.";
  case rig_file_states_no_joint:
    return "The rig file states no joint. Write down what you find: every pin, seizing and knot by which a "
           "stay hangs.";
  case line_in_place_what_secures:
    return "A line in place of what secures it: the rig file does not say; write what you find.";
  case sign_off_of:
    return "Sign-off of {}";
  case every_joint_and_thread_with:
    return "Every joint and thread with boxes to tick.";
  case one_stay_at_time:
    return "One stay at a time";
  case one_stay_at_time_capitals:
    return "ONE STAY AT A TIME";
  case number_stays_in_order_in:
    return "Number the stays in the order in which you will replace them. Write what holds the mast while "
           "each is off. Go on to the next only when this one is pinned, secured and hand-tight. This "
           "sheet does not work out what the mast can take: a rigger decides the order on the boat.";
  case mast_that_has_lost_one:
    return "A mast that has lost one stay is held by what you put in its place. Set up two halyards, "
           "tight, before the pin comes out. Nobody goes aloft while stays are being changed; no boat "
           "passes close by. Never two stays at once.";
  case order:
    return "order";
  case held_meanwhile_by:
    return "held meanwhile by";
  case tight:
    return "tight";
  case old_off:
    return "old off";
  case new_on:
    return "new on";
  case pinned:
    return "pinned";
  case rig_file_states_no_stays:
    return "The rig file has no stays.";
  case compare_each_old_stay_with:
    return "Compare each old stay with the new one before it goes up: bearing to bearing, at the same "
           "pull.";
  case local_codes_and_licensed_professional:
    return "Local codes and a licensed professional rigger come before this sheet.";
  case replacing_stays:
    return "Replacing the stays of {}";
  case one_stay_at_time_with:
    return "One stay at a time, with boxes to tick.";
  case sign_off_begins:
    return "Sign-off";
  case every_joint_and_thread_to:
    return "every joint and thread to be ticked, by mast, aloft to deck; a sheet for one stay at a time";
  }
  return {};
}

} // namespace sheerpole
