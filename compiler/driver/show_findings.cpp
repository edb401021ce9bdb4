#include "driver/show_findings.hpp"

#include "diagnostics/render.hpp"

namespace sheerpole {

std::string show_findings(const Compilation& compilation, const std::string& form, bool colour) {
  if (form == "json")
    return render_json(compilation.findings, *compilation.sources);
  if (form == "sarif")
    return render_sarif(compilation.findings, *compilation.sources);
  if (form == "lines")
    return render_lines(compilation.findings, *compilation.sources);
  return render_terminal(compilation.findings, *compilation.sources, colour);
}

} // namespace sheerpole
