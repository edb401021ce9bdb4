#include "calculate/spool_plan/deal_out.hpp"

#include "calculate/cutting/plan_cutting.hpp"

#include <algorithm>
#include <numeric>
#include <tuple>
#include <utility>

namespace sheerpole {

namespace {

/// Some of the pieces and stocks of a line as an order, with their places in the line.
struct Asked {
  CuttingOrder order;
  std::vector<std::size_t> pieces;
  std::vector<std::size_t> stocks;
};

void add_stock(Asked& asked, const LineOrder& line, const std::vector<StockFile>& files, std::size_t i,
               std::int64_t length_mm) {
  const StockInHand& stock = line.stocks[i];
  CuttingStock& one = asked.order.stocks.emplace_back();
  one.name = stock.name + " of " + files[stock.file].name;
  one.length_mm = length_mm;
  one.available = stock.pieces;
  one.form = stock.sort;
  one.counting = is_offcut(stock) ? StockCounting::whole : StockCounting::as_cut;
  asked.stocks.push_back(i);
}

void add_piece(Asked& asked, const LineOrder& line, std::size_t i, std::int64_t length_mm) {
  asked.order.pieces.push_back({line.pieces[i].boat + ": " + line.pieces[i].name, length_mm, 1});
  asked.pieces.push_back(i);
}

/// Rows of the plan, with places in the line.
std::vector<CutRow> rows_of(const CuttingPlan& plan, const Asked& asked, const LineOrder& line) {
  std::vector<CutRow> rows;
  for (const CutStock& stock : plan.stocks) {
    CutRow& row = rows.emplace_back();
    row.stock = asked.stocks[stock.stock];
    for (const CutPiece& piece : stock.pieces) {
      row.pieces.push_back(asked.pieces[piece.piece]);
      row.pieces_mm += line.pieces[row.pieces.back()].length_mm;
    }
  }
  return rows;
}

std::vector<ShortPiece> short_of(const CuttingPlan& plan, const Asked& asked) {
  std::vector<ShortPiece> result;
  for (const UncutPiece& piece : plan.uncut)
    result.push_back({asked.pieces[piece.piece], piece.reason});
  return result;
}

std::int64_t length_of(const LineOrder& line, const std::vector<ShortPiece>& pieces) {
  std::int64_t sum = 0;
  for (const ShortPiece& piece : pieces)
    sum += line.pieces[piece.piece].length_mm;
  return sum;
}

std::int64_t with_kerfs(const LineOrder& line, const std::vector<ShortPiece>& pieces) {
  return length_of(line, pieces) + static_cast<std::int64_t>(pieces.size()) * line.kerf_mm.value;
}

/// Places of the pieces that are no longer than the longest stock.
std::vector<std::size_t> that_fit(const LineOrder& line) {
  std::int64_t longest = 0;
  for (const StockInHand& stock : line.stocks)
    longest = std::max(longest, usable_mm(stock));
  std::vector<std::size_t> pieces;
  for (std::size_t i = 0; i < line.pieces.size(); ++i)
    if (line.pieces[i].length_mm <= longest)
      pieces.push_back(i);
  return pieces;
}

/// All pieces from one spool or coil, when one holds them: nothing has to be searched then.
std::optional<CutRow> one_for_all(const LineOrder& line, std::vector<std::size_t> pieces) {
  CutRow row;
  for (const std::size_t piece : pieces)
    row.pieces_mm += line.pieces[piece].length_mm;
  const std::int64_t kerfs = static_cast<std::int64_t>(pieces.size() - 1) * line.kerf_mm.value;
  for (std::size_t i = 0; i < line.stocks.size(); ++i) {
    if (is_offcut(line.stocks[i]) || usable_mm(line.stocks[i]) < row.pieces_mm + kerfs)
      continue;
    std::sort(pieces.begin(), pieces.end(), [&](std::size_t a, std::size_t b) {
      const WantedPiece& one = line.pieces[a];
      const WantedPiece& other = line.pieces[b];
      return std::tie(other.length_mm, one.boat, one.name) <
             std::tie(one.length_mm, other.boat, other.name);
    });
    row.stock = i;
    row.pieces = std::move(pieces);
    return row;
  }
  return std::nullopt;
}

/// What the best plan gives.
Dealt planned(const LineOrder& line, const Asked& asked, const CuttingLimits& limits) {
  const CuttingPlan plan = plan_cutting(asked.order, limits);
  Dealt dealt;
  dealt.rows = rows_of(plan, asked, line);
  dealt.short_pieces = short_of(plan, asked);
  dealt.proven = plan.proven;
  return dealt;
}

/// As much as possible from the offcuts: a piece with its kerf is one length, and a stock has room for one
/// kerf more than its length, which is the same as kerfs between pieces.
Dealt from_offcuts(const LineOrder& line, const std::vector<StockFile>& files,
                   const std::vector<std::size_t>& pieces, const CuttingLimits& limits) {
  Asked asked;
  for (const std::size_t i : pieces)
    add_piece(asked, line, i, line.pieces[i].length_mm + line.kerf_mm.value);
  for (std::size_t i = 0; i < line.stocks.size(); ++i)
    if (is_offcut(line.stocks[i]) && usable_mm(line.stocks[i]) > 0)
      add_stock(asked, line, files, i, usable_mm(line.stocks[i]) + line.kerf_mm.value);
  Dealt dealt;
  if (asked.stocks.empty()) {
    for (const std::size_t i : pieces)
      dealt.short_pieces.push_back({i, UncutReason::not_enough_stock});
    dealt.proven = true;
    return dealt;
  }
  return planned(line, asked, limits);
}

/// These pieces from spools and coils.
Dealt from_spools(const LineOrder& line, const std::vector<StockFile>& files,
                  const std::vector<ShortPiece>& pieces, const CuttingLimits& limits) {
  Asked asked;
  asked.order.kerf_mm = line.kerf_mm.value;
  for (const ShortPiece& piece : pieces)
    add_piece(asked, line, piece.piece, line.pieces[piece.piece].length_mm);
  for (std::size_t i = 0; i < line.stocks.size(); ++i)
    if (!is_offcut(line.stocks[i]) && usable_mm(line.stocks[i]) > 0)
      add_stock(asked, line, files, i, usable_mm(line.stocks[i]));
  Dealt dealt;
  dealt.proven = true;
  if (pieces.empty())
    return dealt;
  if (asked.stocks.empty()) {
    dealt.short_pieces = pieces;
    return dealt;
  }
  if (auto row = one_for_all(line, asked.pieces)) {
    dealt.rows.push_back(std::move(*row));
    return dealt;
  }
  return planned(line, asked, limits);
}

std::int64_t cost_beside_spools(const StockInHand& offcut) {
  return (offcut.length_mm + 999) / 1000;
}

/// Of all offcuts together: what a plan may count beside what it cuts off spools.
std::int64_t beginning_cost(const LineOrder& line) {
  std::int64_t sum = 0;
  for (const StockInHand& stock : line.stocks)
    if (is_offcut(stock))
      sum += stock.pieces * cost_beside_spools(stock);
  return sum;
}

/// From all stocks at once; for when they do not suffice one sort after the other. The offcuts count 1 mm a
/// metre, which only settles what is left open by the pieces that stay uncut and by what comes from spools.
Dealt from_all(const LineOrder& line, const std::vector<StockFile>& files,
               const std::vector<std::size_t>& pieces, bool spools, const CuttingLimits& limits) {
  Asked asked;
  asked.order.kerf_mm = line.kerf_mm.value;
  for (const std::size_t i : pieces)
    add_piece(asked, line, i, line.pieces[i].length_mm);
  for (std::size_t i = 0; i < line.stocks.size(); ++i) {
    if (usable_mm(line.stocks[i]) <= 0)
      continue;
    add_stock(asked, line, files, i, usable_mm(line.stocks[i]));
    if (is_offcut(line.stocks[i]) && spools)
      asked.order.stocks.back().cost_mm = cost_beside_spools(line.stocks[i]);
  }
  const CuttingPlan plan = plan_cutting(asked.order, limits);
  Dealt dealt;
  dealt.rows = rows_of(plan, asked, line);
  dealt.short_pieces = short_of(plan, asked);
  dealt.counted_mm = plan.cost_mm;
  dealt.bound_mm = plan.lower_bound_mm;
  dealt.proven = plan.proven;
  return dealt;
}

std::int64_t cut_off_spools(const LineOrder& line, const std::vector<CutRow>& rows) {
  std::int64_t sum = 0;
  for (const CutRow& row : rows)
    if (!is_offcut(line.stocks[row.stock]))
      sum += row.pieces_mm + static_cast<std::int64_t>(row.pieces.size()) * line.kerf_mm.value;
  return sum;
}

/// What remains for spools, or is short, when every offcut is filled to its end.
std::int64_t left_at_least(const LineOrder& line, const std::vector<std::size_t>& pieces,
                           std::int64_t kerf_mm, bool offcuts_only) {
  std::int64_t left = 0;
  for (const std::size_t piece : pieces)
    left += line.pieces[piece].length_mm + kerf_mm;
  for (const StockInHand& stock : line.stocks)
    if ((!offcuts_only || is_offcut(stock)) && usable_mm(stock) > 0)
      left -= stock.pieces * (usable_mm(stock) + kerf_mm);
  return std::max<std::int64_t>(0, left);
}

} // namespace

std::int64_t usable_mm(const StockInHand& stock) {
  return stock.pieces > 0 ? stock.length_mm - stock.kept_back_mm : 0;
}

bool is_offcut(const StockInHand& stock) {
  return stock.sort == StockForm::offcut;
}

Dealt deal_out(const LineOrder& line, const std::vector<StockFile>& files, const CuttingLimits& limits) {
  const bool spools = std::any_of(line.stocks.begin(), line.stocks.end(), [](const StockInHand& stock) {
    return !is_offcut(stock) && usable_mm(stock) > 0;
  });
  const std::vector<std::size_t> pieces = that_fit(line);
  Dealt dealt;
  std::int64_t least = left_at_least(line, pieces, line.kerf_mm.value, true); // cut off spools by any plan
  if (spools) {
    dealt = from_offcuts(line, files, pieces, limits);
    if (dealt.proven)
      least = std::max(least, with_kerfs(line, dealt.short_pieces));
    Dealt rest = from_spools(line, files, dealt.short_pieces, limits);
    dealt.rows.insert(dealt.rows.end(), rest.rows.begin(), rest.rows.end());
    dealt.short_pieces = std::move(rest.short_pieces);
    dealt.proven = dealt.proven && rest.proven;
  }
  if (!spools || !dealt.short_pieces.empty()) {
    Dealt all = from_all(line, files, pieces, spools, limits);
    if (spools)
      least = std::max(least, all.bound_mm - beginning_cost(line));
    if (!spools || length_of(line, all.short_pieces) <= length_of(line, dealt.short_pieces))
      dealt = std::move(all);
    else
      dealt.proven = false;
  }
  if (!dealt.short_pieces.empty()) {
    dealt.measure = SpoolMeasure::uncut;
    dealt.counted_mm = length_of(line, dealt.short_pieces);
    dealt.bound_mm = dealt.proven ? dealt.counted_mm : left_at_least(line, pieces, 0, false);
  } else if (spools) {
    dealt.measure = SpoolMeasure::cut_off;
    dealt.counted_mm = cut_off_spools(line, dealt.rows);
    dealt.bound_mm = least;
  } else {
    dealt.measure = SpoolMeasure::offcuts_begun;
  }
  dealt.proven = dealt.counted_mm == dealt.bound_mm;
  for (ShortPiece& piece : dealt.short_pieces)
    piece.reason = UncutReason::not_enough_stock; // each fits one stock at least
  for (std::size_t i = 0; i < line.pieces.size(); ++i)
    if (!std::binary_search(pieces.begin(), pieces.end(), i))
      dealt.short_pieces.push_back({i, UncutReason::longer_than_every_stock});
  return dealt;
}

} // namespace sheerpole
