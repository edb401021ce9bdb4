#include "backend/part_words.hpp"
#include "backend/table/rig_tables.hpp"

namespace sheerpole {

Table parts_table(const CheckedRig& checked) {
  Table table{.title = "Parts",
              .columns = {{"kind"},
                          {"part"},
                          {"length or range mm", true},
                          {"upper end"},
                          {"lower end"},
                          {"source of the length"}},
              .rows = {},
              .notes = {}};
  for (const Part& part : checked.rig().parts)
    table.rows.push_back({part.kind, part.name, length_or_range(part), end_words(part.upper),
                          end_words(part.lower), length_source(part)});
  return table;
}

} // namespace sheerpole
