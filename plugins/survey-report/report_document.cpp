#include "plugins/survey-report/report_document.hpp"

#include "backend/boat_title.hpp"
#include "backend/change/change_blocks.hpp"
#include "backend/drawing/element_id.hpp"
#include "calculate/facts.hpp"

#include <set>

namespace sheerpole {

namespace {

/// One line: the pieces that are drafts are named with their reasons in a section of their own.
std::vector<std::string> draft_words(const CheckedRig& checked) {
  std::set<std::string> subjects;
  for (const DraftReason& reason : checked.draft_reasons())
    subjects.insert(reason.subject);
  if (subjects.empty())
    return {};
  return {std::to_string(subjects.size()) + (subjects.size() == 1 ? " length rests" : " lengths rest") +
          " on numbers that are assumed or missing; the section on assumptions names them."};
}

} // namespace

std::string section_of(const Stay& stay) {
  return "stay-" + element_id(stay.name);
}

namespace {

void add_changes(const BackendRequest& request, Document& document) {
  document.blocks.emplace_back(DocumentHeading{"Changes since the previous version", 2, "changes"});
  if (request.previous == nullptr) {
    document.blocks.emplace_back(
        DocumentText{"No previous version was given to compare with; that nothing changed is not said."});
    return;
  }
  document.blocks.emplace_back(DocumentText{"From " + request.previous_name + " to " + request.name + "."});
  add_change(*request.previous, request.checked, document);
}

} // namespace

Document report_document(const BackendRequest& request) {
  const CheckedRig& checked = request.checked;
  const std::string boat = boat_title(checked);
  Document document;
  document.title = "Standing rigging of " + boat;
  document.about = "Report on the rigging of " + boat;
  if (const std::string revision = fact_text(checked.rig().boat.particulars, "revision"); !revision.empty())
    document.about += ", revision " + revision;
  if (!checked.rig().boat.report_date.empty())
    document.about += ", " + checked.rig().boat.report_date;
  document.draft = draft_words(checked);
  add_identity(checked, document);
  add_scope(checked, document);
  add_views(checked, document);
  add_findings(checked, document);
  add_changes(request, document);
  add_stays(checked, document);
  add_assumptions(checked, document);
  add_checks(checked, document);
  add_sources(checked, document);
  add_signatures(checked, document);
  return document;
}

} // namespace sheerpole
