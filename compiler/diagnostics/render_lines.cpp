#include "diagnostics/render.hpp"

#include "diagnostics/excerpt.hpp"

#include <fmt/format.h>

#include <iterator>

namespace sheerpole {

std::string render_lines(const std::vector<Diagnostic>& findings, const SourceSet& sources) {
  std::string result;
  for (const Diagnostic& finding : findings) {
    if (finding.primary) {
      const SourceText& text = sources[finding.primary->span.source];
      const Position at = text.position(finding.primary->span.begin);
      fmt::format_to(std::back_inserter(result), "{}:{}:{}: ", printable(text.name()), at.line, at.column);
    }
    fmt::format_to(std::back_inserter(result), "{}{}: {} [{}]", finding.waived.empty() ? "" : "waived ",
                   name_of(finding.severity), printable(finding.message), finding.slug);
    if (finding.edit && finding.edit->certain)
      fmt::format_to(std::back_inserter(result), " (mend: {})", printable(finding.edit->title));
    result += '\n';
  }
  return result;
}

} // namespace sheerpole
