#include "rules/waivers.hpp"

#include <set>
#include <string>
#include <utility>

namespace sheerpole {

namespace {

/// Whether the waiver speaks of what the finding is about: the stay, one side of it, or a piece of it.
bool speaks_of(const Waiver& waiver, const std::string& subject) {
  if (waiver.stay.empty() || waiver.stay == subject)
    return true;
  const std::string& stay = waiver.stay;
  return subject.starts_with(stay) && (subject[stay.size()] == '.' || subject[stay.size()] == ' ');
}

/// ISO 8601 days are in order as texts.
bool is_over(const Waiver& waiver, const std::string& today) {
  return !today.empty() && waiver.until < today;
}

std::string words_of(const Waiver& waiver) {
  return "until " + waiver.until + " by " + waiver.by + ": " + waiver.reason;
}

/// A result is waived when its finding is.
void mark_waived(const DiagnosticSink& sink, std::vector<CheckResult>& results) {
  std::set<std::pair<std::string, std::string>> waived;
  for (const Diagnostic& finding : sink.all())
    if (!finding.waived.empty())
      waived.emplace(finding.slug, finding.message);
  if (waived.empty())
    return;
  for (CheckResult& result : results)
    if (result.outcome == CheckOutcome::finding && waived.contains({result.check, result.words}))
      result.outcome = CheckOutcome::waived;
}

} // namespace

void apply_waivers(const Rig& rig, DiagnosticSink& sink, std::vector<CheckResult>& results) {
  for (const Waiver& waiver : rig.waivers) {
    bool used = false;
    bool error = false;
    const bool over = is_over(waiver, rig.boat.report_date);
    sink.change([&](Diagnostic& finding) {
      if (finding.slug != waiver.slug || !speaks_of(waiver, finding.subject))
        return;
      used = true;
      error = error || finding.severity == Severity::error;
      if (finding.severity == Severity::error)
        return;
      if (over)
        finding.message += "; it was waived " + words_of(waiver);
      else
        finding.waived = words_of(waiver);
      finding.others.push_back({waiver.place, over ? "the waiver, which is over" : "the waiver"});
    });
    if (!used)
      sink.report(
          diagnose("waiver-without-finding",
                   {{"slug", waiver.slug}, {"stay", waiver.stay.empty() ? "this rig" : waiver.stay}})
              .at(waiver.place));
    if (error)
      sink.report(diagnose("error-not-waived", {{"slug", waiver.slug}}).at(waiver.place));
    if (used && !error && rig.boat.report_date.empty())
      sink.report(diagnose("waiver-date-not-checked", {{"slug", waiver.slug}, {"until", waiver.until}})
                      .at(waiver.place));
  }
  mark_waived(sink, results);
}

} // namespace sheerpole
