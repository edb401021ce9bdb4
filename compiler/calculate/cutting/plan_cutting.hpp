#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace sheerpole {

/// 100 km; no length or cost of an order is greater.
inline constexpr std::int64_t longest_cutting_mm = 100'000'000;
/// Of all pieces together; no order has more.
inline constexpr std::int64_t most_cutting_pieces = 100'000;

/// What a stock is. Tells the reader of a plan where a piece comes from; the search does not ask it.
enum class StockForm { spool, coil, offcut };

/// The word of the language.
constexpr std::string_view name_of(StockForm form) {
  return form == StockForm::coil ? "coil" : form == StockForm::offcut ? "offcut" : "spool";
}

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

/// One piece where it lies in its stock.
struct CutPiece {
  std::size_t piece = 0; ///< place in CuttingOrder::pieces
  std::string name;
  std::int64_t ordinal = 1;  ///< which of the ordered count, from 1
  std::int64_t start_mm = 0; ///< from the end of the stock that is cut first
  std::int64_t length_mm = 0;
};

/// One stock that is cut.
struct CutStock {
  std::size_t stock = 0; ///< place in CuttingOrder::stocks
  std::string name;
  std::int64_t ordinal = 1; ///< which of those of this name, from 1
  std::int64_t length_mm = 0;
  std::int64_t cost_mm = 0;
  std::vector<CutPiece> pieces; ///< in the order of cutting, longest first
  std::int64_t kerf_mm = 0;     ///< all cuts together
  std::int64_t leftover_mm = 0;
  bool keeps_offcut = false; ///< the leftover is long enough to keep; else it is waste
};

/// Why a piece is in no stock.
enum class UncutReason {
  longer_than_every_stock,
  not_enough_stock, ///< what there is does not hold all pieces, or no way was found in which it does
};

struct UncutPiece {
  std::size_t piece = 0; ///< place in CuttingOrder::pieces
  std::string name;
  std::int64_t length_mm = 0;
  std::int64_t count = 0;
  UncutReason reason = UncutReason::not_enough_stock;
};

/// How the search ended.
enum class CuttingSearch {
  finished,      ///< the plan is proven
  limit_reached, ///< a limit of CuttingLimits ended it
  too_large,     ///< it was not begun; the plan is the first one found
};

/// Sums over the stocks that are cut: stock = pieces + kerf + offcuts + waste.
struct CuttingTotals {
  std::int64_t stock_mm = 0; ///< whole lengths of the stocks begun
  std::int64_t pieces_mm = 0;
  std::int64_t kerf_mm = 0;
  std::int64_t offcuts_mm = 0;
  std::int64_t waste_mm = 0;
};

struct CuttingPlan {
  std::vector<CutStock> stocks; ///< longest stock first
  std::vector<UncutPiece> uncut;
  CuttingTotals totals;
  std::int64_t cost_mm =
      0; ///< what was minimised; equals totals.stock_mm where all stocks count whole at their length
  /// No plan for the same pieces costs less than this. With pieces uncut for want of stock it speaks of the
  /// pieces that are cut.
  std::int64_t lower_bound_mm = 0;
  /// cost_mm equals lower_bound_mm and, where pieces are uncut for want of stock, no plan leaves less
  /// length uncut. Speaks of the cost alone, not of how ties were settled.
  bool proven = false;
  CuttingSearch search = CuttingSearch::finished;
};

/// Which piece is cut from which stock.
///
/// A piece longer than every stock is set aside first. Then four things are made least, each as far as the
/// ones before leave a choice.
///
/// First, the total length of pieces that stay uncut because there is not enough stock. Where several sets
/// of pieces have that length one of them is taken, and what follows speaks of the pieces that are cut.
///
/// Second, the cost in mm: for each stock begun its `cost_mm`, and, where it counts as cut, the length of
/// its pieces and one kerf for each. With no costs given and every stock counting whole this is the total
/// length of the stocks begun.
///
/// Third, the number of stocks begun. Fourth, the longest single leftover is made as long as possible.
///
/// The first two are exact when the plan says that it is proven. The others are exact for small orders and
/// a best effort for large ones. What is still equal is settled by length, then by name, so the order in
/// which pieces and stocks are listed does not matter.
///
/// Method: bound by column generation over cutting patterns (P. C. Gilmore and R. E. Gomory, "A linear
/// programming approach to the cutting-stock problem", Operations Research 9, 1961), the pricing knapsack
/// by dynamic programming; whole numbers by diving, then by an integer program over every pattern that the
/// bound still allows.
///
/// A length of 0, a negative number and a number over longest_cutting_mm or most_cutting_pieces are faults
/// of the caller; a count, a kerf, a least offcut and a cost of 0 are valid.
CuttingPlan plan_cutting(const CuttingOrder& order, const CuttingLimits& limits = {});

} // namespace sheerpole
