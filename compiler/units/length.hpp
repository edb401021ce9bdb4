#pragma once

#include "units/measure.hpp"

namespace sheerpole {

/// A length, kept in metres.
class Length : public Measure<Length> {
public:
  static constexpr Length metres(double x) { return from_si(x); }
  static constexpr Length millimetres(double x) { return from_si(x / 1000.0); }
  static constexpr Length inches(double x) { return from_si(x * 0.0254); } // exact by definition (1959)
  constexpr double metres() const { return si_; }
  constexpr double millimetres() const { return si_ * 1000.0; }
  constexpr double inches() const { return si_ / 0.0254; }
};

} // namespace sheerpole
