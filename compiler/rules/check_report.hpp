#pragma once

#include "diagnostics/check_result.hpp"
#include "diagnostics/sink.hpp"
#include "wording/say.hpp"

#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace sheerpole {

/// Whether a number is below a bound, and not just by the rounding of a sum or a product.
constexpr bool is_below(double value, double bound) {
  constexpr double rounding = 1e-9; // of the bound; far below anything that is measured
  return value < bound - rounding * (bound < 0.0 ? -bound : bound);
}

/// What of the results is read. A command that prints findings counts what passed and what could not be
/// looked at, and has no use for the words of it: these are not made.
enum class Wanted { words, counts };

/// Where one check writes what it came to.
class CheckReport {
public:
  CheckReport(std::string_view check, const Rig& rig, DiagnosticSink& sink, CheckResults& results,
              Wanted wanted = Wanted::words)
      : check_(check), rig_(rig), sink_(sink), results_(results), wanted_(wanted) {}

  /// The slug of the check, or the name of the rule.
  const std::string& check() const { return check_; }

  /// The check found something. What the finding is about is the subject of the result.
  void find(Diagnostic finding) {
    results_.all.push_back({check_, finding.subject, CheckOutcome::finding, finding.message});
    sink_.report(std::move(finding));
  }
  void find(DiagnosticBuilder&& builder) { find(std::move(builder).build()); }
  /// It was looked at and there is nothing to say.
  void pass(std::string subject, std::string words) {
    add(CheckOutcome::pass, std::move(subject), std::move(words));
  }
  void pass(std::string subject, const Remark& remark) { pass(std::move(subject), wanted_words(remark)); }
  /// It could not be looked at: the words say what is not stated.
  void not_checked(std::string subject, std::string words) {
    add(CheckOutcome::not_checked, std::move(subject), std::move(words));
  }
  void not_checked(std::string subject, const Remark& remark) {
    not_checked(std::move(subject), wanted_words(remark));
  }
  /// A word to the reader that is no result: that a rule of the file is switched off.
  void mention(DiagnosticBuilder&& builder) { sink_.report(std::move(builder)); }

private:
  void add(CheckOutcome outcome, std::string subject, std::string words) {
    if (wanted_ == Wanted::counts)
      results_.only_counted.add(outcome);
    else
      results_.all.push_back({check_, std::move(subject), outcome, std::move(words)});
  }
  std::string wanted_words(const Remark& remark) const {
    return wanted_ == Wanted::words ? say(rig_, remark) : std::string();
  }

  std::string check_;
  const Rig& rig_;
  DiagnosticSink& sink_;
  CheckResults& results_;
  Wanted wanted_;
};

} // namespace sheerpole
