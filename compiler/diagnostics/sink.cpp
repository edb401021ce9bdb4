#include "diagnostics/sink.hpp"

#include <algorithm>
#include <tuple>
#include <utility>

namespace sheerpole {

void DiagnosticSink::report(Diagnostic diagnostic) {
  // The same thing said twice about the same place helps nobody: a mirrored stay meets each mistake once a
  // side.
  for (const Diagnostic& earlier : all_)
    if (earlier.slug == diagnostic.slug && earlier.message == diagnostic.message && earlier.primary &&
        diagnostic.primary && earlier.primary->span == diagnostic.primary->span)
      return;
  all_.push_back(std::move(diagnostic));
}

void DiagnosticSink::change(const std::function<void(Diagnostic&)>& change) {
  for (Diagnostic& finding : all_)
    change(finding);
}

std::vector<Diagnostic> DiagnosticSink::sorted() const {
  std::vector<Diagnostic> result = all_;
  const auto key = [](const Diagnostic& d) {
    const Span span = d.primary ? d.primary->span : Span{};
    return std::make_tuple(d.primary.has_value(), span.source, span.begin, d.slug);
  };
  std::stable_sort(result.begin(), result.end(),
                   [&](const Diagnostic& a, const Diagnostic& b) { return key(a) < key(b); });
  return result;
}

std::size_t DiagnosticSink::count(Severity severity) const {
  return static_cast<std::size_t>(
      std::count_if(all_.begin(), all_.end(), [&](const Diagnostic& d) { return d.severity == severity; }));
}

} // namespace sheerpole
