#include "elaborate/elaboration.hpp"
#include "elaborate/read_fields.hpp"

#include "base/internal_error.hpp"
#include "model/fact_name.hpp"

#include <algorithm>
#include <utility>

namespace sheerpole {

namespace {

void add_record(Elaboration& elaboration, const ResolvedDeclaration& declaration) {
  elaboration.has_required(declaration);
  Record record;
  record.kind = enumerated<RecordKind>(declaration.kind->name);
  record.name = elaboration.name_of(declaration);
  record.title = title_of(declaration);
  record.of = declaration.of == poison_symbol ? "" : elaboration.tree[declaration.of].name;
  if (declaration.kind->of == Category::stay)
    record.stays = elaboration.stays_named(declaration.syntax->of, declaration.syntax->of_side,
                                           declaration.syntax->of.span);
  // Of several records without a name, such as test splices, each is told by what it is of.
  const bool told_by_of = declaration.syntax->name.missing() && !declaration.syntax->of.missing();
  std::string owner =
      told_by_of ? std::string(declaration.kind->name) + " of " + declaration.syntax->of.text : record.name;
  // A spar has several, each at its place.
  if (const ResolvedProperty* at = declaration.find("from-heel");
      at != nullptr && record.kind == RecordKind::spar_station)
    owner += " at " + elaboration.read.written(at->syntax->value);
  record.facts = elaboration.particulars(declaration, {}, owner);
  record.place = elaboration.place_of(declaration);
  elaboration.rig.records.push_back(std::move(record));
}

constexpr std::string_view second_measure = "second-measure"; // a word among thresholds

void add_second_measure(Elaboration& elaboration, const ResolvedProperty& property) {
  const Value& value = property.syntax->value;
  const auto word = elaboration.read.word(value, *property.row, "limits");
  if (!word)
    return;
  StatedSecondMeasure stated;
  for (const SecondMeasure one : {SecondMeasure::warn, SecondMeasure::draft, SecondMeasure::off})
    if (name_of(one) == *word)
      stated.value = one;
  stated.provenance.written = *word;
  stated.provenance.place = value.expression().span;
  elaboration.read.apply_source(value, "limits", stated.provenance);
  elaboration.rig.limits.state(std::move(stated));
}

void add_limits(Elaboration& elaboration, const ResolvedDeclaration& declaration) {
  for (const ResolvedProperty& property : declaration.properties) {
    if (property.row->name == second_measure) {
      add_second_measure(elaboration, property);
      continue;
    }
    const LimitRow* row = find_limit(property.row->name);
    if (row == nullptr)
      internal_error("the kind `limits` has a property that is no threshold");
    const Value& value = property.syntax->value;
    StatedLimit stated{.limit = row->limit, .value = {}, .provenance = {}, .place = {}};
    if (elaboration.read.is_off(value, *property.row)) {
      stated.provenance.written = "off";
      stated.provenance.place = value.expression().span;
      elaboration.read.apply_source(value, "limits", stated.provenance);
    } else if (const auto read = elaboration.read.quantity(value, *property.row, "limits")) {
      stated.value = read->value.si;
      stated.provenance = read->provenance;
    } else {
      continue;
    }
    stated.place = value.expression().span;
    elaboration.rig.limits.state(std::move(stated));
  }
}

void add_waiver(Elaboration& elaboration, const ResolvedDeclaration& declaration) {
  if (!elaboration.has_required(declaration) || declaration.syntax->name.missing())
    return;
  Waiver waiver;
  waiver.slug = declaration.syntax->name.text;
  const Name& side = declaration.syntax->of_side;
  if (declaration.of != poison_symbol) {
    const std::string& stay = elaboration.tree[declaration.of].name;
    if (elaboration.stays_named(declaration.syntax->of, side, declaration.syntax->of.span).empty())
      return;
    waiver.stay = side.missing() ? stay : stay + "." + side.text;
  }
  read_fields(elaboration, declaration, elaboration.name_of(declaration), waiver);
  waiver.accepts = declaration.kind->name == "accept";
  waiver.place = elaboration.place_of(declaration);
  elaboration.rig.waivers.push_back(std::move(waiver));
}

void add_inspection(Elaboration& elaboration, const ResolvedDeclaration& declaration) {
  if (!elaboration.has_required(declaration) || declaration.of == poison_symbol)
    return;
  Inspection inspection;
  inspection.stays = elaboration.stays_named(declaration.syntax->of, declaration.syntax->of_side,
                                             declaration.syntax->of.span);
  if (const ResolvedProperty* between = declaration.find("between")) {
    for (const Stop& stop : between->syntax->value.stops) {
      const SymbolId id = elaboration.tree.symbol_at(stop.expression.span);
      if (const auto part = elaboration.parts.find(id.value); part != elaboration.parts.end())
        inspection.between.push_back(part->second);
    }
  }
  read_fields(elaboration, declaration, elaboration.name_of(declaration), inspection);
  inspection.place = declaration.syntax->kind.span;
  for (const StayId id : inspection.stays) {
    const Stay& stay = elaboration.rig[id];
    for (const PartId part : inspection.between)
      if (std::none_of(stay.stack.begin(), stay.stack.end(), [&](const StackItem& item) {
            return item.kind == StackItem::Kind::part && item.part == part;
          }))
        elaboration.sink.report(
            diagnose("change-not-in-stack", {{"part", elaboration.rig[part].name}, {"stay", stay.base}})
                .at(declaration.find("between")->syntax->value.span)
                .and_at(stay.stack_place, "the stack")
                .about(stay.base));
  }
  elaboration.rig.inspections.push_back(std::move(inspection));
}

/// The place of a layer in the order in which they come about; the last one behind all where none is named.
std::ptrdiff_t rank_of(std::string_view layer) {
  const auto names = find_kind("layer")->name_choices;
  return std::find(names.begin(), names.end(), layer) - names.begin();
}

/// Whether what became of a piece comes after the layer as of which the boat is shown.
bool is_later(PieceStage stage, std::string_view as_of) {
  if (as_of.empty())
    return false;
  return stage == PieceStage::settled ||
         rank_of(stage == PieceStage::fitted ? "fitted" : "made") > rank_of(as_of);
}

/// Papers speak of the day of the report: what comes later cannot stand on them.
void refuse_later(Elaboration& elaboration, const std::string& what, const std::string& date, Span place) {
  const Boat& boat = elaboration.rig.boat;
  if (date.empty() || boat.report_date.empty() || date <= boat.report_date) // ISO 8601 days are in order
    return;
  auto finding =
      diagnose("after-report", {{"what", what}, {"date", date}, {"report", boat.report_date}}).at(place);
  for (const Particular& fact : boat.particulars)
    if (fact.name == "report-date" && fact.value.provenance.place)
      finding = std::move(finding)
                    .and_at(*fact.value.provenance.place, "the day of the report")
                    .edit(*fact.value.provenance.place, date,
                          "if the report is of that day, write `" + date + "`");
  elaboration.sink.report(std::move(finding));
}

Span place_of_date(const ResolvedDeclaration& declaration, Span otherwise) {
  const ResolvedProperty* date = declaration.find("date");
  return date == nullptr ? otherwise : date->syntax->value.expression().span;
}

void add_piece(Elaboration& elaboration, const ResolvedDeclaration& declaration) {
  if (!elaboration.has_required(declaration) || declaration.of == poison_symbol)
    return;
  PieceRecord record;
  const std::vector<StayId> stays = elaboration.stays_named(
      declaration.syntax->of, declaration.syntax->of_side, declaration.syntax->of.span);
  const std::string& stay = declaration.syntax->of.text;
  read_fields(elaboration, declaration, "piece of " + stay, record);
  record.place = declaration.syntax->kind.span;
  if (is_later(record.stage, elaboration.tree.as_of))
    return;
  for (const StayId id : stays) {
    const auto& stack = elaboration.rig[id].stack;
    const int lines = static_cast<int>(std::count_if(stack.begin(), stack.end(), [](const StackItem& item) {
      return item.kind == StackItem::Kind::line;
    }));
    if (record.number ? *record.number <= lines : lines == 1)
      continue;
    const ResolvedProperty* number = declaration.find("number");
    elaboration.sink.report(
        diagnose("piece-number", {{"stay", stay}, {"lines", std::to_string(lines)}})
            .at(number == nullptr ? record.place : number->syntax->value.expression().span)
            .and_at(elaboration.rig[id].stack_place, "the stack")
            .about(stay));
    return;
  }
  for (const std::string_view idle : {"body", "pull"}) {
    const ResolvedProperty* property = declaration.find(idle);
    const bool counts = idle == "body" ? record.stage != PieceStage::cut : record.body.has_value();
    if (property != nullptr && !counts)
      elaboration.sink.report(
          diagnose("piece-property-idle", {{"property", std::string(idle)},
                                           {"stay", stay},
                                           {"stage", std::string(name_of(record.stage))}})
              .at(property->syntax->name.span)
              .about(stay));
  }
  refuse_later(elaboration, "piece of " + stay + " as " + std::string(name_of(record.stage)), record.date,
               place_of_date(declaration, record.place));
  for (const StayId id : stays) {
    record.stay = id;
    elaboration.rig.piece_records.push_back(record);
  }
}

/// The last layer that counts, and when it was so.
void add_edition(Elaboration& elaboration) {
  Edition& edition = elaboration.rig.edition;
  for (const Record& layer : elaboration.rig.records) {
    if (layer.kind != RecordKind::layer)
      continue;
    const auto date = std::find_if(layer.facts.begin(), layer.facts.end(), [](const Particular& fact) {
      return fact.name == fact_names.date.text;
    });
    const bool dated = date != layer.facts.end();
    if (dated)
      refuse_later(elaboration, "layer " + layer.name, date->text,
                   date->value.provenance.place.value_or(layer.place));
    if (edition.layer.empty() || rank_of(layer.name) >= rank_of(edition.layer))
      edition = {layer.name, dated ? date->text : ""};
  }
  if (elaboration.tree.as_of.empty())
    return;
  if (edition.layer != elaboration.tree.as_of)
    edition = {elaboration.tree.as_of, {}};
  edition.held = true;
}

void add_expectation(Elaboration& elaboration, const ResolvedExpect& resolved) {
  static constexpr PropertyRow row{.name = "value",
                                   .type = ValueType::quantity,
                                   .dimension = dimension::length,
                                   .least = -200.0,
                                   .most = 200.0,
                                   .example = "11_382 mm ± 1 mm"};
  const Expect& expect = *resolved.syntax;
  const auto value = elaboration.read.length(expect.value, row, "expect " + expect.stay.text);
  if (!value || resolved.stay == poison_symbol)
    return;
  if (!value->tolerance) {
    const Span after{expect.value.span.source, expect.value.expression().span.end,
                     expect.value.expression().span.end};
    elaboration.sink.report(diagnose("expect-without-tolerance", {{"stay", expect.stay.text}})
                                .at(expect.value.expression().span)
                                .edit(after, " ± 1 mm",
                                      "if a millimetre is meant, write `" +
                                          elaboration.read.written(expect.value) + " ± 1 mm`"));
    return;
  }
  Expectation expectation;
  expectation.stays = elaboration.stays_named(expect.stay, expect.side, expect.stay.span);
  expectation.quantity = expect.quantity.text;
  expectation.value = *value;
  expectation.place = expect.span;
  elaboration.rig.expectations.push_back(std::move(expectation));
}

std::string shown(Elaboration& elaboration, const Value* value) {
  if (value == nullptr)
    return {};
  std::string result = elaboration.read.written(*value);
  if (value->mirrored)
    result += " mirrored";
  if (value->source)
    result += " " + value->source->word;
  if (value->source && value->source->note)
    result += " \"" + value->source->note->text + "\"";
  return result;
}

/// What stands between the braces of a block, on one line.
std::string shown(const SourceSet& sources, Span block) {
  if (block.begin == block.end)
    return {};
  std::string result;
  bool gap = false;
  for (const char c : sources[block.source].text(block)) {
    const bool blank = c == ' ' || c == '\n' || c == '\r' || c == '\t';
    if (c == '{' || c == '}')
      continue;
    if (c == '\n' && !result.empty() && result.back() != ';')
      gap = true;
    else if (!blank) {
      result += gap ? "; " : "";
      gap = false;
      result += c;
    } else if (!gap && !result.empty() && result.back() != ' ') {
      result += c;
    }
  }
  while (!result.empty() && result.back() == ' ')
    result.pop_back();
  return result;
}

void add_difference(Elaboration& elaboration, const Override& override) {
  const Origin& origin = elaboration.tree.origins[override.origin];
  Difference difference;
  switch (origin.kind) {
  case Origin::Kind::layer:
    difference.origin = Difference::Origin::layer;
    difference.origin_name = origin.name;
    break;
  case Origin::Kind::sister:
    difference.origin = Difference::Origin::sister_ship;
    break;
  case Origin::Kind::command_line:
    difference.origin = Difference::Origin::command_line;
    break;
  }
  difference.subject = override.subject;
  difference.property = override.property;
  difference.was = shown(elaboration, override.was);
  difference.is = shown(elaboration, override.is);
  if (override.is == nullptr) {
    difference.was = shown(elaboration.sources, override.was_block);
    difference.is = shown(elaboration.sources, override.is_block);
  }
  const auto& unused = elaboration.tree.unused_lets;
  difference.idle = override.property == "value" &&
                    std::find(unused.begin(), unused.end(), override.subject) != unused.end();
  difference.place = override.is_span;
  elaboration.rig.differences.push_back(std::move(difference));
}

} // namespace

void elaborate_records(Elaboration& elaboration) {
  for (const ResolvedDeclaration& declaration : elaboration.tree.declarations) {
    switch (declaration.kind->category) {
    case Category::record:
    case Category::tape:
    case Category::cord:
    case Category::layer: // what it states of itself; what it states of others is put in their place
      add_record(elaboration, declaration);
      break;
    case Category::limits:
      add_limits(elaboration, declaration);
      break;
    case Category::rule:
      elaborate_rule(elaboration, declaration);
      break;
    case Category::waiver:
      add_waiver(elaboration, declaration);
      break;
    case Category::inspection:
      add_inspection(elaboration, declaration);
      break;
    case Category::piece:
      add_piece(elaboration, declaration);
      break;
    default:
      break;
    }
  }
  std::stable_sort(
      elaboration.rig.piece_records.begin(), elaboration.rig.piece_records.end(),
      [](const PieceRecord& a, const PieceRecord& b) { return a.stay.index() < b.stay.index(); });
  add_edition(elaboration);
  elaborate_spar_stations(elaboration);
  for (const ResolvedExpect& expect : elaboration.tree.expectations)
    add_expectation(elaboration, expect);
  for (const Override& override : elaboration.tree.overrides)
    add_difference(elaboration, override);
}

} // namespace sheerpole
