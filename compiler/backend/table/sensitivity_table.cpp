#include "backend/table/rig_tables.hpp"
#include "backend/tenths.hpp"
#include "calculate/change/sensitivity.hpp"
#include "units/format_length.hpp"

namespace sheerpole {

namespace {

std::string signed_hundredths(Length length) {
  const std::string text = format_fixed(length.millimetres(), 2);
  return text.starts_with('-') || text == "0.00" ? text : "+" + text;
}

} // namespace

Table sensitivity_table(const CheckedRig& checked) {
  Table table{
      .title = "Sensitivity: how far each stay moves when one thing does",
      .columns = {{"stay"}, {"what"}, {"by"}, {"pin-to-pin mm", true}, {"body mm", true}, {"counts"}},
      .rows = {},
      .notes = {"Each row alone, worked out whole; forward, to starboard and up in boat axes. What "
                "moves a stay by less than 0.005 mm is left out.",
                "Counts: no means that the length is read or stated, so that it stays what it was "
                "read as; the row is what the way does."}};
  for (const Sensitivity& one : sensitivities(checked.rig(), checked.derived()))
    table.rows.push_back({checked.rig()[one.stay].name, one.what, one.by, signed_hundredths(one.pin_to_pin),
                          signed_hundredths(one.body), one.counts ? "yes" : "no"});
  if (table.rows.empty())
    table.notes.push_back("No stay has a path or parts.");
  return table;
}

} // namespace sheerpole
