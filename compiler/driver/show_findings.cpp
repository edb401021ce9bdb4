#include "driver/show_findings.hpp"

#include "diagnostics/render.hpp"

namespace sheerpole {

std::string show_findings(const Compilation& compilation, const std::string& form, bool colour) {
  std::optional<CheckTotals> totals;
  if (compilation.derived) // else it did not come to the checks
    totals = count_results(compilation.results);
  if (form == "json")
    return render_json(compilation.findings, *compilation.sources, totals);
  if (form == "sarif")
    return render_sarif(compilation.findings, *compilation.sources, totals);
  if (form == "lines")
    return render_lines(compilation.findings, *compilation.sources);
  return render_terminal(compilation.findings, *compilation.sources, colour, totals);
}

} // namespace sheerpole
