#include "backend/table/rig_tables.hpp"
#include "backend/tenths.hpp"
#include "units/format_length.hpp"

namespace sheerpole {

Table tension_table(const CheckedRig& checked) {
  Table table{.title = "Tension as read, and sag at the dock tension",
              .columns = {{"stay"}, {"by"}, {"kN", true}, {"of break", true}, {"how"}, {"who and when"}},
              .rows = {},
              .notes = {"A swing or a pulse reads high in a short or stiff line; its error counts twice."}};
  for (const DerivedStay& stay : checked.derived().stays) {
    const std::string& name = checked.rig()[stay.stay].name;
    for (const TensionEstimate& estimate : stay.tensions)
      table.rows.push_back(
          {name, estimate.method,
           estimate.tension ? format_fixed(estimate.tension->kilonewtons(), 2) : "not checked",
           estimate.share_of_break ? format_fixed(*estimate.share_of_break * 100.0, 1) + " %" : "",
           estimate.tension ? estimate.how : estimate.not_checked,
           estimate.by + (estimate.by.empty() || estimate.date.empty() ? "" : ", ") + estimate.date});
    if (stay.sag)
      table.rows.push_back({name, "sag", format_fixed(stay.sag->tension.kilonewtons(), 2), "",
                            format_fixed(stay.sag->depth.millimetres(), 2) + " mm deep over " +
                                format_tenths(Tenths::of(stay.sag->span)) + " mm, " +
                                format_fixed(stay.sag->extra_length.millimetres(), 2) + " mm longer",
                            ""});
  }
  return table;
}

} // namespace sheerpole
