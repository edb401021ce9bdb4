#pragma once

#include "calculate/length/length_sum.hpp"
#include "model/rig.hpp"

#include <cstdint>
#include <vector>

namespace sheerpole {

/// What is said about readings: how their terms came about, what could not be corrected, and which slip
/// would explain a difference.
enum class ReadingPhrase : std::uint16_t {
  run,
  mean_of_runs,
  tape_says,
  warmer_than_standard,
  pull_against_standard,
  free_span,
  free_spans,
  pull_less,
  // Corrections that could not be made.
  tape_standard,
  tape_temperature,
  tape_pull,
  tape_sag,
  old_stretch,
  not_stated,
  outside_correction,
  outside_hooke,
  boat_not_at_reference,
  no_tape,
  cord_without_number,
  cord_pull,
  cord_temperature,
  property_of_name,
  property_of_line,
  property_of_stay,
  property_of_reading,
  cord_stretch,
  bound_of_cord_stretch,
  knot_of_cord,
  length_of_stay,
  // Slips of measuring.
  part_counted_twice,
  part_left_out,
  offset_at_both_ends,
  offset_already_off,
  foot_too_many,
  foot_too_few,
  held_at_inch,
  held_at_decimetre,
  metre_too_many,
  metre_too_few,
  written_as_decimal_feet,
  written_as_feet_and_inches,
  next_hole,
  other_side,
  factor_of_ten,
  inches_and_millimetres,
  inches_and_centimetres,
  feet_and_metres,
  feet_and_inches,
  about_a_metre,
  about_a_foot
};
constexpr PhraseSubject subject_of(ReadingPhrase) {
  return PhraseSubject::reading;
}

/// What became of a reading.
struct ReadingLength {
  std::vector<Term> terms; ///< of a cord without a number what is to be added to X
  std::vector<Remark>
      not_corrected; ///< "tape temperature: standard-temperature of steel-tape is not stated"
};

/// The terms of a measured length: the mean of the runs, less the hook offset, plus the hoist offset, with
/// the corrections of the tape that the reading names (standard, temperature, pull, sag of each free span),
/// and of an old stay the stretch from the pull to the dock tension. A correction is made when all of its
/// numbers are stated; when some are, what is missing is said. The spread of the runs (longest less
/// shortest) is said in `how` of the mean. Sources: arithmetic mean of repeated readings and the tape
/// corrections of surveying texts, see physics/tape_correction.hpp; Hooke's law; the offsets are common
/// practice, no source. Of a cord that is a mark alone the offsets are what is left, each added to X; its
/// pull and its temperature are told as not counted.
ReadingLength reading_length(const Rig& rig, const Stay& stay, const Reading& reading);

/// The length from which the stretch of a cord follows where X has no number: by the path, as stated, or as
/// estimated, in this order. Nothing when none of them is there. Never for a cut.
std::optional<Length> expected_length(const Rig& rig, const Stay& stay);

/// Whether it holds what nobody has read: a run that is `assumed`, or, of a cord without a number, an
/// offset. Such a reading is a form to be filled in; it measures nothing.
bool is_assumed(const Reading& reading);

/// The run that lies farthest from the middle one of a reading; of two, of which nobody can tell, the
/// second. There is at least one.
const Sourced<Length>& odd_run(const std::vector<Sourced<Length>>& runs);

/// Where the X of a reading without a number lies: "cord orange, 4 knots", "mark on the messenger: red
/// whipping".
Remark where_x_lies(const Reading& reading);

} // namespace sheerpole
