#pragma once

#include "syntax/parse.hpp"
#include "syntax/syntax_tree.hpp"

#include <algorithm>
#include <string>
#include <utility>
#include <vector>

namespace sheerpole::syntax_test {

/// A text, its tree, and what was found in it, in the order of the places.
struct ParsedText {
  explicit ParsedText(std::string bytes) : source(SourceId{3}, "test.rig", std::move(bytes)) {
    DiagnosticSink sink;
    tree = parse(source, sink);
    findings = sink.sorted();
  }

  std::string printed() const { return print_tree(tree); }

  /// "line:column" of a place.
  std::string place(Span span) const {
    const Position position = source.position(span.begin);
    return std::to_string(position.line) + ":" + std::to_string(position.column);
  }

  /// Each finding as `line:column slug: message`.
  std::vector<std::string> lines() const {
    std::vector<std::string> result;
    for (const Diagnostic& each : findings)
      result.push_back((each.primary ? place(each.primary->span) : "-") + " " + each.slug + ": " +
                       each.message);
    return result;
  }

  /// The text with the edits of all findings made.
  std::string mended() const {
    std::string result(source.bytes());
    std::vector<const Diagnostic*> backwards;
    for (const Diagnostic& each : findings)
      if (each.edit)
        backwards.insert(backwards.begin(), &each);
    std::stable_sort(backwards.begin(), backwards.end(), [](const Diagnostic* a, const Diagnostic* b) {
      return a->edit->span.begin > b->edit->span.begin;
    });
    for (const Diagnostic* each : backwards)
      result.replace(each->edit->span.begin, each->edit->span.end - each->edit->span.begin,
                     each->edit->replacement);
    return result;
  }

  SourceText source;
  SyntaxTree tree;
  std::vector<Diagnostic> findings;
};

/// A boat that uses every construct of the language.
inline const std::string sample = R"(language 1
use "parts/demo.rig"
let sheer = 1.120 m drawn # above the waterline
boat "Demo" {
  beam: 3.20 m drawn
}
points {
  cap-tang "Cap shroud tang": (-0.050, 0.070, 12.620) m mirrored drawn "sail plan"
  plate-a.port: (-0.622, -1.431, 1.100) m measured "tape"
}
turnbuckle turnbuckle-58 "Turnbuckle, 5/8 in" from turnbuckle-12 {
  shortest: 320 mm ± 1 mm maker "sheet 4"
  upper: jaw (gap: 17.0 mm ± 0.1 mm maker, pin: "5/8 in")
  opened: 38' 7 3/8"
  checked: 2026-05-02
  rest: -(shortest + 2 * 3 mm) / 4 - 24e-6 ppm/K
}
stay cap-shroud "Cap shroud" {
  sides: port, starboard
  path:  [cap-tang > tip-2 free >
          tip-1 clamped > plate-a]
  line:  hmpe-9
  stack {
    2 x toggle-12
    thimble-9 (splice: long-bury,
               spare-bury: 1.2 m)
    line
    turnbuckle-58 (open: 50 %)
  }
}
reading of cap-shroud.port {
  runs: 11_640 mm, 11_642 mm
}
points { }
)";

} // namespace sheerpole::syntax_test
