#include "backend/piece_sum.hpp"
#include "backend/table/rig_tables.hpp"
#include "calculate/length/body.hpp"

#include <optional>

namespace sheerpole {

namespace {

/// A distance from the upper pin as far as it is known.
struct Distance {
  Tenths known;
  bool with_x = false;
  bool lost = false; ///< behind something without a length

  std::string text() const { return lost ? "?" : format_total(with_x, known); }
};

void add_rows(const CheckedRig& checked, const DerivedStay& derived, Table& table) {
  const Rig& rig = checked.rig();
  const Stay& stay = rig[derived.stay];
  Distance distance;
  std::size_t line = 0;
  int number = 0;
  for (const StackItem& item : stay.stack) {
    std::vector<std::string> row{stay.name, std::to_string(++number)};
    if (item.kind == StackItem::Kind::line) {
      row.insert(row.end(), {"line", rig[stay.material].name, "1"});
      if (line >= derived.pieces.size()) {
        distance.lost = true;
        row.push_back("?");
      } else {
        const PieceSum sum = piece_sum(rig, derived, derived.pieces[line++]);
        distance.known += sum.body();
        distance.with_x = distance.with_x || sum.unknown;
        distance.lost = distance.lost || !sum.body_complete;
        row.push_back(sum.body_complete ? format_total(sum.unknown, sum.body()) : "?");
      }
    } else {
      const Part& part = rig[item.part];
      row.insert(row.end(), {part.kind, part.name, std::to_string(item.count)});
      if (part.role == Part::Role::boat_fitting) {
        row.push_back("");
      } else if (const std::optional<Length> taken = taken_length(rig, item)) {
        distance.known += Tenths::of(*taken);
        row.push_back(format_tenths(Tenths::of(*taken)));
      } else {
        distance.lost = true;
        row.push_back("?");
      }
    }
    row.push_back(distance.text());
    table.rows.push_back(std::move(row));
  }
}

} // namespace

Table stack_table(const CheckedRig& checked) {
  Table table{.title = "Stacks, from aloft to deck",
              .columns = {{"stay"},
                          {"no.", true},
                          {"kind"},
                          {"item"},
                          {"times", true},
                          {"length mm", true},
                          {"from upper pin mm", true}},
              .rows = {},
              .notes = {"Fittings of the boat take no length: pin-to-pin begins and ends at their pins."}};
  for (const DerivedStay& stay : checked.derived().stays)
    add_rows(checked, stay, table);
  return table;
}

} // namespace sheerpole
