#pragma once

#include "units/length.hpp"

#include <optional>

namespace sheerpole {

// A line that does not stretch, hung between two places at one height. Its shape has one number, the
// parameter a = H / w, horizontal tension over weight for each metre. Source of all three: the catenary, y
// = a cosh(x / a). Nothing unless every length is more than zero and the sag not more than a million spans,
// or when the result is too large for a number.

/// a from what is seen: the root of a (cosh(L / 2a) - 1) = sag, by Newton's method in L / 2a.
std::optional<Length> catenary_parameter(Length span, Length sag);

/// Sag below the chord: a (cosh(L / 2a) - 1).
std::optional<Length> catenary_sag(Length span, Length parameter);

/// Length of the line: 2 a sinh(L / 2a).
std::optional<Length> catenary_length(Length span, Length parameter);

} // namespace sheerpole
