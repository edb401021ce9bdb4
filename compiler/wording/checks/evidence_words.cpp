#include "wording/checks/evidence_phrases.hpp"

namespace sheerpole {

std::string_view words(EvidenceCheckPhrase phrase) {
  using enum EvidenceCheckPhrase;
  switch (phrase) {
  case days:
    return "{} days";
  case years:
    return "{} years";
  case one_year:
    return "{} year";
  case report_date_not_stated:
    return "the boat's report-date is not stated";
  case pull_and_temperature:
    return "the reading states pull and temperature";
  case temperature_alone:
    return "the reading states temperature";
  case pull_nor_temperature:
    return "pull nor temperature";
  case sag_not_stated:
    return "what is needed for the sag of the tape is not stated";
  case spans_not_stated:
    return "whether the tape hung free is not stated (spans)";
  case tape_sagged:
    return "the tape sagged by {} of length";
  case reading_day_not_stated:
    return "the day of the reading is not stated";
  case read_before:
    return "read {} before the report";
  case readings_told_apart:
    return "{} readings, no two of them alike word for word";
  case the_same_reading:
    return "the same, word for word";
  case mark_of_its_own:
    return "no other stay is kept by `{}`";
  case reading_is_assumed:
    return "what its reading says is assumed";
  case property_of:
    return "{} {}";
  case none_untraced:
    return "no number that reaches a cut lacks its source";
  case one_untraced:
    return "1 number that reaches a cut has no source";
  case several_untraced:
    return "{} numbers that reach a cut have no source";
  case and_more:
    return "{} and {} more";
  case no_source_behind:
    return "it has no source";
  case nor_here:
    return "nor here";
  case no_limit:
    return "no limit is stated: {}";
  case installed_not_stated:
    return "when it was installed is not stated";
  case since:
    return "{} {} before the report";
  case installed_before:
    return "installed {} before the report";
  case whole_stay:
    return "the whole stay";
  case joint_of:
    return "{} to {}";
  case not_accessible:
    return "not accessible";
  case condition_on:
    return "{}: {} on {}";
  case noted:
    return ": {}";
  case no_inspection:
    return "no inspection of it is in the log";
  case length_by:
    return "{} by {}";
  case x_by:
    return "X by {}";
  case readings_apart:
    return "{} apart where {} is allowed";
  case runs_within:
    return "its runs lie between {} and {}";
  case this_run:
    return "{}: read this one again";
  case offset_is:
    return "its offset is {}, as long as the others of that name";
  case both_runs:
    return "{}: read both again";
  case readings_not_comparable:
    return "one of them has no number to compare";
  case one_reading_counts:
    return "what counts is {}";
  case cord_keeps:
    return "it keeps {} stays";
  case cord_keeps_one:
    return "it keeps 1 stay";
  case names_no_cord:
    return "its cord is not named";
  case neither_pull_nor_stretch:
    return "neither its pull nor the stretch of {} is stated";
  case pull_and_stretch:
    return "its pull and the stretch of {} are stated";
  case pull_without_stretch:
    return "its reading states a pull, and {} states no stretch";
  case stretch_without_pull:
    return "{} states its stretch, and the reading states no pull";
  case the_cord:
    return "the cord";
  }
  return {};
}

} // namespace sheerpole
