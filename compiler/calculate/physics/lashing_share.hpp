#pragma once

#include <numbers>
#include <optional>

namespace sheerpole {

/// What a lashing between two eyes carries, over what it would if all its legs pulled alike. Of N turns 2N
/// legs stand between the eyes; the first is hauled to the full tension and each eye on the way takes its
/// friction from the next: mean of r^i for i = 0 to 2N - 1, with r = exp(-mu theta) and theta the angle
/// round an eye, half a turn unless stated. Source: the capstan law, summed over the legs. It is the low
/// value, of a lashing hauled from one end and never worked in. `friction` is the coefficient of the cord
/// on the eye.
///
/// Nothing when the friction or the angle is less than zero or not finite, or the turns are not 1 to 1000.
std::optional<double> lashing_share(double friction, int turns, double wrap_radians = std::numbers::pi);

} // namespace sheerpole
