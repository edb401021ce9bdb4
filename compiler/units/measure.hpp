#pragma once

#include "base/internal_error.hpp"

#include <cmath>
#include <compare>

namespace sheerpole {

/// Base of the quantity types: one double in the coherent SI unit. Two kinds of quantity never mix, a bare
/// number never becomes one silently, and NaN or infinity cannot be stored.
template <class Kind>
class Measure {
public:
  constexpr Measure() = default;
  /// Value in the coherent SI unit of the kind.
  constexpr double si() const { return si_; }
  static constexpr Kind from_si(double si) {
    if (!std::isfinite(si))
      internal_error("a quantity that is not a finite number");
    Kind result;
    result.si_ = si;
    return result;
  }

  friend constexpr auto operator<=>(const Measure& a, const Measure& b) { return a.si_ <=> b.si_; }
  friend constexpr bool operator==(const Measure& a, const Measure& b) { return a.si_ == b.si_; }
  friend constexpr Kind operator+(Kind a, Kind b) { return from_si(a.si_ + b.si_); }
  friend constexpr Kind operator-(Kind a, Kind b) { return from_si(a.si_ - b.si_); }
  friend constexpr Kind operator-(Kind a) { return from_si(-a.si_); }
  friend constexpr Kind operator*(Kind a, double factor) { return from_si(a.si_ * factor); }
  friend constexpr Kind operator*(double factor, Kind a) { return from_si(a.si_ * factor); }
  friend constexpr Kind operator/(Kind a, double divisor) { return from_si(a.si_ / divisor); }
  friend constexpr double operator/(Kind a, Kind b) { return a.si_ / b.si_; }
  Kind& operator+=(Kind other) { return *static_cast<Kind*>(this) = *static_cast<Kind*>(this) + other; }
  Kind& operator-=(Kind other) { return *static_cast<Kind*>(this) = *static_cast<Kind*>(this) - other; }

protected:
  double si_ = 0.0;
};

} // namespace sheerpole
