#include "plugins/template/template.hpp"

namespace sheerpole {

BackendDescription Template::describe() const {
  return {.name = "template",
          .summary = "every piece of line with its cut length, a back end to copy",
          .outputs = {"template.txt"}};
}

OutputBundle Template::generate(const BackendRequest& request) const {
  // The rig is what the file says, `derived` is what was worked out from it; both are complete and in the
  // order of the file. See compiler/model/rig.hpp and compiler/calculate/derived.hpp.
  const Rig& rig = request.checked.rig();
  Table table;
  table.columns = {{"piece", false}, {"line", false}, {"cut mm", true}};
  for (const DerivedStay& stay : request.checked.derived().stays)
    for (const Piece& piece : stay.pieces) {
      // Never round a length yourself: a printed total is the sum of its printed rows, and no paper may
      // have another one. It may rest on a length that nobody has measured yet: then it is "X + 861.8".
      const PieceSum sum = piece_sum(rig, stay, piece);
      table.rows.push_back({piece.name, rig[piece.material].name, format_total(sum.unknown, sum.cut())});
    }
  // Never hand on a number that may not be cut to yet without saying so.
  if (!request.checked.draft_reasons().empty())
    table.notes = {"DRAFT: the cut list says what is not known yet."};
  return {{{"template.txt", render_text(table)}}};
}

} // namespace sheerpole
