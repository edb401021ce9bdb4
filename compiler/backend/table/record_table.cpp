#include "backend/paper_words.hpp"
#include "backend/table/rig_tables.hpp"
#include "kinds/kind_row.hpp"
#include "wording/model_words.hpp"
#include "wording/papers/tables_words.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <concepts>
#include <utility>

namespace sheerpole {

namespace record_rows {

/// Meets every member of every thing of a rig by the tables of their fields and keeps what the table of
/// kinds marks as for the record.
class Facts {
public:
  explicit Facts(const Rig& rig) : rig_(rig) {}

  std::vector<RecordedFact> run() {
    visit_fields(rig_, [this](const auto&, const auto& member) { things(member); });
    return std::move(found_);
  }

private:
  template <class Thing>
  void things(const std::vector<Thing>& all) {
    for (const Thing& one : all)
      things(one);
  }
  void things(const Boat& boat) {
    of_boat_ = true;
    meet("boat", say(TablesPhrase::the_boat), boat);
    of_boat_ = false;
  }
  void things(const Spar& spar) {
    of_boat_ = true;
    named("spar", spar);
    of_boat_ = false;
  }
  void things(const Spreader& spreader) { named("spreader", spreader); }
  void things(const LineMaterial& line) { named(name_of(line.kind), line); }
  void things(const Splice& splice) { named("splice", splice); }
  void things(const Part& part) { named(name_of(part.kind), part); }
  void things(const Stay& stay) {
    named("stay", stay);
    for (const Reading& reading : stay.readings)
      meet("reading", say(TablesPhrase::reading_of, stay.name), reading);
  }
  void things(const State& state) {
    named("state", state);
    for (const StatePosition& position : state.positions)
      meet("position", say(TablesPhrase::position_of_in, rig_[position.stay].name, state.name), position);
  }
  void things(const Record& record) {
    // A record without a name is told by what it is of.
    const std::string kind(name_of(record.kind));
    meet(kind,
         record.name == kind ? kind + led_by(say(TablesPhrase::of), record.of) : kind + " " + record.name,
         record);
  }
  void things(const Inspection& inspection) {
    const std::string stays = joined(inspection.stays, ", ", [&](StayId stay) { return rig_[stay].name; });
    meet("finding", say(TablesPhrase::finding_of, stays, inspection.date), inspection);
  }
  void things(const PieceRecord& piece) {
    meet("piece", say(TablesPhrase::piece_of_as, rig_[piece.stay].name, name_of(piece.stage)), piece);
  }
  template <class Thing>
  void things(const Thing&) {} // states nothing for the record

  template <class Thing>
  void named(std::string_view kind, const Thing& one) {
    meet(kind, std::string(kind) + " " + one.name, one);
  }

  template <HasFields Thing>
  void meet(std::string_view kind, const std::string& of, const Thing& one) {
    Span place;
    if constexpr (requires { one.place; })
      place = one.place;
    visit_fields(one, [&](const auto& field, const auto& member) {
      look_at(kind, of, field.property, member, place);
    });
  }

  void look_at(std::string_view kind, const std::string& of, std::string_view property,
               const std::string& text, Span place) {
    if (!text.empty() && for_record(kind, property))
      found_.push_back({of, std::string(property), text, {}, place, of_boat_});
  }
  void look_at(std::string_view kind, const std::string& of, std::string_view,
               const std::vector<Particular>& facts, Span place) {
    for (const Particular& fact : facts)
      if (for_record(kind, fact.name)) {
        const Provenance& provenance = fact.value.provenance;
        found_.push_back(
            {of, fact.name, fact.text, provenance, provenance.place.value_or(place), of_boat_});
      }
  }
  template <class Member>
  void look_at(std::string_view, const std::string&, std::string_view, const Member&, Span) {}

  static bool for_record(std::string_view kind, std::string_view property) {
    const KindRow* row = find_kind(kind);
    const PropertyRow* found = row == nullptr ? nullptr : find_property(row->properties, property);
    return found != nullptr && found->for_record;
  }

  const Rig& rig_;
  bool of_boat_ = false;
  std::vector<RecordedFact> found_;
};

} // namespace record_rows

std::vector<RecordedFact> recorded_facts(const CheckedRig& checked) {
  return record_rows::Facts(checked.rig()).run();
}

Table record_table(const CheckedRig& checked) {
  Table table{.title = say(TablesPhrase::stated_for_record),
              .columns = {{"stated of"}, {"what"}, {"as stated"}, {"known by"}, {"place"}},
              .notes = {say(TablesPhrase::no_length_check_or_order)}};
  for (const RecordedFact& fact : recorded_facts(checked)) {
    const SourceText& text = checked.sources()[fact.place.source];
    std::string what = fact.property;
    std::replace(what.begin(), what.end(), '-', ' ');
    const bool says = fact.provenance.source_class != SourceClass::unstated;
    table.rows.push_back({fact.of, std::move(what), fact.text,
                          says ? std::string(name_of(fact.provenance.source_class)) +
                                     led_by(", ", note_words(fact.provenance))
                               : "",
                          fmt::format("{}:{}", text.name(), text.position(fact.place.begin).line)});
  }
  if (table.rows.empty())
    table.notes = {say(TablesPhrase::nothing_is_stated_for_record)};
  return table;
}

} // namespace sheerpole
