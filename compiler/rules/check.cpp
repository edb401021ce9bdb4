#include "rules/check.hpp"

#include "model/limit_use.hpp"
#include "rules/check_table.hpp"
#include "rules/user_rules.hpp"
#include "rules/waivers.hpp"

#include <optional>

namespace sheerpole {

namespace {

/// Why none of the thresholds of a check has a value; nothing when one has, or when it needs none.
std::optional<std::string> without_limits(const Limits& limits, std::string_view slug) {
  std::string off;
  std::string not_stated;
  for (const LimitRow& row : all_limits()) {
    if (!uses(row, slug))
      continue;
    if (limits.value(row.limit))
      return std::nullopt;
    std::string& names = limits.switched_off(row.limit) ? off : not_stated;
    names += (names.empty() ? "" : ", ") + std::string(row.name);
  }
  if (!off.empty())
    return off + " is switched off in `limits`";
  if (!not_stated.empty())
    return "no limit of the owner's is stated: " + not_stated;
  return std::nullopt;
}

/// What is switched off is said where it is.
void say_switched_off(const Limits& limits, DiagnosticSink& sink) {
  for (const StatedLimit& stated : limits.stated())
    if (!stated.value)
      sink.report(diagnose("limit-switched-off", {{"limit", std::string(row_of(stated.limit).name)},
                                                  {"checks", std::string(row_of(stated.limit).checks)}})
                      .at(stated.place)
                      .about(std::string(row_of(stated.limit).name)));
}

} // namespace

std::vector<CheckResult> check(const Rig& rig, const Derived& derived, DiagnosticSink& sink) {
  std::vector<CheckResult> results;
  say_switched_off(rig.limits, sink);
  for (const CheckRow& row : all_checks()) {
    CheckReport report(row.slug, sink, results);
    if (const auto reason = without_limits(rig.limits, row.slug))
      report.not_checked("this rig", *reason);
    else
      row.run(rig, derived, report);
  }
  check_user_rules(rig, derived, sink, results);
  apply_waivers(rig, sink, results);
  return results;
}

} // namespace sheerpole
