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
  property_of,
  no_trade_word,
  write_instead,
  write_none,
  none_at_all,
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

/// What the rules of the files say.
enum class OwnRulePhrase : std::uint16_t {
  less_than,
  more_than,
  not_text,
  not_word,
  should_not_be,
  asked_for,
  the_rule,
  other_unit,
  property_is,
  seen_and_broken,
  none_in_numbers,
  rule_off,
};

constexpr PhraseSubject subject_of(OwnRulePhrase) {
  return PhraseSubject::own_rule;
}

std::string_view words(OwnRulePhrase phrase);

} // namespace sheerpole
