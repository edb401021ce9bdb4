#pragma once

#include "calculate/cut/line_ends.hpp"
#include "rules/by_side.hpp"

#include <functional>
#include <string>

namespace sheerpole {

/// By what a splice is told from others in the same rope: the splice, or the part that it holds. Null: it
/// is not looked at.
using SpliceKey = const void* (*)(const SplicedEnd& end);

using LookAtSplice = std::function<void(const SplicedEnd& end, const Stay& stay, const std::string& name,
                                        StayReport& report)>;

/// Looks at the splices of each stay, once for each key and rope.
void look_at_splices(const Rig& rig, const Derived& derived, CheckReport& report, SpliceKey key,
                     const LookAtSplice& look);

} // namespace sheerpole
