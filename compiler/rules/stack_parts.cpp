#include "rules/stack_parts.hpp"

#include "model/fact_name.hpp"
#include "wording/checks/any_check_phrases.hpp"

#include <algorithm>
#include <set>
#include <utility>

namespace sheerpole {

std::vector<StackPart> parts_of(const Rig& rig, const Stay& stay) {
  std::vector<StackPart> result;
  std::set<const Part*> seen; // asked, never gone through
  for (std::size_t i = 0; i < stay.stack.size(); ++i) {
    if (stay.stack[i].kind != StackItem::Kind::part)
      continue;
    const Part* part = &rig[stay.stack[i].part];
    if (seen.insert(part).second)
      result.push_back({i, part});
  }
  return result;
}

std::optional<Span> place_of(const std::vector<Particular>& facts, std::string_view name) {
  const Particular* fact = find_fact(facts, name);
  return fact == nullptr ? std::nullopt : fact->value.provenance.place;
}

void find_once(StayReport& report, DiagnosticBuilder&& builder) {
  Diagnostic finding = std::move(builder).build();
  if (std::none_of(report.found().begin(), report.found().end(),
                   [&](const Diagnostic& earlier) { return earlier.message == finding.message; }))
    report.find(std::move(finding));
}

namespace {

/// The words in which a fact is to be stated; nothing when it may be stated in any.
std::optional<TradeSubject> trade_subject(std::string_view fact) {
  if (fact == fact_names.secured || fact == fact_names.locked)
    return TradeSubject::securing;
  if (fact == fact_names.locking)
    return TradeSubject::locking;
  return std::nullopt;
}

} // namespace

StatedFact stated_fact(const std::vector<Particular>& facts, std::string_view name) {
  const Particular* fact = find_fact(facts, name);
  if (fact == nullptr)
    return {};
  const auto subject = trade_subject(name);
  return {read_stated(fact->text), fact->value.provenance.place,
          subject ? odd_text(*subject, fact->text) : std::nullopt};
}

void report_stated(const StatedFact& held, const Remark& what, const Remark& not_stated,
                   DiagnosticBuilder&& finding, StayReport& report) {
  if (held.odd) {
    report.not_checked({AnyCheckPhrase::no_trade_word, {Remarks{{what}}, Words{held.how.text}}});
    return;
  }
  switch (held.how.answer) {
  case Answer::unstated:
    report.not_checked(not_stated);
    return;
  case Answer::stated:
    report.pass({AnyCheckPhrase::of_something, {Remarks{{what}}, Words{held.how.text}}});
    return;
  case Answer::nothing:
    if (held.place)
      finding = std::move(finding).and_at(*held.place, said(AnyCheckPhrase::stated_here));
    find_once(report, std::move(finding));
  }
}

} // namespace sheerpole
