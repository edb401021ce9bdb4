#include "backend/json/json.hpp"

#include "backend/json/json_parts.hpp"
#include "backend/paper_words.hpp"
#include "wording/length_words.hpp"
#include "wording/say.hpp"
#include "wording/state_words.hpp"

namespace sheerpole {

namespace {

constexpr const char* kinds[] = {"line", "other line", "part", "lashing", "pin", "hole"};

Json place_json(const std::optional<std::size_t>& place) {
  return place ? Json(*place) : Json();
}

Json link_json(const Rig& rig, const ChainLink& link, const SourceSet& sources) {
  Json lacking = Json::array();
  for (const UnstatedStrength& one : link.not_stated)
    lacking.push_back({{"property", say(rig, one.property)}, {"of", say(rig, one.of)}});
  return {{"kind", kinds[static_cast<std::size_t>(link.kind)]},
          {"item", link.item},
          {"name", say(rig, link.name)},
          {"newtons", link.break_load ? Json(link.break_load->newtons()) : Json()},
          {"how", say(rig, link.how)},
          {"not_stated", std::move(lacking)},
          {"meant", link.meant},
          {"counted", link.counted},
          {"provenance", provenance_json(link.provenance, sources)}};
}

Json piece_json(const DerivedStay& stay, const Piece& piece, const Rig& rig, const SourceSet& sources) {
  Json missing = Json::array();
  for (const MissingInput& input : piece.missing)
    missing.push_back({{"what", say(rig, input.what)}, {"mend", say(rig, input.mend)}});
  return {{"name", piece.name},
          {"number", piece.number},
          {"of", piece.of},
          {"material", rig[piece.material].name},
          {"body", sum_json(rig, piece.body, sources)},
          {"cut", sum_json(rig, piece.cut, sources)},
          {"above", end_json(rig, piece, WhichEnd::upper)},
          {"below", end_json(rig, piece, WhichEnd::lower)},
          {"in_hand", in_hand_json(piece, sources)},
          {"missing", std::move(missing)},
          {"not_counted", say_each(rig, piece.not_counted)},
          {"bench", bench_json(rig, piece)},
          {"printed", printed_piece_json(rig, stay, piece)}};
}

Json state_json(const CheckedRig& checked, const Piece& piece) {
  const auto drawing = checked.from_drawing(piece);
  return {{"word", name_of(checked.state(piece))}, {"from_drawing", drawing ? Json(*drawing) : Json()}};
}

Json adjuster_json(const TakeUp& adjuster, const Rig& rig, const SourceSet& sources) {
  return {{"part", rig[adjuster.part].name},
          {"item", adjuster.item},
          {"set", sourced_json(adjuster.set, sources)},
          {"to_tighten_mm", json_millimetres(adjuster.to_tighten)},
          {"to_slacken_mm", json_millimetres(adjuster.to_slacken)},
          {"travel_per_turn_mm", json_millimetres(adjuster.travel_per_turn)},
          {"engaged_mm", json_millimetres(adjuster.engaged)},
          {"least_engagement_mm", json_millimetres(adjuster.least_engagement)}};
}

Json stay_json(const CheckedRig& checked, const DerivedStay& stay) {
  const Derived& derived = checked.derived();
  const Rig& rig = checked.rig();
  const SourceSet& sources = checked.sources();
  Json json{
      {"stay", rig[stay.stay].name},
      {"route", name_of(stay.route)},
      {"pin_to_pin", sum_json(rig, stay.pin_to_pin, sources)},
      {"body", sum_json(rig, stay.body, sources)},
      {"printed_pin_to_pin", length_json(stay.pin_to_pin.unknown, printed_total(stay.pin_to_pin).length())},
      {"other_routes", Json::array()},
      {"pieces", Json::array()},
      {"adjusters", Json::array()}};
  for (const RouteComparison& other : stay.other_routes)
    json["other_routes"].push_back(
        {{"route", name_of(other.other)},
         {"length_mm", json_millimetres(other.length)},
         {"difference_mm", other.expected_x ? Json() : Json(json_millimetres(other.difference))},
         {"expected_x_mm", json_millimetres(other.expected_x)},
         {"provenance", provenance_json(other.provenance, sources)},
         {"slips", slips_json(rig, other)}});
  for (const Piece& piece : stay.pieces) {
    json["pieces"].push_back(piece_json(stay, piece, rig, sources));
    json["pieces"].back()["state"] = state_json(checked, piece);
  }
  json["measured"] = measured_words(rig, stay);
  json["confirmed"] = confirmed_words(rig, stay);
  for (const TakeUp& adjuster : stay.adjusters)
    json["adjusters"].push_back(adjuster_json(adjuster, rig, sources));
  add_behaviour_json(stay, derived, rig, json);
  json["chain"] = chain_json(rig, stay.chain, sources);
  return json;
}

} // namespace

Json printed_json(bool unknown, bool complete, Tenths total) {
  return JsonObject(7)
      .add("length_mm", unknown || !complete ? Json() : Json(json_millimetres(total)))
      .add("unknown", unknown)
      .add("known_mm", complete ? Json(json_millimetres(total)) : Json())
      .add("plus_x", unknown)
      .add("complete", complete)
      .add("text_mm", format_total(unknown, total))
      .add("text_ft_in", format_total_feet_inches(unknown, total))
      .take();
}

Json printed_piece_json(const Rig& rig, const DerivedStay& stay, const Piece& piece) {
  const PieceSum sum = piece_sum(rig, stay, piece);
  const auto place = [](const PrintedPlace& printed) {
    return length_json(printed.unknown, printed.tenths.length());
  };
  Json marks = Json::array();
  for (const BenchMark& mark : piece.bench.marks) {
    const PrintedMark printed = printed_mark(mark, sum.cut());
    marks.push_back({{"name", mark_name(mark)},
                     {"from_aloft", place(printed.from_upper)},
                     {"from_below", place(printed.from_lower)}});
  }
  Json sections = Json::array();
  for (const SumSection& section : sum.sections) {
    Json rows = Json::array();
    for (const SumRow& row : section.rows)
      rows.push_back({{"name", term_name(rig, *row.term)}, {"printed_mm", json_millimetres(row.amount)}});
    sections.push_back({{"name", name_of(section.kind)},
                        {"rows", std::move(rows)},
                        {"printed_total_mm", json_millimetres(section.total)},
                        {"complete", section.complete}});
  }
  const auto& dry = piece.bench.dry_fit;
  return {{"body", printed_json(sum.unknown, sum.body_complete, sum.body())},
          {"cut", printed_json(sum.unknown, sum.complete(), sum.cut())},
          {"dry_fit", dry ? place({dry->unknown, printed_dry_fit(sum)}) : Json()},
          {"marks", std::move(marks)},
          {"sum", std::move(sections)}};
}

Json end_json(const Rig& rig, const Piece& piece, WhichEnd which) {
  const PieceEnd& end = which == WhichEnd::upper ? piece.upper : piece.lower;
  return JsonObject(5)
      .add("part", end.part_name(rig))
      .add("title", end.part_title(rig))
      .add("splice", end.splice_name(rig))
      .add("buried", buried_json(piece, which))
      .add("note", joined(say_each(rig, end.notes), Join::semicolon))
      .take();
}

Json chain_json(const Rig& rig, const StayChain& chain, const SourceSet& sources) {
  Json json{{"links", Json::array()},
            {"line", place_json(chain.line)},
            {"weakest", place_json(chain.weakest)},
            {"unknown", chain.unknown}};
  for (const ChainLink& link : chain.links)
    json["links"].push_back(link_json(rig, link, sources));
  return json;
}

Json screenings_json(const Rig& rig, const Derived& derived, const SourceSet& sources) {
  Json json = Json::array();
  for (const LoadScreening& screening : derived.load_screenings) {
    Json inputs = Json::array();
    for (const ScreeningNumber& input : screening.inputs)
      inputs.push_back({{"name", say(rig, input.name)},
                        {"si", input.value.si},
                        {"how", say(rig, input.how)},
                        {"provenance", provenance_json(input.provenance, sources)}});
    Json results = Json::array();
    for (const ScreeningNumber& result : screening.results)
      results.push_back(
          {{"name", say(rig, result.name)}, {"si", result.value.si}, {"how", say(rig, result.how)}});
    Json panels = Json::array();
    for (const MastPanel& panel : screening.panels)
      panels.push_back({{"name", say(rig, panel.name)},
                        {"length_mm", json_millimetres(panel.length)},
                        {"compression_newtons", panel.compression.newtons()}});
    json.push_back({{"method", name_of(screening.method)},
                    {"publication", say(rig, publication_of(screening.method))},
                    {"of", screening.of},
                    {"inputs", std::move(inputs)},
                    {"results", std::move(results)},
                    {"not_checked", say_each(rig, screening.not_checked)},
                    {"notes", say_each(rig, screening.notes)},
                    {"spar", screening.spar},
                    {"panels", std::move(panels)}});
  }
  return json;
}

Json derived_json(const CheckedRig& checked) {
  Json json{{"draws", checked.derived().draws},
            {"seed", checked.derived().seed},
            {"inputs", inputs_json(checked.rig(), checked.derived(), checked.sources())},
            {"stays", Json::array()}};
  for (const DerivedStay& stay : checked.derived().stays)
    json["stays"].push_back(stay_json(checked, stay));
  json["load_screenings"] = screenings_json(checked.rig(), checked.derived(), checked.sources());
  return json;
}

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
