#pragma once

#include "model/remark.hpp"

#include <cstdint>

namespace sheerpole {

/// What is said about what a line does under tension, in time and in heat and cold.
enum class BehaviourPhrase : std::uint16_t {
  // What is not stated.
  not_stated_of_line,
  not_stated_of_stay,
  not_stated_of_name,
  length_unknown,
  no_path,
  no_point_on_spar,
  no_reference_temperature,
  no_creep_temperature,
  no_free_length,
  no_marked_length,
  creep_of_first_year_only,
  creep_beyond_stated,
  outside_formula,
  // How a number came about.
  share_of_first_year,
  metal_does_not_creep,
  creep_by_table,
  creep_by_eyring,
  mersenne_by_swing,
  mersenne_by_pulse,
  hooke_by_stretch,
  shown_by_gauge
};
constexpr PhraseSubject subject_of(BehaviourPhrase) {
  return PhraseSubject::behaviour;
}

} // namespace sheerpole
