#include "kinds/rows.hpp"
#include "limits/limit.hpp"

namespace sheerpole {

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
