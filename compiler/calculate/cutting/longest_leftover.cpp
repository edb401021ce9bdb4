#include "calculate/cutting/search.hpp"

#include "calculate/cutting/integer_program.hpp"
#include "calculate/cutting/problem.hpp"

#include <algorithm>
#include <map>

namespace sheerpole::cutting {
namespace {

constexpr std::size_t most_patterns = 1000;
constexpr std::size_t most_stocks = 25;
constexpr std::int64_t most_cells = 20'000'000; ///< of a knapsack for one pair

/// With the kerf of the cut that parts it.
std::int64_t leftover(const Problem& problem, const Pattern& pattern) {
  return problem.kinds[pattern.kind].length_mm - problem.unit_mm * weight_of(problem, pattern);
}

std::size_t longest(const Problem& problem, const Packing& packing) {
  std::size_t best = 0;
  for (std::size_t s = 1; s < packing.stocks.size(); ++s)
    if (leftover(problem, packing.stocks[s]) > leftover(problem, packing.stocks[best]))
      best = s;
  return best;
}

/// Fills each other stock as well as it goes from its own pieces and those of the stock with the longest
/// leftover.
void cut_pairs_anew(const Problem& problem, Packing& packing) {
  Knapsack knapsack(problem);
  std::vector<std::int64_t> values;
  for (const Item& item : problem.items)
    values.push_back(item.weight);
  for (bool better = true; better;) {
    better = false;
    const std::size_t a = longest(problem, packing);
    for (std::size_t b = 0; b < packing.stocks.size(); ++b) {
      Pattern& from = packing.stocks[a];
      Pattern& to = packing.stocks[b];
      const Kind& kind = problem.kinds[to.kind];
      if (a == b || kind.as_cut != problem.kinds[from.kind].as_cut ||
          weight_of(problem, to) == kind.capacity)
        continue;
      std::vector<std::int64_t> both(problem.items.size());
      for (const Pattern* pattern : {&from, &to})
        for (const auto& [item, count] : pattern->counts)
          both[item] += count;
      if (kind.capacity * static_cast<std::int64_t>(from.counts.size() + to.counts.size()) > most_cells)
        continue;
      knapsack.fill(values, both, kind.capacity);
      if (knapsack.best(kind.capacity) <= weight_of(problem, to))
        continue;
      to.counts = knapsack.contents(kind.capacity);
      for (const auto& [item, count] : to.counts)
        both[item] -= count;
      from.counts.clear();
      for (std::size_t i = 0; i < both.size(); ++i)
        if (both[i] > 0)
          from.counts.emplace_back(i, both[i]);
      better = true;
    }
  }
}

/// The same cost and number of stocks with one stock of kind k that holds as little as possible, less than
/// `below`. The other stocks are cut by the patterns, that one freely.
bool empty_one(const Problem& problem, const std::vector<Pattern>& patterns, std::size_t k,
               std::int64_t below, int nodes, Packing& packing) {
  const std::size_t items = problem.items.size();
  const Kind& free_kind = problem.kinds[k];
  std::int64_t most_cost = cost_of(problem, packing) - free_kind.cost;
  WholeProgram program;
  for (std::size_t i = 0; i < items; ++i) {
    program.row_least.push_back(static_cast<double>(problem.items[i].demand - packing.skipped[i]));
    program.row_most.push_back(unlimited());
    most_cost -= problem.items[i].skip_cost * packing.skipped[i];
  }
  for (std::size_t other = 0; other < problem.kinds.size(); ++other) {
    program.row_least.push_back(-unlimited());
    program.row_most.push_back(static_cast<double>(problem.kinds[other].available - (other == k ? 1 : 0)));
  }
  const int room_row = static_cast<int>(program.row_least.size());
  for (const double most : {static_cast<double>(free_kind.capacity), static_cast<double>(most_cost),
                            static_cast<double>(packing.stocks.size() - 1)}) {
    program.row_least.push_back(-unlimited());
    program.row_most.push_back(most);
  }
  const int cost_row = room_row + 1;
  const int stock_row = room_row + 2;
  for (const Pattern& pattern : patterns) {
    WholeColumn column;
    for (const auto& [item, count] : pattern.counts) {
      column.rows.push_back(static_cast<int>(item));
      column.factors.push_back(static_cast<double>(count));
    }
    column.rows.insert(column.rows.end(), {static_cast<int>(items + pattern.kind), cost_row, stock_row});
    column.factors.insert(column.factors.end(), {1, static_cast<double>(cost_of(problem, pattern)), 1});
    column.most = static_cast<double>(problem.kinds[pattern.kind].available);
    program.columns.push_back(std::move(column));
  }
  for (std::size_t i = 0; i < items; ++i) {
    const auto weight = static_cast<double>(problem.items[i].weight);
    program.columns.push_back(
        {{static_cast<int>(i), room_row, cost_row},
         {1, weight, free_kind.as_cut ? weight * static_cast<double>(problem.unit_mm) : 0},
         static_cast<double>(problem.items[i].demand),
         weight});
  }
  program.cutoff = static_cast<double>(below - 1);
  program.good_enough = 0;
  program.nodes = nodes;
  const WholeAnswer answer = solve(program);
  if (answer.amounts.empty())
    return false;

  Packing other;
  other.skipped = packing.skipped;
  for (std::size_t p = 0; p < patterns.size(); ++p)
    other.stocks.insert(other.stocks.end(), static_cast<std::size_t>(answer.amounts[p]), patterns[p]);
  Pattern one{k, {}};
  for (std::size_t i = 0; i < items; ++i)
    if (const std::int64_t count = answer.amounts[patterns.size() + i]; count > 0)
      one.counts.emplace_back(i, count);
  other.stocks.push_back(std::move(one));
  tidy(problem, other);
  if (ranked_cost(problem, other) > ranked_cost(problem, packing) ||
      leftover(problem, other.stocks[longest(problem, other)]) <=
          leftover(problem, packing.stocks[longest(problem, packing)]))
    return false;
  packing = std::move(other);
  return true;
}

} // namespace

Packing with_longest_leftover(const Problem& problem, const SearchResult& found, int nodes) {
  Packing packing = found.packing;
  if (packing.stocks.empty())
    return packing;
  cut_pairs_anew(problem, packing);
  if (!found.cost_proven || packing.stocks.size() > most_stocks || found.patterns.size() > most_patterns)
    return packing;
  std::int64_t together = 0;
  for (const Pattern& pattern : packing.stocks)
    together += leftover(problem, pattern);
  for (std::size_t k = 0; k < problem.kinds.size(); ++k) {
    const std::int64_t best = leftover(problem, packing.stocks[longest(problem, packing)]);
    if (problem.kinds.size() == 1 && best == together)
      break;
    const std::int64_t below = (problem.kinds[k].length_mm - best + problem.unit_mm - 1) / problem.unit_mm;
    if (problem.kinds[k].available > 0 && below > problem.items.back().weight)
      empty_one(problem, found.patterns, k, below, nodes, packing);
  }
  return packing;
}

} // namespace sheerpole::cutting
