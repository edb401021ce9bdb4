#include "calculate/physics/inextensible_catenary.hpp"

#include "calculate/physics/finite_value.hpp"

#include <cmath>

namespace sheerpole {

namespace {

/// Deeper than any line hangs; from here on the steps would become many.
constexpr double largest_sag_over_span = 1e6;

/// cosh(u) - 1, with all its digits where u is small.
double cosh_less_one(double u) {
  const double half = std::sinh(u / 2.0);
  return 2.0 * half * half;
}

} // namespace

std::optional<Length> catenary_parameter(Length span, Length sag) {
  if (span <= Length() || sag <= Length() || sag / span > largest_sag_over_span)
    return std::nullopt;
  // With u = L / 2a the sag ratio is (cosh u - 1) / (2 u), which rises with u and is convex: from a start
  // above the root Newton's steps come down to it and never pass it, until the last digit. Both starts are
  // above: the ratio at u is at least u / 4, and from u = 4 on more than e^(u/2) / 8.
  const double ratio = sag / span;
  double u = ratio < 1.0 ? 4.0 * ratio : 2.0 * std::log(8.0 * ratio);
  for (int step = 0; step < 100; ++step) {
    const double miss = cosh_less_one(u) / (2.0 * u) - ratio;
    const double slope = (std::sinh(u) - cosh_less_one(u) / u) / (2.0 * u);
    const double next = u - miss / slope;
    if (!(next < u))
      return finite_length(span.metres() / (2.0 * u));
    u = next;
  }
  return std::nullopt;
}

std::optional<Length> catenary_sag(Length span, Length parameter) {
  if (span <= Length() || parameter <= Length())
    return std::nullopt;
  return finite_length(parameter.metres() * cosh_less_one(span / parameter / 2.0));
}

std::optional<Length> catenary_length(Length span, Length parameter) {
  if (span <= Length() || parameter <= Length())
    return std::nullopt;
  return finite_length(2.0 * parameter.metres() * std::sinh(span / parameter / 2.0));
}

} // namespace sheerpole
