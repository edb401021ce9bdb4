#pragma once

#include "model/remark.hpp"

#include <string_view>

namespace sheerpole {

/// What the checks on splices and eyes say.
enum class SpliceCheckPhrase : std::uint16_t {
  splice_on,
  buries,
  diameters,
  spliced_here,
  the_bury,
  tapered_over,
  buried_of,
  length_is_x,
  between_throats,
  between_bearings,
  pear_shaped,
  no_diameter,
  no_throat,
  throat_within,
  legs_leave,
  bearing_to_throat,
  two_ways,
  stated_and_seat,
  the_eye_allowance,
  the_test_wrap,
  not_hollow,
  the_rope,
  hollow,
  hollow_not_told,
  one_share,
  tests_give,
  another_test,
  stated_and_tests,
  stated_is_taken,
  tests_are_taken,
  stated_here,
  a_test,
  counted_one_way,
  counted_two_ways,
  counts_none,
  counts_it,
  no_test_for_first_fit,
  first_fit_needs,
  it_hung,
  a_slip,
  likely_slip,
  too_short,
  too_long,
  card_released,
  card_not_released,
  lacks_an_input,
  enough_up_to_x,
  all_in_hand_used,
  some_cut_away,
  gives_up_spare,
  gives_up_tail,
  no_end_gives_up,
  not_enough_by,
  stated_in_hand,
  no_stock_of,
  stock_used_twice,
  stock_is_of,
  write_less_spare,
  longer_piece_takes,
  other_stock_is_longer,
};

constexpr PhraseSubject subject_of(SpliceCheckPhrase) {
  return PhraseSubject::splice_check;
}

std::string_view words(SpliceCheckPhrase phrase);

} // namespace sheerpole
