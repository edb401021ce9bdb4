#include "wording/length_phrases.hpp"

namespace sheerpole {

std::string_view words(HangPhrase phrase) {
  using enum HangPhrase;
  switch (phrase) {
  case hardware_below:
    return "hardware below";
  case less_gap:
    return "less the hoist gap";
  case gap_above_pin:
    return "hung above the pin";
  case still_to_shrink:
    return "still to shrink in the splices";
  case stretch_to_come:
    return "stretch to come";
  case part_slip:
    return "{} left out, or counted twice";
  case gap_slip:
    return "the hoist gap taken twice, or not at all";
  case offset_slip:
    return "the offset of the reading forgotten, or taken twice";
  case eye_slip:
    return "the eye of one end left out";
  case contraction_slip:
    return "the contraction of one splice left out";
  case contractions_slip:
    return "the contraction of the splices left out";
  case hardware_slip:
    return "the hardware below not taken off, or taken off twice";
  case inch_as_24:
    return "24 mm taken for an inch in the hardware, in place of 25.4";
  case inch_as_25:
    return "25 mm taken for an inch in the hardware, in place of 25.4";
  case foot_slip:
    return "the tape read a foot out";
  case decimetre_slip:
    return "the tape held at its first decimetre";
  case metre_slip:
    return "a metre miscounted";
  case other_knot:
    return "another knot of the cord";
  case lay_out_longer:
    return "lay it out again, longer: the rope is still whole";
  case one_toggle_more:
    return "one toggle more, if its pins fit; else lay it out again, longer";
  case screw_gives_out:
    return "the adjuster gives it out";
  case hangs_right:
    return "it hangs right";
  case screw_takes_up:
    return "the adjuster takes it up";
  case one_toggle_out:
    return "one toggle out, if the pins fit without it; else lay it out again, shorter";
  case toggles_out:
    return "{} toggles out, if the pins fit without them; else lay it out again, shorter";
  case lay_out_shorter:
    return "lay it out again, shorter: the rope is still whole";
  case hardware_not_known:
    return "the length of {} is not stated";
  case piece_not_known:
    return "something of the cut of {} is not stated";
  case gap_not_stated:
    return "hoist-gap is not stated";
  case gap_too_long:
    return "a hoist gap of {} is more than the {} at which it hangs without a gap: it would hang below the "
           "pin at the deck";
  case hung_high:
    return "at the dry fit it hung at {}, {} was worked out: it is {} short";
  case hung_low:
    return "at the dry fit it hung at {}, {} was worked out: it is {} long";
  }
  return {};
}

} // namespace sheerpole
