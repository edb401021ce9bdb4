#pragma once

#include "units/measure.hpp"

namespace sheerpole {

/// A force, kept in newtons. Mass is another type; 200 kg is never a force.
class Force : public Measure<Force> {
public:
  static constexpr Force newtons(double x) { return from_si(x); }
  static constexpr Force kilonewtons(double x) { return from_si(x * 1000.0); }
  constexpr double newtons() const { return si_; }
  constexpr double kilonewtons() const { return si_ / 1000.0; }
};

} // namespace sheerpole
