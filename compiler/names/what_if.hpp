#pragma once

#include "diagnostics/sink.hpp"
#include "source/source_set.hpp"
#include "syntax/syntax_tree.hpp"

#include <memory>
#include <string>
#include <vector>

namespace sheerpole {

/// Makes a file in memory, "command line", of settings such as
///   mast-step=25 mm                      the value of a `let`
///   plate-a=(0, 1.4, 1.1) m              the place of a point; plate-a.port for one side;
///                                        of `points on mast` from its heel, as in the file
///   plate-a.z=1.08 m                     one coordinate of it, of both sides where they are stated apart,
///   plate-a.port.z=1.08 m                or of one; the others as the files have them with all layers
///   toggle-12.length=90 mm               a property of a declaration
///   cap-shroud.port.pin-to-pin=11 m      a property of one side of a stay
///   forestay.turnbuckle-12.open=60 %     how a part in the stack of a stay is set
///   boat.beam=3.3 m                      a particular of the boat
/// and of wishes such as
///   mast head-aft 20 mm                  what a mast is to be tuned to
///   forestay tension 15 %                what a stay is to be tuned to
/// Null when there are neither, or when one can not be read, which has been reported.
std::shared_ptr<const SyntaxTree> read_what_if(const std::vector<std::string>& settings,
                                               const std::vector<std::string>& wishes,
                                               const std::vector<std::shared_ptr<const SyntaxTree>>& trees,
                                               SourceSet& sources, DiagnosticSink& sink,
                                               const std::string& as_of);

} // namespace sheerpole
