#include "backend/table/rig_tables.hpp"

namespace sheerpole {

Table inspections_table(const CheckedRig& checked) {
  const Rig& rig = checked.rig();
  Table table{.title = "Inspection log, in the order of the files",
              .columns = {{"date"}, {"stay"}, {"where"}, {"condition"}, {"by"}, {"note"}},
              .rows = {},
              .notes = {}};
  for (const Inspection& inspection : rig.inspections) {
    std::string where;
    for (const PartId part : inspection.between)
      where += (where.empty() ? "" : ", ") + rig[part].name;
    for (const StayId stay : inspection.stays)
      table.rows.push_back({inspection.date, rig[stay].name, where.empty() ? "whole stay" : where,
                            inspection.condition, inspection.by, inspection.note});
  }
  if (table.rows.empty())
    table.notes.push_back("Nothing has been written down.");
  return table;
}

} // namespace sheerpole
