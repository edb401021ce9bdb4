#include "backend/table/tune_tables.hpp"
#include "backend/table/tune_words.hpp"
#include "units/format_length.hpp"
#include "wording/papers/tune_sheet_words.hpp"
#include "wording/say.hpp"

namespace sheerpole {

namespace {

std::string unsigned_number(bool tension, double value) {
  return tension ? format_kilonewtons(value) : format_fixed(value, 1);
}

std::string signed_number(bool tension, double value) {
  return tension ? format_signed(value / 1000.0, 2) : format_signed(value, 1);
}

} // namespace

Table tune_doubt_table(const CheckedRig& checked, const TuneReport& report) {
  Table table{.title = say(TuneSheetPhrase::how_far_each_number_may_be_off),
              .columns = {{"of"},
                          {"what"},
                          {"now", true},
                          {"least at worst", true},
                          {"most at worst", true},
                          {"95 % by propagation ±", true},
                          {"95 % of draws from", true},
                          {"to", true}}};
  if (report.doubt.inputs == 0) {
    table.notes = {say(TuneSheetPhrase::no_bound_is_stated)};
    return table;
  }
  const std::vector<double> now = report.tuned.values(report.tuned.state);
  for (const std::size_t q : shown_quantities(report.tuned)) {
    const TuneQuantity& quantity = report.tuned.quantities[q];
    const bool tension = quantity.kind == TuneQuantity::Kind::tension;
    const TuneRange& range = report.doubt.of_value[q];
    table.rows.push_back({tension
                              ? checked.rig()[report.tuned.model.stays[quantity.number].stay].name
                              : checked.rig().spars[report.tuned.model.spars[quantity.number].spar].name,
                          quantity_words(checked, report.tuned, q) + (tension ? ", kN" : ", mm"),
                          tension ? format_kilonewtons(now[q]) : format_signed(now[q], 1),
                          signed_number(tension, range.worst_low), signed_number(tension, range.worst_high),
                          unsigned_number(tension, range.expanded), signed_number(tension, range.drawn_low),
                          signed_number(tension, range.drawn_high)});
  }
  table.notes = {
      say(TuneSheetPhrase::stated_bounds_put_in_both_ways, report.doubt.inputs, report.doubt.draws)};
  for (const std::string& trouble : say_each(checked.rig(), report.doubt.trouble))
    table.notes.push_back(trouble);
  return table;
}

} // namespace sheerpole
