#include "wording/checks/length_phrases.hpp"

namespace sheerpole {

std::string_view words(LengthCheckPhrase phrase) {
  using enum LengthCheckPhrase;
  switch (phrase) {
  case longest_line:
    return "the longest entry: this line of {}";
  case longest_part:
    return "the longest part: {}, {}";
  case its_length_is_x:
    return "its length is X";
  case body_is:
    return "its body is {}";
  case estimate_leaves:
    return "its estimate of {} leaves {} for the line";
  case near_estimate:
    return "{}, with an estimate of {}";
  case as_estimated:
    return "estimated at {}";
  case write_estimate:
    return "if the length is right, write `estimate: {}`";
  case pin_to_pin_is:
    return "pin-to-pin {}";
  case ropes_splice:
    return "a rope's splice";
  case line_is_a:
    return "the line is a {}";
  case on_a_rope:
    return "{} at {} is on a rope";
  case upper_by_path:
    return "the upper end, by its place in the path";
  case higher:
    return "{} higher";
  case no_path:
    return "it has no path";
  case is_above:
    return "{} is above {}";
  case by_the_reading:
    return "{} by the reading";
  case as_stated:
    return "{} as stated";
  case through_the_points:
    return "{} through the points";
  case way_unknown:
    return "{} unknown";
  case two_ways:
    return "{}, {}";
  case comes_out_if:
    return ". It comes out if {}";
  case or_if:
    return ", or if {}";
  case x_expected:
    return "its length is X, which should be {}: {}";
  case other_way_assumed:
    return "{}: it rests on what is assumed";
  case one_way:
    return "there is one way to its length";
  case two_sides:
    return "port {}, starboard {}";
  case alike_within:
    return "alike within {}";
  case side_is_x:
    return "the length of a side is X";
  case came_out_longer:
    return "{} longer";
  case came_out_shorter:
    return "{} shorter";
  case is_then_set:
    return "{} is then set to {}";
  case nearest_hole_then:
    return "{} is then nearest its hole {}, {} off {}";
  case cannot_be_tightened:
    return "{} cannot be tightened so far: {} is lacking";
  case cannot_be_slackened:
    return "{} cannot be slackened so far: {} is lacking";
  case no_one_adjuster:
    return "no one adjuster takes that up";
  case pull_not_counted:
    return "it was measured under a pull, and what the line stretches by is not stated";
  case nothing_to_hold_against:
    return "what it was to be is X or not complete";
  case batch_of_port_missing:
    return "the batch of the port side is not stated";
  case batch_of_starboard_missing:
    return "the batch of the starboard side is not stated";
  case lacks_input:
    return "its cut length lacks an input";
  case comes_out_short:
    return "the piece would come out too short";
  case comes_out_long:
    return "the piece would come out too long";
  case comes_out_either:
    return "the piece would come out wrong: some of it would make the cut longer and some shorter";
  case cut_complete:
    return "its cut has every input";
  case piece_cut_complete:
    return "piece {}: its cut has every input";
  case piece_of:
    return "{} {} of {}";
  case on_both_sides:
    return "{} on both sides";
  case assumed_here:
    return "assumed here";
  case and_so_many_more:
    return "{} more";
  case every_piece:
    return "every piece";
  case none_assumed:
    return "no assumed value reaches a cut";
  case no_one_number:
    return "{} has no one number";
  case no_number_yet:
    return "it has no number yet";
  case several_numbers:
    return "there are {} of them";
  case the_stay:
    return "the stay";
  case quantity_is:
    return "{} is {}";
  case as_calculated:
    return "{} as calculated";
  case longer_after:
    return "longer after, {}";
  case before:
    return "before, {}";
  case shorter_when_set:
    return "shorter when set, {}";
  case after_splicing:
    return "after splicing, {}";
  case longer_when_set:
    return "longer when set, {}";
  case from_to:
    return "from {} to {}";
  case length_over_line:
    return "it is {} long, {} times the {} of {}; {} to {} times is usual";
  case longest_over_shortest:
    return "it opens to {}, {} times its shortest of {}; {} to {} times is usual";
  case inserted_over_line:
    return "{} of wire goes into it, {} times the {} of {}; {} to {} times is usual";
  case pitch_over_line:
    return "its links are {} inside, {} times the {} of {}; {} to {} times is usual";
  case seat_over_line:
    return "its seat measures {}, {} times the {} of {}; {} to {} times is usual";
  case pin_over_line:
    return "its pin measures {}, {} times the {} of {}; {} to {} times is usual";
  case thread_over_line:
    return "its thread measures {}, {} times the {} of {}; {} to {} times is usual";
  case eye_over_line:
    return "its eye takes {}, {} times the {} of {}; {} to {} times is usual";
  case run_apart:
    return "{}: the run that differs most";
  case bury_over_line:
    return "its bury measures {}, {} times the {} of {}; {} to {} times is usual";
  case contraction_of_bury:
    return "it draws in {} of its bury; {} to {} is usual";
  case differs_most:
    return "here the sides differ most";
  case stretched_at_break:
    return "it has stretched by {} when it breaks; {} to {} is usual";
  case over_this:
    return "over this";
  case name_is_of_line:
    return "the number in its name is that of its line or its pin";
  case its_diameter_is:
    return "its diameter is {}";
  case its_length_is:
    return "its length is {}";
  case its_longest_is:
    return "its longest is {}";
  }
  return {};
}

} // namespace sheerpole
