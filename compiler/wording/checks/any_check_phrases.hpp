#pragma once

#include "model/remark.hpp"

#include <string_view>

namespace sheerpole {

/// What checks of every subject say.
enum class AnyCheckPhrase : std::uint16_t {
  this_rig,
  not_stated,
  of_not_stated,
  as_it_is,
  this_one,
  under_this_one,
  stated_here,
  at_least,
  at_most,
  of_something,
  no_path_through_points,
  sides_of_adjuster,
  to_tighten,
  switched_off,
  none_stated,
  the_waiver,
  waiver_over,
  waived_until,
  was_waived,
  waived_word,
  accepted_word,
  is_accepted,
  was_accepted,
  accepted_here,
  acceptance_over,
};

constexpr PhraseSubject subject_of(AnyCheckPhrase) {
  return PhraseSubject::any_check;
}

std::string_view words(AnyCheckPhrase phrase);

} // namespace sheerpole
