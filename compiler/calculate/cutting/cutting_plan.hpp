#pragma once

#include <cstddef>
#include <cstdint>
#include <string>
#include <vector>

namespace sheerpole {

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

} // namespace sheerpole
