#include "calculate/cutting/order_problem.hpp"

#include <algorithm>
#include <functional>
#include <map>
#include <numeric>
#include <tuple>

namespace sheerpole::cutting {
namespace {

template <class Thing>
void sort_by_name(std::vector<std::size_t>& places, const std::vector<Thing>& things) {
  std::stable_sort(places.begin(), places.end(),
                   [&](std::size_t a, std::size_t b) { return things[a].name < things[b].name; });
}

} // namespace

std::int64_t cost_of_beginning(const CuttingStock& stock) {
  return stock.cost_mm.value_or(stock.counting == StockCounting::whole ? stock.length_mm : 0);
}

OrderProblem problem_of(const CuttingOrder& order) {
  OrderProblem result;
  Problem& problem = result.problem;
  std::int64_t longest = 0;
  for (const CuttingStock& stock : order.stocks)
    if (!stock.available || *stock.available > 0)
      longest = std::max(longest, stock.length_mm);

  std::map<std::int64_t, std::vector<std::size_t>, std::greater<>> by_length;
  for (std::size_t p = 0; p < order.pieces.size(); ++p) {
    if (order.pieces[p].count == 0)
      continue;
    if (order.pieces[p].length_mm > longest)
      result.too_long.push_back(p);
    else
      by_length[order.pieces[p].length_mm].push_back(p);
  }
  problem.unit_mm = 0;
  std::int64_t total = 0;
  std::int64_t wanted = 0;
  for (auto& [length, places] : by_length) {
    sort_by_name(places, order.pieces);
    Item item{length + order.kerf_mm, 0, 0};
    for (const std::size_t p : places)
      item.demand += order.pieces[p].count;
    problem.unit_mm = std::gcd(problem.unit_mm, item.weight);
    total += item.weight * item.demand;
    wanted += item.demand;
    problem.items.push_back(item);
    result.pieces.push_back(std::move(places));
  }
  problem.unit_mm = std::max<std::int64_t>(problem.unit_mm, 1);
  for (Item& item : problem.items)
    item.weight /= problem.unit_mm;
  total /= problem.unit_mm;
  if (problem.items.empty())
    return result;

  // Longest first, then the cheaper, then those that count whole.
  std::map<std::tuple<std::int64_t, std::int64_t, bool>, std::vector<std::size_t>> alike;
  for (std::size_t s = 0; s < order.stocks.size(); ++s) {
    const CuttingStock& stock = order.stocks[s];
    if (!stock.available || *stock.available > 0)
      alike[{-stock.length_mm, cost_of_beginning(stock), stock.counting == StockCounting::as_cut}]
          .push_back(s);
  }
  for (auto& [key, places] : alike) {
    const auto& [minus_length, cost, as_cut] = key;
    Kind kind;
    kind.length_mm = order.kerf_mm - minus_length;
    kind.capacity = std::min(kind.length_mm / problem.unit_mm, total);
    kind.cost = cost;
    kind.as_cut = as_cut;
    if (kind.capacity < problem.items.back().weight)
      continue;
    for (const std::size_t s : places)
      kind.available =
          std::min(wanted, kind.available + std::min(wanted, order.stocks[s].available.value_or(wanted)));
    sort_by_name(places, order.stocks);
    problem.kinds.push_back(kind);
    result.stocks.push_back(std::move(places));
  }
  problem.rank = wanted + 1;
  return result;
}

} // namespace sheerpole::cutting
