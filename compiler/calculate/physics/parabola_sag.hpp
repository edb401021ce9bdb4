#pragma once

#include "units/force.hpp"
#include "units/length.hpp"

#include <optional>

namespace sheerpole {

/// The largest sag over span for which the parabola is used. There the parabola hangs 0.5 % less deep than
/// the inextensible catenary of the same horizontal tension and is longer than its chord by 0.3 % less;
/// below, the difference falls with the square of the ratio.
inline constexpr double parabola_sag_over_span_limit = 1.0 / 16.0;

/// Sag at mid-span of a taut line: w L^2 / (8 T). `weight` is the load square to the chord, in newtons for
/// each metre of it: of a stay that leans, its own weight times the cosine of the chord's slope. Source:
/// elementary statics of a parabola. Nothing unless the span and the tension are more than zero and the
/// weight is not less, or when the sag is more than a sixteenth of the span; elastic_catenary.hpp has no
/// such limit.
std::optional<Length> parabola_sag(Length span, double weight_newtons_per_metre, Force tension);

/// Length of the sagging line beyond its chord: 8 y^2 / (3 L). Source: first term of the length of a
/// parabola. Nothing unless the span is more than zero and the sag between zero and a sixteenth of it.
std::optional<Length> parabola_extra_length(Length span, Length sag);

} // namespace sheerpole
