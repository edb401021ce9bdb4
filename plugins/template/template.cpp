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
    for (const Piece& piece : stay.pieces)
      // A length may rest on one that nobody has measured yet: then it is "X + 861.8" or "X - 16.0".
      table.rows.push_back({piece.name, rig[piece.material].name,
                            format_total(piece.cut.unknown, Tenths::of(piece.cut.known()))});
  // Never hand on a number that may not be cut to yet without saying so.
  if (!request.checked.draft_reasons().empty())
    table.notes = {"DRAFT: the cut list says what is not known yet."};
  return {{{"template.txt", render_text(table)}}};
}

} // namespace sheerpole
