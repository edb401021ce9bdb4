#include "elaborate/elaborate.hpp"

#include "elaborate/elaboration.hpp"
#include "elaborate/evaluator.hpp"

#include <utility>

namespace sheerpole {

Rig elaborate(const ResolvedTree& tree, const SourceSet& sources, DiagnosticSink& sink) {
  Evaluator evaluator(tree, sources, sink);
  Elaboration elaboration{.tree = tree,
                          .sink = sink,
                          .read = ValueReader(evaluator, sink),
                          .rig = {},
                          .points = {},
                          .materials = {},
                          .splices = {},
                          .parts = {},
                          .stays = {}};
  // A named value that nothing uses is worked out all the same: its slips are found today.
  for (const auto& file : tree.trees)
    for (const Statement& statement : file->statements)
      if (const Let* let = std::get_if<Let>(&statement))
        evaluator.evaluate_let(*let);
  elaborate_boat(elaboration);
  elaborate_points(elaboration);
  elaborate_spreaders(elaboration);
  elaborate_lines(elaboration);
  elaborate_parts(elaboration);
  elaborate_stays(elaboration);
  elaborate_readings(elaboration);
  return std::move(elaboration.rig);
}

} // namespace sheerpole
