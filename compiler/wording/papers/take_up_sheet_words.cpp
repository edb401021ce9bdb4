#include "wording/papers/take_up_sheet_words.hpp"

namespace sheerpole {

std::string_view words(TakeUpSheetPhrase phrase) {
  using enum TakeUpSheetPhrase;
  switch (phrase) {
  case not_checked:
    return "not checked: {}";
  case not_checked_as_above:
    return "not checked, as above";
  case as_above:
    return "as above";
  case spent_cannot_tighten_so_far:
    return "SPENT: cannot tighten that far";
  case spent_cannot_slacken_so_far:
    return "SPENT: cannot slacken that far";
  case incomplete:
    return "INCOMPLETE";
  case and_word:
    return " and ";
  case add:
    return "add {}";
  case take_out:
    return "take out {}";
  case add_nothing:
    return "add nothing";
  case line_of:
    return "  line of {}: ";
  case fill_with_parts_shall_be:
    return "fill {} with parts and {}, set between {} and {}";
  case set_open:
    return "{}, set {} to {} ({} % open)";
  case none_fits_too_short:
    return "none fits with the parts in hand: the nearest is {} too short";
  case none_fits_too_long:
    return "none fits with the parts in hand: the nearest is {} too long";
  case with_parts_out_or_from:
    return "With parts out or in, from the present setting";
  case tighten:
    return "to tighten";
  case slacken:
    return "to slacken";
  case from_shortest_longest_by_adjuster:
    return "From the shortest to the longest: {} = {} by the adjuster alone, {} = {} with the rows whose "
           "joints fit or are not checked. Draw no pin of a loaded stay.";
  case temperature_not_checked:
    return "  temperature not checked: ";
  case temperature_slack_above_nothing_tighter:
    return "Temperature, counted from {}. Positive: slacker. Negative: tighter.";
  case take_up_slack_against_what:
    return "Share of the take-up: slack against what can be tightened, tightening against what can be "
           "slackened.";
  case set_mm:
    return "  {} set to {} mm";
  case turns:
    return "turns";
  case how:
    return "how";
  case as_set:
    return "as set";
  case left_first_fit:
    return "= left at first fit";
  case left_after:
    return "= left after {}";
  case lines_hand_fewest_parts_first:
    return "Lines in hand: fewest parts first";
  case what_each_adjuster_has_what:
    return "what each adjuster has, what bedding-in, creep, cold and doubt draw on it, what is left";
  case take_up_begins:
    return "Take-up";
  case take_up_of:
    return "Take-up, {}";
  case take_up:
    return "TAKE-UP";
  case millimetres_creep_amount_date_counts:
    return "Millimetres. Creep is counted up to that date; of the coldest and the warmest day the worse "
           "counts. Stretch is not counted as room to slacken. What is not checked counts as zero, so less "
           "may be left than the account says: such a row says INCOMPLETE.";
  case slacken_tighten_loaded_stay_by:
    return "Slacken and tighten a loaded stay in small steps, one stay at a time, with the mast held by "
           "something else. Keep the thread engaged and lock it again.";
  case there_nothing_set_stay:
    return "  This stay has nothing to set.";
  }
  return {};
}

} // namespace sheerpole
