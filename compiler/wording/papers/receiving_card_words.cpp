#include "wording/papers/receiving_card_words.hpp"

namespace sheerpole {

std::string_view words(ReceivingCardPhrase phrase) {
  using enum ReceivingCardPhrase;
  switch (phrase) {
  case what_length_is_made_up:
    return "See the order list for what makes up the length";
  case label_construction:
    return "label: construction";
  case label_size:
    return "label: size";
  case label_grade:
    return "label: grade";
  case label_break_load_spliced:
    return "label: break load, spliced";
  case label_break_load:
    return "label: break load";
  case label_batch:
    return "label: batch";
  case first:
    return "first";
  case second:
    return "second";
  case third:
    return "third";
  case diameter_place_pulled_by_hand:
    return "diameter, {} place, pulled by hand";
  case length_on_spool_or_coil:
    return "length on the spool or coil";
  case at_least:
    return "at least {}";
  case count:
    return "count";
  case needed_in_hand:
    return " ({} needed, {} in hand)";
  case upper_end:
    return "{}upper end";
  case lower_end:
    return "{}lower end";
  case its_ends_pin_gap_hole:
    return "{}its ends: pin, gap, hole";
  case thread_of:
    return "{}thread";
  case hands_thread:
    return "{}hands of the thread";
  case right_and_left:
    return "right and left";
  case one:
    return "one";
  case length_bearing_to_bearing:
    return "{}length, bearing to bearing";
  case shortest_hauled_up:
    return "{}shortest, hauled up";
  case longest_let_out:
    return "{}longest, as far as it is let out";
  case shortest_closed:
    return "{}shortest, closed";
  case longest_at_last_thread_or:
    return "{}longest, at the last thread or hole";
  case ft:
    return "{} ft";
  case receiving_card:
    return "RECEIVING CARD   {}";
  case measure_what_came_in_before:
    return "Measure deliveries before you pay, cut or fit them. A dash: the rig file does not say what was "
           "ordered. Write down what you find, and put it into the file.";
  case lengths_are_in_millimetres:
    return "Lengths are in millimetres";
  case lengths_are_in_inches_and:
    return "Lengths are in inches and decimals";
  case as_callipers_read_them_sizes:
    return "{}, as callipers read them; sizes are the names by which things are sold. An inch size and a "
           "metric size that look alike are two things.";
  case coil_wire_springs_open_when:
    return "A coil of wire springs open when its bands are cut, and its ends cut hands: gloves, goggles, "
           "one band at a time, and hold both ends.";
  case from_invoice_day:
    return "From, invoice, day:";
  case what:
    return "what";
  case wanted:
    return "wanted";
  case found:
    return "found";
  case ok:
    return "ok";
  case not_ok:
    return "not ok";
  case looked_over_from_end_to:
    return "Looked over from end to end: no kink, no broken wire or strand, no rust, no chafe.";
  case looked_over_no_crack_no:
    return "Looked over: no crack, no dent, no burr in its holes.";
  case looked_over_screw_turns:
    return "Looked over: no crack, no dent, no burr in holes and threads; the screw turns by hand over all "
           "its length.";
  case batch_number_on_it_invoice:
    return "Batch, number on it, invoice:";
  case receiving_card_begins:
    return "Receiving card";
  case rig_file_states_nothing_that:
    return "The rig file orders nothing.";
  case received_by_day:
    return "Received by, day:";
  case measured_second_time_by_day:
    return "Measured again by, day:";
  case this_card_follows_from_rig:
    return "This card follows from the rig file and nothing else. Nobody has judged whether what was "
           "ordered is strong enough: local rules and a licensed professional rigger come before it. What "
           "is not ok is not fitted.";
  case receiving_card_of:
    return "Receiving card of {}";
  case what_comes_in_for_rig:
    return "Deliveries for the rig, against what the rig file asks for.";
  case what_comes_in_against_what:
    return "deliveries against what the file asks for: sizes, threads, counts, boxes to tick";
  }
  return {};
}

} // namespace sheerpole
