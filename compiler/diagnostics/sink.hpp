#pragma once

#include "diagnostics/diagnostic.hpp"

#include <cstddef>
#include <functional>
#include <unordered_map>
#include <vector>

namespace sheerpole {

/// Collects the findings of one compilation, in the order in which they are met.
class DiagnosticSink {
public:
  /// Errors beyond this many are not kept; a note says so. Nobody reads further, and the time and memory
  /// for them would grow with the file.
  static constexpr std::size_t most_errors = 1000;

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
  std::size_t errors_ = 0;                                       ///< that were reported, kept or not
  bool full_ = false;                                            ///< an error was not kept
  std::unordered_multimap<std::size_t, std::size_t> by_content_; ///< hash to place in all_; looked up only
};

} // namespace sheerpole
