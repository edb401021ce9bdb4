#include "elaborate/elaboration.hpp"
#include "elaborate/read_fields.hpp"

#include "base/internal_error.hpp"

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
  record.facts = elaboration.particulars(declaration, {},
                                         told_by_of ? std::string(declaration.kind->name) + " of " +
                                                          declaration.syntax->of.text
                                                    : record.name);
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
    default:
      break;
    }
  }
  for (const ResolvedExpect& expect : elaboration.tree.expectations)
    add_expectation(elaboration, expect);
  for (const Override& override : elaboration.tree.overrides)
    add_difference(elaboration, override);
}

} // namespace sheerpole
