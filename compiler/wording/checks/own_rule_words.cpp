#include "wording/checks/own_rule_phrases.hpp"

namespace sheerpole {

std::string_view words(OwnRulePhrase phrase) {
  using enum OwnRulePhrase;
  switch (phrase) {
  case less_than:
    return "less than {}";
  case more_than:
    return "more than {}";
  case not_text:
    return "not \"{}\"";
  case not_word:
    return "not {}";
  case should_not_be:
    return "which it should not be";
  case asked_for:
    return "a rule of this rig's own files asks for it";
  case the_rule:
    return "the rule";
  case other_unit:
    return "{}: it is stated in another unit than the bound, diameters or a length";
  case property_is:
    return "{} {}";
  case seen_and_broken:
    return "{}, {}";
  case none_in_numbers:
    return "it has no {} in numbers";
  case rule_off:
    return "the rule is switched off";
  }
  return {};
}

} // namespace sheerpole
