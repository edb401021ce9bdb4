#pragma once

#include "calculate/cutting/plan_cutting.hpp"

#include <algorithm>
#include <cstdint>
#include <map>
#include <set>
#include <string>
#include <utility>

namespace sheerpole::test {

/// What is wrong with the plan taken by itself: a piece over the end of its stock or over another, cut too
/// often or not as often as ordered, a sum that does not hold. Empty when nothing is.
inline std::string fault_of(const CuttingOrder& order, const CuttingPlan& plan) {
  CuttingTotals totals;
  std::int64_t cost = 0;
  std::vector<std::int64_t> cut(order.pieces.size());
  std::set<std::pair<std::size_t, std::int64_t>> pieces_seen;
  std::set<std::pair<std::size_t, std::int64_t>> stocks_seen;
  for (const CutStock& stock : plan.stocks) {
    const CuttingStock& from = order.stocks.at(stock.stock);
    if (stock.name != from.name || stock.length_mm != from.length_mm)
      return "a stock that is not the one it names";
    if (!stocks_seen.emplace(stock.stock, stock.ordinal).second)
      return "a stock is cut twice";
    if (stock.ordinal < 1 || (from.available && stock.ordinal > *from.available))
      return "a stock that is not there";
    if (stock.pieces.empty())
      return "a stock is begun for nothing";
    std::int64_t kerfs = 0;
    std::int64_t position = 0;
    for (const CutPiece& piece : stock.pieces) {
      const OrderedPiece& wanted = order.pieces.at(piece.piece);
      if (piece.length_mm != wanted.length_mm || piece.name != wanted.name)
        return "a piece that is not the one it names";
      if (!pieces_seen.emplace(piece.piece, piece.ordinal).second || piece.ordinal < 1 ||
          piece.ordinal > wanted.count)
        return "a piece is cut twice";
      if (piece.start_mm != position)
        return "a piece does not begin one kerf behind the last";
      const std::int64_t end = piece.start_mm + piece.length_mm;
      if (end > stock.length_mm)
        return "a piece goes over the end of its stock";
      const std::int64_t kerf = std::min(order.kerf_mm, stock.length_mm - end);
      kerfs += kerf;
      position = end + kerf;
      totals.pieces_mm += piece.length_mm;
      ++cut.at(piece.piece);
    }
    if (stock.kerf_mm != kerfs)
      return "the kerf of a stock";
    if (stock.leftover_mm != stock.length_mm - position)
      return "the leftover of a stock";
    if (stock.keeps_offcut != (stock.leftover_mm > 0 && stock.leftover_mm >= order.least_offcut_mm))
      return "what is kept";
    totals.stock_mm += stock.length_mm;
    totals.kerf_mm += kerfs;
    (stock.keeps_offcut ? totals.offcuts_mm : totals.waste_mm) += stock.leftover_mm;
    const bool whole = from.counting == StockCounting::whole;
    std::int64_t stock_cost = from.cost_mm.value_or(whole ? from.length_mm : 0);
    if (!whole)
      for (const CutPiece& piece : stock.pieces)
        stock_cost += piece.length_mm + order.kerf_mm;
    if (stock.cost_mm != stock_cost)
      return "the cost of a stock";
    cost += stock_cost;
  }
  for (const UncutPiece& piece : plan.uncut)
    cut.at(piece.piece) += piece.count;
  for (std::size_t p = 0; p < cut.size(); ++p)
    if (cut[p] != order.pieces[p].count)
      return "a piece is not cut as often as it is ordered";
  if (totals.stock_mm != plan.totals.stock_mm || totals.pieces_mm != plan.totals.pieces_mm ||
      totals.kerf_mm != plan.totals.kerf_mm || totals.offcuts_mm != plan.totals.offcuts_mm ||
      totals.waste_mm != plan.totals.waste_mm || cost != plan.cost_mm)
    return "a sum";
  if (totals.stock_mm != totals.pieces_mm + totals.kerf_mm + totals.offcuts_mm + totals.waste_mm)
    return "the parts do not make the whole";
  if (plan.lower_bound_mm > plan.cost_mm)
    return "a bound above the plan";
  if (plan.proven && plan.lower_bound_mm != plan.cost_mm)
    return "proven without a bound";
  return "";
}

} // namespace sheerpole::test
