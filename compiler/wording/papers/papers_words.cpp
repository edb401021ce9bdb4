#include "wording/papers/papers_words.hpp"

namespace sheerpole {

std::string_view words(PapersPhrase phrase) {
  using enum PapersPhrase;
  switch (phrase) {
  case not_yet:
    return "NOT YET";
  case alike:
    return "alike";
  case aloft:
    return "aloft";
  case below:
    return "below";
  case more:
    return "{} more {}";
  case and_one_more:
    return "{} and one more";
  case and_more:
    return "{} and {} more";
  case the_length:
    return "the length";
  case check_by_halves_nothing_buried:
    return "Check by halves, nothing buried: past the bearings lie {} aloft and {} below, {}. If they "
           "differ by more, shift the line by half of that. If both are longer or both shorter, {} or the "
           "rope in hand is not what the file says: stop and measure again.";
  case in_hand_more_than_least:
    return "In hand: {} more than the least cut";
  case in_hand_more_than_least_cut:
    return "In hand: {}, {} more than the least cut";
  case it_goes_into_longer_burys:
    return ": it goes into longer burys";
  case cut_nothing:
    return "{}{}. Cut nothing{}.";
  case it_goes_into_longer_burys_and:
    return " It goes into longer burys, and";
  case is_cut_away:
    return "{}{}.{} {} is cut away.";
  case both_tails_may_be_tapered:
    return "Both tails may be tapered over up to {}; tapered rope cannot be used for a new length.";
  case tail_may_be_tapered_over:
    return "The tail {} may be tapered over up to {}; tapered rope cannot be used for a new length.";
  case bury:
    return "bury {}";
  case spare:
    return " + spare {} = {}";
  case they_must_be_alike:
    return "They must be alike.";
  case they_must_be_alike_is:
    return "They must be alike; {} is of rounding.";
  case more_must_lie:
    return "{} more must lie {}.";
  case cut_nothing_all_that_is:
    return "Cut nothing: all that is in hand, {}, goes into the piece.";
  case cut_to:
    return "Cut to {}.";
  case in_hand_cut_lacks_input:
    return "In hand: {}. The cut is not known yet, so nothing is shared out.";
  case in_hand_it_is_enough:
    return "In hand: {}. It is enough while X is no more than {}. How much is left over is not known: lay "
           "the least cut out by the cord, measure the rest and state it as in-hand-over.";
  case in_hand_too_short_by:
    return "In hand: {}, TOO SHORT by {} for this cut.";
  case at:
    return "at {}";
  case inside:
    return "inside";
  case past:
    return "past";
  case x_pin_to_pin_no:
    return "X = pin to pin. No reading states it yet: the upper end U of a cord goes to the pin aloft, its "
           "knot L to the pin below.";
  case x_from_its_upper_end:
    return "X = {}: from its upper end U to its knot L.";
  case pin_aloft_is:
    return "The pin aloft is {}.";
  case pin_below_is:
    return "The pin below is {}.";
  case centreline:
    return "centreline";
  case port_side:
    return "PORT side";
  case starboard_side:
    return "STARBOARD side";
  case this_piece:
    return "THIS PIECE";
  case line:
    return "line";
  case set_to:
    return " set to {}";
  case taper:
    return ", taper {}";
  case tapered_over:
    return ", tapered over {}";
  case taper_not_stated:
    return ", taper not stated";
  case throat:
    return ", throat ";
  case nothing_locks_it:
    return ", nothing locks it";
  case locking_not_stated:
    return ", locking not stated";
  case it_waits_for:
    return "Held back for {}.";
  case what_releases_this_card:
    return "What releases this card";
  case reason:
    return "reason";
  case what_settles_it:
    return "what settles it";
  case meanwhile:
    return "Meanwhile";
  case more_than_one_shop_is:
    return "Several shops are given, each with a unit: choose one with `--shop NAME`.";
  case shop_rounds_to_which_is:
    return "The shop {} rounds to {}, which is no step of this unit.";
  case millimetres:
    return "millimetres";
  case feet_and_inches:
    return "feet and inches";
  case shop:
    return " (shop {})";
  case to:
    return "{} to {}{}";
  case reasons:
    return "reasons";
  case piece_waits:
    return "piece waits";
  case pieces_wait:
    return "pieces wait";
  case it:
    return "it";
  case them:
    return "them";
  case for_cut_list_names:
    return "{} {}, for {}; the cut list names {}";
  case about_m:
    return "about {} m";
  case not_stated:
    return "not stated";
  case report_date_not_stated:
    return "report date not stated";
  case revision_rig:
    return "revision {}, {}{}, rig {}";
  case as:
    return "as ";
  case boat_without_name:
    return "Boat without a name";
  case revision:
    return ", revision ";
  case from_drawing:
    return "FROM DRAWING";
  case not_measured_cut_from_drawing:
    return "not measured, cut from the drawing";
  case written:
    return ", written {}";
  case rests_on_assumed:
    return "{}; rests on assumed {}";
  case a_reading:
    return "a reading";
  case the_stated_length:
    return "the stated length";
  case points_its_path:
    return "the points of its path";
  case not_known_as_number:
    return "not known as a number";
  case to_of:
    return "{} to {}";
  case of_draws:
    return " of {} draws";
  case all:
    return "all{}";
  case none:
    return "none{}";
  case under:
    return "under 0.1 %";
  case all_of_it:
    return "all of it";
  case page_of:
    return "page {} of {}";
  case draft_do_not_cut_to:
    return "DRAFT: do not cut to it.";
  case page_of_behind:
    return ", page {} of {}";
  case of:
    return "{} of {}";
  case text_file_this_name_as:
    return "The text of the file of this name, as pages.";
  case boat_without_name_word:
    return "(boat without a name)";
  case draft:
    return "DRAFT";
  case contents:
    return "Contents";
  case language_tag:
    return "en";
  case show_only_rows:
    return "Show only rows of tables that hold: ";
  }
  return {};
}

} // namespace sheerpole
