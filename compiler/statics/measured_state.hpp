#pragma once

#include "statics/quantity.hpp"
#include "statics/solver.hpp"

#include <cstddef>
#include <span>
#include <vector>

namespace sheerpole::statics {

/// What was measured on the standing rig.
struct Measured {
  Quantity what;
  double value = 0.0; ///< N or mm
  double bound = 0.0; ///< ± as much, over 0
};

/// A stay whose unstressed length is not known better than within a bound.
struct DoubtfulLength {
  StayId stay;
  double bound_mm = 0.0; ///< ±, over 0
};

/// A fitted length goes no further from what was stated than so many of its bounds.
inline constexpr double most_bounds_off = 3.0;

struct FittedState {
  bool converged = false;           ///< without it the rest is of where the search ended
  State state;                      ///< with the fitted lengths
  std::vector<double> shorter_mm;   ///< by doubtful length: how much shorter than stated it was fitted
  std::vector<double> deviation_mm; ///< of each, the bounds taken as standard deviations
  std::vector<double> off_bounds;   ///< by measured value: (fitted - measured) / bound
  double sum_of_squares = 0.0;      ///< of those, and of shorter / bound
  std::size_t states = 0;           ///< how many were worked out
};

/// The unstressed lengths with which the rig stands as it was measured, as nearly as the bounds say: the
/// least of the sum of squares of (value - measured) / bound and of (length - stated) / bound, stated being
/// the structure's own. By the influence of each state, a step halved until the sum falls, 40 states at
/// most. What is unknown, or has no bound over 0, is left out: its entries are 0. Source: Gauss-Newton, any
/// textbook of least squares.
FittedState fit_measured(Solver& solver, std::span<const Measured> measured,
                         std::span<const DoubtfulLength> doubtful, const SearchBounds& bounds = {});

} // namespace sheerpole::statics
