#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace sheerpole {

/// 100 km; no length or cost of an order is greater.
inline constexpr std::int64_t longest_cutting_mm = 100'000'000;
/// Of all pieces together; no order has more.
inline constexpr std::int64_t most_cutting_pieces = 100'000;

/// What a stock is. Tells the reader of a plan where a piece comes from; the search does not ask it.
enum class StockForm { spool, coil, offcut };

/// What taking pieces from a stock costs.
enum class StockCounting {
  whole,  ///< a stock that is begun counts with its whole length, whatever is left of it
  as_cut, ///< only what is cut off counts, one kerf for each piece; the rest stays on the spool
};

/// Pieces of one length that are wanted.
struct OrderedPiece {
  std::string name;
  std::int64_t length_mm = 0; ///< over 0
  std::int64_t count = 1;     ///< how many of it; 0 asks for none
};

/// Stocks of one length that may be cut.
struct CuttingStock {
  std::string name;
  std::int64_t length_mm = 0;            ///< over 0
  std::optional<std::int64_t> available; ///< how many there are; nothing: as many as are needed
  StockForm form = StockForm::spool;
  StockCounting counting = StockCounting::whole;
  /// Counted once for each of these stocks that is begun, in mm of stock. Nothing: the stock's length where
  /// it counts whole, 0 where it counts as cut. An offcut beside a spool that counts as cut is taken only
  /// when its cost is less than what would be cut from the spool instead, so it should cost less than its
  /// length.
  std::optional<std::int64_t> cost_mm;
};

/// Pieces to be cut and the stocks to cut them from; whole millimetres throughout.
struct CuttingOrder {
  std::vector<OrderedPiece> pieces;
  std::vector<CuttingStock> stocks;
  /// What one cut takes from the stock. Each piece needs the cut at its end, but for a piece that ends
  /// exactly at the end of its stock. Where less than a kerf is left behind the last piece, its cut takes
  /// that and no more. So n pieces fit when their lengths and n - 1 kerfs are no longer than the stock.
  std::int64_t kerf_mm = 0;
  std::int64_t least_offcut_mm =
      0; ///< a leftover of at least this is kept as an offcut; a shorter one is waste
};

/// How far the search goes. Counts, never time: the same order gives the same plan on every machine.
struct CuttingLimits {
  std::int64_t most_pieces = 10'000; ///< above this the plan is the first one found
  std::int64_t most_knapsack_cells =
      50'000'000;                     ///< distinct lengths times mm of the longest stock, likewise
  std::int64_t steps = 3'000'000'000; ///< elementary steps of the search in all
  std::int64_t patterns = 30'000;     ///< ways to cut one stock that the exact search may list
  int nodes = 5'000;                  ///< of branching in each integer program
};

} // namespace sheerpole
