#include "driver/built_in_backends.hpp"

#include "backend/process/file_name.hpp"
#include "base/edit_distance.hpp"
#include "base/internal_error.hpp"
#include "plugins/bench-card/bench_card.hpp"
#include "plugins/calendar/calendar.hpp"
#include "plugins/change-sheet/change_sheet.hpp"
#include "plugins/checks/checks.hpp"
#include "plugins/cord-map/cord_map.hpp"
#include "plugins/cut-list/cut_list.hpp"
#include "plugins/diagram/diagram.hpp"
#include "plugins/dry-fit-card/dry_fit_card.hpp"
#include "plugins/echo/echo.hpp"
#include "plugins/emergency-splice-card/emergency_splice_card.hpp"
#include "plugins/findings/findings.hpp"
#include "plugins/index/index.hpp"
#include "plugins/kit-list/kit_list.hpp"
#include "plugins/labels/labels.hpp"
#include "plugins/measuring-sheet/measuring_sheet.hpp"
#include "plugins/order-list/order_list.hpp"
#include "plugins/proof-sheet/proof_sheet.hpp"
#include "plugins/receiving-card/receiving_card.hpp"
#include "plugins/rig-drawing/rig_drawing.hpp"
#include "plugins/shop-order/shop_order.hpp"
#include "plugins/sign-off/sign_off.hpp"
#include "plugins/spool-plan/spool_plan_backend.hpp"
#include "plugins/survey-report/survey_report.hpp"
#include "plugins/take-up/take_up_sheet.hpp"
#include "plugins/tune-sheet/tune_sheet.hpp"

#include <algorithm>
#include <exception>
#include <iterator>

namespace sheerpole {

ChosenBackends choose_backends(const std::vector<std::string>& only,
                               const std::vector<std::string>& outside_names, bool any_name) {
  ChosenBackends result;
  if (only.empty()) {
    result.backends = usual_backends();
    return result;
  }
  std::vector<std::string> names = outside_names;
  for (const auto& backend : built_in_backends())
    names.push_back(backend->describe().name);
  for (const std::string& name : only) {
    if (std::find(outside_names.begin(), outside_names.end(), name) != outside_names.end())
      continue;
    Backends all = built_in_backends();
    const auto found = std::find_if(all.begin(), all.end(),
                                    [&](const auto& backend) { return backend->describe().name == name; });
    if (found != all.end()) {
      result.backends.push_back(std::move(*found));
    } else if (!any_name) {
      result.unknown = "sheerpole: there is no back end `" + name + "`" + did_you_mean(name, names) +
                       "\n`sheerpole list back-ends` shows all.\n";
      return result;
    }
  }
  return result;
}

std::string make_papers(const Backends& backends, const BackendRequest& request, FileClaims& claims,
                        OutputBundle& bundle, const std::function<void(const std::string&)>& begins) {
  std::string faults;
  for (const auto& backend : backends) {
    const std::string name = backend->describe().name;
    begins(name);
    try {
      OutputBundle made = backend->generate(request);
      for (const OutputFile& file : made.files)
        claims.add(file.name, name);
      for (const PagedFile& file : made.papers)
        claims.add(file.name, name);
      std::move(made.files.begin(), made.files.end(), std::back_inserter(bundle.files));
      std::move(made.papers.begin(), made.papers.end(), std::back_inserter(bundle.papers));
    } catch (const std::exception& error) {
      faults += "sheerpole: fault of the back end " + name + ": " + error.what() + "\n";
    }
  }
  return faults;
}

Backends usual_backends() {
  Backends result;
  result.push_back(std::make_unique<BenchCard>());
  result.push_back(std::make_unique<Calendar>());
  result.push_back(std::make_unique<ChangeSheet>());
  result.push_back(std::make_unique<Checks>());
  result.push_back(std::make_unique<CordMap>());
  result.push_back(std::make_unique<CutList>());
  result.push_back(std::make_unique<DiagramBackend>());
  result.push_back(std::make_unique<DryFitCard>());
  result.push_back(std::make_unique<EmergencySpliceCard>());
  result.push_back(std::make_unique<Findings>());
  result.push_back(std::make_unique<Index>());
  result.push_back(std::make_unique<Labels>());
  result.push_back(std::make_unique<MeasuringSheet>());
  result.push_back(std::make_unique<OrderList>());
  result.push_back(std::make_unique<ProofSheet>());
  result.push_back(std::make_unique<ReceivingCard>());
  result.push_back(std::make_unique<RigDrawing>());
  result.push_back(std::make_unique<SignOff>());
  result.push_back(std::make_unique<SpoolPlanBackend>());
  result.push_back(std::make_unique<SurveyReport>());
  result.push_back(std::make_unique<TakeUpSheet>());
  return result;
}

Backends built_in_backends() {
  Backends result = usual_backends();
  result.push_back(std::make_unique<Echo>());
  result.push_back(std::make_unique<KitList>());
  result.push_back(std::make_unique<TuneSheet>());
  result.push_back(std::make_unique<ShopOrder>());
  return result;
}

std::optional<std::string> FileClaims::clash(const std::string& file, const std::string& owner) const {
  for (const Claim& claim : claims_)
    if (file_names_clash(claim.file, file))
      return claim.owner != owner ? claim.owner + " writes `" + claim.file + "`"
             : claim.file == file ? "it writes that file already"
                                  : "it writes `" + claim.file + "` already";
  return std::nullopt;
}

std::unique_ptr<Backend> built_in_backend(std::string_view name) {
  for (auto& backend : built_in_backends())
    if (backend->describe().name == name)
      return std::move(backend);
  internal_error("the back end " + std::string(name) + " is not linked in");
}

} // namespace sheerpole
