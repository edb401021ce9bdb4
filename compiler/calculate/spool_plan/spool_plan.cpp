#include "calculate/spool_plan/spool_plan.hpp"

#include "calculate/spool_plan/line_cutting.hpp"
#include "calculate/spool_plan/rest_names.hpp"

#include <algorithm>
#include <utility>

namespace sheerpole {

namespace {

void name_rests(LinePlan& plan, RestNames& names) {
  for (SpoolUse& use : plan.uses) {
    const StockInHand& stock = plan.order.stocks[use.stock];
    // One of several spools of one record is no longer like the others.
    if (use.fate == RestFate::stays)
      use.rest_name = stock.pieces == 1 ? stock.name : names.next(stock.name);
    else if (use.fate == RestFate::offcut)
      use.rest_name = names.next(stock.name);
  }
}

void add_new_stock(const LinePlan& plan, std::size_t line, std::vector<NewStock>& into) {
  for (std::size_t i = 0; i < plan.order.stocks.size(); ++i) {
    const StockInHand& stock = plan.order.stocks[i];
    const auto begun = static_cast<std::int64_t>(std::count_if(
        plan.uses.begin(), plan.uses.end(), [&](const SpoolUse& use) { return use.stock == i; }));
    if (begun < stock.pieces)
      into.push_back(
          {line, i, stock.file, stock.name, stock.sort, stock.length_mm, stock.pieces - begun, false});
    for (const SpoolUse& use : plan.uses) {
      if (use.stock != i || use.rest_name.empty())
        continue;
      const std::string sort = use.fate == RestFate::stays ? stock.sort : "offcut";
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
  for (LineOrder& line : order.lines) {
    LinePlan& planned = plan.lines.emplace_back(plan_line(std::move(line), plan.files, limits));
    name_rests(planned, names);
    add_new_stock(planned, plan.lines.size() - 1, plan.new_stock);
  }
  return plan;
}

} // namespace sheerpole
