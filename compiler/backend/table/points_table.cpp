#include "backend/source_words.hpp"
#include "backend/table/rig_tables.hpp"
#include "backend/tenths.hpp"

namespace sheerpole {

Table points_table(const CheckedRig& checked) {
  Table table{.title = "Points, boat axes from the waterline under the mast",
              .columns = {{"point"},
                          {"x forward mm", true},
                          {"y to starboard mm", true},
                          {"z up mm", true},
                          {"source"}},
              .rows = {},
              .notes = {}};
  for (const Point& point : checked.rig().points)
    table.rows.push_back({point.name, format_tenths(Tenths::of(point.position.x)),
                          format_tenths(Tenths::of(point.position.y)),
                          format_tenths(Tenths::of(point.position.z)), source_words(point.provenance)});
  return table;
}

} // namespace sheerpole
