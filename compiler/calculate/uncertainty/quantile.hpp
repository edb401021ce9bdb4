#pragma once

#include <cstddef>

namespace sheerpole {

/// The value below which a standard normal variable lies with this probability, 0 < p < 1. Source: Wichura,
/// Algorithm AS 241 (PPND16), Applied Statistics 37 (1988); about sixteen figures.
double normal_quantile(double probability);

/// The value t for which a Student variable of `freedom` degrees lies between -t and t in 95 of 100 cases;
/// for 0, which means no end of degrees, 1.95996. Source: the finite sums of Abramowitz and Stegun,
/// Handbook of Mathematical Functions, 26.7.3 and 26.7.4, solved by bisection; values as JCGM 100:2008,
/// table G.2.
double student_factor_95(std::size_t freedom);

} // namespace sheerpole
