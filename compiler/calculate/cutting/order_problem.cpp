#include "calculate/cutting/search.hpp"

#include <algorithm>
#include <functional>
#include <map>
#include <numeric>
#include <tuple>
#include <utility>

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

namespace {

/// Hands out the things of equal length one by one: (place in the order, which of its count).
class Supply {
public:
  explicit Supply(const std::vector<std::size_t>& places) : places_(places) {}

  /// count(place): how many there are of it.
  template <class Count>
  std::pair<std::size_t, std::int64_t> next(const Count& count) {
    while (given_ >= count(places_[at_])) {
      ++at_;
      given_ = 0;
    }
    return {places_[at_], ++given_};
  }

private:
  const std::vector<std::size_t>& places_;
  std::size_t at_ = 0;
  std::int64_t given_ = 0;
};

/// Longer stocks first, then those that hold more of the longest pieces.
bool stands_before(const Pattern& a, const Pattern& b) {
  if (a.kind != b.kind)
    return a.kind < b.kind;
  for (std::size_t i = 0; i < a.counts.size() && i < b.counts.size(); ++i) {
    if (a.counts[i].first != b.counts[i].first)
      return a.counts[i].first < b.counts[i].first;
    if (a.counts[i].second != b.counts[i].second)
      return a.counts[i].second > b.counts[i].second;
  }
  return a.counts.size() > b.counts.size();
}

void add_uncut(CuttingPlan& plan, const CuttingOrder& order, std::size_t piece, std::int64_t count,
               UncutReason reason) {
  const OrderedPiece& ordered = order.pieces[piece];
  plan.uncut.push_back({piece, ordered.name, ordered.length_mm, count, reason});
}

} // namespace

CuttingPlan assemble(const CuttingOrder& order, const OrderProblem& source, const Packing& packing) {
  CuttingPlan plan;
  std::vector<Supply> pieces(source.pieces.begin(), source.pieces.end());
  std::vector<Supply> stocks(source.stocks.begin(), source.stocks.end());
  const auto piece_count = [&](std::size_t p) { return order.pieces[p].count; };
  const auto stock_count = [&](std::size_t s) {
    return order.stocks[s].available.value_or(static_cast<std::int64_t>(packing.stocks.size()));
  };

  std::vector<Pattern> patterns = packing.stocks;
  std::sort(patterns.begin(), patterns.end(), stands_before);
  for (const Pattern& pattern : patterns) {
    CutStock& cut = plan.stocks.emplace_back();
    std::tie(cut.stock, cut.ordinal) = stocks[pattern.kind].next(stock_count);
    cut.name = order.stocks[cut.stock].name;
    cut.length_mm = order.stocks[cut.stock].length_mm;
    cut.cost_mm = cost_of(source.problem, pattern);
    std::int64_t position = 0;
    std::int64_t used = 0;
    for (const auto& [item, count] : pattern.counts)
      for (std::int64_t n = 0; n < count; ++n) {
        CutPiece& piece = cut.pieces.emplace_back();
        std::tie(piece.piece, piece.ordinal) = pieces[item].next(piece_count);
        piece.name = order.pieces[piece.piece].name;
        piece.length_mm = order.pieces[piece.piece].length_mm;
        piece.start_mm = position;
        position += piece.length_mm + order.kerf_mm;
        used += piece.length_mm;
      }
    cut.kerf_mm =
        std::min(static_cast<std::int64_t>(cut.pieces.size()) * order.kerf_mm, cut.length_mm - used);
    cut.leftover_mm = cut.length_mm - used - cut.kerf_mm;
    cut.keeps_offcut = cut.leftover_mm > 0 && cut.leftover_mm >= order.least_offcut_mm;
    plan.totals.stock_mm += cut.length_mm;
    plan.totals.pieces_mm += used;
    plan.totals.kerf_mm += cut.kerf_mm;
    (cut.keeps_offcut ? plan.totals.offcuts_mm : plan.totals.waste_mm) += cut.leftover_mm;
    plan.cost_mm += cut.cost_mm;
  }

  for (const std::size_t p : source.too_long)
    add_uncut(plan, order, p, order.pieces[p].count, UncutReason::longer_than_every_stock);
  for (std::size_t i = 0; i < source.pieces.size(); ++i)
    for (std::int64_t n = 0; n < packing.skipped[i]; ++n) {
      const std::size_t p = pieces[i].next(piece_count).first;
      if (!plan.uncut.empty() && plan.uncut.back().piece == p)
        ++plan.uncut.back().count;
      else
        add_uncut(plan, order, p, 1, UncutReason::not_enough_stock);
    }
  return plan;
}

} // namespace sheerpole::cutting
