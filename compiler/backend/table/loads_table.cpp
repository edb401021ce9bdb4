#include "backend/source_words.hpp"
#include "backend/table/quantity_words.hpp"
#include "backend/table/rig_tables.hpp"
#include "wording/say.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

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
                          say(rig, result.how), "worked out"});
  for (const Remark& why : screening.not_checked)
    table.rows.push_back({screening.of, method, "not checked", "", say(rig, why), ""});
  note(table, method + ": " + say(rig, publication_of(screening.method)) + ".");
  for (const Remark& words : screening.notes)
    note(table, method + ": " + say(rig, words) + ".");
}

} // namespace

Table loads_table(const CheckedRig& checked) {
  Table table{.title = "Loads by screening: no rig is sized by them",
              .columns = {{"of"}, {"method"}, {"what"}, {"value", true}, {"how"}, {"source"}},
              .rows = {},
              .notes = {"This screens and does not size a rig: what it has to carry is for licensed "
                        "practice to decide."}};
  for (const LoadScreening& screening : checked.derived().load_screenings)
    add_screening(checked.rig(), screening, table);
  if (table.rows.empty())
    note(table, "No load-screening is stated.");
  return table;
}

} // namespace sheerpole
