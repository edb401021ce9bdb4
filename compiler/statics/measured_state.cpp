#include "statics/measured_state.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

namespace sheerpole::statics {

namespace {

constexpr std::size_t most_states = 40;

/// The diagonal of the inverse of a symmetric matrix, by Gauss and Jordan; infinite where it is singular.
std::vector<double> diagonal_of_inverse(std::vector<std::vector<double>> a) {
  const std::size_t size = a.size();
  for (std::size_t i = 0; i < size; ++i) {
    a[i].resize(2 * size, 0.0);
    a[i][size + i] = 1.0;
  }
  for (std::size_t k = 0; k < size; ++k) {
    std::size_t pivot = k;
    for (std::size_t i = k + 1; i < size; ++i)
      if (std::abs(a[i][k]) > std::abs(a[pivot][k]))
        pivot = i;
    if (!(std::abs(a[pivot][k]) > 0.0))
      return std::vector<double>(size, std::numeric_limits<double>::infinity());
    std::swap(a[k], a[pivot]);
    for (std::size_t i = 0; i < size; ++i) {
      if (i == k)
        continue;
      const double factor = a[i][k] / a[k][k];
      for (std::size_t j = k; j < 2 * size; ++j)
        a[i][j] -= factor * a[k][j];
    }
  }
  std::vector<double> diagonal(size);
  for (std::size_t i = 0; i < size; ++i)
    diagonal[i] = a[i][size + i] / a[i][i];
  return diagonal;
}

class Fit {
public:
  Fit(Solver& solver, std::span<const Measured> measured, std::span<const DoubtfulLength> doubtful,
      const SearchBounds& bounds)
      : solver_(solver), measured_(measured), doubtful_(doubtful), bounds_(bounds) {
    for (const Stay& stay : solver.structure().stays)
      stated_.push_back(stay.unstressed_mm);
    counts_.resize(measured.size());
    for (std::size_t i = 0; i < measured.size(); ++i)
      counts_[i] = is_known(solver.structure(), measured[i].what) && measured[i].bound > 0.0 &&
                   std::isfinite(measured[i].bound) && std::isfinite(measured[i].value);
    varies_.resize(doubtful.size());
    for (std::size_t k = 0; k < doubtful.size(); ++k)
      varies_[k] = doubtful[k].stay.index() < stated_.size() && doubtful[k].bound_mm > 0.0 &&
                   std::isfinite(doubtful[k].bound_mm);
  }

  FittedState run() {
    FittedState best = at(std::vector<double>(doubtful_.size(), 0.0), nullptr);
    while (best.state.outcome == Outcome::equilibrium && states_ < most_states) {
      const Influence influence = *solver_.influence(best.state);
      const std::vector<double> step = step_from(best, influence);
      double longest = 0.0;
      for (const double length : step)
        longest = std::max(longest, std::abs(length));
      if (longest < 1e-7) {
        best.converged = true;
        break;
      }
      if (!go(best, step)) {
        // Nothing better by the least that a sum of squares shows.
        best.converged = longest < 1e-3;
        break;
      }
    }
    best.states = states_;
    return best;
  }

private:
  FittedState at(std::vector<double> shorter, const Configuration* from) {
    std::vector<double> lengths = stated_;
    for (std::size_t k = 0; k < doubtful_.size(); ++k)
      if (varies_[k])
        lengths[doubtful_[k].stay.index()] -= shorter[k];
    FittedState fitted;
    fitted.state = solver_.settle(lengths, bounds_, from);
    ++states_;
    fitted.off_bounds.assign(measured_.size(), 0.0);
    for (std::size_t i = 0; i < measured_.size(); ++i)
      if (counts_[i]) {
        fitted.off_bounds[i] =
            (value_of(solver_.structure(), measured_[i].what, fitted.state) - measured_[i].value) /
            measured_[i].bound;
        fitted.sum_of_squares += fitted.off_bounds[i] * fitted.off_bounds[i];
      }
    for (std::size_t k = 0; k < doubtful_.size(); ++k)
      if (varies_[k])
        fitted.sum_of_squares += std::pow(shorter[k] / doubtful_[k].bound_mm, 2);
    fitted.shorter_mm = std::move(shorter);
    fitted.deviation_mm.assign(doubtful_.size(), 0.0);
    return fitted;
  }

  /// The step to the least of the sum as the influence has it, within the bounds.
  std::vector<double> step_from(FittedState& from, const Influence& influence) const {
    const std::size_t count = doubtful_.size();
    std::vector<std::vector<double>> a(count, std::vector<double>(count, 0.0));
    std::vector<double> b(count, 0.0), least(count, 0.0), most(count, 0.0);
    for (std::size_t k = 0; k < count; ++k) {
      if (!varies_[k]) {
        a[k][k] = 1.0;
        continue;
      }
      const double bound = doubtful_[k].bound_mm;
      a[k][k] = 1.0 / (bound * bound);
      b[k] = from.shorter_mm[k] / (bound * bound);
      least[k] = -most_bounds_off * bound - from.shorter_mm[k];
      most[k] = most_bounds_off * bound - from.shorter_mm[k];
    }
    for (std::size_t i = 0; i < measured_.size(); ++i) {
      if (!counts_[i])
        continue;
      std::vector<double> by(count, 0.0);
      for (std::size_t k = 0; k < count; ++k)
        if (varies_[k])
          by[k] = change_of(solver_.structure(), measured_[i].what, influence, doubtful_[k].stay) /
                  measured_[i].bound;
      for (std::size_t k = 0; k < count; ++k) {
        b[k] += by[k] * from.off_bounds[i];
        for (std::size_t j = 0; j < count; ++j)
          a[k][j] += by[k] * by[j];
      }
    }
    const std::vector<double> variance = diagonal_of_inverse(a);
    for (std::size_t k = 0; k < count; ++k)
      from.deviation_mm[k] = varies_[k] ? std::sqrt(std::max(variance[k], 0.0)) : 0.0;
    return least_within_bounds(a, b, least, most);
  }

  /// Takes as much of the step as makes the sum less.
  bool go(FittedState& best, const std::vector<double>& step) {
    for (double share = 1.0; share > 1e-3 && states_ < most_states; share *= 0.5) {
      std::vector<double> shorter = best.shorter_mm;
      for (std::size_t k = 0; k < shorter.size(); ++k)
        shorter[k] += share * step[k];
      FittedState there = at(std::move(shorter), &best.state.configuration);
      if (there.state.outcome != Outcome::equilibrium || !(there.sum_of_squares < best.sum_of_squares))
        continue;
      best = std::move(there);
      return true;
    }
    return false;
  }

  Solver& solver_;
  std::span<const Measured> measured_;
  std::span<const DoubtfulLength> doubtful_;
  const SearchBounds& bounds_;
  std::vector<double> stated_;
  std::vector<bool> counts_, varies_;
  std::size_t states_ = 0;
};

} // namespace

FittedState fit_measured(Solver& solver, std::span<const Measured> measured,
                         std::span<const DoubtfulLength> doubtful, const SearchBounds& bounds) {
  return Fit(solver, measured, doubtful, bounds).run();
}

} // namespace sheerpole::statics
