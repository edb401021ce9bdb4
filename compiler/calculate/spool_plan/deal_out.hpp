#pragma once

#include "calculate/cutting/plan_cutting.hpp"
#include "calculate/spool_plan/spool_plan.hpp"

namespace sheerpole {

/// The pieces that are cut from one stock, in the order of cutting.
struct CutRow {
  std::size_t stock = 0;           ///< in LineOrder::stocks
  std::vector<std::size_t> pieces; ///< in LineOrder::pieces
  std::int64_t pieces_mm = 0;
};

/// Which piece comes from which stock, and what is known of how good that is.
struct Dealt {
  std::vector<CutRow> rows;
  std::vector<ShortPiece> short_pieces;
  SpoolMeasure measure = SpoolMeasure::cut_off;
  std::int64_t counted_mm = 0;
  std::int64_t bound_mm = 0;
  bool proven = false;
};

/// There must be pieces, and a stock of which not all is kept back.
Dealt deal_out(const LineOrder& line, const std::vector<StockFile>& files, const CuttingLimits& limits);

/// What may be cut of one stock, mm; nothing when all of its pieces are made up as they are.
std::int64_t usable_mm(const StockInHand& stock);
bool is_offcut(const StockInHand& stock);

} // namespace sheerpole
