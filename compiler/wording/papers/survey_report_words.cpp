#include "wording/papers/survey_report_words.hpp"

namespace sheerpole {

std::string_view words(SurveyReportPhrase phrase) {
  using enum SurveyReportPhrase;
  switch (phrase) {
  case now:
    return "Now";
  case before_sailing:
    return "Before sailing";
  case within_year:
    return "Within a year";
  case be_noted:
    return "To be noted";
  case no_findings:
    return "No findings";
  case one_finding:
    return "1 finding";
  case findings_counted:
    return "{} findings";
  case all_checks_could_be_made:
    return "{}; all {} checks could be made.";
  case checks_could_not_be_made:
    return "{}; {} of {} checks could not be made, because what they need is not given.";
  case the_rig:
    return "the rig";
  case findings_begins:
    return "Findings";
  case sheerpole_sorts_findings:
    return "Sheerpole sorts findings into four classes by their kind; it has not seen the boat. Whoever "
           "signs writes the class that fits into the last column.";
  case about:
    return "about";
  case what_was_found:
    return "what was found";
  case why_matters:
    return "why it matters";
  case class_word:
    return "class";
  case no_findings_among_checks_could:
    return "{}: no findings among the checks that could be made";
  case no_findings_in:
    return "{}: no findings";
  case left_by_decision:
    return "Left as they are by a person's decision";
  case who_why_until_when:
    return "who, why, until when";
  case assumptions:
    return "Assumptions";
  case lengths_drafts:
    return "Lengths that are drafts";
  case piece:
    return "piece";
  case because:
    return "because";
  case what_settles:
    return "what settles it";
  case no_length_rests_on_number:
    return "No length rests on an assumed or missing number.";
  case numbers_assumed:
    return "Numbers that are assumed";
  case what:
    return "what";
  case value:
    return "value";
  case on_what_grounds:
    return "grounds";
  case place:
    return "place";
  case no_number_marked_as_assumed:
    return "No number is marked as assumed.";
  case how_numbers_files_known:
    return "How the numbers in the files are known";
  case known_as:
    return "known as";
  case numbers:
    return "numbers";
  case files_state_no_numbers:
    return "The files state no numbers.";
  case checks:
    return "Checks";
  case results_every_check:
    return "Results of every check";
  case check:
    return "check";
  case pass:
    return "pass";
  case finding:
    return "finding";
  case not_checked:
    return "not checked";
  case waived:
    return "waived";
  case limits:
    return "limits";
  case not_checked_because_something_not:
    return "Not checked, because something is not stated";
  case what_missing:
    return "what is missing";
  case every_check_had_its_numbers:
    return "Every check had what it needs.";
  case photograph:
    return "Photograph {}";
  case not_shown:
    return "{} not shown";
  case photographs:
    return "Photographs";
  case pictures_inspection_log_names_as:
    return "The pictures that the inspection log names, from beside the rig file. Sheerpole reads nothing "
           "from them and takes nothing out. A picture may hold the place and hour at which it was taken: "
           "look before you hand this report on. Pictures are shown as stored: turn one before you name it "
           "here.";
  case list_photographs:
    return "List of photographs";
  case no:
    return "no.";
  case file:
    return "file";
  case sha_256:
    return "SHA-256";
  case file_sha_256:
    return "{}. {}. File {}, SHA-256 {}.";
  case named_not_shown_findings_say:
    return "Named and not shown: {}. The findings say why.";
  case no_photograph_could_be_shown:
    return "No photograph could be shown";
  case on_centreline:
    return "on the centreline";
  case on_side:
    return "{} side";
  case passes_free:
    return " (passes free)";
  case clamped:
    return " (clamped)";
  case line:
    return "line";
  case diameter:
    return "diameter";
  case break_load:
    return "break load";
  case not_stated:
    return "not stated";
  case of_line:
    return "line, {}";
  case length_by:
    return "{} by {}";
  case mm_by:
    return "; {} mm by {}";
  case so_expected_mm:
    return ", so {} is expected at {} mm";
  case not_checked_no_bound_stated:
    return "accuracy unknown: no tolerances given";
  case state:
    return "its line";
  case worst_mm:
    return "at worst {} mm";
  case no_tolerance_for_worst_mm:
    return "accuracy unknown: no tolerance given for {}; the rest at worst {} mm";
  case side_column:
    return "side";
  case path_from_aloft:
    return "path, from aloft";
  case ends:
    return "its ends";
  case if_parts:
    return "if it parts";
  case junction:
    return "at the junction";
  case deg_from_line_carries_tension:
    return "{} deg from the line of {}; carries {} of its tension";
  case pin_pin:
    return "pin to pin";
  case how_well_cut_known:
    return "how well its cut is known";
  case lengths:
    return "its lengths";
  case installed:
    return "installed";
  case evidence_age:
    return "evidence of its age";
  case from_upper_end_lower_end:
    return "From its upper end to its lower end";
  case item:
    return "item";
  case length_mm:
    return "length mm";
  case from_upper_pin_mm:
    return "from upper pin mm";
  case ends_column:
    return "ends";
  case length_known_by:
    return "length known by";
  case age_batch:
    return "age, batch";
  case where_x:
    return "where X is {}";
  case times:
    return "{}, {} times";
  case rig_files_do_not_say:
    return "The rig files state no parts for it.";
  case joints:
    return "Joints";
  case joint:
    return "joint";
  case found:
    return "found";
  case compared_passed:
    return "compared and passed";
  case what_each_link_holds_from:
    return "Break load of each link, from the upper end to the lower";
  case link:
    return "link";
  case how:
    return "how";
  case source:
    return "source";
  case remark:
    return "remark";
  case what_each_link_holds_not:
    return "Break load of each link: none is stated";
  case not_stated_never_taken_for:
    return "Break load not stated, so unknown: {}.";
  case how_length_came_about:
    return "How its length adds up: {}";
  case term:
    return "term";
  case how_known:
    return "how it is known";
  case sum_rows_above:
    return "sum of the rows above";
  case incomplete_something_not_stated:
    return "incomplete: something is not stated";
  case missing:
    return "Missing: {}. {}";
  case not_counted:
    return "Not counted: {}.";
  case history_bearing_to_bearing:
    return "History of {}, bearing to bearing in mm";
  case stage:
    return "stage";
  case date:
    return "date";
  case body:
    return "body";
  case planned:
    return "planned";
  case longer_by:
    return "longer by";
  case adjuster_then:
    return "adjuster then";
  case stock_batch:
    return "stock, batch";
  case by_job:
    return "by, job";
  case note:
    return "note";
  case inspection_log:
    return "Inspection log";
  case where:
    return "where";
  case condition:
    return "condition";
  case by_column:
    return "by";
  case photographs_column:
    return "photographs";
  case inspection_log_no_entry:
    return "Inspection log: no entry";
  case found_on_stay:
    return "Findings on this stay";
  case is_waived:
    return "waived";
  case found_on_stay_nothing_by:
    return "Findings on this stay: none by the checks that could be made";
  case found_on_stay_nothing:
    return "Findings on this stay: none";
  case checks_stay_pass_one_finding:
    return "Checks of this stay: {} pass, 1 finding, {} not checked, {} waived.";
  case checks_stay_pass_findings_not:
    return "Checks of this stay: {} pass, {} findings, {} not checked, {} waived.";
  case stays:
    return "Stays";
  case rig_files_state_no_stays:
    return "The rig files state no stays.";
  case port_starboard_stand_apart_each:
    return "Port and starboard are listed apart, each with what is stated of it.";
  case adjusters:
    return "Adjusters";
  case adjuster:
    return "adjuster";
  case set_mm:
    return "set mm";
  case tighten_mm:
    return "to tighten mm";
  case turns:
    return "turns";
  case slacken_mm:
    return "to slacken mm";
  case mm_per_turn:
    return "mm per turn";
  case thread_engaged_mm:
    return "thread engaged mm";
  case one_diameter_mm:
    return "one diameter mm";
  case changes_since_previous_version:
    return "Changes since the previous version";
  case no_previous_version_was_given:
    return "No previous version was given, so nothing is said about changes.";
  case from:
    return "From {} to {}.";
  case whole_stay:
    return "the whole stay";
  case from_part_to_part:
    return " to ";
  case the_boat:
    return "The boat";
  case name:
    return "name";
  case sister_ship:
    return "sister ship of";
  case spar:
    return "spar {}";
  case scope_limits:
    return "Scope and limits";
  case report_made_from_text_rig:
    return "This report is made from the rig files named at its end and from nothing else. Sheerpole works "
           "out lengths and compares what is stated. It has seen no boat and judges none. What is not "
           "stated is not checked, and what is not checked has not passed.";
  case no_inspection_recorded:
    return "No survey of the whole boat is recorded; to be filled in:";
  case last_inspection:
    return "The last inspection:";
  case what_was_not_seen:
    return "What was not seen";
  case stays_joints_not_inspected:
    return "Stays and joints with no recorded inspection";
  case stay:
    return "stay";
  case record:
    return "record";
  case not_accessible_on:
    return "not accessible on {}, {}";
  case no_inspection_of_it:
    return "no inspection recorded";
  case every_stay_inspected:
    return "Every stay has a recorded inspection.";
  case drawings:
    return "Drawings";
  case rig_files_state_no_points:
    return "The rig files state no points, so there is no view to draw.";
  case on_screen_line_or_name:
    return "On a screen, the line or the name of a stay leads to its section. Take no lengths from a "
           "drawing: a view shows a stay shorter than it is.";
  case stated_for_record:
    return "Stated for the record";
  case what_rig_files_say_besides:
    return "Other facts in the rig files, as written. No length, check or order depends on them. Those of "
           "the boat and her spars are at the head of this report.";
  case as_stated:
    return "As stated";
  case stated:
    return "stated of";
  case as_stated_column:
    return "as stated";
  case known_by:
    return "known by";
  case nothing_else_stated_for_record:
    return "Nothing else is stated for the record.";
  case files:
    return "Files";
  case what_report_was_made_from:
    return "What this report was made from";
  case lines:
    return "lines";
  case whoever_has_file_can_tell:
    return "The SHA-256 of a file (FIPS 180-4) tells whether it is the one used here: sha256sum FILE.";
  case sign_off:
    return "Sign-off";
  case work_aloft_on_loaded_rigging:
    return "Work aloft and on loaded rigging can kill. One stay at a time; hold the mast by something else "
           "meanwhile; look again at every pin before the boat sails. Local codes and a licensed "
           "professional come before this report.";
  case report_for_whoever_addressed_for:
    return "This report is for the person it is addressed to and for nobody else. It describes the day of "
           "the inspection; it is no promise of what the rigging will hold.";
  case inspected_by_qualification:
    return "Inspected by, qualification:";
  case for_word:
    return "For:";
  case place_day:
    return "Place, day:";
  case recommendations_order:
    return "Recommendations, in order:";
  case signature:
    return "Signature:";
  case standing_rigging:
    return "Standing rigging of {}";
  case report_on_rigging:
    return "Report on the rigging of {}";
  case survey_report:
    return "Survey report, {}";
  case whole_rig_for_surveyor_what:
    return "the whole rig for a surveyor: what is up there, how it is known, what was found";
  }
  return {};
}

} // namespace sheerpole
