#pragma once

#include "diagnostics/diagnostic.hpp"

#include <cstddef>
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

} // namespace sheerpole
