#include "backend/table/rig_tables.hpp"
#include "units/format_length.hpp"

namespace sheerpole {

namespace {

std::string ratio(const std::optional<double>& value) {
  return value ? format_fixed(*value, 2) : "";
}

std::string kilograms(const std::optional<double>& value) {
  return value ? format_fixed(*value, 2) : "";
}

} // namespace

Table replaced_table(const CheckedRig& checked) {
  Table table{.title = "The line of each stay against the one before",
              .columns = {{"stay"},
                          {"line"},
                          {"before"},
                          {"stiffness", true},
                          {"strength", true},
                          {"mass", true},
                          {"kg", true},
                          {"kg before", true},
                          {"kg m less", true},
                          {"not checked"}},
              .rows = {},
              .notes = {"Ratios: the new over the old. kg m less: moment that is gone, about the lowest "
                        "point of the path."}};
  for (const DerivedStay& stay : checked.derived().stays) {
    if (!stay.replacement)
      continue;
    const Replacement& found = *stay.replacement;
    const Rig& rig = checked.rig();
    std::string missing;
    for (const std::string& what : found.not_checked)
      missing += (missing.empty() ? "" : "; ") + what;
    const bool moment = found.new_kilograms && found.old_kilograms && found.centre_height;
    table.rows.push_back(
        {rig[stay.stay].name, rig[rig[stay.stay].material].name, rig[found.old_line].name,
         ratio(found.stiffness), ratio(found.strength), ratio(found.mass), kilograms(found.new_kilograms),
         kilograms(found.old_kilograms),
         moment ? format_fixed(
                      (*found.old_kilograms - *found.new_kilograms) * found.centre_height->metres(), 1)
                : "",
         missing});
  }
  return table;
}

} // namespace sheerpole
