#pragma once

#include "diagnostics/diagnostic.hpp"
#include "source/source_set.hpp"

#include <string>
#include <vector>

namespace sheerpole {

/// Findings for a person: place, the line with the spot marked, the reason on the boat, the suggested edit,
/// and a closing count. `colour` adds terminal colours; the words alone carry the meaning.
std::string render_terminal(const std::vector<Diagnostic>& findings, const SourceSet& sources, bool colour);

/// One line each: `file:line:column: severity: message [slug]`, and ` (mend: what)` behind it when the
/// suggested edit is certain.
std::string render_lines(const std::vector<Diagnostic>& findings, const SourceSet& sources);

/// A JSON object with the findings and their count by severity; the form is described in docs/findings.
std::string render_json(const std::vector<Diagnostic>& findings, const SourceSet& sources);

/// A SARIF 2.1.0 log (OASIS standard): a finding is a result, its slug the rule id, with the explanation as
/// help; a waiver is a suppression, a suggested edit a fix. Columns count code points, as everywhere here.
std::string render_sarif(const std::vector<Diagnostic>& findings, const SourceSet& sources);

} // namespace sheerpole
