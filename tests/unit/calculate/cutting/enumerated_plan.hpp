#pragma once

#include "calculate/cutting/plan_cutting.hpp"

#include <algorithm>
#include <cstdint>
#include <functional>
#include <limits>
#include <tuple>
#include <vector>

namespace sheerpole::test {

/// What is minimised, in the order of weight.
struct PlanValue {
  std::int64_t uncut_mm = std::numeric_limits<std::int64_t>::max();
  std::int64_t cost_mm = 0;
  std::int64_t stocks = 0;
  std::int64_t minus_leftover_mm = 0;
  friend auto operator<=>(const PlanValue&, const PlanValue&) = default;
};

/// The best plan by trying every way to deal the pieces out; for a handful of pieces. Shares nothing with
/// the compiler but the order's own words.
class EnumeratedPlan {
public:
  explicit EnumeratedPlan(const CuttingOrder& order) : order_(order) {
    for (const OrderedPiece& piece : order.pieces)
      pieces_.insert(pieces_.end(), static_cast<std::size_t>(piece.count), piece.length_mm);
    std::sort(pieces_.begin(), pieces_.end(), std::greater<>());
    begun_of_.resize(order.stocks.size());
    deal(0, 0, 0);
  }

  const PlanValue& best() const { return best_; }

private:
  struct Begun {
    std::size_t stock;
    std::int64_t pieces_mm = 0;
    std::int64_t pieces = 0;
  };

  bool fits(const Begun& begun, std::int64_t length) const {
    // n pieces need n - 1 cuts between them; behind the last one less than a kerf may be left.
    return begun.pieces_mm + length + begun.pieces * order_.kerf_mm <= order_.stocks[begun.stock].length_mm;
  }

  void deal(std::size_t next, std::int64_t uncut, std::int64_t cost) {
    if (std::tuple(uncut, cost) > std::tuple(best_.uncut_mm, best_.cost_mm))
      return;
    if (next == pieces_.size()) {
      std::int64_t longest = 0;
      for (const Begun& begun : begun_)
        longest = std::max(longest, order_.stocks[begun.stock].length_mm - begun.pieces_mm -
                                        begun.pieces * order_.kerf_mm);
      best_ = std::min(best_, PlanValue{uncut, cost, static_cast<std::int64_t>(begun_.size()), -longest});
      return;
    }
    const std::int64_t length = pieces_[next];
    const auto place = [&](std::size_t at, std::int64_t begin_cost) {
      Begun& begun = begun_[at];
      if (!fits(begun, length))
        return;
      begun.pieces_mm += length;
      ++begun.pieces;
      const bool as_cut = order_.stocks[begun.stock].counting == StockCounting::as_cut;
      deal(next + 1, uncut, cost + begin_cost + (as_cut ? length + order_.kerf_mm : 0));
      begun_[at].pieces_mm -= length;
      --begun_[at].pieces;
    };
    for (std::size_t at = 0; at < begun_.size(); ++at)
      place(at, 0);
    for (std::size_t s = 0; s < order_.stocks.size(); ++s) {
      const CuttingStock& stock = order_.stocks[s];
      if (stock.available && begun_of_[s] >= *stock.available)
        continue;
      ++begun_of_[s];
      begun_.push_back({s});
      place(begun_.size() - 1,
            stock.cost_mm.value_or(stock.counting == StockCounting::whole ? stock.length_mm : 0));
      begun_.pop_back();
      --begun_of_[s];
    }
    deal(next + 1, uncut + length, cost);
  }

  const CuttingOrder& order_;
  std::vector<std::int64_t> pieces_;
  std::vector<Begun> begun_;
  std::vector<std::int64_t> begun_of_;
  PlanValue best_;
};

} // namespace sheerpole::test
