#pragma once

#include "diagnostics/diagnostic.hpp"

#include <cstddef>
#include <functional>
#include <vector>

namespace sheerpole {

/// Collects the findings of one compilation, in the order in which they are met.
class DiagnosticSink {
public:
  void report(DiagnosticBuilder&& builder) { report(std::move(builder).build()); }
  void report(Diagnostic diagnostic);

  /// Lets `change` see each finding so far and change it.
  void change(const std::function<void(Diagnostic&)>& change);

  /// In the order of file, place and slug; findings without a place come first.
  std::vector<Diagnostic> sorted() const;
  const std::vector<Diagnostic>& all() const { return all_; }
  std::size_t count(Severity severity) const;
  bool has_errors() const { return count(Severity::error) > 0; }

private:
  std::vector<Diagnostic> all_;
};

} // namespace sheerpole
