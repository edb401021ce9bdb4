#include "wording/papers/labels_words.hpp"

namespace sheerpole {

std::string_view words(LabelsPhrase phrase) {
  using enum LabelsPhrase;
  switch (phrase) {
  case port:
    return "PORT";
  case starboard:
    return "STARBOARD";
  case centreline:
    return "CENTRELINE";
  case to_the:
    return "to the {}";
  case to_piece:
    return "to piece {}";
  case to:
    return "to {}";
  case spare_bury:
    return "spare bury {}";
  case not_stated:
    return "not stated";
  case rev_rig:
    return "rev {}, rig {}";
  case not_on_record:
    return "not on record";
  case cut:
    return "cut {}";
  case piece_of:
    return ", piece {} of {}";
  case aloft:
    return "ALOFT";
  case below:
    return "BELOW";
  case body:
    return "body {}, {}{}";
  case length_as_made_not_on:
    return "length as made not on record; the file is {}";
  case cut_nothing_on_its_bench:
    return "{}: cut nothing; {}, on its bench card";
  case cut_body:
    return "cut {}, body {}";
  case made:
    return "made:";
  case by:
    return "by:";
  case job:
    return "job:";
  case batch:
    return "batch:";
  case labels_x_mm_print_at:
    return "Labels of 90 x 40 mm, print at full size";
  case rig_file_states_no_line:
    return "The rig file states no line to put a label on.";
  case labels_of:
    return "Labels of {}";
  case labels_to_cut_apart_one:
    return "Labels to cut apart, one for each end of each piece of line.";
  case labels:
    return "Labels";
  case labels_to_cut_apart_one_for:
    return "labels to cut apart, one for each end of each piece: what it is, when and by whom made";
  }
  return {};
}

} // namespace sheerpole
