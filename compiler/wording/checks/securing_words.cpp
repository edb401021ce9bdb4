#include "wording/checks/securing_phrases.hpp"

namespace sheerpole {

std::string_view words(SecuringCheckPhrase phrase) {
  using enum SecuringCheckPhrase;
  switch (phrase) {
  case split_pin:
    return "split pin {}";
  case pin_not_stated:
    return "{}: what secures the pin of {} is not stated";
  case its_pin:
    return "its pin";
  case threads_not_stated:
    return "what locks the threads of {} is not stated";
  case carries_a_sail:
    return "it carries a sail, and nothing aloft lets";
  case goes_between:
    return "it goes from mast to mast, and nothing {} lets";
  case the_deck:
    return "and the deck";
  case and_where:
    return "and its end {}";
  case nothing_to_mast:
    return "nothing between here and the mast swings both ways";
  case nothing_above:
    return "nothing above it swings both ways";
  case lets_it_swing:
    return "{} lets it swing both ways";
  case slot_not_stated:
    return "how far {} swings in its slot is not stated";
  case parallel_pins:
    return "parallel pins";
  case metal_to_metal:
    return "{} of {} to {} of {}";
  case metal_not_stated:
    return "{} to {}: the metal of {} is not stated";
  case open_body:
    return "{}: open body";
  case closed_with_holes:
    return "{}: closed body with witness holes";
  case can_be_looked_at:
    return "{}: can be inspected";
  case foil_not_stated:
    return "whether the pins inside the foil and its drum can be inspected is not stated";
  case tip_of:
    return "the tip of {}";
  case edge_of:
    return "the edge of {}";
  case radius_not_stated:
    return "edge-radius of {} is not stated";
  case radius_under_rope:
    return "{} has a radius of {} under rope of {}";
  case rope_bears:
    return "its rope bears on it";
  case the_radius:
    return "the radius";
  case which_line:
    return "which of its lines goes over {} is not stated";
  case made_for:
    return "made for {}";
  case on_a_part_made_for:
    return "{}: {} on a part made for {}";
  case at_the_tip_of:
    return "at the tip of {}";
  case bore_not_stated:
    return "{}: the pin or the bore of {} is not stated";
  case length_not_measured:
    return "{}: the length of {} is not measured";
  case seat_not_stated:
    return "{}: the diameter of the seat of {} is not stated";
  case crown_beyond_pin:
    return "by the shape of {} the crown lies {} beyond the pin; its length is {}";
  case write_negative_length:
    return "write {}: the crown lies beyond the pin";
  case its_length:
    return "its length";
  case this_joint:
    return "this joint";
  }
  return {};
}

} // namespace sheerpole
