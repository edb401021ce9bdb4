#include "wording/length_phrases.hpp"

namespace sheerpole {

std::string_view words(ChangePhrase phrase) {
  switch (phrase) {
  case ChangePhrase::right_length:
    return "of the right length";
  case ChangePhrase::too_long:
    return "{} too long";
  case ChangePhrase::too_short:
    return "{} too short";
  case ChangePhrase::stays:
    return "stays as it is";
  case ChangePhrase::made_by_other_numbers:
    return "of the right length; its ends are made by other numbers";
  case ChangePhrase::within_tolerance:
    return "{}; stays as it is, within the remake tolerance of {}";
  case ChangePhrase::hangs:
    return "{}; {}, which leaves {} to tighten and {} to slacken";
  case ChangePhrase::set_to:
    return "set {} to {}";
  case ChangePhrase::pinned_in_hole:
    return "pin {} in hole {} ({})";
  case ChangePhrase::between_holes:
    return "pin {} in hole {} ({}), the nearest: the stay is {} in it";
  case ChangePhrase::hangs_by_junction:
    return "{}; the stays at {} take it together: set {} of {} to {}, which leaves {} to tighten and {} to "
           "slacken";
  case ChangePhrase::respliced:
    return "{}; can be re-spliced{} {}: open the splice, do not cut the eye off. Measure the piece at its "
           "tension before it is opened";
  case ChangePhrase::respliced_and_trimmed:
    return "{}; can be re-spliced{} {}: open the splice, do not cut the eye off; {} more than before is "
           "trimmed. Measure the piece at its tension before it is opened";
  case ChangePhrase::lacks_rope:
    return "{}; spliced anew it lacks {} of rope";
  case ChangePhrase::new_terminal:
    return "{}; can be cut and given a new terminal {}: the old one is lost with {} of wire, and {} is cut "
           "off besides";
  case ChangePhrase::lacks_wire:
    return "{}; cut off at its terminal {} it lacks {} for a new one";
  case ChangePhrase::for_its_maker:
    return "{} too long; whether it can be shortened is for whoever makes it";
  case ChangePhrase::shorter:
    return " shorter";
  case ChangePhrase::longer:
    return " longer";
  case ChangePhrase::as_long:
    return "";
  case ChangePhrase::at_one_end:
    return "at one end";
  case ChangePhrase::at_end:
    return "{}";
  case ChangePhrase::at_both_ends:
    return "aloft and below";
  case ChangePhrase::another_line:
    return "{} in place of {}";
  case ChangePhrase::another_size:
    return "{} of {} in place of {}";
  case ChangePhrase::another_construction:
    return "{} made as {} in place of {}";
  case ChangePhrase::another_grade:
    return "{} of grade {} in place of {}";
  case ChangePhrase::another_kind:
    return "{} is another kind of line";
  case ChangePhrase::another_batch:
    return "of batch {} in place of {}";
  case ChangePhrase::length_not_known:
    return "its length is not known in both to the same mark";
  case ChangePhrase::number_missing:
    return "a number is missing on which its cut rests";
  case ChangePhrase::draft_not_on_record:
    return "the old cut is a DRAFT, which nobody was to cut to, and no record says how long the piece came "
           "out; measure the one that hangs there";
  case ChangePhrase::none_before:
    return "there was none";
  case ChangePhrase::hangs_no_more:
    return "it hangs no more";
  case ChangePhrase::named:
    return "{}";
  case ChangePhrase::piece_at_stage:
    return "piece of {} as {}";
  case ChangePhrase::reading_by:
    return "{}, reading by {}";
  case ChangePhrase::reading_by_on:
    return "{}, reading by {} of {}";
  case ChangePhrase::passage_at:
    return "passage at {}";
  case ChangePhrase::line_in_stack:
    return "length of a line in the stack";
  case ChangePhrase::of_part:
    return "{} of {}";
  case ChangePhrase::spare_bury_of:
    return "spare bury of {}";
  case ChangePhrase::end_of_part:
    return "{} end";
  case ChangePhrase::of_end_of_part:
    return "{} of the {} end";
  }
  return {};
}

} // namespace sheerpole
