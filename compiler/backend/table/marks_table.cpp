#include "backend/piece_sum.hpp"
#include "backend/printed_mark.hpp"
#include "backend/table/rig_tables.hpp"

namespace sheerpole {

namespace {

std::string place(const PrintedPlace& printed) {
  return format_total(printed.unknown, printed.tenths);
}

} // namespace

Table marks_table(const CheckedRig& checked) {
  Table table{.title = "Marks on the bench, from one zero and from the other end",
              .columns = {{"piece"}, {"mark"}, {"from aloft mm", true}, {"from below mm", true}, {"note"}},
              .rows = {},
              .notes = {"The line lies straight under its bench tension, before anything is opened.",
                        "Dry fit: bearing to bearing with both eyes formed and nothing buried."}};
  for (const DerivedStay& stay : checked.derived().stays)
    for (const Piece& piece : stay.pieces) {
      const std::string draft = piece.missing.empty() ? "" : "incomplete: the cut lacks an input";
      const Tenths cut = piece_sum(checked.rig(), stay, piece).cut();
      for (const BenchMark& mark : piece.bench.marks) {
        const PrintedMark printed = printed_mark(mark, cut);
        table.rows.push_back(
            {piece.name, mark.name, place(printed.from_upper), place(printed.from_lower), draft});
      }
      if (const auto& dry = piece.bench.dry_fit)
        table.rows.push_back(
            {piece.name, "dry fit", format_total(dry->unknown, Tenths::of(dry->known)), "", ""});
      for (const std::string& unknown : piece.bench.not_known)
        table.rows.push_back({piece.name, "not known", "", "", unknown});
    }
  return table;
}

} // namespace sheerpole
