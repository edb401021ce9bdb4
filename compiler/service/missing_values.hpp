#pragma once

#include "calculate/derived.hpp"
#include "diagnostics/diagnostic.hpp"
#include "model/rig.hpp"
#include "source/source_set.hpp"
#include "syntax/syntax_tree.hpp"

#include <memory>
#include <vector>

namespace sheerpole {

/// Gives each finding of a property that the tune asks for (`tune-input-missing`) its edit: the name of the
/// property in the block where it belongs, with a blank behind it. Until somebody fills the blank the file
/// says that a value is missing there; no number is put in. `findings` are in the order of file and place.
/// Without the trees of the files no finding changes.
void suggest_missing_values(const Rig& rig, const Derived& derived,
                            const std::vector<std::shared_ptr<const SyntaxTree>>& trees,
                            const SourceSet& sources, std::vector<Diagnostic>& findings);

} // namespace sheerpole
