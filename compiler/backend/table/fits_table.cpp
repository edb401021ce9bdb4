#include "backend/table/rig_tables.hpp"
#include "backend/tenths.hpp"
#include "units/format_length.hpp"

namespace sheerpole {

Table fits_table(const CheckedRig& checked) {
  Table table{.title = "Lines in hand: which parts and which setting make them fit",
              .columns = {{"stay"},
                          {"line mm", true},
                          {"to fill mm", true},
                          {"add"},
                          {"adjuster"},
                          {"set mm", true},
                          {"open", true},
                          {"note"}},
              .rows = {},
              .notes = {"To fill: by the added parts and the adjuster together. Fewest parts first, then "
                        "the setting nearest the middle of the wanted band."}};
  for (const DerivedStay& stay : checked.derived().stays) {
    const std::string& name = checked.rig()[stay.stay].name;
    for (const Fit& fit : stay.fits) {
      const std::string line = format_tenths(Tenths::of(fit.line));
      if (!fit.not_checked.empty()) {
        table.rows.push_back({name, line, "", "", "", "", "", "not checked: " + fit.not_checked});
        continue;
      }
      const std::string gap = format_tenths(Tenths::of(fit.gap));
      for (const FitWay& way : fit.ways) {
        std::string parts;
        for (const auto& [part, count] : way.parts)
          parts += (parts.empty() ? "" : ", ") + std::to_string(count) + " x " + part;
        table.rows.push_back({name, line, gap, parts.empty() ? "nothing" : parts,
                              checked.rig()[fit.adjuster].name, format_tenths(Tenths::of(way.adjuster)),
                              format_fixed(way.open * 100.0, 0) + " %", ""});
      }
      if (fit.ways.empty())
        table.rows.push_back(
            {name, line, gap, "", checked.rig()[fit.adjuster].name, "", "",
             "none fits; the nearest is " +
                 format_tenths(Tenths::of(fit.short_by > Length{} ? fit.short_by : -fit.short_by)) +
                 (fit.short_by > Length{} ? " mm too short" : " mm too long")});
    }
  }
  return table;
}

} // namespace sheerpole
