#pragma once

#include "model/remark.hpp"
#include "source/span.hpp"
#include "units/length.hpp"

#include <cstddef>
#include <optional>
#include <vector>

namespace sheerpole {

/// How the true value of an input lies about the stated one.
enum class Distribution {
  rectangular,   ///< anywhere within the bound alike (JCGM 100:2008, 4.3.7)
  triangular,    ///< within the bound, nearer the middle likelier (JCGM 100:2008, 4.3.9)
  normal_at_two, ///< normal, the bound being two standard deviations
  student        ///< mean of repeated readings (JCGM 101:2008, 6.4.9); the bound is s / sqrt(n)
};

/// One input that may be off.
struct UncertainInput {
  Remark name;        ///< "x of the place of plate-a"
  double bound = 0.0; ///< half width, or s / sqrt(n); in the unit of the input
  Distribution distribution = Distribution::rectangular;
  std::size_t freedom = 0; ///< degrees of freedom of a mean of readings; 0: not from readings
  std::optional<Span> place;

  /// Standard uncertainty over the bound.
  double standard_over_bound() const;
};

/// What one input does to a length.
struct UncertaintyShare {
  std::size_t input = 0; ///< in Derived::inputs
  Length per_bound;      ///< how the length moves when the input is off by its bound
  Length standard;       ///< |per_bound| x standard uncertainty over bound
  double share = 0.0;    ///< of the variance, 0 to 1
};

/// How well the length of a finished stay is known, in three ways: of its cut, without what is only marked
/// off there (burys, tails), which moves no bearing whatever it is off by.
struct Uncertainty {
  Length worst_low;     ///< by how much it may be shorter at worst, not more than nothing
  Length worst_high;    ///< and longer
  Length standard;      ///< combined standard uncertainty, law of propagation (JCGM 100:2008, 5.1)
  double freedom = 0.0; ///< effective degrees of freedom (Welch-Satterthwaite); 0: unlimited
  double coverage_factor = 0.0;
  Length expanded;  ///< half of the 95 % range by the law of propagation
  Length drawn_low; ///< 95 % range by Monte Carlo (JCGM 101:2008), less the length as worked out
  Length drawn_high;
  Length drawn_standard;
  std::vector<UncertaintyShare> shares; ///< largest share first: what to measure next
  /// Of the stay's adjuster, with no creep and no cold: how often of all draws it can be set so that the
  /// finished stay fits. Nothing when the stay has none, or several.
  std::optional<double> reaches;
  std::vector<Remark> without_bound; ///< inputs of this length for which no bound is stated
};

} // namespace sheerpole
