// Every piece of line with the points that it hangs between, body and cut as the cut list prints them.

#include "backend/backend.hpp"
#include "driver/outside/plugin_main.hpp"

namespace {

using namespace sheerpole;

class BetweenPoints final : public Backend {
public:
  BackendDescription describe() const override {
    return {.name = "between-points",
            .summary = "body and cut of every piece, and the points that its stay hangs between",
            .outputs = {"between-points.txt", "between-points.csv"}};
  }

  OutputBundle generate(const BackendRequest& request) const override {
    const Rig& rig = request.checked.rig();
    Table table{.title = "Pieces of " + rig.boat.title,
                .columns = {{"piece"}, {"from"}, {"to"}, {"body mm", true}, {"cut mm", true}}};
    for (const DerivedStay& stay : request.checked.derived().stays)
      for (const Piece& piece : stay.pieces) {
        // Never round a length yourself: a printed total is the sum of its printed rows.
        const PieceSum sum = piece_sum(rig, stay, piece);
        const auto& path = rig[stay.stay].path; // empty for a stay that was measured alone
        table.rows.push_back({piece.name, path.empty() ? "" : rig[path.front().point].name,
                              path.empty() ? "" : rig[path.back().point].name,
                              sum.body_complete ? format_total(sum.unknown, sum.body()) : "not known",
                              sum.complete() ? format_total(sum.unknown, sum.cut()) : "not known"});
      }
    // Never hand on a number that may not be cut to yet without saying so.
    if (!request.checked.draft_reasons().empty())
      table.notes = {"DRAFT: the cut list says what is not known yet."};
    return {{{"between-points.txt", render_text(table)}, {"between-points.csv", render_csv(table)}}};
  }
};

} // namespace

int main() {
  return sheerpole::plugin_main(BetweenPoints());
}
