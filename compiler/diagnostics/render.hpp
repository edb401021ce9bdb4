#pragma once

#include "diagnostics/check_result.hpp"
#include "diagnostics/diagnostic.hpp"
#include "source/source_set.hpp"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace sheerpole {

/// How many findings of each severity.
struct SeverityCounts {
  std::size_t errors = 0;
  std::size_t warnings = 0;
  std::size_t notes = 0;
  std::size_t waived = 0; ///< counted here alone
};

inline SeverityCounts count_severities(const std::vector<Diagnostic>& findings) {
  SeverityCounts counts;
  for (const Diagnostic& finding : findings)
    ++(!finding.waived.empty()                 ? counts.waived
       : finding.severity == Severity::error   ? counts.errors
       : finding.severity == Severity::warning ? counts.warnings
                                               : counts.notes);
  return counts;
}

/// Findings for a person: place, the line with the spot marked, the reason on the boat, the suggested edit,
/// and a closing count, with the totals of the checks when it came to them. `colour` adds terminal colours;
/// the words alone carry the meaning.
std::string render_terminal(const std::vector<Diagnostic>& findings, const SourceSet& sources, bool colour,
                            const std::optional<CheckTotals>& totals = {});

/// One line each: `file:line:column: severity: message [slug]`, and ` (mend: what)` behind it when the
/// suggested edit is certain.
std::string render_lines(const std::vector<Diagnostic>& findings, const SourceSet& sources);

/// A JSON object with the findings, their count by severity and the totals of the checks; the form is
/// described in docs/findings.
std::string render_json(const std::vector<Diagnostic>& findings, const SourceSet& sources,
                        const std::optional<CheckTotals>& totals = {});

/// A SARIF 2.1.0 log (OASIS standard): a finding is a result, its slug the rule id, with the explanation as
/// help; a waiver is a suppression, a suggested edit a fix. Columns count code points, as everywhere here.
std::string render_sarif(const std::vector<Diagnostic>& findings, const SourceSet& sources,
                         const std::optional<CheckTotals>& totals = {});

/// What stands before and behind the suites of a JUnit report.
inline constexpr std::string_view junit_begins =
    "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<testsuites name=\"sheerpole\">\n";
inline constexpr std::string_view junit_ends = "</testsuites>\n";

/// One boat as a suite of a JUnit report, as servers read it that build and test: a case for each finding
/// and for each check that passed or could not look. One from `fail_from` on is a failure; what is waived
/// and what was not checked is skipped. `rig_file` is what the suite is called.
std::string render_junit_suite(const std::vector<Diagnostic>& findings, const SourceSet& sources,
                               const std::vector<CheckResult>& results, const std::string& rig_file,
                               Severity fail_from);

/// A JSON list for servers that compare the findings of two revisions: `{description, check_name,
/// fingerprint, severity, location}` each. The fingerprint stays when the finding only moves to another
/// line. What is waived is left out; a finding without a place is at the beginning of `rig_file`.
std::string render_code_quality(const std::vector<Diagnostic>& findings, const SourceSet& sources,
                                const std::string& rig_file);

/// A path as reports have it: without "./" before it.
std::string plain_path(std::string_view name);

} // namespace sheerpole
