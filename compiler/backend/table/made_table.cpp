#include "backend/table/rig_tables.hpp"
#include "backend/tenths.hpp"
#include "calculate/adjust/piece_history.hpp"
#include "calculate/facts.hpp"
#include "model/fact_name.hpp"
#include "model/kind_words.hpp"
#include "wording/papers/tables_words.hpp"

#include <string>
#include <vector>

namespace sheerpole {

namespace {

std::string length_or_nothing(const std::optional<Length>& length) {
  return length ? format_tenths(*length) : "";
}

/// As the record says, else that of the stock that it names.
std::string batch_on_record(const Rig& rig, const PieceRecord& record) {
  const Record* stock = record.batch.empty() ? find_record(rig, RecordKind::stock, record.stock) : nullptr;
  return stock == nullptr ? record.batch : fact_text(stock->facts, fact_names.batch);
}

} // namespace

Table made_table(const CheckedRig& checked) {
  const Rig& rig = checked.rig();
  Table table{.title = say(TablesPhrase::what_became_pieces_bearing_to),
              .columns = {{"piece"},
                          {"stage"},
                          {"date"},
                          {"body", true, "mm"},
                          {"wanted", true, "mm"},
                          {"longer by", true, "mm"},
                          {"adjuster then", true, "mm"},
                          {"stock"},
                          {"batch"},
                          {"by"},
                          {"job"},
                          {"note"}},
              .notes = {}};
  bool pull_lost = false;
  for (const DerivedStay& stay : checked.derived().stays)
    for (std::size_t i = 0; i < stay.pieces.size(); ++i)
      for (const PieceEntry& entry : piece_history(rig, stay, i).entries) {
        const PieceRecord& record = *entry.record;
        const auto longer = entry.longer();
        table.rows.push_back({stay.pieces[i].name, std::string(name_of(record.stage)), record.date,
                              length_or_nothing(entry.body) + (entry.pull_not_counted ? " *" : ""),
                              length_or_nothing(entry.wanted), longer ? format_signed(*longer) : "",
                              length_or_nothing(adjuster_with(stay, entry)), record.stock,
                              batch_on_record(rig, record), record.by, record.job, record.note});
        pull_lost = pull_lost || entry.pull_not_counted;
      }
  if (table.rows.empty())
    table.notes.push_back(say(TablesPhrase::nothing_has_been_written_down));
  else
    table.notes.push_back(say(TablesPhrase::wanted_what_piece_was_to));
  if (pull_lost)
    table.notes.push_back(say(TablesPhrase::under_pull_that_is_not));
  return table;
}

} // namespace sheerpole
