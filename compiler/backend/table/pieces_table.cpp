#include "backend/piece_sum.hpp"
#include "backend/table/rig_tables.hpp"

namespace sheerpole {

namespace {

std::string state_of(const CheckedRig& checked, const Piece& piece, const PieceSum& sum) {
  if (checked.draft_reasons(piece).empty())
    return "";
  return sum.cut_complete && sum.body_complete ? "DRAFT" : "DRAFT, incomplete";
}

} // namespace

Table pieces_table(const CheckedRig& checked) {
  Table table{.title = "Pieces to cut",
              .columns = {{"piece"},
                          {"line"},
                          {"size"},
                          {"body mm", true},
                          {"cut mm", true},
                          {"cut ft in", true},
                          {"draft"}},
              .rows = {},
              .notes = {"Each row of a sum is rounded to 0.1 mm; a total is the sum of its rounded rows."}};
  for (const DerivedStay& stay : checked.derived().stays)
    for (const Piece& piece : stay.pieces) {
      const LineMaterial& line = checked.rig()[piece.material];
      const PieceSum sum = piece_sum(checked.rig(), stay, piece);
      table.rows.push_back({piece.name, line.name, line.size.name, format_total(sum.unknown, sum.body()),
                            format_total(sum.unknown, sum.cut()),
                            format_total_feet_inches(sum.unknown, sum.cut()),
                            state_of(checked, piece, sum)});
    }
  return table;
}

} // namespace sheerpole
