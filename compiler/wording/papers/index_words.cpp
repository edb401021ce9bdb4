#include "wording/papers/index_words.hpp"

namespace sheerpole {

std::string_view words(IndexPhrase phrase) {
  using enum IndexPhrase;
  switch (phrase) {
  case no:
    return "no.";
  case step:
    return "step";
  case when:
    return "when";
  case sheet:
    return "sheet";
  case done:
    return "done";
  case piece:
    return "piece";
  case cut:
    return "cut";
  case state:
    return "state";
  case bench:
    return "bench";
  case dry_fit:
    return "dry fit";
  case draft:
    return "DRAFT, {}: {}";
  case bench_card:
    return "Bench card";
  case dry_fit_card:
    return "Dry-fit card";
  case measure:
    return "measure";
  case before_anything_is_ordered:
    return "before anything is ordered";
  case measuring_sheet:
    return "Measuring sheet";
  case where_every_stay_is:
    return "where every stay is";
  case rig_drawing:
    return "Rig drawing";
  case what_is_known_and_how:
    return "what is known, and how well";
  case proof_sheet:
    return "Proof sheet";
  case cords_and_their_knots:
    return "the cords and their knots";
  case cord_maps:
    return "Cord maps";
  case order:
    return "order";
  case when_every_size_is_known:
    return "when every size is known";
  case order_list:
    return "Order list";
  case which_piece_from_which_spool:
    return "which piece from which spool";
  case spool_plan:
    return "Spool plan";
  case receive:
    return "receive";
  case before_you_pay:
    return "before you pay";
  case receiving_card:
    return "Receiving card";
  case one_card_for_each_piece:
    return "one card for each piece";
  case bench_cards:
    return "Bench cards";
  case one_at_each_end_piece:
    return "one at each end of a piece";
  case labels:
    return "Labels";
  case every_sum_worked_out:
    return "every sum worked out";
  case cut_list:
    return "Cut list";
  case before_the_knife:
    return "before the knife";
  case dry_fit_cards:
    return "Dry-fit cards";
  case aloft:
    return "aloft";
  case one_stay_at_time:
    return "one stay at a time";
  case sign_off:
    return "Sign-off";
  case parts_each_stay_in_their:
    return "the parts of each stay in their order";
  case strips_stays:
    return "Strips of the stays";
  case hand_over:
    return "hand over";
  case to_owner_yard_surveyor:
    return "to the owner, the yard, a surveyor";
  case survey_report:
    return "Survey report";
  case every_year:
    return "every year";
  case and_after_hard_passage:
    return "and after a hard passage";
  case take_up:
    return "Take-up";
  case carried_aboard:
    return "carried aboard";
  case emergency_splice_cards:
    return "Emergency splice cards";
  case next:
    return "Next: {}{}.";
  case next_begins:
    return "Next: {}. {}.";
  case rig_file_states_no_piece:
    return "The rig file states no piece of line.";
  case every_piece_is_on_record:
    return "Every piece is on record as cut.";
  case next_the_bench:
    return "Next: the bench.";
  case sheets:
    return "Sheets";
  case which_sheet_when_and_how:
    return "which sheet when, and how far each stay is: begin here";
  case which_sheet_when:
    return "Which sheet when";
  case which_sheet_when_capitals:
    return "WHICH SHEET WHEN   {}";
  case draft_capitals:
    return "DRAFT: ";
  case pieces_of_line:
    return "Pieces of line: {}.";
  case piece_by_piece:
    return "Piece by piece";
  case x_is_what_cord_says:
    return "X is the length of that stay from pin to pin, as its cord has it: a length without a number. "
           "The "
           "bench card says which cord.";
  case nobody_has_judged_whether_rig:
    return "Nobody has judged whether the rig is strong enough. Local codes and a licensed professional "
           "rigger come before these sheets.";
  case sheets_of:
    return "Sheets of {}";
  case which_sheet_is_used_when:
    return "Which sheet is used when, and how far each stay is.";
  case what_every_check_came_to:
    return "the result of every check, and every joint with its play";
  case warnings_and_notes_about_rig:
    return "the warnings and notes about the rig, each with its place and reason";
  case rig_and_all_that_was:
    return "the rig and all that was calculated, as a back end receives it";
  case days:
    return "{} days";
  case retune_after_it_was_fitted:
    return "Retune {}, {} after it was fitted";
  case fitted_on_take_up_what:
    return "Fitted on {}. Take up what bedding-in and creep have let out, and check the adjuster: the "
           "take-up sheet says what should be left. One stay at a time; do not undo a pin of a loaded "
           "stay.";
  case look_at:
    return "Inspect {}";
  case last_looked_at_on_owners:
    return "Last inspected on {}; the owner's limit is {}. Aloft: two lines, a harness and a second "
           "person.";
  case line_reaches_owners_limit_age:
    return "The line of {} reaches the owner's limit of age";
  case installed_on_owners_limit_is:
    return "Installed on {}; the owner's limit is {}. Age is no measure of strength: have it inspected, or "
           "replace it.";
  case port_and_starboard:
    return ", port and starboard";
  case for_word:
    return " for {}";
  case last_day_waiver:
    return "Last day of the waiver of {}{}";
  case waived_by:
    return "Waived by {}: {}";
  case days_for_retunes_looks_ages:
    return "days for retunes, inspections, ages and waivers, for any calendar program";
  case rig_of:
    return "Rig of {}";
  }
  return {};
}

} // namespace sheerpole
