#include "calculate/spool_plan/spool_plan.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>

namespace sheerpole::line_cutting_test {
namespace {

StockInHand stock_of(const std::string& name, StockForm sort, std::int64_t length_mm,
                     std::int64_t kept_back_mm = 0) {
  StockInHand stock;
  stock.name = name;
  stock.of = "wire";
  stock.sort = sort;
  stock.length_mm = length_mm;
  stock.kept_back_mm = kept_back_mm;
  return stock;
}

/// A few pieces, spools and offcuts.
LineOrder any_line(bool endless_spool) {
  LineOrder line;
  const auto pieces = *rc::gen::inRange(1, 6);
  for (int i = 0; i < pieces; ++i) {
    WantedPiece piece;
    piece.boat = "Demo";
    piece.name = "stay-" + std::to_string(i);
    piece.length_mm = *rc::gen::inRange(1, 60);
    line.pieces.push_back(piece);
  }
  const auto offcuts = *rc::gen::inRange(0, 4);
  for (int i = 0; i < offcuts; ++i)
    line.stocks.push_back(
        stock_of("bit-" + std::to_string(i), StockForm::offcut, *rc::gen::inRange(1, 90)));
  if (endless_spool)
    line.stocks.push_back(stock_of("drum", StockForm::spool, 1000));
  else
    for (int i = 0; i < *rc::gen::inRange(0, 3); ++i) {
      const auto length = *rc::gen::inRange(1, 120);
      line.stocks.push_back(stock_of("drum-" + std::to_string(i), StockForm::spool, length,
                                     *rc::gen::inRange(0, length + 1)));
    }
  line.kerf_mm = {*rc::gen::inRange(0, 4), true, false};
  line.least_offcut_mm = {*rc::gen::inRange(0, 30), true, false};
  return line;
}

RC_GTEST_PROP(LineCuttingTest, EveryPieceIsCutOnceOrShortAndNothingIsCutBeyondItsStock, ()) {
  const LineOrder line = any_line(false);
  const LinePlan plan = plan_line(line, {{"k", "test.rig"}}, {});
  std::vector<int> seen(line.pieces.size(), 0);
  std::vector<int> begun(line.stocks.size(), 0);
  SpoolTotals sum;
  for (const SpoolUse& use : plan.uses) {
    const StockInHand& stock = line.stocks[use.stock];
    RC_ASSERT(++begun[use.stock] <= stock.pieces);
    std::int64_t position = 0;
    for (const SpoolCut& cut : use.cuts) {
      ++seen[cut.piece];
      RC_ASSERT(cut.start_mm == position);
      RC_ASSERT(cut.end_mm - cut.start_mm == line.pieces[cut.piece].length_mm);
      RC_ASSERT(cut.end_mm <= stock.length_mm - stock.kept_back_mm);
      position = cut.end_mm + cut.kerf_mm;
      RC_ASSERT(cut.kerf_mm == line.kerf_mm.value || position == stock.length_mm);
    }
    RC_ASSERT(use.rest_mm == stock.length_mm - position);
    const bool waste =
        use.rest_mm > 0 && use.rest_mm < line.least_offcut_mm.value && stock.kept_back_mm == 0;
    RC_ASSERT((use.fate == RestFate::waste) == waste);
    sum.stock_mm += stock.length_mm;
    sum.pieces_mm += use.pieces_mm;
    sum.kerf_mm += use.kerf_mm;
  }
  for (const ShortPiece& piece : plan.short_pieces)
    ++seen[piece.piece];
  RC_ASSERT(std::all_of(seen.begin(), seen.end(), [](int times) { return times == 1; }));
  RC_ASSERT(plan.totals.stock_mm == sum.stock_mm);
  RC_ASSERT(plan.totals.stock_mm ==
            sum.pieces_mm + sum.kerf_mm + plan.totals.kept_mm + plan.totals.waste_mm);
  RC_ASSERT(plan.bound_mm <= plan.counted_mm);
}

/// The least that is cut off a spool long enough for everything, by every way to deal the pieces out.
std::int64_t least_cut_off(const LineOrder& line, std::size_t piece, std::vector<std::int64_t>& room) {
  if (piece == line.pieces.size())
    return 0;
  const std::int64_t need = line.pieces[piece].length_mm + line.kerf_mm.value;
  std::int64_t least = need + least_cut_off(line, piece + 1, room);
  for (std::int64_t& left : room)
    if (left >= need) {
      left -= need;
      least = std::min(least, least_cut_off(line, piece + 1, room));
      left += need;
    }
  return least;
}

RC_GTEST_PROP(LineCuttingTest, NoWayToDealThePiecesOutCutsLessOffTheSpool, ()) {
  const LineOrder line = any_line(true);
  const LinePlan plan = plan_line(line, {{"k", "test.rig"}}, {});
  std::vector<std::int64_t> room;
  for (const StockInHand& stock : line.stocks)
    if (stock.sort == StockForm::offcut)
      room.push_back(stock.length_mm + line.kerf_mm.value); // no cut behind a piece that ends with it
  RC_ASSERT(plan.short_pieces.empty());
  RC_ASSERT(plan.counted_mm == least_cut_off(line, 0, room));
  RC_ASSERT(plan.proven);
}

} // namespace
} // namespace sheerpole::line_cutting_test
