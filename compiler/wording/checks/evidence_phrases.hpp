#pragma once

#include "model/remark.hpp"

#include <string_view>

namespace sheerpole {

/// What the checks on sources, dates, evidence and the inspection log say.
enum class EvidenceCheckPhrase : std::uint16_t {
  days,
  years,
  one_year,
  report_date_not_stated,
  pull_and_temperature,
  temperature_alone,
  pull_nor_temperature,
  sag_not_stated,
  spans_not_stated,
  tape_sagged,
  reading_day_not_stated,
  read_before,
  property_of,
  none_untraced,
  one_untraced,
  several_untraced,
  and_more,
  no_source_behind,
  nor_here,
  no_limit,
  installed_not_stated,
  since,
  installed_before,
  whole_stay,
  joint_of,
  not_accessible,
  condition_on,
  noted,
  no_inspection,
  length_by,
  x_by,
  readings_apart,
  runs_within,
  this_run,
  offset_is,
  both_runs,
  readings_not_comparable,
  one_reading_counts,
  cord_keeps,
  cord_keeps_one,
  names_no_cord,
  neither_pull_nor_stretch,
  pull_and_stretch,
  pull_without_stretch,
  stretch_without_pull,
  the_cord,
  readings_told_apart,
  the_same_reading,
  mark_of_its_own,
  reading_is_assumed
};

constexpr PhraseSubject subject_of(EvidenceCheckPhrase) {
  return PhraseSubject::evidence_check;
}

std::string_view words(EvidenceCheckPhrase phrase);

} // namespace sheerpole
