#pragma once

#include "diagnostics/sink.hpp"

#include <string>
#include <utility>

namespace sheerpole {

/// Hands the findings of one file on and stops when there are so many that the file is hardly a rig file.
class SyntaxReport {
public:
  static constexpr int most_findings = 100;

  explicit SyntaxReport(DiagnosticSink& sink) : sink_(sink) {}

  void add(DiagnosticBuilder&& finding) {
    if (count_ < most_findings) {
      sink_.report(std::move(finding));
    } else if (count_ == most_findings) {
      const Diagnostic last = std::move(finding).build();
      sink_.report(diagnose("too-many-findings", {{"count", std::to_string(most_findings)}})
                       .at(last.primary ? last.primary->span : Span{}));
    }
    ++count_;
  }
  /// Whether nothing that is added is still shown.
  bool full() const { return count_ > most_findings; }

private:
  DiagnosticSink& sink_;
  int count_ = 0;
};

} // namespace sheerpole
