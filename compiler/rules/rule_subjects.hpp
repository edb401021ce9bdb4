#pragma once

#include "rules/rule_facts.hpp"

#include <string>
#include <vector>

namespace sheerpole {

/// Whether a rule looks at this stay, or at what is in it.
bool is_asked(const UserRule& rule, StayId stay);

/// One part, line, splice or spreader that a rule looks at.
struct RuleSubject {
  std::string name;
  Span place;    ///< its name in its declaration
  RuleFact fact; ///< of the property that the rule is about
};

/// What a rule looks at when that is not stays: each part, line and splice that is in a stay that is asked
/// for, each once, in the order of the files; of parts and lines those of the kind that have the property.
/// Spreaders without their side, under which the asked stays go.
std::vector<RuleSubject> rule_subjects(const Rig& rig, const UserRule& rule);

} // namespace sheerpole
