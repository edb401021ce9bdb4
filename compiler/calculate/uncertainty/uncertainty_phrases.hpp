#pragma once

#include "model/remark.hpp"

#include <cstdint>

namespace sheerpole {

/// The names of what a length rests on and of what may be off; in English in wording/uncertainty_words.cpp.
enum class UncertaintyPhrase : std::uint16_t {
  named,
  property_of,
  eye_allowance_of,
  tail_to_trim_of,
  hoist_offset_of,
  setting_of,
  spare_bury_at,
  the_line,
  place_of,
  test_splice_of,
  reading_of,
  run_of,
  tape_error,
  scatter_of_runs,
  knot_of_cord,
  resolution_of,
  resolution_by_practice,
  scatter_of_tests,
  repeatability_of,
  first_creep_rule
};

constexpr PhraseSubject subject_of(UncertaintyPhrase) {
  return PhraseSubject::uncertainty;
}

} // namespace sheerpole
