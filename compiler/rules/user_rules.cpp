#include "rules/user_rules.hpp"
#include "rules/by_side.hpp"
#include "rules/rule_facts.hpp"
#include "rules/rule_subjects.hpp"
#include "rules/stay_quantity.hpp"
#include "rules/thresholds.hpp"
#include "units/quantity_text.hpp"

#include <algorithm>
#include <cmath>

namespace sheerpole {

namespace {

Severity severity_of(const std::string& word) {
  return word == "error" ? Severity::error : word == "warning" ? Severity::warning : Severity::note;
}

std::string bound_text(const Sourced<Quantity>& bound) {
  return bound.value.dimension == dimension::length ? length_text(Length::from_si(bound.value.si))
                                                    : bound.provenance.written;
}

/// What is wrong with a number by the rule; empty when nothing is.
std::string broken_by(const UserRule& rule, double value) {
  // A hair of the number itself, so that what is written alike is alike; of a length a micrometre.
  const auto slack = [&](const Sourced<Quantity>& bound) {
    return bound.value.dimension == dimension::length ? threshold::negligible.metres()
                                                      : 1e-9 * std::abs(bound.value.si);
  };
  if (rule.at_least && value < rule.at_least->value.si - slack(*rule.at_least))
    return "less than " + bound_text(*rule.at_least);
  if (rule.at_most && value > rule.at_most->value.si + slack(*rule.at_most))
    return "more than " + bound_text(*rule.at_most);
  return {};
}

std::string broken_by(const UserRule& rule, const RuleFact& fact) {
  const auto stated = [&](const std::string& word) {
    return std::find(fact.words.begin(), fact.words.end(), word) != fact.words.end();
  };
  const bool text = fact.text.starts_with('"');
  if (!rule.is.empty() && !stated(rule.is))
    return "not " + (text ? "\"" + rule.is + "\"" : rule.is);
  if (!rule.is_not.empty() && stated(rule.is_not))
    return "which it should not be";
  return {};
}

/// The finding as the file words it. `what` is what was seen: "body 10000 mm, more than 9000 mm".
Diagnostic finding_of(const UserRule& rule, const std::string& subject, const std::string& what, Span place,
                      const std::string& label) {
  Diagnostic finding;
  finding.slug = rule.name;
  finding.severity = severity_of(rule.severity);
  finding.message = subject + ": " + rule.message + " (" + what + ")";
  finding.why = rule.why.empty() ? "a rule of this rig's own files asks for it" : rule.why;
  finding.subject = subject;
  finding.primary = Label{place, label};
  finding.others.push_back({rule.place, "the rule"});
  finding.own_rule = OwnRule{rule.title.empty() ? rule.message : rule.title,
                             rule.message + (rule.why.empty() ? "" : ": " + rule.why) +
                                 (rule.mend.empty() ? "" : ". " + rule.mend),
                             finding.severity};
  return finding;
}

bool dimensions_differ(const UserRule& rule, const RuleFact& fact) {
  const auto other = [&](const std::optional<Sourced<Quantity>>& bound) {
    return bound && fact.number && bound->value.dimension != fact.number->dimension;
  };
  return other(rule.at_least) || other(rule.at_most);
}

/// One property of one thing. `place` is where the thing is declared.
void look_at_fact(const UserRule& rule, const RuleFact& fact, const std::string& subject, Span place,
                  StayReport& report) {
  if (!fact.stated) {
    if (rule.to_be_stated)
      report.find(finding_of(rule, subject, rule.property + " is not stated", place,
                             rule.property + " is not stated"));
    else
      report.not_checked(rule.property + " is not stated");
    return;
  }
  const std::string said = rule.property + " " + fact.text;
  if (dimensions_differ(rule, fact)) {
    report.not_checked(said + ": it is stated in another unit than the bound, diameters or a length");
    return;
  }
  const std::string how = fact.number ? broken_by(rule, fact.number->si) : broken_by(rule, fact);
  if (how.empty())
    report.pass(said);
  else
    report.find(finding_of(rule, subject, said + ", " + how, fact.place.value_or(place), said));
}

void look_at_quantity(const UserRule& rule, const DerivedStay& derived_stay, const Stay& stay,
                      const std::string& name, StayReport& report) {
  const std::vector<Length> values = stay_quantity(derived_stay, rule.quantity);
  if (values.empty())
    report.not_checked("it has no " + rule.quantity + " in numbers");
  for (const Length value : values) {
    const std::string said = rule.quantity + " " + length_text(value);
    if (const std::string how = broken_by(rule, value.metres()); !how.empty())
      report.find(finding_of(rule, name, said + ", " + how, stay.place, said));
    else
      report.pass(said);
  }
}

void look_at_stays_of(const UserRule& rule, const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& derived_stay, const std::string& name, StayReport& of_stay) {
                  if (!is_asked(rule, derived_stay.stay))
                    return;
                  const Stay& stay = rig[derived_stay.stay];
                  if (rule.quantity.empty())
                    look_at_fact(rule, rule_fact(rig, stay, rule.property), name, stay.place, of_stay);
                  else
                    look_at_quantity(rule, derived_stay, stay, name, of_stay);
                });
}

void look_at_others(const UserRule& rule, const Rig& rig, CheckReport& report) {
  for (const RuleSubject& subject : rule_subjects(rig, rule)) {
    StayReport of_subject;
    look_at_fact(rule, subject.fact, subject.name, subject.place, of_subject);
    for (const Diagnostic& finding : of_subject.found())
      report.find(finding);
    for (const std::string& words : of_subject.passed())
      report.pass(subject.name, words);
    for (const std::string& words : of_subject.unchecked())
      report.not_checked(subject.name, words);
  }
}

} // namespace

void check_user_rules(const Rig& rig, const Derived& derived, DiagnosticSink& sink,
                      std::vector<CheckResult>& results) {
  for (const UserRule& rule : rig.rules) {
    CheckReport report(rule.name, sink, results);
    if (!rule.active) {
      report.not_checked("this rig", "the rule is switched off");
      report.say(diagnose("rule-switched-off", {{"rule", rule.name}}).at(rule.place).about(rule.name));
    } else if (rule.looks_at == "stays") {
      look_at_stays_of(rule, rig, derived, report);
    } else {
      look_at_others(rule, rig, report);
    }
  }
}

} // namespace sheerpole
