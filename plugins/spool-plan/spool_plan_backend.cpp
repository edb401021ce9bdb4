#include "plugins/spool-plan/spool_plan_backend.hpp"

#include "backend/drawing/svg_writer.hpp"
#include "backend/page/paper_files.hpp"
#include "plugins/spool-plan/plan_words.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>
#include <utility>

namespace sheerpole {

BackendDescription SpoolPlanBackend::describe() const {
  return {.name = "spool-plan",
          .summary = "what to cut from which spool, coil or offcut, what is left, and what is to be bought",
          .outputs = {"spool-plan.txt", "spool-plan.csv", "spool-plan.svg"},
          .sometimes = {"new-stock.rig"},
          .papers = {"spool-plan.pdf"}};
}

OutputBundle SpoolPlanBackend::generate(const BackendRequest& request) const {
  const FleetBoats fleet = fleet_boats(request);
  const SpoolPlan plan = plan_spools(fleet.boats);
  OutputBundle bundle;
  const std::string text = plan_text(fleet, plan);
  bundle.files.push_back({"spool-plan.txt", text});
  bundle.files.push_back({"spool-plan.csv", plan_csv(plan)});
  std::vector<Drawing> sheets = plan_drawing(fleet, plan);
  for (std::size_t i = 0; i < sheets.size(); ++i)
    bundle.files.push_back(
        {i == 0 ? "spool-plan.svg" : fmt::format("spool-plan-{}.svg", i + 1), write_svg(sheets[i])});
  if (request.printed) {
    PagedFile paper = text_paper_of_lengths(
        {.file = "spool-plan.pdf", .name = "Spool plan", .about = fleet.titles}, text, request);
    std::move(sheets.begin(), sheets.end(), std::back_inserter(paper.pages));
    bundle.papers.push_back(std::move(paper));
  }
  for (std::size_t i = 0; i < plan.files.size(); ++i)
    bundle.files.push_back({i == 0 ? "new-stock.rig" : fmt::format("new-stock-{}.rig", i + 1),
                            new_stock_text(fleet, plan, i)});
  return bundle;
}

} // namespace sheerpole
