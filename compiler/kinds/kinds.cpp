#include "kinds/rows.hpp"
#include "limits/limit.hpp"

#include <vector>

namespace sheerpole {

std::span<const KindRow> all_kinds() {
  static const std::vector<KindRow> all = [] {
    std::vector<KindRow> result;
    for (const auto table : {boat_kinds(), line_kinds(), part_kinds(), stay_kinds(), number_kinds(),
                             limit_kinds(), record_kinds()})
      result.insert(result.end(), table.begin(), table.end());
    return result;
  }();
  return all;
}

const KindRow* find_kind(std::string_view name) {
  for (const KindRow& kind : all_kinds())
    if (kind.name == name)
      return &kind;
  return nullptr;
}

const PropertyRow* find_property(std::span<const PropertyRow> rows, std::string_view name) {
  for (const PropertyRow& row : rows)
    if (row.name == name)
      return &row;
  return nullptr;
}

std::string_view describe(Category category) {
  switch (category) {
  case Category::boat:
    return "a boat";
  case Category::spar:
    return "a spar";
  case Category::eye_stack:
    return "a stack of eyes";
  case Category::changes:
    return "changes to a stack";
  case Category::state:
    return "a state";
  case Category::position:
    return "a position";
  case Category::layer:
    return "a layer";
  case Category::tape:
    return "a tape";
  case Category::cord:
    return "a cord";
  case Category::record:
    return "a record";
  case Category::limits:
    return "limits";
  case Category::rule:
    return "a rule";
  case Category::waiver:
    return "a waiver";
  case Category::inspection:
    return "an inspection";
  case Category::piece:
    return "a record of a piece";
  case Category::points:
    return "a block of points";
  case Category::spreader:
    return "a spreader";
  case Category::material:
    return "a rope, wire, rod or chain";
  case Category::splice:
    return "a splice";
  case Category::part:
    return "a part";
  case Category::stay:
    return "a stay";
  case Category::stack:
    return "a stack";
  case Category::reading:
    return "a reading";
  case Category::point:
    return "a point";
  case Category::none:
    break;
  }
  return "a name";
}

namespace {

/// A threshold: a quantity or a number of things, or the word `off`.
PropertyRow property_of(const LimitRow& row) {
  return {.name = row.name,
          .type = row.is_count ? ValueType::number : ValueType::quantity,
          .dimension = row.is_count ? Dimension{} : row.dimension,
          .least = 0.0,
          .or_off = true,
          .example = row.example,
          .help = row.meaning};
}

constexpr std::string_view second_measure_words[] = {"warn", "draft", "off"};
constexpr PropertyRow second_measure_row = rows::choice_row(
    "second-measure", Need::optional, second_measure_words, "warn",
    "what comes of a piece that was measured once: a warning, a DRAFT, or neither; not stated: "
    "warn");

/// Made once from the table of thresholds.
std::span<const PropertyRow> limit_properties() {
  static const auto properties = [] {
    std::array<PropertyRow, limit_count + 1> all;
    for (const LimitRow& row : all_limits())
      all[static_cast<std::size_t>(row.limit)] = property_of(row);
    all.back() = second_measure_row;
    return all;
  }();
  return properties;
}

} // namespace

std::span<const KindRow> limit_kinds() {
  static const KindRow kinds[] = {
      {.name = "limits",
       .category = Category::limits,
       .group = "Records",
       .naming = Naming::none,
       .properties = limit_properties(),
       .help = "the thresholds that the checks use in place of their own, each with its source, or `off`"},
  };
  return kinds;
}

} // namespace sheerpole
