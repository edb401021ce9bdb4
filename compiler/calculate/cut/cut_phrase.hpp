#pragma once

#include "model/remark.hpp"

#include <cstdint>

namespace sheerpole {

/// What is said about a cut: how its terms came about, what the ends need to know, what is missing and how
/// it is mended.
enum class CutPhrase : std::uint16_t {
  // How a term came about.
  by_test_wrap,
  round_seat,
  share_of,
  mean_share_of,
  stretch_over_stiffness,
  stretch_of_buries,
  bedding_of_cut,
  kept_of_in_hand,
  // Notes of an end.
  wrap_gives_more,
  wrap_gives_less,
  splice_gives_more,
  splice_gives_less,
  seat_gives_more,
  seat_gives_less,
  test_splice_gives,
  tests_before_stated,
  one_test_splice,
  setting_before_rule,
  equals_first_creep,
  pitch_not_stated,
  whole_links_of_unknown,
  whole_links_longer,
  whole_links_shorter,
  // What is missing, and how it is mended.
  eye_allowance_missing,
  eye_allowance_mend,
  splice_missing,
  splice_mend,
  contraction_missing,
  contraction_mend,
  contraction_mend_or_rule,
  rule_for_heat_set_only,
  insertion_missing,
  insertion_mend_upper,
  insertion_mend_lower,
  wire_of_eye_missing,
  wire_of_eye_mend_upper,
  wire_of_eye_mend_lower,
  stretch_missing,
  stretch_mend,
  dock_tension_missing,
  dock_tension_mend,
  bench_tension_missing,
  bench_tension_mend,
  stiffness_missing,
  stiffness_mend,
  bedding_missing,
  bedding_mend,
  // What blocks although every number is there, and how it is mended.
  eye_ways_apart,
  eye_ways_block,
  eye_allowance_apart,
  eye_allowance_block,
  eye_ways_mend,
  wrap_this_part_mend,
  crown_block,
  eyes_long_block,
  eyes_short_block,
  eyes_mend,
  crown_mend,
  ways_far_apart,
  ways_far_apart_mend,
  // What the cut leaves out.
  stretch_not_counted,
  bedding_not_taken_up,
  buries_stretch_less
};
constexpr PhraseSubject subject_of(CutPhrase) {
  return PhraseSubject::cut;
}

} // namespace sheerpole
