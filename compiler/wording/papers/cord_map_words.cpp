#include "wording/papers/cord_map_words.hpp"

namespace sheerpole {

std::string_view words(CordMapPhrase phrase) {
  using enum CordMapPhrase;
  switch (phrase) {
  case and_word:
    return " and ";
  case to:
    return ": {} to {}";
  case not_stated:
    return "not stated";
  case below_the_knot:
    return "below the knot";
  case none:
    return "none";
  case expected:
    return "expected {}";
  case day:
    return "day";
  case pull:
    return "pull";
  case by:
    return "by";
  case between_ends_and_pins:
    return "between the ends and the pins";
  case laid_out_on_rope:
    return "laid out on the line";
  case second_pass:
    return "second pass";
  case by_day:
    return "by, day";
  case upper_end:
    return "upper end";
  case cord_map:
    return "CORD MAP";
  case knots:
    return "knots";
  case one_mark_is_good_to:
    return "one mark is good to";
  case stretch_at_pull_used:
    return "stretch at the pull used";
  case knot_comes_before_knot_apart:
    return "Knot {} comes before knot {}, {} apart: count the tally before you pinch.";
  case cord_map_begins:
    return "Cord map {}";
  case no_reading_names_this_cord:
    return "No reading names this cord.";
  case cord_its_knots_where_they:
    return "The cord, its knots where they are expected";
  case cord_not_to_scale_not:
    return "The cord, not to scale: not every length is expected from a path or an estimate";
  case knot_in_full:
    return "Knot {}: {}; {}";
  case each_knot_has_its_own:
    return "Each knot has its own X: from U, which hung aloft, to the knot. What is expected comes from "
           "the path, a stated length or an estimate. It helps to find a wrong knot; it is never cut by.";
  case cord_map_of:
    return "Cord map of {}";
  case knots_one_messenger_cord_and:
    return "The knots of one messenger cord and the stays whose lengths they keep.";
  case page_for_each_messenger_cord:
    return "a page for each messenger cord: its knots, whose length each keeps, what to tick when it is "
           "laid out";
  case cord_maps_of:
    return "Cord maps of {}";
  }
  return {};
}

} // namespace sheerpole
