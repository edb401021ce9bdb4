#pragma once

#include "model/remark.hpp"

#include <string_view>

namespace sheerpole {

/// What the checks on strength, loads and what lines are made of say.
enum class StrengthCheckPhrase : std::uint16_t {
  holds_how,
  link_amount,
  meant_weaker,
  part_holds,
  others_first,
  line_unknown,
  holds_less,
  than_this,
  none_known_weaker,
  nothing_weaker,
  no_break_load,
  holds_times,
  holds_at_most,
  weakest_known,
  its_load,
  lacking,
  not_stated_as_well,
  lacks_of,
  hole_not_stated,
  bears,
  hole_in_this,
  the_load,
  pin_lacks,
  shared_not_stated,
  pull_on_one_pin,
  pin_they_share,
  on_the_bench,
  of_lines,
  port_of,
  starboard_of,
  with_stiffness,
  both_sides,
  rope_against_wire,
  apart,
  at_most_one,
  at_most_two,
  the_rope,
  gets_to,
  dock_share,
  gets_tighter,
  loses_some,
  loses_all,
  coldest_not_stated,
  gigapascals,
  on_full_circle,
  over_square,
  lines_have_between,
  lines_have_more,
  lines_have_less,
  screening_of,
  no_spar,
  no_lowest_panel,
  buckles_at,
  gives_compression,
  no_screening,
};

constexpr PhraseSubject subject_of(StrengthCheckPhrase) {
  return PhraseSubject::strength_check;
}

std::string_view words(StrengthCheckPhrase phrase);

} // namespace sheerpole
