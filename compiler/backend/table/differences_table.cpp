#include "backend/table/rig_tables.hpp"

#include <fmt/format.h>

namespace sheerpole {

Table differences_table(const CheckedRig& checked) {
  Table table{.title = "Values stated over others, in the order in which they take effect",
              .columns = {{"by"}, {"of"}, {"what"}, {"was"}, {"is"}, {"place"}},
              .rows = {},
              .notes = {}};
  for (const Difference& difference : checked.rig().differences) {
    const SourceText& text = checked.sources()[difference.place.source];
    table.rows.push_back({difference.origin, difference.subject, difference.property,
                          difference.was.empty() ? "not stated" : difference.was, difference.is,
                          fmt::format("{}:{}", text.name(), text.position(difference.place.begin).line)});
  }
  if (!checked.rig().boat.sister_of.empty())
    table.notes.push_back("sister ship of " + checked.rig().boat.sister_of);
  if (table.rows.empty())
    table.notes.push_back("Nothing is stated over anything else.");
  return table;
}

} // namespace sheerpole
