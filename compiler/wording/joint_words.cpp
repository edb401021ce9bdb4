#include "calculate/joints/joint_phrases.hpp"
#include "wording/phrase_table.hpp"

#include "base/internal_error.hpp"

namespace sheerpole {

std::string_view words(JointPhrase phrase) {
  switch (phrase) {
  case JointPhrase::from_to:
    return "{} to {}";
  case JointPhrase::together:
    return "{}";
  case JointPhrase::end_of_upper_not_stated:
    return "the lower end of the upper part is not stated";
  case JointPhrase::end_of_lower_not_stated:
    return "the upper end of the lower part is not stated";
  case JointPhrase::line_end_not_stated:
    return "the end that takes the line is not stated";
  case JointPhrase::dimension_not_stated:
    return "the {} of the {} is not stated";
  case JointPhrase::grip_not_stated:
    return "the grip of the pin is not stated";
  case JointPhrase::engaged_not_stated:
    return "how far the stud is engaged is not stated";
  case JointPhrase::limit_off:
    return "{} is switched off in `limits`";
  case JointPhrase::usual_and_least:
    return "{} are usual, {} the least";
  case JointPhrase::usual:
    return "{} are usual";
  case JointPhrase::least:
    return "{} the least";
  case JointPhrase::ends:
    return "{} and {}";
  case JointPhrase::ends_against:
    return "{} against {}";
  case JointPhrase::line_at_end:
    return "{} at {}";
  case JointPhrase::pin_in_hole:
    return "pin {} in a hole of {}";
  case JointPhrase::pin_in_bush:
    return "pin {} in {} of {}";
  case JointPhrase::pin_in_jaw:
    return "pin {} in a jaw made for a pin of {}";
  case JointPhrase::size_of_pin_not_stated:
    return "the size of the pin is not stated";
  case JointPhrase::pin_has_play:
    return "{}, play {}";
  case JointPhrase::pin_plays_too_much:
    return "{}: play {}, at most {}; a bush of {} outside and {} inside fills it";
  case JointPhrase::hole_of_other_pin:
    return "the hole is that of a pin of {}";
  case JointPhrase::plate_in_jaw:
    return "{} in a jaw of {}";
  case JointPhrase::plate_plays_too_much:
    return "{}: play {}, at most {}";
  case JointPhrase::edge_in_depth:
    return "{} from the hole to the end of the plate in a jaw {} deep";
  case JointPhrase::edge_from_hole:
    return "edge {} from a hole of {}, {} diameters";
  case JointPhrase::pin_over_cheeks:
    return "pin of {} from head to hole in a jaw {} over its cheeks";
  case JointPhrase::split_pin_in_no_table:
    return "no table has a pin of {}";
  case JointPhrase::split_pin_through:
    return "split pin {} through a pin of {}; {} has {}";
  case JointPhrase::eye_in_hook:
    return "eye of {} in a hook open {}";
  case JointPhrase::neck_in_slot:
    return "a neck of {} in a slot {} wide";
  case JointPhrase::head_in_slot:
    return "a head of {} in a slot {} long";
  case JointPhrase::head_behind_slot:
    return "a head of {} behind a slot {} wide";
  case JointPhrase::thread_in_thread:
    return "{} in {}";
  case JointPhrase::hand_in_hand:
    return "a {}-handed stud in a {}-handed socket";
  case JointPhrase::stud_in_body:
    return "{} of {} in the body, at least {}";
  case JointPhrase::stud_in_depth:
    return "{} of stud in a thread {} deep";
  case JointPhrase::wire_in_terminal:
    return "wire {} in a terminal for {}";
  case JointPhrase::construction_in_terminal:
    return "{}, {}, in a terminal for {}";
  case JointPhrase::rope_in_groove:
    return "rope of {} in a groove of {}";
  case JointPhrase::groove_at_most:
    return "{}, at most {}";
  case JointPhrase::seat_over_rope:
    return "seat of {}, {} times the rope";
  }
  internal_error("a phrase of joints that has no words");
}

} // namespace sheerpole
