#include "backend/paper_words.hpp"
#include "backend/table/rig_tables.hpp"
#include "wording/model_words.hpp"

#include <map>
#include <utility>

namespace sheerpole {

namespace {

/// Each check in the order in which it came, with its totals.
std::vector<std::pair<std::string, CheckTotals>> totals_of(const std::vector<CheckResult>& results) {
  std::vector<std::pair<std::string, CheckTotals>> all;
  std::map<std::string, std::size_t> index;
  for (const CheckResult& result : results) {
    const auto [found, fresh] = index.try_emplace(result.check, all.size());
    if (fresh)
      all.push_back({result.check, {}});
    all[found->second].second.add(result.outcome);
  }
  return all;
}

/// "pin-play 0.5 mm, pin-play-share 5 %": the thresholds that the check goes by.
std::string limits_of(const CheckedRig& checked, const std::string& check) {
  std::string words;
  for (const LimitUse& use : checked.limit_uses())
    if (use.check == check)
      add_words(words, ", ",
                std::string(row_of(use.limit).name) + " " + limit_text(checked.rig().limits, use.limit));
  return words;
}

/// The checks that go by a threshold, with blanks between.
std::string checks_of(const CheckedRig& checked, Limit limit) {
  std::string slugs;
  for (const LimitUse& use : checked.limit_uses())
    if (use.limit == limit)
      slugs += (slugs.empty() ? "" : " ") + use.check;
  return slugs;
}

std::string in_all(const CheckTotals& totals) {
  return std::to_string(totals.passed) + " pass, " + std::to_string(totals.found) + " findings, " +
         std::to_string(totals.not_checked) + " not checked, " + std::to_string(totals.waived) + " waived.";
}

} // namespace

Table checks_table(const CheckedRig& checked) {
  Table table{.title = "Checks: how often each passed, found something or could not look",
              .columns = {{"check"},
                          {"pass", true},
                          {"finding", true},
                          {"not checked", true},
                          {"waived", true},
                          {"limits"}}};
  for (const auto& [check, totals] : totals_of(checked.results()))
    table.rows.push_back({check, std::to_string(totals.passed), std::to_string(totals.found),
                          std::to_string(totals.not_checked), std::to_string(totals.waived),
                          limits_of(checked, check)});
  table.notes = {in_all(count_results(checked.results())),
                 "Not checked: something is not stated, which is no pass. A check that is not listed had "
                 "nothing to look at."};
  return table;
}

Table results_table(const CheckedRig& checked) {
  Table table{.title = "Results: what every check came to about every thing",
              .columns = {{"check"}, {"about"}, {"result"}, {"what"}},
              .notes = {in_all(count_results(checked.results()))}};
  for (const CheckResult& result : checked.results())
    table.rows.push_back(
        {result.check, result.subject, std::string(name_of(result.outcome)), result.words});
  return table;
}

Table limits_table(const CheckedRig& checked) {
  const Limits& limits = checked.rig().limits;
  Table table{.title = "Limits: the thresholds of the checks",
              .columns = {{"limit"}, {"here"}, {"usually"}, {"class"}, {"disputed"}, {"used by"}},
              .notes = {"A rig file sets a limit, or switches it off, in its block `limits`.",
                        "Sources and meanings are in docs/calculations/thresholds.md."}};
  for (const LimitRow& row : all_limits())
    table.rows.push_back({std::string(row.name), limit_text(limits, row.limit),
                          row.value ? std::string(row.written()) : "none",
                          std::string(name_of(row.limit_class)), row.disputed ? "yes" : "",
                          checks_of(checked, row.limit)});
  return table;
}

} // namespace sheerpole
