#include "calculate/uncertainty/random_numbers.hpp"

#include <array>
#include <cmath>
#include <numbers>

namespace sheerpole {

namespace {

/// Highest power first.
template <std::size_t N>
double polynomial(const std::array<double, N>& coefficients, double x) {
  double sum = 0.0;
  for (const double c : coefficients)
    sum = sum * x + c;
  return sum;
}

// AS 241, PPND16: numerator and denominator of the three ranges.
constexpr std::array middle_over{2.5090809287301226727e3, 3.3430575583588128105e4, 6.7265770927008700853e4,
                                 4.5921953931549871457e4, 1.3731693765509461125e4, 1.9715909503065514427e3,
                                 1.3314166789178437745e2, 3.3871328727963666080e0};
constexpr std::array middle_under{
    5.2264952788528545610e3, 2.8729085735721942674e4, 3.9307895800092710610e4, 2.1213794301586595867e4,
    5.3941960214247511077e3, 6.8718700749205790830e2, 4.2313330701600911252e1, 1.0};
constexpr std::array near_over{7.74545014278341407640e-4, 2.27238449892691845833e-2,
                               2.41780725177450611770e-1, 1.27045825245236838258e0,
                               3.64784832476320460504e0,  5.76949722146069140550e0,
                               4.63033784615654529590e0,  1.42343711074968357734e0};
constexpr std::array near_under{1.05075007164441684324e-9, 5.47593808499534494600e-4,
                                1.51986665636164571966e-2, 1.48103976427480074590e-1,
                                6.89767334985100004550e-1, 1.67638483018380384940e0,
                                2.05319162663775882187e0,  1.0};
constexpr std::array far_over{2.01033439929228813265e-7, 2.71155556874348757815e-5,
                              1.24266094738807843860e-3, 2.65321895265761230930e-2,
                              2.96560571828504891230e-1, 1.78482653991729133580e0,
                              5.46378491116411436990e0,  6.65790464350110377720e0};
constexpr std::array far_under{2.04426310338993978564e-15, 1.42151175831644588870e-7,
                               1.84631831751005468180e-5,  7.86869131145613259100e-4,
                               1.48753612908506148525e-2,  1.36929880922735805310e-1,
                               5.99832206555887937690e-1,  1.0};

/// How often a Student variable of `freedom` degrees lies between -t and t: the finite sums of even and odd
/// degrees. Source: Abramowitz and Stegun, Handbook of Mathematical Functions, 26.7.3 and 26.7.4.
double student_within(double t, std::size_t freedom) {
  const double theta = std::atan(t / std::sqrt(static_cast<double>(freedom)));
  const double cosine = std::cos(theta);
  const double square = cosine * cosine;
  double term = 1.0;
  double sum = 1.0;
  if (freedom % 2 == 1) {
    if (freedom == 1)
      return 2.0 * theta / std::numbers::pi;
    for (std::size_t k = 3; k <= freedom - 2; k += 2) {
      term *= square * static_cast<double>(k - 1) / static_cast<double>(k);
      sum += term;
    }
    return 2.0 / std::numbers::pi * (theta + std::sin(theta) * cosine * sum);
  }
  for (std::size_t k = 2; k <= freedom - 2; k += 2) {
    term *= square * static_cast<double>(k - 1) / static_cast<double>(k);
    sum += term;
  }
  return std::sin(theta) * sum;
}

} // namespace

double normal_quantile(double probability) {
  const double q = probability - 0.5;
  if (std::fabs(q) <= 0.425) {
    const double r = 0.180625 - q * q;
    return q * polynomial(middle_over, r) / polynomial(middle_under, r);
  }
  double r = std::sqrt(-std::log(q < 0.0 ? probability : 1.0 - probability));
  double result = 0.0;
  if (r <= 5.0) {
    r -= 1.6;
    result = polynomial(near_over, r) / polynomial(near_under, r);
  } else {
    r -= 5.0;
    result = polynomial(far_over, r) / polynomial(far_under, r);
  }
  return q < 0.0 ? -result : result;
}

double student_factor_95(std::size_t freedom) {
  const double normal = normal_quantile(0.975);
  if (freedom == 0 || freedom > 1000)
    return normal;
  // The factor falls from 12.7 for one degree to 1.96: bisection between them always ends.
  double low = normal;
  double high = 13.0;
  for (int step = 0; step < 60; ++step) {
    const double t = (low + high) / 2.0;
    (student_within(t, freedom) < 0.95 ? low : high) = t;
  }
  return (low + high) / 2.0;
}

} // namespace sheerpole
