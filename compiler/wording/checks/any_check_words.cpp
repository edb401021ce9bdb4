#include "wording/checks/any_check_phrases.hpp"

namespace sheerpole {

std::string_view words(AnyCheckPhrase phrase) {
  using enum AnyCheckPhrase;
  switch (phrase) {
  case this_rig:
    return "this rig";
  case not_stated:
    return "{} is not stated";
  case of_not_stated:
    return "{} of {} is not stated";
  case as_it_is:
    return "{}";
  case this_one:
    return "this one";
  case under_this_one:
    return "under this one";
  case stated_here:
    return "stated here";
  case at_least:
    return "{}; at least {}";
  case at_most:
    return "{}; at most {}";
  case of_something:
    return "{}: {}";
  case no_path_through_points:
    return "it has no path through points";
  case sides_of_adjuster:
    return "{} to tighten, {} to slacken";
  case to_tighten:
    return "{} to tighten";
  case switched_off:
    return "{} is switched off in `limits`";
  case none_stated:
    return "no limit of the owner's is stated: {}";
  case the_waiver:
    return "the waiver";
  case waiver_over:
    return "the waiver, which is over";
  case waived_until:
    return "until {} by {}: {}";
  case was_waived:
    return "{}; it was waived {}";
  case property_of:
    return "{} of {}";
  case no_trade_word:
    return "{}: \"{}\" is no way that is known here";
  case write_instead:
    return "if that is meant, write `\"{}\"`";
  case write_none:
    return "if nothing holds it, write `\"none\"`";
  case none_at_all:
    return "none";
  case waived_word:
    return "waived";
  case accepted_word:
    return "accepted";
  case is_accepted:
    return "{}; accepted {}";
  case was_accepted:
    return "{}; it was accepted {}";
  case accepted_here:
    return "accepted here";
  case acceptance_over:
    return "accepted here, which is over";
  }
  return {};
}

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
