#pragma once

#include "wording/phrase.hpp"

namespace sheerpole {

/// What the labels say.
enum class LabelsPhrase : std::uint16_t {
  port,
  starboard,
  centreline,
  to_the,
  to_piece,
  to,
  spare_bury,
  not_stated,
  rev_rig,
  not_on_record,
  cut,
  piece_of,
  aloft,
  below,
  body,
  length_as_made_not_on,
  cut_nothing_on_its_bench,
  cut_body,
  made,
  by,
  job,
  batch,
  labels_x_mm_print_at,
  rig_file_states_no_line,
  labels_of,
  labels_to_cut_apart_one,
  labels,
  labels_to_cut_apart_one_for,
};

constexpr std::string_view table_of(LabelsPhrase) {
  return "labels";
}

std::string_view words(LabelsPhrase phrase);

} // namespace sheerpole
