#include "rules/check.hpp"

#include "rules/check_table.hpp"
#include "rules/user/user_rules.hpp"
#include "wording/checks/any_check_phrases.hpp"

#include <deque>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <utility>
#include <vector>

namespace sheerpole {

namespace {

/// Why none of the thresholds of a check has a value; nothing when one has, or when it needs none.
std::optional<Remark> without_limits(const Limits& limits, LimitSet needed) {
  std::string off;
  std::string not_stated;
  for (const LimitRow& row : all_limits()) {
    if (!needed.contains(row.limit))
      continue;
    if (limits.value(row.limit))
      return std::nullopt;
    std::string& names = limits.switched_off(row.limit) ? off : not_stated;
    names += (names.empty() ? "" : ", ") + std::string(row.name);
  }
  if (!off.empty())
    return Remark(AnyCheckPhrase::switched_off, {Words{off}});
  if (!not_stated.empty())
    return Remark(AnyCheckPhrase::none_stated, {Words{not_stated}});
  return std::nullopt;
}

/// What is switched off is said where it is.
void say_switched_off(const Limits& limits, DiagnosticSink& sink) {
  for (const StatedLimit& stated : limits.stated())
    if (!stated.value)
      sink.report(diagnose("limit-switched-off", {{"limit", std::string(row_of(stated.limit).name)},
                                                  {"checks", checks_of(stated.limit)}})
                      .at(stated.place)
                      .about(std::string(row_of(stated.limit).name)));
}

/// What was found so far, by its slug and what it is about. A boat with thousands of waivers would else
/// look at every finding for each of them.
class FoundBySubject {
public:
  explicit FoundBySubject(DiagnosticSink& sink) : sink_(sink) {
    sink.change([&](Diagnostic& finding) { add(finding); });
  }

  /// Those that the waiver speaks of: of the stay, of one side of it, or of a piece of it.
  const std::vector<Diagnostic*>& of(const Waiver& waiver) {
    static const std::vector<Diagnostic*> none;
    const auto found = by_subject_.find({waiver.slug, waiver.stay});
    return found == by_subject_.end() ? none : found->second;
  }
  /// Said when all waivers were looked at, and theirs to speak of like any other.
  void report(Diagnostic finding) { add(said_.emplace_back(std::move(finding))); }
  void report(DiagnosticBuilder&& finding) { report(std::move(finding).build()); }
  /// The places of what was found are no longer good afterwards.
  void hand_on() {
    by_subject_.clear();
    for (Diagnostic& finding : said_)
      sink_.report(std::move(finding));
    said_.clear();
  }

private:
  DiagnosticSink& sink_;
  std::deque<Diagnostic> said_; ///< a deque, since its places stay
  std::map<std::pair<std::string, std::string>, std::vector<Diagnostic*>> by_subject_;

  /// Under nothing, under its whole subject and under what stands before a side or a piece.
  void add(Diagnostic& finding) {
    const std::string& subject = finding.subject;
    by_subject_[{finding.slug, ""}].push_back(&finding);
    if (subject.empty())
      return;
    by_subject_[{finding.slug, subject}].push_back(&finding);
    for (std::size_t end = subject.find_first_of(". "); end != std::string::npos;
         end = subject.find_first_of(". ", end + 1))
      if (end > 0)
        by_subject_[{finding.slug, subject.substr(0, end)}].push_back(&finding);
  }
};

/// ISO 8601 days are in order as texts.
bool is_over(const Waiver& waiver, const std::string& today) {
  return !today.empty() && waiver.until < today;
}

std::string words_of(const Rig& rig, const Waiver& waiver) {
  return say(rig,
             {AnyCheckPhrase::waived_until, {Words{waiver.until}, Words{waiver.by}, Words{waiver.reason}}});
}

/// A result is waived when its finding is.
void mark_waived(const DiagnosticSink& sink, CheckResults& results) {
  std::set<std::pair<std::string, std::string>> waived;
  for (const Diagnostic& finding : sink.all())
    if (!finding.waived.empty())
      waived.emplace(finding.slug, finding.message);
  if (waived.empty())
    return;
  for (CheckResult& result : results.all)
    if (result.outcome == CheckOutcome::finding && waived.contains({result.check, result.words}))
      result.outcome = CheckOutcome::waived;
}

bool may_be_accepted(const std::string& slug) {
  const CheckRow* check = find_check(slug);
  return check != nullptr && check->acceptable;
}

/// A finding that blocks and is accepted stays as a warning that says so. After the last day it blocks
/// again.
void apply_accepted(const Rig& rig, const Waiver& accepted, FoundBySubject& all) {
  if (!may_be_accepted(accepted.slug)) {
    all.report(diagnose("not-to-be-accepted", {{"slug", accepted.slug}}).at(accepted.place));
    return;
  }
  const std::vector<Diagnostic*>& found = all.of(accepted);
  const bool over = is_over(accepted, rig.boat.report_date);
  for (Diagnostic* finding : found) {
    finding->message = say(rig, {over ? AnyCheckPhrase::was_accepted : AnyCheckPhrase::is_accepted,
                                 {Words{finding->message}, Words{words_of(rig, accepted)}}});
    if (!over && finding->severity == Severity::error)
      finding->severity = Severity::warning;
    finding->others.push_back(
        {accepted.place, said(over ? AnyCheckPhrase::acceptance_over : AnyCheckPhrase::accepted_here)});
  }
  if (found.empty())
    all.report(diagnose("waiver-without-finding", {{"slug", accepted.slug},
                                                   {"done", said(AnyCheckPhrase::accepted_word)},
                                                   {"stay", accepted.stay}})
                   .at(accepted.place));
  else if (rig.boat.report_date.empty())
    all.report(diagnose("waiver-date-not-checked", {{"slug", accepted.slug},
                                                    {"done", said(AnyCheckPhrase::accepted_word)},
                                                    {"until", accepted.until}})
                   .at(accepted.place));
}

/// Marks the findings that are waived. Errors are not waived; a waiver that is over by the boat's report
/// date, or that speaks of no finding, is said.
void apply_waiver(const Rig& rig, const Waiver& waiver, FoundBySubject& all) {
  const std::vector<Diagnostic*>& found = all.of(waiver);
  bool error = false;
  const bool over = is_over(waiver, rig.boat.report_date);
  for (Diagnostic* finding : found) {
    if (finding->severity == Severity::error) {
      error = true;
      continue;
    }
    if (over)
      finding->message =
          say(rig, {AnyCheckPhrase::was_waived, {Words{finding->message}, Words{words_of(rig, waiver)}}});
    else
      finding->waived = words_of(rig, waiver);
    finding->others.push_back(
        {waiver.place, said(over ? AnyCheckPhrase::waiver_over : AnyCheckPhrase::the_waiver)});
  }
  const bool used = !found.empty();
  if (!used)
    all.report(diagnose("waiver-without-finding",
                        {{"slug", waiver.slug},
                         {"done", said(AnyCheckPhrase::waived_word)},
                         {"stay", waiver.stay.empty() ? said(AnyCheckPhrase::this_rig) : waiver.stay}})
                   .at(waiver.place));
  if (error)
    all.report(diagnose("error-not-waived", {{"slug", waiver.slug}}).at(waiver.place));
  if (used && !error && rig.boat.report_date.empty())
    all.report(diagnose("waiver-date-not-checked", {{"slug", waiver.slug},
                                                    {"done", said(AnyCheckPhrase::waived_word)},
                                                    {"until", waiver.until}})
                   .at(waiver.place));
}

/// Comes last.
void apply_waivers(const Rig& rig, DiagnosticSink& sink, CheckResults& results) {
  if (rig.waivers.empty())
    return;
  FoundBySubject all(sink);
  for (const Waiver& waiver : rig.waivers)
    if (waiver.accepts)
      apply_accepted(rig, waiver, all);
    else
      apply_waiver(rig, waiver, all);
  all.hand_on();
  mark_waived(sink, results);
}

} // namespace

CheckResults check(const Rig& rig, const Derived& derived, DiagnosticSink& sink, Wanted wanted) {
  CheckResults results;
  // Most checks come to one result a stay; memory that is not written to costs nothing.
  if (wanted == Wanted::words)
    results.all.reserve(all_checks().size() * (rig.stays.size() + 1));
  say_switched_off(rig.limits, sink);
  for (const CheckRow& row : all_checks()) {
    CheckReport report(row.slug, rig, sink, results, wanted);
    if (const auto reason = without_limits(rig.limits, row.limits))
      report.not_checked(said(AnyCheckPhrase::this_rig), *reason);
    else
      row.run(rig, derived, report);
  }
  check_user_rules(rig, derived, sink, results, wanted);
  apply_waivers(rig, sink, results);
  return results;
}

} // namespace sheerpole
