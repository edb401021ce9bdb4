#pragma once

#include "calculate/derived.hpp"
#include "model/rig.hpp"
#include "rules/check_report.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace sheerpole {

/// The rules that the files state, each a check under its own name and severity.
void check_user_rules(const Rig& rig, const Derived& derived, DiagnosticSink& sink, CheckResults& results,
                      Wanted wanted);

/// What something in the rig states under one of its properties.
struct RuleFact {
  bool stated = false;
  std::optional<Quantity> number;
  std::vector<std::string> words; ///< a text, or each word or name
  std::string text;               ///< as it is said in a sentence: `40 kN`, `"split pins"`
  std::optional<Span> place;
};

/// `property` is the name of a property of the kind; whatever else is not stated.
RuleFact rule_fact(const Rig& rig, const Stay& stay, std::string_view property);
RuleFact rule_fact(const Rig& rig, const Part& part, std::string_view property);
RuleFact rule_fact(const Rig& rig, const LineMaterial& line, std::string_view property);
RuleFact rule_fact(const Rig& rig, const Splice& splice, std::string_view property);
RuleFact rule_fact(const Rig& rig, const Spreader& spreader, std::string_view property);

/// The values of one quantity of a stay by its word: pin-to-pin, body, cut (one a piece), to-tighten,
/// to-slacken, engaged (one an adjuster). Empty where the stay has none, or its length is X.
std::vector<Length> stay_quantity(const DerivedStay& stay, std::string_view quantity);

} // namespace sheerpole
