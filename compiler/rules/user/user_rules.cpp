#include "rules/user/user_rules.hpp"

#include "rules/by_side.hpp"
#include "rules/check_table.hpp"
#include "rules/geometry/spreader_tips.hpp"
#include "units/quantity_text.hpp"
#include "wording/checks/any_check_phrases.hpp"

#include <algorithm>
#include <cmath>

namespace sheerpole {

namespace {

/// Which stays a rule looks at, or at what is in them.
std::vector<bool> asked_stays(const Rig& rig, const UserRule& rule) {
  std::vector<bool> asked(rig.stays.size(), rule.stays.empty());
  for (const StayId stay : rule.stays)
    asked[stay.index()] = true;
  return asked;
}

/// One part, line, splice or spreader that a rule looks at.
struct RuleSubject {
  std::string name;
  Span place;    ///< its name in its declaration
  RuleFact fact; ///< of the property that the rule is about
};

/// What is in the stays that a rule looks at, by the numbers of the rig.
struct InUse {
  std::vector<bool> parts, lines, splices, points;
};

template <class Id>
void use(std::vector<bool>& all, Id id) {
  all[id.index()] = true;
}

InUse in_use(const Rig& rig, const UserRule& rule) {
  InUse result{std::vector<bool>(rig.parts.size()), std::vector<bool>(rig.materials.size()),
               std::vector<bool>(rig.splices.size()), std::vector<bool>(rig.points.size())};
  const std::vector<bool> asked = asked_stays(rig, rule);
  for (std::size_t i = 0; i < rig.stays.size(); ++i) {
    if (!asked[i])
      continue;
    const Stay& stay = rig.stays[i];
    use(result.lines, stay.material);
    for (const StackItem& item : stay.stack) {
      if (item.kind == StackItem::Kind::part)
        use(result.parts, item.part);
      if (item.splice)
        use(result.splices, *item.splice);
      if (item.material)
        use(result.lines, *item.material);
    }
    for (const PathStop& stop : stay.path)
      use(result.points, stop.point);
  }
  return result;
}

/// What a rule looks at when that is not stays: each part, line and splice that is in a stay that is asked
/// for, each once, in the order of the files; of parts and lines those of the kind that have the property.
/// Spreaders without their side, under which the asked stays go.
std::vector<RuleSubject> rule_subjects(const Rig& rig, const UserRule& rule) {
  const InUse used = in_use(rig, rule);
  std::vector<RuleSubject> result;
  const auto add = [&](const auto& thing, const std::string& name) {
    result.push_back({name, thing.place, rule_fact(rig, thing, rule.property)});
  };
  const auto of_sort = [&](std::string_view kind) {
    return (rule.sort.empty() || rule.sort == kind) &&
           std::find(rule.kinds.begin(), rule.kinds.end(), kind) != rule.kinds.end();
  };
  if (rule.looks_at == "parts") {
    for (std::size_t i = 0; i < rig.parts.size(); ++i)
      if (used.parts[i] && of_sort(name_of(rig.parts[i].kind)))
        add(rig.parts[i], rig.parts[i].name);
  } else if (rule.looks_at == "lines") {
    for (std::size_t i = 0; i < rig.materials.size(); ++i)
      if (used.lines[i] && of_sort(name_of(rig.materials[i].kind)))
        add(rig.materials[i], rig.materials[i].name);
  } else if (rule.looks_at == "splices") {
    for (std::size_t i = 0; i < rig.splices.size(); ++i)
      if (used.splices[i])
        add(rig.splices[i], rig.splices[i].name);
  } else if (rule.looks_at == "spreaders") {
    for (const Spreader& spreader : rig.spreaders) {
      const std::string name = without_side(spreader.name);
      const bool again = !result.empty() && result.back().place == spreader.place;
      if (!again && (rule.stays.empty() || used.points[spreader.tip.index()]))
        add(spreader, name);
    }
  }
  return result;
}

Severity severity_of(const std::string& word) {
  return word == "error" ? Severity::error : word == "warning" ? Severity::warning : Severity::note;
}

std::string bound_text(const Sourced<Quantity>& bound) {
  return bound.value.dimension == dimension::length ? length_text(Length::from_si(bound.value.si))
                                                    : bound.provenance.written;
}

/// What is wrong with a number by the rule; empty when nothing is.
Remark broken_by(const UserRule& rule, double value) {
  // A hair of the number itself, so that what is written alike is alike; of a length a micrometre.
  const auto slack = [&](const Sourced<Quantity>& bound) {
    return bound.value.dimension == dimension::length ? threshold::negligible.metres()
                                                      : 1e-9 * std::abs(bound.value.si);
  };
  if (rule.at_least && value < rule.at_least->value.si - slack(*rule.at_least))
    return {OwnRulePhrase::less_than, {Words{bound_text(*rule.at_least)}}};
  if (rule.at_most && value > rule.at_most->value.si + slack(*rule.at_most))
    return {OwnRulePhrase::more_than, {Words{bound_text(*rule.at_most)}}};
  return {};
}

Remark broken_by(const UserRule& rule, const RuleFact& fact) {
  const auto stated = [&](const std::string& word) {
    return std::find(fact.words.begin(), fact.words.end(), word) != fact.words.end();
  };
  const bool text = fact.text.starts_with('"');
  if (!rule.is.empty() && !stated(rule.is))
    return {text ? OwnRulePhrase::not_text : OwnRulePhrase::not_word, {Words{rule.is}}};
  if (!rule.is_not.empty() && stated(rule.is_not))
    return OwnRulePhrase::should_not_be;
  return {};
}

/// The finding as the file words it. `what` is what was seen: "body 10000 mm, more than 9000 mm".
Diagnostic finding_of(const UserRule& rule, const std::string& subject, const std::string& what, Span place,
                      const std::string& label) {
  Diagnostic finding;
  finding.slug = rule.name;
  finding.severity = severity_of(rule.severity);
  finding.message = subject + ": " + rule.message + " (" + what + ")";
  finding.why = rule.why.empty() ? said(OwnRulePhrase::asked_for) : rule.why;
  finding.subject = subject;
  finding.primary = Label{place, label};
  finding.others.push_back({rule.place, said(OwnRulePhrase::the_rule)});
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
void look_at_fact(const Rig& rig, const UserRule& rule, const RuleFact& fact, const std::string& subject,
                  Span place, StayReport& report) {
  if (!fact.stated) {
    const std::string words = say(rig, {AnyCheckPhrase::not_stated, {Words{rule.property}}});
    if (rule.to_be_stated)
      report.find(finding_of(rule, subject, words, place, words));
    else
      report.not_checked(words);
    return;
  }
  const std::string seen = say(rig, {OwnRulePhrase::property_is, {Words{rule.property}, Words{fact.text}}});
  if (dimensions_differ(rule, fact)) {
    report.not_checked({OwnRulePhrase::other_unit, {Words{seen}}});
    return;
  }
  const Remark how = fact.number ? broken_by(rule, fact.number->si) : broken_by(rule, fact);
  if (how.empty())
    report.pass(seen);
  else
    report.find(finding_of(rule, subject,
                           say(rig, {OwnRulePhrase::seen_and_broken, {Words{seen}, Remarks{{how}}}}),
                           fact.place.value_or(place), seen));
}

void look_at_quantity(const Rig& rig, const UserRule& rule, const DerivedStay& derived_stay,
                      const Stay& stay, const std::string& name, StayReport& report) {
  const std::vector<Length> values = stay_quantity(derived_stay, rule.quantity);
  if (values.empty())
    report.not_checked({OwnRulePhrase::none_in_numbers, {Words{rule.quantity}}});
  for (const Length value : values) {
    const std::string seen = say(rig, {OwnRulePhrase::property_is, {Words{rule.quantity}, value}});
    if (const Remark how = broken_by(rule, value.metres()); !how.empty())
      report.find(finding_of(rule, name,
                             say(rig, {OwnRulePhrase::seen_and_broken, {Words{seen}, Remarks{{how}}}}),
                             stay.place, seen));
    else
      report.pass(seen);
  }
}

void look_at_stays_of(const UserRule& rule, const Rig& rig, const Derived& derived, CheckReport& report) {
  const std::vector<bool> asked = asked_stays(rig, rule);
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& derived_stay, const std::string& name, StayReport& of_stay) {
                  if (!asked[derived_stay.stay.index()])
                    return;
                  const Stay& stay = rig[derived_stay.stay];
                  if (rule.quantity.empty())
                    look_at_fact(rig, rule, rule_fact(rig, stay, rule.property), name, stay.place, of_stay);
                  else
                    look_at_quantity(rig, rule, derived_stay, stay, name, of_stay);
                });
}

void look_at_others(const UserRule& rule, const Rig& rig, CheckReport& report) {
  for (const RuleSubject& subject : rule_subjects(rig, rule)) {
    StayReport of_subject(rig);
    look_at_fact(rig, rule, subject.fact, subject.name, subject.place, of_subject);
    hand_on(of_subject, subject.name, report);
  }
}

} // namespace

void check_user_rules(const Rig& rig, const Derived& derived, DiagnosticSink& sink, CheckResults& results,
                      Wanted wanted) {
  for (const UserRule& rule : rig.rules) {
    CheckReport report(rule.name, rig, sink, results, wanted);
    if (!rule.active) {
      report.not_checked(said(AnyCheckPhrase::this_rig), {OwnRulePhrase::rule_off});
      report.mention(diagnose("rule-switched-off", {{"rule", rule.name}}).at(rule.place).about(rule.name));
    } else if (rule.looks_at == "stays") {
      look_at_stays_of(rule, rig, derived, report);
    } else {
      look_at_others(rule, rig, report);
    }
  }
}

} // namespace sheerpole
