#include "wording/length_phrases.hpp"

namespace sheerpole {

std::string_view words(ReadingPhrase phrase) {
  switch (phrase) {
  case ReadingPhrase::run:
    return "{}";
  case ReadingPhrase::mean_of_runs:
    return "({}) / {} mm, spread {}";
  case ReadingPhrase::tape_says:
    return "{} where it says {}";
  case ReadingPhrase::warmer_than_standard:
    return "{} K from its standard";
  case ReadingPhrase::pull_against_standard:
    return "{} N against {} N";
  case ReadingPhrase::free_span:
    return "{} free span at {} N";
  case ReadingPhrase::free_spans:
    return "{} free spans at {} N";
  case ReadingPhrase::pull_less:
    return "{} N less {} N";
  case ReadingPhrase::tape_standard:
    return "tape standard";
  case ReadingPhrase::tape_temperature:
    return "tape temperature";
  case ReadingPhrase::tape_pull:
    return "tape pull";
  case ReadingPhrase::tape_sag:
    return "tape sag";
  case ReadingPhrase::old_stretch:
    return "stretch of the old stay";
  case ReadingPhrase::not_stated:
    return "{}: {} is not stated";
  case ReadingPhrase::outside_correction:
    return "{}: its numbers are outside what the correction holds for";
  case ReadingPhrase::outside_hooke:
    return "{}: its numbers are outside what Hooke's law holds for";
  case ReadingPhrase::boat_not_at_reference:
    return "temperature of the boat: {} as it was read, {} where lengths hold; what spars, hull and an old "
           "stay grow by between the two is not counted";
  case ReadingPhrase::no_tape:
    return "{}: the reading names no tape (with)";
  case ReadingPhrase::cord_without_number:
    return "{}, kept beside the mark, since X is the cord as it lay";
  case ReadingPhrase::cord_pull:
    return "pull of the cord";
  case ReadingPhrase::cord_temperature:
    return "temperature of the cord";
  case ReadingPhrase::property_of_name:
  case ReadingPhrase::property_of_line:
  case ReadingPhrase::property_of_stay:
    return "{} of {}";
  case ReadingPhrase::property_of_reading:
    return "{} of the reading";
  case ReadingPhrase::cord_stretch:
    return "stretch of the cord";
  case ReadingPhrase::bound_of_cord_stretch:
    return "the bound of the stretch of {}";
  case ReadingPhrase::knot_of_cord:
    return "the mark of its knot";
  case ReadingPhrase::length_of_stay:
    return "a path or an estimate of {}";
  case ReadingPhrase::part_counted_twice:
    return "{}, {}, was measured along or counted twice";
  case ReadingPhrase::part_left_out:
    return "{}, {}, was left out";
  case ReadingPhrase::offset_at_both_ends:
    return "the offset of {} was to be taken off at both ends";
  case ReadingPhrase::offset_already_off:
    return "the offset of {} had been taken off already";
  case ReadingPhrase::foot_too_many:
    return "a foot too many was counted";
  case ReadingPhrase::foot_too_few:
    return "a foot too few was counted";
  case ReadingPhrase::held_at_inch:
    return "the tape was held at its first inch";
  case ReadingPhrase::held_at_decimetre:
    return "the tape was held at its first decimetre";
  case ReadingPhrase::metre_too_many:
    return "a metre too many was counted";
  case ReadingPhrase::metre_too_few:
    return "a metre too few was counted";
  case ReadingPhrase::written_as_decimal_feet:
    return "feet and inches were written as decimal feet";
  case ReadingPhrase::written_as_feet_and_inches:
    return "decimal feet were written as feet and inches";
  case ReadingPhrase::next_hole:
    return "it was taken to {} in place of {}";
  case ReadingPhrase::other_side:
    return "it was measured on the other side of the boat";
  case ReadingPhrase::factor_of_ten:
    return "the decimal point of one is a digit off, a factor of 10";
  case ReadingPhrase::inches_and_millimetres:
    return "inches stand for millimetres, a factor of 25.4";
  case ReadingPhrase::inches_and_centimetres:
    return "inches stand for centimetres, a factor of 2.54";
  case ReadingPhrase::feet_and_metres:
    return "feet stand for metres, a factor of 3.28 or 0.3048";
  case ReadingPhrase::feet_and_inches:
    return "inches stand for feet, a factor of 12";
  case ReadingPhrase::about_a_metre:
    return "a metre was miscounted";
  case ReadingPhrase::about_a_foot:
    return "a foot was miscounted";
  }
  return {};
}

} // namespace sheerpole
