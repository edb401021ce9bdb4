#pragma once

#include "calculate/derived.hpp"
#include "diagnostics/sink.hpp"

#include <functional>
#include <string>

namespace sheerpole {

/// The same stay on the other side of the boat; null when there is none.
const DerivedStay* other_side(const Rig& rig, const Derived& derived, const DerivedStay& stay);

/// Makes the findings about one stay, calling it by the name given: `cap-shroud.port`, or `cap-shroud` for
/// both sides.
using FindingsOfStay =
    std::function<std::vector<Diagnostic>(const DerivedStay& stay, const std::string& name)>;

/// Reports what `findings_of` finds about each stay. What both sides of a mirrored stay have alike, to the
/// last word and place, is said once, about the stay without a side.
void report_by_side(const Rig& rig, const Derived& derived, DiagnosticSink& sink,
                    const FindingsOfStay& findings_of);

} // namespace sheerpole
