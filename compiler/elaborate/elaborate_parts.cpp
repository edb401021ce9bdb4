#include "elaborate/elaboration.hpp"
#include "elaborate/read_fields.hpp"

#include "kinds/kind_row.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

std::optional<EndDimension> read_dimension(Elaboration& elaboration, const Setting& setting,
                                           const PropertyRow& row, const std::string& owner) {
  EndDimension dimension;
  dimension.name = enumerated<EndDimensionName>(row.name);
  switch (row.type) {
  case ValueType::quantity: {
    const auto length = elaboration.read.length(setting.value, row, owner);
    if (!length)
      return std::nullopt;
    dimension.length = *length;
    dimension.text = length->provenance.written;
    return dimension;
  }
  case ValueType::size: {
    const auto size = elaboration.read.size(setting.value, row, owner);
    if (!size)
      return std::nullopt;
    dimension.text = size->name;
    dimension.length.value = size->diameter;
    dimension.length.provenance.written = size->name;
    dimension.length.provenance.place = setting.value.span;
    elaboration.read.apply_source(setting.value, property_of(row, owner), dimension.length.provenance);
    return dimension;
  }
  case ValueType::thread: {
    const auto thread = elaboration.read.thread(setting.value, row, owner);
    if (!thread)
      return std::nullopt;
    dimension.text = thread->designation;
    dimension.length.value = thread->diameter;
    return dimension;
  }
  case ValueType::count: {
    const auto count = elaboration.read.count(setting.value, row, owner);
    if (!count)
      return std::nullopt;
    dimension.text = std::to_string(count->value);
    return dimension;
  }
  case ValueType::choice: {
    const auto word = elaboration.read.word(setting.value, row, owner);
    if (!word)
      return std::nullopt;
    dimension.text = *word;
    return dimension;
  }
  default: {
    const auto text = elaboration.read.text(setting.value, row, owner);
    if (!text)
      return std::nullopt;
    dimension.text = *text;
    return dimension;
  }
  }
}

const Setting* first_of(const std::vector<Setting>& settings, const std::string& name) {
  for (const Setting& setting : settings)
    if (setting.name.text == name)
      return &setting;
  return nullptr;
}

End read_end(Elaboration& elaboration, const ResolvedDeclaration& declaration, std::string_view name) {
  End end;
  const ResolvedProperty* property = declaration.find(name);
  if (property == nullptr)
    return end;
  const Expression& expression = property->syntax->value.expression();
  const EndRow* row = find_end(expression.text);
  if (row == nullptr)
    return end; // reported
  end.type = enumerated<EndType>(row->name);
  end.place = expression.span;
  const std::string owner =
      std::string(name) + " " + std::string(row->name) + " of " + elaboration.name_of(declaration);
  for (const Setting& setting : expression.settings) {
    const PropertyRow* dimension_row = find_property(row->dimensions, setting.name.text);
    if (dimension_row == nullptr)
      continue; // reported
    if (const Setting* earlier = first_of(expression.settings, setting.name.text); earlier != &setting) {
      elaboration.sink.report(diagnose("property-twice", {{"name", setting.name.text}})
                                  .at(setting.name.span, "stated again here")
                                  .and_at(earlier->name.span, "stated here first"));
      continue;
    }
    if (auto dimension = read_dimension(elaboration, setting, *dimension_row, owner))
      end.dimensions.push_back(std::move(*dimension));
  }
  return end;
}

std::optional<Screw> read_screw(Elaboration& elaboration, const ResolvedDeclaration& declaration) {
  const ResolvedProperty* property = declaration.find("thread");
  if (property == nullptr)
    return std::nullopt;
  const auto thread =
      elaboration.read.thread(property->syntax->value, *property->row, elaboration.name_of(declaration));
  if (!thread)
    return std::nullopt;
  Screw screw;
  screw.thread = *thread;
  screw.provenance.source_class = SourceClass::standard;
  screw.provenance.note = thread->standard;
  screw.provenance.written = thread->designation;
  screw.provenance.place = property->syntax->value.expression().span;
  elaboration.read.apply_source(property->syntax->value,
                                property_of(*property->row, elaboration.name_of(declaration)),
                                screw.provenance);
  const ResolvedProperty* kind = declaration.find("screw");
  if (kind == nullptr) {
    if (declaration.incomplete)
      return std::nullopt;
    // One or two pitches a turn decides how far the stay moves: never taken for granted.
    elaboration.sink.report(diagnose("screw-not-stated", {{"part", elaboration.name_of(declaration)}})
                                .at(property->syntax->value.expression().span)
                                .about(elaboration.name_of(declaration)));
    return std::nullopt;
  }
  screw.pair = kind->syntax->value.expression().text == "pair";
  return screw;
}

/// A shape is that of a rope-seat.
void refuse_idle_shape(Elaboration& elaboration, const ResolvedDeclaration& declaration, const Part& part) {
  const ResolvedProperty* shape = declaration.find("shape");
  if (shape == nullptr || declaration.incomplete || part.upper.type == EndType::rope_seat ||
      part.lower.type == EndType::rope_seat)
    return;
  elaboration.sink.report(
      diagnose("part-property-idle",
               {{"what", part.name}, {"property", "shape"}, {"reason", "none of its ends is a rope-seat"}})
          .at(shape->syntax->span)
          .about(part.name));
}

void add_part(Elaboration& elaboration, const ResolvedDeclaration& declaration) {
  bool good = elaboration.has_required(declaration);
  Part part;
  part.kind = enumerated<PartKind>(declaration.kind->name);
  part.name = elaboration.name_of(declaration);
  part.title = declaration.syntax->title ? declaration.syntax->title->text : "";
  part.place = elaboration.place_of(declaration);
  part.role = declaration.kind->boat_fitting ? Part::Role::boat_fitting
              : declaration.kind->adjuster   ? Part::Role::adjuster
              : declaration.kind->worn       ? Part::Role::worn
                                             : Part::Role::fixed;
  read_fields(elaboration, declaration, part.name, part);
  part.upper = read_end(elaboration, declaration, "upper");
  part.lower = read_end(elaboration, declaration, "lower");
  refuse_idle_shape(elaboration, declaration, part);
  part.screw = read_screw(elaboration, declaration);
  part.particulars = particulars_beside<Part, Screw>(elaboration, declaration, part.name);
  if (part.role == Part::Role::fixed)
    good = good && part.length.has_value();
  if (part.role == Part::Role::adjuster)
    good = good && part.shortest && part.longest;
  if (good && part.role == Part::Role::adjuster && !(part.shortest->value < part.longest->value)) {
    elaboration.sink.report(diagnose("range-reversed", {{"part", part.name},
                                                        {"shortest", part.shortest->provenance.written},
                                                        {"longest", part.longest->provenance.written}})
                                .at(*part.longest->provenance.place)
                                .and_at(*part.shortest->provenance.place, "the shortest"));
    good = false;
  }
  if (!good)
    return;
  elaboration.parts[declaration.symbol.value] =
      PartId{static_cast<std::uint32_t>(elaboration.rig.parts.size())};
  elaboration.rig.parts.push_back(std::move(part));
}

} // namespace

void elaborate_parts(Elaboration& elaboration) {
  const auto is_part = [](const ResolvedDeclaration& declaration) {
    return declaration.kind->category == Category::part && declaration.symbol != poison_symbol;
  };
  const auto& declarations = elaboration.tree.declarations;
  elaboration.rig.parts.reserve(
      static_cast<std::size_t>(std::count_if(declarations.begin(), declarations.end(), is_part)));
  for (const ResolvedDeclaration& declaration : declarations)
    if (is_part(declaration))
      add_part(elaboration, declaration);
}

} // namespace sheerpole
