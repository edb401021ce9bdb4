#include "elaborate/elaboration.hpp"

#include "elaborate/read_fields.hpp"
#include "model/fact_name.hpp"

#include <algorithm>
#include <string_view>

namespace sheerpole {

void read_into(Elaboration& elaboration, const StatedProperty& stated, std::string& member) {
  switch (stated.row().type) {
  case ValueType::date:
    member = elaboration.read.date(stated.value(), stated.row(), stated.owner).value_or("");
    break;
  case ValueType::choice:
    member = elaboration.read.word(stated.value(), stated.row(), stated.owner).value_or("");
    break;
  case ValueType::reference:
    member = elaboration.tree[elaboration.tree.symbol_at(stated.value().expression().span)].name;
    break;
  default:
    member = elaboration.read.text(stated.value(), stated.row(), stated.owner).value_or("");
    break;
  }
}

std::string title_of(const ResolvedDeclaration& declaration) {
  return declaration.syntax->title ? declaration.syntax->title->text : "";
}

std::string Elaboration::name_of(const ResolvedDeclaration& declaration) const {
  return declaration.syntax->name.missing() ? std::string(declaration.kind->name)
                                            : declaration.syntax->name.text;
}

Span Elaboration::place_of(const ResolvedDeclaration& declaration) const {
  return declaration.syntax->name.missing() ? declaration.syntax->kind.span : declaration.syntax->name.span;
}

bool Elaboration::has_required(const ResolvedDeclaration& declaration) {
  bool complete = !declaration.incomplete;
  for (const PropertyRow& row : declaration.kind->properties) {
    if (row.need != Need::required || declaration.find(row.name) != nullptr)
      continue;
    complete = false;
    if (declaration.incomplete)
      continue; // may be what could not be read
    sink.report(diagnose("property-missing", {{"kind", std::string(declaration.kind->name)},
                                              {"owner", name_of(declaration)},
                                              {"property", std::string(row.name)},
                                              {"help", std::string(row.help)},
                                              {"example", std::string(row.example)}})
                    .at(place_of(declaration)));
  }
  return complete;
}

std::vector<Particular> Elaboration::particulars(const ResolvedDeclaration& declaration,
                                                 std::span<const std::string_view> read_elsewhere,
                                                 const std::string& owner) {
  std::vector<Particular> result;
  for (const ResolvedProperty& property : declaration.properties) {
    if (property.row == nullptr ||
        std::find(read_elsewhere.begin(), read_elsewhere.end(), property.row->name) != read_elsewhere.end())
      continue;
    if (auto one = read.particular(property.syntax->value, *property.row, owner))
      result.push_back(std::move(*one));
  }
  return result;
}

std::vector<StayId> Elaboration::stays_named(const Name& name, const Name& side, Span whole) {
  std::vector<StayId> result;
  const auto found = stays.find(tree.symbol_at(whole).value);
  if (found == stays.end())
    return result;
  for (const StayId id : found->second)
    if (side.missing() || sheerpole::name_of(rig[id].side) == side.text)
      result.push_back(id);
  if (result.empty())
    sink.report(diagnose("reading-of-no-side", {{"stay", name.text}, {"side", side.text}})
                    .at(side.span)
                    .and_at(rig[found->second.front()].place, "the stay")
                    .about(name.text));
  return result;
}

std::optional<Sourced<Length>> Elaboration::length(const ResolvedDeclaration& declaration,
                                                   std::string_view name) {
  const ResolvedProperty* property = declaration.find(name);
  if (property == nullptr)
    return std::nullopt;
  return read.length(property->syntax->value, *property->row, name_of(declaration));
}

std::string Elaboration::text(const ResolvedDeclaration& declaration, std::string_view name) {
  const ResolvedProperty* property = declaration.find(name);
  if (property == nullptr)
    return {};
  return read.text(property->syntax->value, *property->row, name_of(declaration)).value_or("");
}

std::vector<Side> sides_of(Elaboration& elaboration, const ResolvedDeclaration& declaration,
                           std::vector<Side> fallback) {
  const ResolvedProperty* property = declaration.find("sides");
  if (property == nullptr)
    return fallback;
  const std::vector<std::string> words = elaboration.read.words(property->syntax->value);
  for (const std::string& word : words)
    if (word != "port" && word != "starboard")
      return {Side::port, Side::starboard}; // reported; nothing else shall seem to be wrong because of it
  std::vector<Side> result;
  for (const Side side : {Side::port, Side::starboard})
    if (std::find(words.begin(), words.end(), name_of(side)) != words.end())
      result.push_back(side);
  return result;
}

std::optional<PointId> Elaboration::point_on(const Expression& expression, Side side,
                                             const std::string& owner, bool shared) {
  const SymbolId id = tree.symbol_at(expression.span);
  if (tree[id].poison())
    return std::nullopt;
  const auto found = points.find(id.value);
  if (found == points.end() || found->second.bad)
    return std::nullopt;
  const PointFamily& family = found->second;
  const std::string& name = tree[id].name;
  if (!expression.side.missing()) {
    const auto& twin = expression.side.text == "port" ? family.port : family.starboard;
    if (!twin)
      sink.report(diagnose("point-not-mirrored", {{"point", name}, {"side", expression.side.text}})
                      .at(expression.span)
                      .and_at(tree[id].span, "declared here, for one place only"));
    return twin;
  }
  if (family.only) {
    const Side point_side = rig[*family.only].side;
    if (!shared && side != Side::centre && point_side != Side::centre && point_side != side) {
      sink.report(
          diagnose("point-on-other-side", {{"point", name},
                                           {"point_side", std::string(sheerpole::name_of(point_side))},
                                           {"owner", owner},
                                           {"side", std::string(sheerpole::name_of(side))}})
              .at(expression.span)
              .and_at(tree[id].span, "declared here, without `mirrored`"));
      return std::nullopt;
    }
    return family.only;
  }
  if (side == Side::centre) {
    sink.report(diagnose("side-needed", {{"point", name}, {"owner", owner}})
                    .at(expression.span)
                    .and_at(tree[id].span, "declared here, for both sides"));
    return std::nullopt;
  }
  const auto& twin = side == Side::port ? family.port : family.starboard;
  if (!twin)
    sink.report(
        diagnose("point-not-mirrored", {{"point", name}, {"side", std::string(sheerpole::name_of(side))}})
            .at(expression.span)
            .and_at(tree[id].span, "declared here, for one side only"));
  return twin;
}

bool refuse_unexplained_cut(Elaboration& elaboration, const ResolvedDeclaration& declaration) {
  constexpr std::string_view cut_from = fact_names.cut_from;
  constexpr std::string_view reason = fact_names.cut_from_reason;
  const ResolvedProperty* stated = declaration.find(cut_from);
  std::string_view lacking = reason;
  if (const ResolvedProperty* why = declaration.find(reason); stated == nullptr) {
    stated = why;
    lacking = cut_from;
  } else if (why != nullptr) {
    return false;
  }
  if (stated == nullptr)
    return false;
  const std::string name = declaration.kind->category == Category::boat ? std::string("the boat")
                                                                        : elaboration.name_of(declaration);
  elaboration.sink.report(diagnose("cut-from-unexplained", {{"what", name},
                                                            {"stated", std::string(stated->row->name)},
                                                            {"lacking", std::string(lacking)}})
                              .at(stated->syntax->span)
                              .about(name));
  return true;
}

} // namespace sheerpole
