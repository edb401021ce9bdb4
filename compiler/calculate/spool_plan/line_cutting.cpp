#include "calculate/spool_plan/line_cutting.hpp"

#include "calculate/spool_plan/deal_out.hpp"

#include <algorithm>
#include <utility>

namespace sheerpole {

namespace {

/// What is left of a stock when this is cut from it.
std::int64_t rest_of(const StockInHand& stock, std::int64_t pieces_mm, std::int64_t cuts,
                     std::int64_t kerf_mm) {
  return std::max<std::int64_t>(0, stock.length_mm - pieces_mm - cuts * kerf_mm);
}

bool keeps(const LineOrder& line, const StockInHand& stock, std::int64_t rest_mm) {
  return rest_mm > 0 && (rest_mm >= line.least_offcut_mm.value || stock.kept_back_mm > 0);
}

/// Room that the cuts need: the last one only where there is something behind it.
bool holds(const StockInHand& stock, const CutRow& cuts, std::int64_t kerf_mm) {
  const auto count = static_cast<std::int64_t>(cuts.pieces.size());
  return cuts.pieces_mm + (count - 1) * kerf_mm <= usable_mm(stock);
}

/// The cuts made from spools and coils count the same from whichever they are made. The longest row of cuts
/// goes first to the shortest stock that holds it and leaves no waste, else to the shortest that holds it;
/// so every other row still finds one that does.
void move_to_shortest(const LineOrder& line, std::vector<CutRow>& cuts) {
  std::vector<std::int64_t> left(line.stocks.size());
  for (std::size_t i = 0; i < line.stocks.size(); ++i)
    left[i] = line.stocks[i].pieces;
  std::vector<std::size_t> rows;
  for (std::size_t i = 0; i < cuts.size(); ++i)
    if (!is_offcut(line.stocks[cuts[i].stock]))
      rows.push_back(i);
  const auto needs = [&](std::size_t row) {
    return cuts[row].pieces_mm + static_cast<std::int64_t>(cuts[row].pieces.size()) * line.kerf_mm.value;
  };
  std::stable_sort(rows.begin(), rows.end(),
                   [&](std::size_t a, std::size_t b) { return needs(a) > needs(b); });
  for (const std::size_t row : rows) {
    std::pair<bool, std::int64_t> best_rank;
    std::optional<std::size_t> best;
    for (std::size_t i = 0; i < line.stocks.size(); ++i) {
      const StockInHand& stock = line.stocks[i];
      if (is_offcut(stock) || left[i] == 0 || !holds(stock, cuts[row], line.kerf_mm.value))
        continue;
      const std::int64_t rest =
          rest_of(stock, cuts[row].pieces_mm, static_cast<std::int64_t>(cuts[row].pieces.size()),
                  line.kerf_mm.value);
      const std::pair<bool, std::int64_t> rank{rest > 0 && !keeps(line, stock, rest), stock.length_mm};
      if (!best || rank < best_rank) {
        best = i;
        best_rank = rank;
      }
    }
    if (best) {
      cuts[row].stock = *best;
      --left[*best];
    }
  }
}

void lay_out(const LineOrder& line, const CutRow& cuts, SpoolUse& use) {
  const StockInHand& stock = line.stocks[use.stock];
  std::int64_t position = 0;
  for (const std::size_t piece : cuts.pieces) {
    SpoolCut& cut = use.cuts.emplace_back();
    cut.piece = piece;
    cut.start_mm = position;
    cut.end_mm = position + line.pieces[piece].length_mm;
    cut.kerf_mm = std::min(line.kerf_mm.value, stock.length_mm - cut.end_mm);
    position = cut.end_mm + cut.kerf_mm;
    use.kerf_mm += cut.kerf_mm;
  }
  use.pieces_mm = cuts.pieces_mm;
  use.rest_mm = stock.length_mm - position;
  if (use.rest_mm == 0)
    use.fate = RestFate::nothing;
  else if (!keeps(line, stock, use.rest_mm))
    use.fate = RestFate::waste;
  else
    use.fate = is_offcut(stock) ? RestFate::offcut : RestFate::stays;
}

} // namespace

LinePlan plan_line(LineOrder order, const std::vector<StockFile>& files, const CuttingLimits& limits) {
  LinePlan plan;
  plan.order = std::move(order);
  const LineOrder& line = plan.order;
  plan.searched =
      !line.pieces.empty() && std::any_of(line.stocks.begin(), line.stocks.end(),
                                          [](const StockInHand& stock) { return usable_mm(stock) > 0; });
  if (!plan.searched) {
    for (std::size_t i = 0; i < line.pieces.size(); ++i)
      plan.short_pieces.push_back({i, UncutReason::not_enough_stock});
  } else {
    Dealt dealt = deal_out(line, files, limits);
    move_to_shortest(line, dealt.rows);
    for (const CutRow& row : dealt.rows) {
      SpoolUse& use = plan.uses.emplace_back();
      use.stock = row.stock;
      lay_out(line, row, use);
    }
    plan.short_pieces = std::move(dealt.short_pieces);
    plan.measure = dealt.measure;
    plan.counted_mm = dealt.counted_mm;
    plan.bound_mm = dealt.bound_mm;
    plan.proven = dealt.proven;
  }

  // Stocks in the order of their records; of those of one record the fuller first.
  std::stable_sort(plan.uses.begin(), plan.uses.end(), [](const SpoolUse& a, const SpoolUse& b) {
    return a.stock != b.stock ? a.stock < b.stock : a.pieces_mm > b.pieces_mm;
  });
  for (std::size_t i = 0; i < plan.uses.size(); ++i) {
    SpoolUse& use = plan.uses[i];
    if (i > 0 && plan.uses[i - 1].stock == use.stock)
      use.ordinal = plan.uses[i - 1].ordinal + 1;
    plan.totals.stock_mm += line.stocks[use.stock].length_mm;
    plan.totals.pieces_mm += use.pieces_mm;
    plan.totals.kerf_mm += use.kerf_mm;
    (use.fate == RestFate::waste ? plan.totals.waste_mm : plan.totals.kept_mm) += use.rest_mm;
  }
  std::sort(plan.short_pieces.begin(), plan.short_pieces.end(),
            [](const ShortPiece& a, const ShortPiece& b) { return a.piece < b.piece; });
  for (const ShortPiece& piece : plan.short_pieces)
    plan.to_buy_mm += line.pieces[piece.piece].length_mm + line.kerf_mm.value;
  return plan;
}

} // namespace sheerpole
