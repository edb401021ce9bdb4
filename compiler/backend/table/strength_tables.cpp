#include "backend/paper_words.hpp"
#include "backend/table/rig_tables.hpp"
#include "backend/tenths.hpp"
#include "calculate/geometry/junctions.hpp"
#include "units/format_length.hpp"
#include "units/unit.hpp"
#include "wording/model_words.hpp"
#include "wording/papers/tables_words.hpp"
#include "wording/say.hpp"
#include "wording/strength_words.hpp"

#include <algorithm>
#include <cmath>

namespace sheerpole {

namespace {

std::string whole(double si, std::string_view unit) {
  return format_fixed(si / find_unit(unit)->factor, 0) + " " + std::string(unit);
}

/// A number of a screening for a reader: "36.40 kN (8182 lbf)", "40.67 kNm (30000 lbf-ft)", "1.676 m", a
/// plain number as it is, "0.45".
std::string quantity_words(const Quantity& quantity) {
  if (quantity.dimension == dimension::force)
    return format_fixed(quantity.si / 1000.0, 3) + " kN (" + whole(quantity.si, "lbf") + ")";
  if (quantity.dimension == dimension::moment)
    return format_fixed(quantity.si / 1000.0, 2) + " kNm (" + whole(quantity.si, "lbf-ft") + ")";
  if (quantity.dimension == dimension::length)
    return format_fixed(quantity.si, 3) + " m";
  return format_number(std::round(quantity.si * 1e6) / 1e6);
}

std::string kilonewtons(Force force) {
  return format_fixed(force.kilonewtons(), 2);
}

std::string lacking(const Rig& rig, const ChainLink& link) {
  return led_by(say(TablesPhrase::not_stated_colon), lacking_words(rig, link));
}

std::string remark(const StayChain& chain, std::size_t i) {
  const ChainLink& link = chain.links[i];
  std::string words = chain.weakest == i ? say(TablesPhrase::weakest_known) : "";
  add_words(words, "; ", led_by(say(TablesPhrase::meant_to_be), link.meant));
  return words;
}

void add_stay(const Rig& rig, const DerivedStay& derived, Table& table) {
  const Stay& stay = rig[derived.stay];
  const StayChain& chain = derived.chain;
  for (std::size_t i = 0; i < chain.links.size(); ++i) {
    const ChainLink& link = chain.links[i];
    // A hole whose pressure nobody states is the business of its part's break load.
    if (!link.counted)
      continue;
    table.rows.push_back({stay.name, say(rig, link.name),
                          link.break_load ? kilonewtons(*link.break_load) : "",
                          link.break_load ? say(rig, link.how) : lacking(rig, link),
                          link.break_load ? source_words(link.provenance) : "", remark(chain, i)});
  }
  if (const auto load = load_of(rig, StayId{static_cast<std::uint32_t>(&stay - rig.stays.data())}))
    table.rows.push_back(
        {stay.name, "load", kilonewtons(load->value),
         load->provenance.derivation.empty() ? say(TablesPhrase::as_stated) : note_words(load->provenance),
         source_words(load->provenance),
         chain.weakest ? say(TablesPhrase::weakest_known_holds_times_it,
                             format_fixed(*chain.links[*chain.weakest].break_load / load->value, 2))
                       : ""});
}

void note(Table& table, std::string words) {
  if (std::find(table.notes.begin(), table.notes.end(), words) == table.notes.end())
    table.notes.push_back(std::move(words));
}

void add_screening(const Rig& rig, const LoadScreening& screening, Table& table) {
  const std::string method(name_of(screening.method));
  for (const ScreeningNumber& input : screening.inputs)
    table.rows.push_back({screening.of, method, say(rig, input.name), quantity_words(input.value),
                          say(rig, input.how), source_words(input.provenance)});
  for (const ScreeningNumber& result : screening.results)
    table.rows.push_back({screening.of, method, say(rig, result.name), quantity_words(result.value),
                          say(rig, result.how), say(TablesPhrase::worked_out)});
  for (const Remark& why : screening.not_checked)
    table.rows.push_back(
        {screening.of, method, say(TablesPhrase::not_checked_word), "", say(rig, why), ""});
  note(table, method + ": " + say(rig, publication_of(screening.method)) + ".");
  for (const Remark& one : screening.notes)
    note(table, method + ": " + say(rig, one) + ".");
}

std::string_view words(JointResult result) {
  return result == JointResult::pass      ? "pass"
         : result == JointResult::finding ? "finding"
                                          : say(TablesPhrase::not_checked_word);
}

} // namespace

Table strength_table(const CheckedRig& checked) {
  Table table{.title = say(TablesPhrase::strength_what_each_link_stay),
              .columns = {{"stay"}, {"link"}, {"kN", true}, {"how"}, {"source"}, {"remark"}},
              .notes = {say(TablesPhrase::stay_holds_no_more_than),
                        say(TablesPhrase::threads_cheeks_jaws_and_bend)}};
  for (const DerivedStay& stay : checked.derived().stays)
    add_stay(checked.rig(), stay, table);
  return table;
}

Table loads_table(const CheckedRig& checked) {
  Table table{.title = say(TablesPhrase::loads_by_screening_no_rig),
              .columns = {{"of"}, {"method"}, {"what"}, {"value", true}, {"how"}, {"source"}},
              .notes = {say(TablesPhrase::this_screens_and_does_not)}};
  for (const LoadScreening& screening : checked.derived().load_screenings)
    add_screening(checked.rig(), screening, table);
  if (table.rows.empty())
    note(table, say(TablesPhrase::no_load_screening_is_stated));
  return table;
}

Table joints_table(const CheckedRig& checked) {
  Table table{.title = say(TablesPhrase::joints_what_was_compared_where),
              .columns = {{"stay"}, {"joint"}, {"compared"}, {"play mm", true}, {"result"}, {"what"}}};
  const Rig& rig = checked.rig();
  std::size_t pass = 0;
  std::size_t found = 0;
  std::size_t unknown = 0;
  for (const DerivedStay& stay : checked.derived().stays)
    for (const Joint& joint : stay.joints)
      for (const JointCheck& check : joint.checks) {
        (check.result == JointResult::pass      ? pass
         : check.result == JointResult::finding ? found
                                                : unknown) += 1;
        table.rows.push_back({rig[stay.stay].name, say(rig, joint.name),
                              std::string(slug_of(check.finding)),
                              check.play ? format_tenths(*check.play) : std::string(),
                              std::string(words(check.result)), say(rig, check.words)});
      }
  table.notes.push_back(say(TablesPhrase::pass_findings_not_checked, pass, found, unknown));
  table.notes.push_back(say(TablesPhrase::not_checked_dimension_is_not));
  return table;
}

} // namespace sheerpole
