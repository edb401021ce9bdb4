#include "diagnostics/render.hpp"

#include <nlohmann/json.hpp>

namespace sheerpole {

namespace {

using Json = nlohmann::ordered_json;

Json place_of(Span span, const SourceSet& sources) {
  const SourceText& text = sources[span.source];
  const Position begin = text.position(span.begin);
  const Position end = text.position(span.end);
  return {{"file", text.name()},   {"line", begin.line},       {"column", begin.column},
          {"end_line", end.line},  {"end_column", end.column}, {"offset", span.begin},
          {"end_offset", span.end}};
}

Json finding_of(const Diagnostic& finding, const SourceSet& sources) {
  Json json;
  json["slug"] = finding.slug;
  json["severity"] = name_of(finding.severity);
  json["message"] = finding.message;
  json["why"] = finding.why;
  json["subject"] = finding.subject;
  json["waived"] = finding.waived.empty() ? Json() : Json(finding.waived);
  json["place"] = finding.primary ? place_of(finding.primary->span, sources) : Json();
  json["label"] = finding.primary ? finding.primary->text : std::string();
  json["others"] = Json::array();
  for (const Label& other : finding.others)
    json["others"].push_back({{"label", other.text}, {"place", place_of(other.span, sources)}});
  json["edit"] = Json();
  if (finding.edit)
    json["edit"] = {{"title", finding.edit->title},
                    {"replacement", finding.edit->replacement},
                    {"certain", finding.edit->certain},
                    {"place", place_of(finding.edit->span, sources)}};
  return json;
}

} // namespace

std::string render_json(const std::vector<Diagnostic>& findings, const SourceSet& sources,
                        const std::optional<CheckTotals>& totals) {
  Json json;
  json["findings"] = Json::array();
  for (const Diagnostic& finding : findings)
    json["findings"].push_back(finding_of(finding, sources));
  const SeverityCounts counts = count_severities(findings);
  json["counts"] = {{"errors", counts.errors},
                    {"warnings", counts.warnings},
                    {"notes", counts.notes},
                    {"waived", counts.waived}};
  json["checks"] = Json();
  if (totals)
    json["checks"] = {{"passed", totals->passed},
                      {"found", totals->found},
                      {"not_checked", totals->not_checked},
                      {"waived", totals->waived}};
  // A file name may hold bytes that are not UTF-8; they must not keep the findings from being written.
  return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

} // namespace sheerpole
