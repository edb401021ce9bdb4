#pragma once

#include "calculate/end_use.hpp"
#include "calculate/line_end.hpp"

namespace sheerpole {

/// What a wire end uses beyond the shoulder of its terminal: the depth to which it is inserted. Missing
/// when the part has no wire-socket end or states no depth. A bare end uses nothing. Source: the depth is
/// the maker's; that it adds to the cut is common practice, no source.
EndUse insertion(const LineEnd& end);

} // namespace sheerpole
