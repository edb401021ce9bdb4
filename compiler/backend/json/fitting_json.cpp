#include "backend/json/json.hpp"
#include "backend/json/json_parts.hpp"
#include "wording/say.hpp"

namespace sheerpole {

namespace {

Json first_fit_json(const FirstFit& fit) {
  return {{"short_by_mm", json_millimetres(fit.short_by)},
          {"to_slacken_mm", json_millimetres(fit.to_slacken)}};
}

Json band_json(const Rig& rig, const HangBand& band) {
  return {{"from_mm", json_millimetres(band.from)},
          {"to_mm", json_millimetres(band.to)},
          {"do", say(rig, words_of(band))}};
}

Json hang_slips_json(const Rig& rig, const std::vector<HangSlip>& slips) {
  Json json = Json::array();
  for (const HangSlip& slip : slips)
    json.push_back({{"off_mm", json_millimetres(slip.off)}, {"words", say(rig, slip.words)}});
  return json;
}

Json found_json(const Rig& rig, const FoundHang& found) {
  return {{"date", found.date},
          {"by", found.by},
          {"hung_mm", json_millimetres(found.hung)},
          {"should_hang_mm", json_millimetres(found.should_hang)},
          {"high_mm", json_millimetres(found.high)},
          {"do", say(rig, words_of(found.band))},
          {"releases", found.releases()},
          {"slips", hang_slips_json(rig, found.slips)}};
}

Json hoisted_fit_json(const Rig& rig, const HoistedFit& fit) {
  Json json{{"terms", Json::array()},
            {"hangs_at_mm", json_millimetres(fit.hangs_at())},
            {"without_gap_mm", json_millimetres(fit.without_gap)},
            {"right_within_mm", json_millimetres(fit.right)},
            {"not_known", say(rig, fit.not_known)},
            {"bands", Json::array()},
            {"slips", hang_slips_json(rig, fit.slips)},
            {"found", Json::array()}};
  for (const HangTerm& term : fit.terms)
    json["terms"].push_back({{"name", say(rig, term.name)}, {"amount_mm", json_millimetres(term.amount)}});
  for (const HangBand& band : fit.bands)
    json["bands"].push_back(band_json(rig, band));
  for (const FoundHang& found : fit.found)
    json["found"].push_back(found_json(rig, found));
  return json;
}

} // namespace

void add_fitting_json(const DerivedStay& stay, const Rig& rig, Json& json) {
  json["first_fit"] = stay.first_fit ? first_fit_json(*stay.first_fit) : Json();
  json["hoisted_fit"] = stay.hoisted_fit ? hoisted_fit_json(rig, *stay.hoisted_fit) : Json();
}

} // namespace sheerpole
