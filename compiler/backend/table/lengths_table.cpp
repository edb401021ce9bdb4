#include "backend/piece_sum.hpp"
#include "backend/source_words.hpp"
#include "backend/table/rig_tables.hpp"

namespace sheerpole {

namespace {

/// What the hardware takes from pin-to-pin, as a positive amount: all of the body's rows but pin-to-pin
/// itself.
Tenths hardware_of(const DerivedStay& stay) {
  Tenths hardware;
  for (const Term& term : stay.body.terms)
    if (term.name != stay.pin_to_pin.name)
      hardware += Tenths::of(-term.amount);
  return hardware;
}

} // namespace

Table lengths_table(const CheckedRig& checked) {
  Table table{.title = "Lengths of the stays, by each way",
              .columns = {{"stay"},
                          {"way"},
                          {"used"},
                          {"pin-to-pin mm", true},
                          {"hardware mm", true},
                          {"body mm", true},
                          {"used less this mm", true},
                          {"source"}},
              .rows = {},
              .notes = {"Each row of a sum is rounded to 0.1 mm; a total is the sum of its rounded rows."}};
  for (const DerivedStay& stay : checked.derived().stays) {
    const std::string& name = checked.rig()[stay.stay].name;
    const bool unknown = stay.pin_to_pin.unknown;
    const Tenths pins = printed_total(stay.pin_to_pin);
    const Tenths hardware = hardware_of(stay);
    const Provenance source = unknown                         ? stay.pin_to_pin.unknown_source
                              : stay.pin_to_pin.terms.empty() ? Provenance{}
                                                              : stay.pin_to_pin.terms.front().provenance;
    table.rows.push_back({name, std::string(name_of(stay.route)), "yes", format_total(unknown, pins),
                          format_tenths(hardware), format_total(unknown, pins - hardware), "",
                          source_words(source)});
    for (const RouteComparison& other : stay.other_routes)
      table.rows.push_back({name, std::string(name_of(other.other)), "no",
                            format_tenths(Tenths::of(other.length)), "", "",
                            format_tenths(Tenths::of(other.difference)), source_words(other.provenance)});
  }
  return table;
}

} // namespace sheerpole
