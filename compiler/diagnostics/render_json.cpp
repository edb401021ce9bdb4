#include "diagnostics/render.hpp"

#include "diagnostics/catalogue.hpp"

#include <map>
#include <nlohmann/json.hpp>
#include <utility>

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
  Json json{{"format", "sheerpole-findings"}, {"version", 1}};
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

namespace {

using Json = nlohmann::ordered_json;

/// A file name as a URI reference: every byte that RFC 3986 keeps for other purposes is written as %XX. A
/// full path becomes a file URI (RFC 8089): as a reference without a scheme it would belong to a server.
std::string uri_of(std::string_view path) {
  const std::string name = plain_path(path);
  constexpr std::string_view plain = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-._~/";
  constexpr std::string_view digits = "0123456789ABCDEF";
  std::string result = name.starts_with('/') ? "file://" : "";
  for (const char c : name) {
    const auto byte = static_cast<unsigned char>(c);
    if (plain.find(c) != std::string_view::npos) {
      result += c;
    } else {
      result += '%';
      result += digits[byte >> 4U];
      result += digits[byte & 15U];
    }
  }
  return result;
}

Json message(std::string_view text) {
  return {{"text", text}};
}

Json region_of(Span span, const SourceSet& sources) {
  const SourceText& text = sources[span.source];
  const Position begin = text.position(span.begin);
  const Position end = text.position(span.end);
  return {{"startLine", begin.line}, {"startColumn", begin.column}, {"endLine", end.line},
          {"endColumn", end.column}, {"byteOffset", span.begin},    {"byteLength", span.end - span.begin}};
}

Json artifact_of(Span span, const SourceSet& sources) {
  return {{"uri", uri_of(sources[span.source].name())}};
}

Json location_of(Span span, const SourceSet& sources) {
  return {{"physicalLocation",
           {{"artifactLocation", artifact_of(span, sources)}, {"region", region_of(span, sources)}}}};
}

Json rule_of(const Diagnostic& finding) {
  Json rule{{"id", finding.slug}};
  const CatalogueEntry* entry = find_entry(finding.slug);
  if (entry == nullptr) { // a rule that the file states itself
    const OwnRule own =
        finding.own_rule.value_or(OwnRule{"A rule stated in the rig file.", "", finding.severity});
    rule["shortDescription"] = message(own.title);
    if (!own.help.empty())
      rule["help"] = message(own.help);
    rule["defaultConfiguration"] = {{"level", name_of(own.severity)}};
    return rule;
  }
  rule["shortDescription"] = message(entry->cause);
  rule["help"] = message(std::string(entry->cause) + " " + std::string(entry->mend));
  rule["defaultConfiguration"] = {{"level", name_of(entry->severity)}};
  return rule;
}

Json result_of(const Diagnostic& finding, std::size_t rule, const SourceSet& sources) {
  Json result;
  result["ruleId"] = finding.slug;
  result["ruleIndex"] = rule;
  result["level"] = name_of(finding.severity); // note, warning, error: the words of SARIF as well
  result["message"] = message(finding.why.empty() ? finding.message : finding.message + "\n" + finding.why);
  if (finding.primary)
    result["locations"] = Json::array({location_of(finding.primary->span, sources)});
  for (const Label& other : finding.others) {
    Json location = location_of(other.span, sources);
    location["message"] = message(other.text);
    result["relatedLocations"].push_back(std::move(location));
  }
  if (!finding.waived.empty())
    result["suppressions"] =
        Json::array({{{"kind", "inSource"}, {"status", "accepted"}, {"justification", finding.waived}}});
  if (finding.edit) {
    const Json replacement{{"deletedRegion", region_of(finding.edit->span, sources)},
                           {"insertedContent", message(finding.edit->replacement)}};
    result["fixes"] = Json::array(
        {{{"description", message(finding.edit->title)},
          {"artifactChanges", Json::array({{{"artifactLocation", artifact_of(finding.edit->span, sources)},
                                            {"replacements", Json::array({replacement})}}})}}});
  }
  return result;
}

} // namespace

std::string render_sarif(const std::vector<Diagnostic>& findings, const SourceSet& sources,
                         const std::optional<CheckTotals>& totals) {
  std::map<std::string, std::size_t> index;
  Json rules = Json::array();
  Json results = Json::array();
  for (const Diagnostic& finding : findings) {
    const auto [rule, fresh] = index.try_emplace(finding.slug, rules.size());
    if (fresh)
      rules.push_back(rule_of(finding));
    results.push_back(result_of(finding, rule->second, sources));
  }
  Json run{{"tool", {{"driver", {{"name", "Sheerpole"}, {"rules", rules}}}}},
           {"columnKind", "unicodeCodePoints"},
           {"results", results}};
  if (totals)
    run["properties"] = {{"checks",
                          {{"passed", totals->passed},
                           {"found", totals->found},
                           {"notChecked", totals->not_checked},
                           {"waived", totals->waived}}}};
  const Json log{{"$schema", "https://json.schemastore.org/sarif-2.1.0.json"},
                 {"version", "2.1.0"},
                 {"runs", Json::array({std::move(run)})}};
  return log.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

} // namespace sheerpole
