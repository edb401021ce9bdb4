#include "wording/papers/measuring_sheet_words.hpp"

namespace sheerpole {

std::string_view words(MeasuringSheetPhrase phrase) {
  using enum MeasuringSheetPhrase;
  switch (phrase) {
  case aloft:
    return "ALOFT";
  case below:
    return "BELOW";
  case from_middle_one_pin_to:
    return "from the middle of one pin to the middle of the other";
  case from_middle_one_plate_to:
    return "from the middle of one plate to the middle of the other";
  case from_to:
    return "from {} to {}";
  case middle_of_plate:
    return "the middle of the plate";
  case middle_of_pin:
    return "the middle of the pin";
  case where_the_eye_bears:
    return "where the eye bears on the mast";
  case not_to_its_hole:
    return "; the length counts to the middle of the plate where the stays meet, not to the hole of this "
           "one";
  case over:
    return "over {}";
  case length_first:
    return "length, first";
  case length_second:
    return "length, second";
  case by_tape_cord_laser_or:
    return "by tape, cord, laser or old stay";
  case pull_on_it:
    return "pull on it";
  case temperature:
    return "temperature";
  case hook_or_cord_end_to:
    return "hook or cord end down to pin aloft";
  case hook_or_cord_end_to_plate:
    return "hook or cord end down to plate aloft";
  case hoisted_lower_than_pin_by:
    return "hoisted lower than the pin by";
  case knot_to_pin_below:
    return "knot down to pin below";
  case knot_to_plate_below:
    return "knot down to plate below";
  case cord_its_colour:
    return "cord, its colour";
  case little_knots_in_its_tail:
    return "little knots in its tail";
  case adjuster_stands_at:
    return "adjuster set at";
  case lashing_gap_passes:
    return "lashing: gap, passes";
  case turns_still_to_take:
    return "turns still to take";
  case aloft_begins:
    return "Aloft";
  case below_begins:
    return "Below";
  case pin_aloft_and_what_secures:
    return "Pin aloft and what secures it:";
  case seen_aloft_no_crack_no:
    return "Seen aloft: no crack, no worn hole, no broken wire or strand.";
  case measuring_sheet:
    return "MEASURING SHEET   {}";
  case measure_each_stay_twice_from:
    return "Measure each stay twice, between the two places that its sketch shows, with its adjuster set "
           "as it sails. Write the unit after every number: mm, or feet and inches. Where it is up and the "
           "sheet says down, write it with a minus.";
  case tape_pull_it_as_hard:
    return "Tape: pull it as hard each time, and write how hard. Cord: hoist it as hard, knot it at the "
           "pin, keep the cord; it is the length. Old stay: stretch it out before its screw is turned, or "
           "write how the screw stood. Two readings more than 5 mm apart: take both again.";
  case fill_in_measuring_sheet_csv:
    return "Put the readings into the page, stay by stay. Or fill in measuring-sheet.csv with the same "
           "words, and `sheerpole enter BOAT.rig --from measuring-sheet.csv` puts them into the rig file.";
  case cards_are_in:
    return "Cards are in {}.";
  case going_aloft_and_loaded_rigging:
    return "Going aloft and loaded rigging can kill. A second line and somebody at the winch; hold the "
           "mast by something else before a stay is let go, one stay at a time.";
  case day_by:
    return "Day, by:";
  case afloat_or_ashore_wind_temperature:
    return "Afloat or ashore, wind, temperature:";
  case measuring_sheet_begins:
    return "Measuring sheet";
  case rig_file_states_no_stay:
    return "The rig file states no stay.";
  case measuring_sheet_of:
    return "Measuring sheet of {}";
  case blanks_for_two_readings_each:
    return "Blanks for two readings of each stay, and where its pins are.";
  case blank_form_for_measuring_where:
    return "a blank form for measuring: where the pins are, two readings of each stay, and a table to fill "
           "in";
  }
  return {};
}

} // namespace sheerpole
