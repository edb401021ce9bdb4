#pragma once

#include "names/resolved_tree.hpp"

namespace sheerpole {

/// Puts what `over` states in the place of what `base` states. A stack takes the place of the whole stack
/// and of the changes to it; changes to a stack come on top.
void lay_over(ResolvedDeclaration& base, const ResolvedDeclaration& over);

} // namespace sheerpole
