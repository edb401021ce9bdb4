#pragma once

#include "diagnostics/sink.hpp"
#include "model/rig.hpp"
#include "names/resolved_tree.hpp"
#include "source/source_set.hpp"

namespace sheerpole {

/// Makes the rig that the files describe: evaluates every value, checks its dimension and range, mirrors
/// sides and puts stacks together. When the sink holds an error afterwards, parts of the rig may be missing
/// and it must not be calculated.
Rig elaborate(const ResolvedTree& tree, const SourceSet& sources, DiagnosticSink& sink);

} // namespace sheerpole
