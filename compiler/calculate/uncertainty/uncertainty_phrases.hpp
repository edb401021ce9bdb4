#pragma once

#include "model/remark.hpp"

#include <cstdint>

namespace sheerpole {

/// The names of what a length rests on and of what may be off; in English in wording/uncertainty_words.cpp.
enum class UncertaintyPhrase : std::uint16_t {
  named,
  property_of,
  length_of,
  length_of_line,
  wrap_of,
  diameter_of,
  bury_of,
  eye_allowance_of,
  tail_to_trim_of,
  contraction_of,
  recovered_of,
  setting_of,
  spare_bury_at,
  pin_to_pin_of,
  place_x,
  place_y,
  place_z,
  test_splice_of,
  reading_of,
  run_of,
  offset_of,
  hoist_offset_of,
  tape_error,
  scatter_of_runs
};

constexpr PhraseSubject subject_of(UncertaintyPhrase) {
  return PhraseSubject::uncertainty;
}

} // namespace sheerpole
