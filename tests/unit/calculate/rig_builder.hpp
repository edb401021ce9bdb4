#pragma once

#include "model/rig.hpp"
#include "units/thread.hpp"

#include <initializer_list>
#include <string>
#include <string_view>
#include <vector>

/// Small functions that put a rig together by hand, so that a test shows nothing but the numbers it is
/// about.
namespace sheerpole::build {

inline Length mm(double value) {
  return Length::millimetres(value);
}
inline Length inches(double value) {
  return Length::inches(value);
}

/// Empty place number `n` of the only file: distinct places can be told apart in findings.
inline Span at(std::uint32_t n) {
  return {SourceId{0}, n, n + 1};
}

inline Provenance from(SourceClass source_class, std::uint32_t place = 0) {
  return {source_class, "", "", LengthUnit::none, at(place), {}};
}
inline Provenance assumed(std::string name, std::uint32_t place = 0) {
  return {SourceClass::assumed, "", "", LengthUnit::none, at(place), {std::move(name)}};
}

template <class Value>
Sourced<Value> sourced(Value value, Provenance provenance = from(SourceClass::measured)) {
  return {value, std::move(provenance), std::nullopt};
}

inline Sourced<RopeMeasure> diameters(double amount, Provenance provenance = from(SourceClass::practice)) {
  return {{amount, true}, std::move(provenance), std::nullopt};
}
inline Sourced<RopeMeasure> as_length(Length length, Provenance provenance = from(SourceClass::measured)) {
  return {{length.metres(), false}, std::move(provenance), std::nullopt};
}

inline End end(std::string_view type,
               std::initializer_list<std::pair<const char*, Length>> dimensions = {}) {
  End result{find_word<EndType>(type).value(), {}, std::nullopt};
  for (const auto& [name, length] : dimensions)
    result.dimensions.push_back(
        {find_word<EndDimensionName>(name).value(), sourced(length, from(SourceClass::maker)), ""});
  return result;
}

inline Part fixed(std::string name, Length length) {
  Part part;
  part.kind = PartKind::toggle;
  part.name = std::move(name);
  part.role = Part::Role::fixed;
  part.length = sourced(length, from(SourceClass::maker));
  return part;
}

inline Part fitting(std::string name) {
  Part part;
  part.kind = PartKind::chainplate;
  part.name = std::move(name);
  part.role = Part::Role::boat_fitting;
  return part;
}

inline Part adjuster(std::string_view kind, std::string name, Length shortest, Length longest) {
  Part part;
  part.kind = find_word<PartKind>(kind).value();
  part.name = std::move(name);
  part.role = Part::Role::adjuster;
  part.shortest = sourced(shortest, from(SourceClass::maker));
  part.longest = sourced(longest, from(SourceClass::maker));
  return part;
}

inline LineMaterial material(LineMaterial::Kind kind, std::string name, Length diameter) {
  LineMaterial result;
  result.kind = kind;
  result.name = std::move(name);
  result.diameter = sourced(diameter, from(SourceClass::maker));
  return result;
}
inline LineMaterial rope(std::string name, Length diameter) {
  return material(LineMaterial::Kind::rope, std::move(name), diameter);
}
inline LineMaterial wire(std::string name, Length diameter) {
  return material(LineMaterial::Kind::wire, std::move(name), diameter);
}

inline StackItem line() {
  StackItem item;
  item.kind = StackItem::Kind::line;
  return item;
}
inline StackItem line(Length length) {
  StackItem item = line();
  item.line_length = sourced(length);
  return item;
}

/// A rig that grows part by part. Ids come back in the order of adding.
struct RigBuilder {
  Rig rig;

  PointId point(std::string base, double x_mm, double y_mm, double z_mm,
                Provenance provenance = from(SourceClass::drawn), Side side = Side::centre) {
    Point added;
    added.base = base;
    added.name = side == Side::centre ? base : base + "." + std::string(name_of(side));
    added.side = side;
    added.position = {mm(x_mm), mm(y_mm), mm(z_mm)};
    added.provenance = std::move(provenance);
    rig.points.push_back(std::move(added));
    return PointId{static_cast<std::uint32_t>(rig.points.size() - 1)};
  }
  MaterialId add(LineMaterial material) {
    rig.materials.push_back(std::move(material));
    return MaterialId{static_cast<std::uint32_t>(rig.materials.size() - 1)};
  }
  PartId add(Part part) {
    rig.parts.push_back(std::move(part));
    return PartId{static_cast<std::uint32_t>(rig.parts.size() - 1)};
  }
  SpliceId add(Splice splice) {
    rig.splices.push_back(std::move(splice));
    return SpliceId{static_cast<std::uint32_t>(rig.splices.size() - 1)};
  }
  StayId add(Stay stay) {
    rig.stays.push_back(std::move(stay));
    return StayId{static_cast<std::uint32_t>(rig.stays.size() - 1)};
  }
};

inline StackItem item(PartId part, int count = 1) {
  StackItem result;
  result.kind = StackItem::Kind::part;
  result.part = part;
  result.count = count;
  return result;
}
inline StackItem spliced(PartId part, SpliceId splice) {
  StackItem result = item(part);
  result.splice = splice;
  return result;
}
inline StackItem set(PartId part, Length length, std::string written = "") {
  StackItem result = item(part);
  result.set_length = sourced(length, from(SourceClass::drawn));
  result.set_length->provenance.written = std::move(written);
  return result;
}
/// An adjuster written as a share of its range; the length goes with it, as it comes from elaborating a
/// file.
inline StackItem open(const Rig& rig, PartId part, double share) {
  const Part& adjuster = rig[part];
  StackItem result =
      set(part, adjuster.shortest->value + (adjuster.longest->value - adjuster.shortest->value) * share);
  result.open = sourced(share, from(SourceClass::drawn));
  return result;
}

inline Stay stay(std::string base, MaterialId material, std::vector<StackItem> stack,
                 Side side = Side::centre) {
  Stay result;
  result.base = base;
  result.name = side == Side::centre ? base : base + "." + std::string(name_of(side));
  result.side = side;
  result.material = material;
  result.stack = std::move(stack);
  result.place = at(900);
  return result;
}
/// The same with a stated pin-to-pin length.
inline Stay stay(std::string base, Length pin_to_pin, MaterialId material, std::vector<StackItem> stack,
                 Side side = Side::centre) {
  Stay result = stay(std::move(base), material, std::move(stack), side);
  result.stated_pin_to_pin = sourced(pin_to_pin, from(SourceClass::measured, 901));
  return result;
}

inline std::vector<PathStop> path(std::initializer_list<PointId> points) {
  std::vector<PathStop> stops;
  for (const PointId point : points)
    stops.push_back({point, Passage::free, at(static_cast<std::uint32_t>(910 + stops.size()))});
  stops.front().passage = Passage::end;
  stops.back().passage = Passage::end;
  return stops;
}

} // namespace sheerpole::build
