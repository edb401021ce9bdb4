#include "backend/source_words.hpp"
#include "backend/table/rig_tables.hpp"
#include "backend/tenths.hpp"

namespace sheerpole {

Table readings_table(const CheckedRig& checked) {
  Table table{.title = "Readings: what became of what was read",
              .columns = {{"stay"}, {"term"}, {"mm", true}, {"how"}, {"source"}},
              .rows = {},
              .notes = {"The total is the sum of its rows as printed."}};
  for (const DerivedStay& stay : checked.derived().stays) {
    if (stay.route != LengthRoute::reading)
      continue;
    const std::string& name = checked.rig()[stay.stay].name;
    Tenths total;
    for (const Term& term : stay.pin_to_pin.terms) {
      const Tenths amount = Tenths::of(term.amount);
      total += amount;
      table.rows.push_back(
          {name, term.name, format_signed(amount), term.how, source_words(term.provenance)});
    }
    table.rows.push_back({name, "= pin-to-pin", format_tenths(total), "", ""});
    for (const std::string& missing : stay.not_corrected)
      table.rows.push_back({name, "not corrected", "", missing, ""});
    for (const RouteComparison& other : stay.other_routes)
      for (const LikelySlip& slip : other.slips)
        table.rows.push_back({name, "likely slip", format_signed(Tenths::of(other.difference)), slip.words,
                              "leaves " + format_tenths(Tenths::of(slip.unexplained)) + " mm"});
  }
  return table;
}

} // namespace sheerpole
