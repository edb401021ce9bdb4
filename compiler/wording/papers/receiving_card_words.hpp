#pragma once

#include "wording/phrase.hpp"

namespace sheerpole {

/// What the receiving card asks of what comes in.
enum class ReceivingCardPhrase : std::uint16_t {
  what_length_is_made_up,
  label_construction,
  label_size,
  label_grade,
  label_break_load_spliced,
  label_break_load,
  label_batch,
  first,
  second,
  third,
  diameter_place_pulled_by_hand,
  length_on_spool_or_coil,
  at_least,
  count,
  needed_in_hand,
  upper_end,
  lower_end,
  its_ends_pin_gap_hole,
  thread_of,
  hands_thread,
  right_and_left,
  one,
  length_bearing_to_bearing,
  shortest_hauled_up,
  longest_let_out,
  shortest_closed,
  longest_at_last_thread_or,
  ft,
  receiving_card,
  measure_what_came_in_before,
  lengths_are_in_millimetres,
  lengths_are_in_inches_and,
  as_callipers_read_them_sizes,
  coil_wire_springs_open_when,
  from_invoice_day,
  what,
  wanted,
  found,
  ok,
  not_ok,
  looked_over_from_end_to,
  looked_over_no_crack_no,
  looked_over_screw_turns,
  batch_number_on_it_invoice,
  receiving_card_begins,
  rig_file_states_nothing_that,
  received_by_day,
  measured_second_time_by_day,
  this_card_follows_from_rig,
  receiving_card_of,
  what_comes_in_for_rig,
  what_comes_in_against_what,
};

constexpr std::string_view table_of(ReceivingCardPhrase) {
  return "receiving-card";
}

std::string_view words(ReceivingCardPhrase phrase);

} // namespace sheerpole
