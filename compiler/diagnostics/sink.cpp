#include "diagnostics/sink.hpp"

#include <algorithm>
#include <string>
#include <string_view>
#include <tuple>
#include <utility>

namespace sheerpole {

namespace {

/// Of what makes two findings the same.
std::size_t content_hash(const Diagnostic& finding) {
  std::size_t result = std::hash<std::string_view>{}(finding.message);
  for (const std::size_t part :
       {std::hash<std::string_view>{}(finding.slug), std::size_t{finding.primary->span.source.value},
        std::size_t{finding.primary->span.begin}, std::size_t{finding.primary->span.end}})
    result = result * 31 + part;
  return result;
}

} // namespace

void DiagnosticSink::report(Diagnostic diagnostic) {
  if (full_)
    return;
  // The same thing said twice about the same place helps nobody: a mirrored stay meets each mistake once a
  // side.
  if (diagnostic.primary) {
    const std::size_t hash = content_hash(diagnostic);
    const auto [first, last] = by_content_.equal_range(hash);
    for (auto at = first; at != last; ++at) {
      const Diagnostic& earlier = all_[at->second];
      if (earlier.slug == diagnostic.slug && earlier.message == diagnostic.message &&
          earlier.primary->span == diagnostic.primary->span)
        return;
    }
    by_content_.emplace(hash, all_.size());
  }
  if (diagnostic.severity == Severity::error && ++errors_ > most_errors) {
    full_ = true;
    DiagnosticBuilder note = diagnose("too-many-findings", {{"count", std::to_string(most_errors)}});
    if (diagnostic.primary)
      note = std::move(note).at(diagnostic.primary->span);
    all_.push_back(std::move(note).build());
    return;
  }
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
