#include "plugins/survey-report/survey_report.hpp"

#include "backend/page/document_html.hpp"
#include "backend/page/document_pages.hpp"
#include "plugins/survey-report/report_document.hpp"

namespace sheerpole {

BackendDescription SurveyReport::describe() const {
  return {.name = "survey-report",
          .summary = "the whole rig for a surveyor: what is up there, how it is known, what was found",
          .outputs = {"survey-report.html"},
          .papers = {"survey-report.pdf"}};
}

OutputBundle SurveyReport::generate(const BackendRequest& request) const {
  const Document document = report_document(request);
  OutputBundle bundle;
  bundle.files.push_back({"survey-report.html", html_of_document(document, request.paper)});
  bundle.papers.push_back(
      {"survey-report.pdf", document.title, pages_of_document(document, request.paper)});
  return bundle;
}

} // namespace sheerpole
