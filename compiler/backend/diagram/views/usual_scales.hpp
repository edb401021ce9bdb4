#pragma once

#include <vector>

namespace sheerpole {

inline constexpr double smallest_denominator = 10.0;
inline constexpr double largest_denominator = 1e7;

/// The usual denominators of scales, 1:10 first.
std::vector<double> usual_denominators();

} // namespace sheerpole
