#include "kinds/rows.hpp"

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

} // namespace sheerpole
