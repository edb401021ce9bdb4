#include "backend/diagram/views/usual_scales.hpp"

#include <array>

namespace sheerpole {

namespace {

/// Denominators in use on drawings, each times a power of ten (common practice, no source; 1, 2 and 5 are
/// in ISO 5455).
constexpr std::array<double, 10> mantissas{1.0, 1.25, 1.5, 2.0, 2.5, 3.0, 4.0, 5.0, 6.0, 7.5};

} // namespace

std::vector<double> usual_denominators() {
  std::vector<double> denominators;
  for (double power = smallest_denominator; power < largest_denominator; power *= 10.0)
    for (const double mantissa : mantissas)
      denominators.push_back(mantissa * power);
  return denominators;
}

} // namespace sheerpole
