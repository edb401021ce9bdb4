#include "driver/built_in_backends.hpp"

#include "plugins/bench-card/bench_card.hpp"
#include "plugins/calendar/calendar.hpp"
#include "plugins/change-sheet/change_sheet.hpp"
#include "plugins/checks/checks.hpp"
#include "plugins/cut-list/cut_list.hpp"
#include "plugins/diagram/diagram.hpp"
#include "plugins/dry-fit-card/dry_fit_card.hpp"
#include "plugins/echo/echo.hpp"
#include "plugins/emergency-splice-card/emergency_splice_card.hpp"
#include "plugins/findings/findings.hpp"
#include "plugins/labels/labels.hpp"
#include "plugins/order-list/order_list.hpp"
#include "plugins/proof-sheet/proof_sheet.hpp"
#include "plugins/receiving-card/receiving_card.hpp"
#include "plugins/sign-off/sign_off.hpp"
#include "plugins/spool-plan/spool_plan_backend.hpp"
#include "plugins/survey-report/survey_report.hpp"
#include "plugins/take-up/take_up_sheet.hpp"

namespace sheerpole {

std::vector<std::unique_ptr<Backend>> usual_backends() {
  std::vector<std::unique_ptr<Backend>> result;
  result.push_back(std::make_unique<BenchCard>());
  result.push_back(std::make_unique<Calendar>());
  result.push_back(std::make_unique<ChangeSheet>());
  result.push_back(std::make_unique<Checks>());
  result.push_back(std::make_unique<CutList>());
  result.push_back(std::make_unique<DiagramBackend>());
  result.push_back(std::make_unique<DryFitCard>());
  result.push_back(std::make_unique<EmergencySpliceCard>());
  result.push_back(std::make_unique<Findings>());
  result.push_back(std::make_unique<Labels>());
  result.push_back(std::make_unique<OrderList>());
  result.push_back(std::make_unique<ProofSheet>());
  result.push_back(std::make_unique<ReceivingCard>());
  result.push_back(std::make_unique<SignOff>());
  result.push_back(std::make_unique<SpoolPlanBackend>());
  result.push_back(std::make_unique<SurveyReport>());
  result.push_back(std::make_unique<TakeUpSheet>());
  return result;
}

std::vector<std::unique_ptr<Backend>> built_in_backends() {
  std::vector<std::unique_ptr<Backend>> result = usual_backends();
  result.push_back(std::make_unique<Echo>());
  return result;
}

} // namespace sheerpole
