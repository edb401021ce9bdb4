#include "rules/user_rules.hpp"
#include "calculate/length_text.hpp"
#include "rules/stay_quantity.hpp"
#include "rules/thresholds.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

Severity severity_of(const std::string& word) {
  return word == "error" ? Severity::error : word == "warning" ? Severity::warning : Severity::note;
}

/// What is wrong with one value by the rule; empty when nothing is.
std::string broken_by(const UserRule& rule, Length value) {
  if (rule.at_least && value < rule.at_least->value - threshold::negligible)
    return "less than " + length_text(rule.at_least->value);
  if (rule.at_most && value > rule.at_most->value + threshold::negligible)
    return "more than " + length_text(rule.at_most->value);
  return {};
}

Diagnostic finding_of(const UserRule& rule, const Stay& stay, Length value, const std::string& how) {
  Diagnostic finding;
  finding.slug = rule.name;
  finding.severity = severity_of(rule.severity);
  finding.message =
      stay.name + ": " + rule.message + " (" + rule.quantity + " " + length_text(value) + ", " + how + ")";
  finding.why = "a rule of this rig's own files asks for it";
  finding.subject = stay.name;
  finding.primary = Label{stay.place, rule.quantity + " " + length_text(value)};
  finding.others.push_back({rule.place, "the rule"});
  return finding;
}

} // namespace

void check_user_rules(const Rig& rig, const Derived& derived, DiagnosticSink& sink,
                      std::vector<CheckResult>& results) {
  for (const UserRule& rule : rig.rules) {
    CheckReport report(rule.name, sink, results);
    if (!rule.active) {
      report.not_checked("this rig", "the rule is switched off");
      report.say(diagnose("rule-switched-off", {{"rule", rule.name}}).at(rule.place).about(rule.name));
      continue;
    }
    for (const DerivedStay& stay : derived.stays) {
      const bool asked = rule.stays.empty() ||
                         std::find(rule.stays.begin(), rule.stays.end(), stay.stay) != rule.stays.end();
      if (!asked)
        continue;
      const std::vector<Length> values = stay_quantity(stay, rule.quantity);
      if (values.empty())
        report.not_checked(rig[stay.stay].name, "it has no " + rule.quantity + " in numbers");
      for (const Length value : values)
        if (const std::string how = broken_by(rule, value); !how.empty())
          report.find(finding_of(rule, rig[stay.stay], value, how));
        else
          report.pass(rig[stay.stay].name, rule.quantity + " " + length_text(value));
    }
  }
}

} // namespace sheerpole
