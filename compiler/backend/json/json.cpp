#include "backend/json/json.hpp"

#include "backend/json/json_parts.hpp"
#include "diagnostics/render.hpp"
#include "units/format_length.hpp"
#include "units/shortest_digits.hpp"
#include "wording/length_words.hpp"
#include "wording/model_words.hpp"
#include "wording/say.hpp"

#include <cmath>

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
  // By whole millionths, unless the length lies near the middle between two of them: there the decimal
  // tells.
  const double parts = std::abs(length.metres()) * 1e9;
  const double whole = std::floor(parts);
  const double rest = parts - whole;
  if (parts < 1e14 && std::abs(rest - 0.5) > 0.1) { // a product below this is off by a hundredth at most
    const double count = whole + (rest > 0.5 ? 1.0 : 0.0);
    return count == 0.0 ? 0.0 : std::copysign(count / 1e6, length.metres());
  }
  const std::string text = format_millimetres(length, 6);
  return read_digits(text).value;
}

double json_millimetres(Tenths tenths) {
  return static_cast<double>(tenths.count) / 10.0;
}

Json json_millimetres(const std::optional<Length>& length) {
  return length ? Json(json_millimetres(*length)) : Json();
}

Json length_json(bool unknown, Length known) {
  return {{"unknown", unknown}, {"known_mm", json_millimetres(known)}};
}

Json reasons_json(const std::vector<DraftReason>& reasons) {
  Json json = Json::array();
  for (const DraftReason& reason : reasons)
    json.push_back({{"subject", reason.subject}, {"reason", reason.reason}, {"mend", reason.mend}});
  return json;
}

Json provenance_json(const Provenance& provenance, const SourceSet& sources) {
  Json place;
  if (provenance.place) {
    const SourceText& text = sources[provenance.place->source];
    const Position at = text.position(provenance.place->begin);
    place = JsonObject(3).add("file", text.name()).add("line", at.line).add("column", at.column).take();
  }
  return JsonObject(5)
      .add("class", name_of(provenance.source_class))
      .add("note", note_words(provenance))
      .add("written", provenance.written)
      .add("assumptions", provenance.assumptions)
      .add("place", std::move(place))
      .take();
}

Json term_json(const Rig& rig, const Term& term, const SourceSet& sources) {
  return JsonObject(5) // and what a paper adds
      .add("name", term_name(rig, term))
      .add("amount_mm", json_millimetres(term.amount))
      .add("how", say(rig, term.how))
      .add("provenance", provenance_json(term.provenance, sources))
      .take();
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
