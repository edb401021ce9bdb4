#include "backend/json/json.hpp"

#include "backend/json/json_parts.hpp"
#include "diagnostics/render.hpp"
#include "units/format_length.hpp"
#include "wording/length_words.hpp"
#include "wording/model_words.hpp"
#include "wording/say.hpp"

#include <charconv>

namespace sheerpole {

namespace {

/// As they are written anywhere else, docs/findings/format.md.
Json findings_json(const CheckedRig& checked) {
  return Json::parse(render_json(checked.findings(), checked.sources()))["findings"];
}

Json results_json(const CheckedRig& checked) {
  Json results = Json::array();
  for (const CheckResult& result : checked.results())
    results.push_back({{"check", result.check},
                       {"subject", result.subject},
                       {"outcome", name_of(result.outcome)},
                       {"words", result.words}});
  return results;
}

} // namespace

double json_millimetres(Length length) {
  const std::string text = format_millimetres(length, 6);
  double value = 0.0;
  std::from_chars(text.data(), text.data() + text.size(), value);
  return value;
}

Json json_millimetres(const std::optional<Length>& length) {
  return length ? Json(json_millimetres(*length)) : Json();
}

Json reasons_json(const std::vector<DraftReason>& reasons) {
  Json json = Json::array();
  for (const DraftReason& reason : reasons)
    json.push_back({{"subject", reason.subject}, {"reason", reason.reason}, {"mend", reason.mend}});
  return json;
}

Json provenance_json(const Provenance& provenance, const SourceSet& sources) {
  Json json{{"class", name_of(provenance.source_class)},
            {"note", note_words(provenance)},
            {"written", provenance.written},
            {"assumptions", provenance.assumptions},
            {"place", nullptr}};
  if (provenance.place) {
    const SourceText& text = sources[provenance.place->source];
    const Position at = text.position(provenance.place->begin);
    json["place"] = {{"file", text.name()}, {"line", at.line}, {"column", at.column}};
  }
  return json;
}

Json term_json(const Rig& rig, const Term& term, const SourceSet& sources) {
  return {{"name", term_name(rig, term)},
          {"amount_mm", json_millimetres(term.amount)},
          {"how", say(rig, term.how)},
          {"provenance", provenance_json(term.provenance, sources)}};
}

Json sum_json(const Rig& rig, const LengthSum& sum, const SourceSet& sources) {
  Json terms = Json::array();
  for (const Term& term : sum.terms)
    terms.push_back(term_json(rig, term, sources));
  return {{"name", name_of(sum.kind)},
          {"unknown", sum.unknown},
          {"unknown_source", sum.unknown ? provenance_json(sum.unknown_source, sources) : Json()},
          {"known_mm", json_millimetres(sum.known())},
          {"terms", std::move(terms)}};
}

Json request_json(const CheckedRig& checked) {
  return {{"format", "sheerpole-request"},
          {"version", 1},
          {"rig", rig_json(checked)},
          {"derived", derived_json(checked)},
          {"draft_reasons", reasons_json(checked.draft_reasons())},
          {"findings", findings_json(checked)},
          {"check_results", results_json(checked)}};
}

std::string write_json(const Json& json) {
  return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

} // namespace sheerpole
