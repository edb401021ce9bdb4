#include "wording/checks/adjuster_phrases.hpp"

namespace sheerpole {

std::string_view words(AdjusterCheckPhrase phrase) {
  using enum AdjusterCheckPhrase;
  switch (phrase) {
  case beyond_shortest:
    return "{} beyond the shortest";
  case beyond_longest:
    return "{} beyond the longest";
  case shortest_is:
    return "its shortest is {}";
  case longest_is:
    return "its longest is {}";
  case write_this:
    return "write {}";
  case set_within:
    return "{} at {}: {} to tighten, {} to slacken";
  case thread_in_body:
    return "{} of thread in the body";
  case at_the_longest:
    return "{} at the longest";
  case to_tighten:
    return "to tighten";
  case to_slacken:
    return "to slacken";
  case of_thread:
    return "{}: {} of thread in the body";
  case engagement_not_stated:
    return "{}: engaged-at-longest is not stated";
  case thread_not_stated:
    return "{}: its thread is not stated";
  case left_both_ways:
    return "{}: {} and {} left";
  case from_hole:
    return "{} from hole {}";
  case in_a_hole:
    return "{} is pinned in one of its holes";
  case set_in_state:
    return "in {} {} is set to {}";
  case stowed_is_x:
    return "in {} it is made off elsewhere, and its length is X";
  case its_range:
    return "its range";
  case taking_up:
    return "taking up";
  case giving_out:
    return "giving out";
  case left_after:
    return "after {} {} are left to take up and {} to give out";
  case can_be_made_to_fit:
    return "a line of {} can be made to fit";
  case too_short:
    return "too short";
  case too_long:
    return "too long";
  case hand_of_upper:
    return "{}: the hand of its upper end is not stated";
  case hand_of_lower:
    return "{}: the hand of its lower end is not stated";
  case two_hands:
    return "{}: {}-handed and {}-handed";
  case handed:
    return "{}-handed";
  case like_the_other:
    return "{}-handed like the other";
  case closed_share:
    return "{}: {} closed";
  case left_of_range:
    return "after {} {} of a range of {} are left to take up";
  case to_tighten_as_set:
    return "{} to tighten as set";
  case no_bound:
    return "no bound is stated";
  case at_worst:
    return "at worst {} shorter or {} longer; the adjuster can give out {} and take up {}";
  case give_out:
    return "give out";
  case take_up:
    return "take up";
  case alike_on_both_sides:
    return "{} on both sides";
  case load_of_stay:
    return "the load of the stay ({})";
  case break_load_of:
    return "the break load of {} ({})";
  case are_not_stated:
    return "{} are not stated";
  case lacks_of:
    return "{} of {}";
  case comes_to:
    return "{} = {}";
  case nothing_to_hold:
    return "{} = {}; neither the load of the stay nor the break-load of its line is stated";
  case wanted_times:
    return "{} times {}, {}";
  case holds_what_is_wanted:
    return "{}; wanted: {}";
  case rove_between:
    return "its lanyard goes from {} to {}";
  case in_the_knot:
    return "{}: {} in the knot";
  case pins_stay:
    return "without {} each joint still has its pin";
  case only_pin_here:
    return "taken out here";
  case leave_it_in:
    return "if it stays in, write `removable: no`";
  case nothing:
    return "nothing";
  }
  return {};
}

} // namespace sheerpole
