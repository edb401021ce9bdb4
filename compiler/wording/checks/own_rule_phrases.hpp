#pragma once

#include "model/remark.hpp"

#include <string_view>

namespace sheerpole {

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
