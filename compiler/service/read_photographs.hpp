#pragma once

#include "diagnostics/sink.hpp"
#include "names/resolved_tree.hpp"
#include "source/file_reader.hpp"
#include "source/photograph.hpp"
#include "source/source_set.hpp"

#include <string>
#include <vector>

namespace sheerpole {

/// The pictures that the inspection log names, in the order of the files, one that is named twice once.
/// Each is read through `reader`, from the folder of the file that names it or below, and never from
/// outside the folder of the rig file `root`, links followed. One that is not there, lies outside, is too
/// large or is neither JPEG nor PNG is a finding at its place, and the rig goes on without it. Bytes are
/// kept as they are: what a camera wrote into them beside the picture is neither read nor taken out.
std::vector<Photograph> read_photographs(const ResolvedTree& tree, const SourceSet& sources,
                                         const std::string& root, FileReader& reader, DiagnosticSink& sink);

} // namespace sheerpole
