#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace sheerpole {

/// What a check came to about one thing. A number that is not stated makes it not checked, never passed.
enum class CheckOutcome { pass, finding, not_checked, waived };

/// "pass", "finding", "not checked", "waived".
constexpr std::string_view name_of(CheckOutcome outcome) {
  switch (outcome) {
  case CheckOutcome::pass:
    return "pass";
  case CheckOutcome::finding:
    return "finding";
  case CheckOutcome::not_checked:
    return "not checked";
  case CheckOutcome::waived:
    return "waived";
  }
  return "not checked";
}

/// One result of one check.
struct CheckResult {
  std::string check;   ///< slug of the finding that it may be: "pin-loose"
  std::string subject; ///< "cap-shroud.port"; "cap-shroud" when both sides are alike to the last word
  CheckOutcome outcome = CheckOutcome::not_checked;
  std::string words; ///< what was looked at, with the amounts; what is missing when it was not checked
};

/// How many results of each outcome.
struct CheckTotals {
  std::size_t passed = 0;
  std::size_t found = 0;
  std::size_t not_checked = 0;
  std::size_t waived = 0;

  void add(CheckOutcome outcome) {
    ++(outcome == CheckOutcome::pass          ? passed
       : outcome == CheckOutcome::finding     ? found
       : outcome == CheckOutcome::not_checked ? not_checked
                                              : waived);
  }
};

/// What the checks of a rig came to.
struct CheckResults {
  std::vector<CheckResult> all;
  /// Results of which nothing but the number was wanted, none of them a finding.
  CheckTotals only_counted = {};
};

inline CheckTotals count_results(const std::vector<CheckResult>& results, CheckTotals totals = {}) {
  for (const CheckResult& result : results)
    totals.add(result.outcome);
  return totals;
}

inline CheckTotals count_results(const CheckResults& results) {
  return count_results(results.all, results.only_counted);
}

} // namespace sheerpole
