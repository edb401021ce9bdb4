#include "backend/paper_words.hpp"
#include "backend/table/rig_tables.hpp"
#include "wording/model_words.hpp"
#include "wording/papers/tables_words.hpp"

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
  return say(TablesPhrase::pass_findings_not_checked_waived, totals.passed, totals.found,
             totals.not_checked, totals.waived);
}

} // namespace

Table checks_table(const CheckedRig& checked) {
  Table table{.title = say(TablesPhrase::checks_how_often_each_passed),
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
  table.notes = {in_all(count_results(checked.results())), say(TablesPhrase::not_checked_something_is_not)};
  return table;
}

Table results_table(const CheckedRig& checked) {
  Table table{.title = say(TablesPhrase::results_what_every_check_came),
              .columns = {{"check"}, {"about"}, {"result"}, {"what"}},
              .notes = {in_all(count_results(checked.results()))}};
  for (const CheckResult& result : checked.results())
    table.rows.push_back(
        {result.check, result.subject, std::string(name_of(result.outcome)), result.words});
  return table;
}

Table limits_table(const CheckedRig& checked) {
  const Limits& limits = checked.rig().limits;
  Table table{
      .title = say(TablesPhrase::limits_thresholds_checks),
      .columns = {{"limit"}, {"here"}, {"usually"}, {"class"}, {"disputed"}, {"used by"}},
      .notes = {say(TablesPhrase::rig_file_sets_limit_or), say(TablesPhrase::sources_and_meanings_are_in)}};
  for (const LimitRow& row : all_limits())
    table.rows.push_back({std::string(row.name), limit_text(limits, row.limit),
                          row.value ? std::string(row.written()) : "none",
                          std::string(name_of(row.limit_class)), row.disputed ? "yes" : "",
                          checks_of(checked, row.limit)});
  return table;
}

} // namespace sheerpole
