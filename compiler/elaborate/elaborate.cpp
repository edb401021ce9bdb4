#include "elaborate/elaborate.hpp"

#include "elaborate/elaboration.hpp"
#include "elaborate/evaluator.hpp"

#include <set>
#include <string>
#include <utility>

namespace sheerpole {

namespace {

/// A mirrored stay meets each slip once a side, and a copy made with `from` meets those of its base again:
/// one cause, one finding.
void report_once_a_place(const DiagnosticSink& found, DiagnosticSink& sink) {
  std::set<std::pair<std::string, Span>> seen;
  for (const Diagnostic& finding : found.all())
    if (!finding.primary || seen.emplace(finding.slug, finding.primary->span).second)
      sink.report(finding);
}

} // namespace

Rig elaborate(const ResolvedTree& tree, const SourceSet& sources, DiagnosticSink& outer) {
  DiagnosticSink sink;
  Evaluator evaluator(tree, sources, sink);
  Elaboration elaboration{.tree = tree,
                          .sources = sources,
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
  if (tree.what_if != nullptr)
    for (const Statement& statement : tree.what_if->statements)
      if (const Let* let = std::get_if<Let>(&statement))
        evaluator.evaluate_let(*let);
  elaborate_boat(elaboration);
  elaborate_spars(elaboration);
  elaborate_points(elaboration);
  elaborate_spreaders(elaboration);
  elaborate_lines(elaboration);
  elaborate_parts(elaboration);
  elaborate_stays(elaboration);
  elaborate_readings(elaboration);
  check_knots(elaboration);
  elaborate_eye_stacks(elaboration);
  elaborate_states(elaboration);
  elaborate_records(elaboration);
  elaboration.rig.bounds = evaluator.bounds();
  report_once_a_place(sink, outer);
  return std::move(elaboration.rig);
}

} // namespace sheerpole
