#include "calculate/spool_plan/spool_plan.hpp"

#include "calculate/spool_plan/deal_out.hpp"

#include <algorithm>
#include <optional>
#include <utility>

namespace sheerpole {

namespace {

constexpr std::string_view ending = "-rest";

/// The name without `-rest` or `-rest-2` at its end.
std::string without_ending(const std::string& name) {
  const std::size_t last = name.find_last_not_of("0123456789");
  std::size_t end = name.size();
  if (last != std::string::npos && last + 1 < name.size() && name[last] == '-')
    end = last;
  const std::string head = name.substr(0, end);
  if (head.size() > ending.size() && head.ends_with(ending))
    return head.substr(0, head.size() - ending.size());
  return name;
}

} // namespace

void RestNames::avoid(const Rig& rig) {
  const auto take = [&](const auto& things) {
    for (const auto& thing : things)
      taken_.insert(thing.name);
  };
  take(rig.spars);
  take(rig.materials);
  take(rig.splices);
  take(rig.parts);
  take(rig.states);
  take(rig.records);
  take(rig.rules);
  for (const Point& point : rig.points)
    taken_.insert(point.base);
  for (const Stay& stay : rig.stays)
    taken_.insert(stay.base);
  take(rig.spreaders);
}

std::string RestNames::next(const std::string& stock) {
  const std::string first = without_ending(stock) + std::string(ending);
  std::string name = first;
  for (int number = 2; !taken_.insert(name).second; ++number)
    name = first + "-" + std::to_string(number);
  return name;
}

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
  // A draft moves what is cut behind it, so all drafts come last.
  std::vector<std::size_t> pieces = cuts.pieces;
  std::stable_partition(pieces.begin(), pieces.end(),
                        [&](std::size_t piece) { return !line.pieces[piece].draft(); });
  for (const std::size_t piece : pieces) {
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

namespace {

/// With those that are made up as they are.
std::int64_t all_pieces(const StockInHand& stock) {
  return stock.record == nullptr ? stock.pieces : pieces_stated(*stock.record);
}

void name_rests(LinePlan& plan, RestNames& names) {
  for (SpoolUse& use : plan.uses) {
    const StockInHand& stock = plan.order.stocks[use.stock];
    // One of several spools of one record is no longer like the others.
    if (use.fate == RestFate::stays)
      use.rest_name = all_pieces(stock) == 1 ? stock.name : names.next(stock.name);
    else if (use.fate == RestFate::offcut)
      use.rest_name = names.next(stock.name);
  }
}

void add_new_stock(const LinePlan& plan, std::size_t line, std::vector<NewStock>& into) {
  for (std::size_t i = 0; i < plan.order.stocks.size(); ++i) {
    const StockInHand& stock = plan.order.stocks[i];
    const auto begun = static_cast<std::int64_t>(std::count_if(
        plan.uses.begin(), plan.uses.end(), [&](const SpoolUse& use) { return use.stock == i; }));
    // What is not cut is there as before, whether the plan could have cut it or not.
    if (const std::int64_t left = all_pieces(stock) - begun; left > 0)
      into.push_back({line, i, stock.file, stock.name, stock.sort, stock.length_mm, left, false});
    for (const SpoolUse& use : plan.uses) {
      if (use.stock != i || use.rest_name.empty())
        continue;
      const StockForm sort = use.fate == RestFate::stays ? stock.sort : StockForm::offcut;
      into.push_back({line, i, stock.file, use.rest_name, sort, use.rest_mm, 1, true});
    }
  }
}

} // namespace

SpoolPlan plan_spools(const std::vector<SpoolBoat>& boats, const CuttingLimits& limits) {
  SpoolOrder order = spool_order(boats);
  SpoolPlan plan;
  plan.files = std::move(order.files);
  RestNames names;
  for (const SpoolBoat& boat : boats)
    names.avoid(*boat.rig);
  CuttingLimits of_line = limits;
  of_line.steps /= std::max<std::int64_t>(1, static_cast<std::int64_t>(order.lines.size()));
  for (LineOrder& line : order.lines) {
    LinePlan& planned = plan.lines.emplace_back(plan_line(std::move(line), plan.files, of_line));
    name_rests(planned, names);
    add_new_stock(planned, plan.lines.size() - 1, plan.new_stock);
  }
  return plan;
}

std::optional<std::int64_t> spools_to_buy(const LinePlan& plan) {
  if (!plan.order.sold_in_mm.stated || plan.short_pieces.empty())
    return std::nullopt;
  std::vector<std::int64_t> lengths;
  for (const ShortPiece& missing : plan.short_pieces)
    lengths.push_back(plan.order.pieces[missing.piece].length_mm);
  std::sort(lengths.rbegin(), lengths.rend());
  if (lengths.front() > plan.order.sold_in_mm.value)
    return std::nullopt;
  std::vector<std::int64_t> left;
  for (const std::int64_t length : lengths) {
    auto spool = std::find_if(left.begin(), left.end(), [&](std::int64_t room) { return room >= length; });
    if (spool == left.end())
      spool = left.insert(left.end(), plan.order.sold_in_mm.value);
    *spool -= length + plan.order.kerf_mm.value; // the last cut of a spool may need less than a kerf
  }
  return static_cast<std::int64_t>(left.size());
}

std::vector<SplitPair> split_pairs(const LinePlan& plan) {
  const std::vector<WantedPiece>& pieces = plan.order.pieces;
  std::vector<std::optional<std::size_t>> stock_of(pieces.size());
  for (const SpoolUse& use : plan.uses)
    for (const SpoolCut& cut : use.cuts)
      stock_of[cut.piece] = use.stock;
  std::vector<SplitPair> pairs;
  for (std::size_t port = 0; port < pieces.size(); ++port) {
    if (pieces[port].side != Side::port || !stock_of[port])
      continue;
    for (std::size_t other = 0; other < pieces.size(); ++other)
      if (pieces[other].side == Side::starboard && pieces[other].rig == pieces[port].rig &&
          pieces[other].stay == pieces[port].stay && pieces[other].number == pieces[port].number &&
          stock_of[other] && *stock_of[other] != *stock_of[port])
        pairs.push_back({port, other, *stock_of[port], *stock_of[other]});
  }
  return pairs;
}

} // namespace sheerpole
