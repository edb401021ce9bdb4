#include "kinds/example_unit.hpp"

#include "units/format_length.hpp"
#include "units/unit.hpp"

#include <string_view>

namespace sheerpole {

std::string example_unit(const PropertyRow& row) {
  const auto blank = row.example.find(' ');
  if (blank == std::string_view::npos)
    return {};
  std::string_view unit = row.example.substr(blank + 1);
  unit = unit.substr(0, unit.find_first_of(", "));
  return find_unit(unit) != nullptr ? std::string(unit) : std::string();
}

std::string shown_like_example(double si, const PropertyRow& row) {
  const std::string name = example_unit(row);
  const Unit* unit = find_unit(name);
  if (unit == nullptr)
    return format_number(si);
  // Twelve digits hide the last bits of a conversion: 0.3 m is 300 mm, not 300.00000000000006.
  double value = (si - unit->offset) / unit->factor;
  const std::string fixed = format_fixed(value, 6);
  std::string text = fixed.substr(0, fixed.find_last_not_of('0') + 1);
  if (!text.empty() && text.back() == '.')
    text.pop_back();
  return text + " " + name;
}

} // namespace sheerpole
