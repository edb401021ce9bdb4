#pragma once

#include "wording/phrase.hpp"

namespace sheerpole {

/// What the take-up sheet says.
enum class TakeUpSheetPhrase : std::uint16_t {
  not_checked,
  not_checked_as_above,
  as_above,
  spent_cannot_tighten_so_far,
  spent_cannot_slacken_so_far,
  incomplete,
  and_word,
  add,
  take_out,
  add_nothing,
  line_of,
  fill_with_parts_shall_be,
  set_open,
  none_fits_too_short,
  none_fits_too_long,
  with_parts_out_or_from,
  tighten,
  slacken,
  from_shortest_longest_by_adjuster,
  temperature_not_checked,
  temperature_slack_above_nothing_tighter,
  take_up_slack_against_what,
  set_mm,
  turns,
  how,
  as_set,
  left_first_fit,
  left_after,
  lines_hand_fewest_parts_first,
  what_each_adjuster_has_what,
  take_up,
  take_up_begins,
  take_up_of,
  millimetres_creep_amount_date_counts,
  slacken_tighten_loaded_stay_by,
  there_nothing_set_stay,
};

constexpr std::string_view table_of(TakeUpSheetPhrase) {
  return "take-up";
}

std::string_view words(TakeUpSheetPhrase phrase);

} // namespace sheerpole
