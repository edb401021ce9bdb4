#include "backend/paper_words.hpp"
#include "backend/printed_sums.hpp"
#include "plugins/cut-list/cut_list.hpp"
#include "wording/length_words.hpp"
#include "wording/model_words.hpp"
#include "wording/say.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

std::string yes_or_no(bool yes) {
  return yes ? "yes" : "no";
}

constexpr std::size_t from_below_column = 15;
constexpr std::size_t range_column = 17;

/// The columns that are the same in every row of a piece, and those that belong to the row.
struct CsvPiece {
  const Rig& rig;
  std::string piece;
  std::string number_off;
  std::string line;
  std::string size;
  std::string draft;
  std::string state;

  std::vector<std::string> row(std::string quantity, std::string term, std::string amount, bool plus_x,
                               bool complete, const Term* from) const {
    std::vector<std::string> cells{piece,
                                   number_off,
                                   line,
                                   size,
                                   std::move(quantity),
                                   std::move(term),
                                   std::move(amount),
                                   yes_or_no(plus_x),
                                   yes_or_no(complete)};
    if (from == nullptr)
      cells.insert(cells.end(), 5, "");
    else
      cells.insert(cells.end(), {say(rig, from->how), std::string(name_of(from->provenance.source_class)),
                                 note_words(from->provenance), from->provenance.written,
                                 joined(from->provenance.assumptions, "; ")});
    cells.push_back(draft);
    cells.insert(cells.end(), 5, "");
    cells.push_back(state);
    return cells;
  }

  /// A place on the bench, from both ends.
  std::vector<std::string> mark(std::string quantity, const std::string& name,
                                const PrintedPlace& from_upper, const PrintedPlace* from_lower,
                                bool complete) const {
    std::vector<std::string> cells = row(std::move(quantity), name, format_tenths(from_upper.tenths),
                                         from_upper.unknown, complete, nullptr);
    if (from_lower != nullptr) {
      cells[from_below_column] = format_tenths(from_lower->tenths);
      cells[from_below_column + 1] = yes_or_no(from_lower->unknown);
    }
    return cells;
  }
};

/// Marks, dry fit and what is left out, behind the totals.
void add_bench(const CsvPiece& piece, const ListedPiece& listed, Table& table) {
  const BenchMarks& bench = listed.piece->bench;
  for (const BenchMark& mark : bench.marks) {
    const PrintedMark printed = printed_mark(mark, listed.sum.cut());
    table.rows.push_back(
        piece.mark("mark", mark_name(mark), printed.from_upper, &printed.from_lower, listed.complete()));
  }
  if (bench.dry_fit)
    table.rows.push_back(piece.mark("dry-fit", "", {bench.dry_fit->unknown, printed_dry_fit(listed.sum)},
                                    nullptr, listed.complete()));
  for (const std::string& why : say_each(piece.rig, bench.not_known))
    table.rows.push_back(piece.row("not-marked", why, "", false, false, nullptr));
  for (const std::string& words : say_each(piece.rig, listed.piece->not_counted))
    table.rows.push_back(piece.row("not-counted", words, "", false, false, nullptr));
}

void add_rows(const CsvPiece& piece, const PieceSum& sum, Table& table) {
  if (sum.unknown) {
    Term x;
    x.provenance = sum.unknown_source;
    table.rows.push_back(piece.row("term", "X", format_tenths(Tenths{}), true, true, &x));
  }
  for (const SumSection& section : sum.sections) {
    for (const SumRow& row : section.rows)
      table.rows.push_back(piece.row("term", term_name(piece.rig, *row.term), format_tenths(row.amount),
                                     false, true, row.term));
    table.rows.push_back(piece.row(std::string(name_of(section.kind)), "", format_tenths(section.total),
                                   sum.unknown, section.complete, nullptr));
  }
}

} // namespace

std::string cut_list_csv(const CheckedRig& checked, const std::vector<CutListBlock>& blocks) {
  Table table{.title = "",
              .columns = {{"piece"},
                          {"number_off"},
                          {"line"},
                          {"size"},
                          {"quantity"},
                          {"term"},
                          {"amount_mm", true},
                          {"plus_x"},
                          {"complete"},
                          {"how"},
                          {"source"},
                          {"source_note"},
                          {"written"},
                          {"rests_on_assumed"},
                          {"draft"},
                          {"from_below_mm", true},
                          {"from_below_plus_x"},
                          {"known_to_95_mm", true},
                          {"worst_low_mm", true},
                          {"worst_high_mm", true},
                          {"state"}}};
  for (const CutListBlock& block : blocks) {
    const std::size_t off = block.same_rows ? block.pieces.size() : 1;
    std::vector<std::string> names;
    std::vector<std::string> states; // those of a pair may differ: one may hang already
    for (const ListedPiece& listed : block.pieces) {
      names.push_back(listed.piece->name);
      if (const std::string state(name_of(checked.state(*listed.piece)));
          std::find(states.begin(), states.end(), state) == states.end())
        states.push_back(state);
    }
    for (std::size_t i = 0; i < block.pieces.size() / off; ++i) {
      const ListedPiece& listed = block.pieces[i];
      const LineMaterial& line = checked.rig()[listed.piece->material];
      const CsvPiece piece{checked.rig(),
                           off == 1 ? listed.piece->name : joined(names, " + "),
                           std::to_string(off),
                           line.name,
                           line.size.name,
                           yes_or_no(off == 1 ? listed.draft() : block.draft()),
                           off == 1 ? std::string(name_of(checked.state(*listed.piece)))
                                    : joined(states, " + ")};
      add_rows(piece, listed.sum, table);
      if (const Uncertainty* found = range_of(listed)) {
        std::vector<std::string>& cut = table.rows.back();
        cut[range_column] = format_tenths(found->expanded);
        cut[range_column + 1] = format_tenths(found->worst_low);
        cut[range_column + 2] = format_tenths(found->worst_high);
      }
      add_bench(piece, listed, table);
    }
  }
  return render_csv(table);
}

} // namespace sheerpole
