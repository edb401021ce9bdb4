#pragma once

#include "calculate/cutting/problem.hpp"

#include <cstdint>
#include <memory>
#include <optional>
#include <span>
#include <vector>

class ClpSimplex;

namespace sheerpole::cutting {

/// Prices of the pieces and of the stocks' scarcity, in whole numbers of 1/scale of a ranked cost. They are
/// exact: for every pattern of kind k the sum of the prices of its pieces is at most its cost less
/// `kinds[k]`.
struct Prices {
  std::int64_t scale = 1;
  std::vector<std::int64_t> items; ///< 0 and above
  std::vector<std::int64_t> kinds; ///< 0 and below
  /// In 1/scale: no packing of the rest costs less. Sum of demand times items, and of available times
  /// kinds.
  std::int64_t bound = 0;
  bool converged = false; ///< no pattern would better the linear program any more
};

/// A pattern in the linear program.
struct FractionalUse {
  std::size_t pattern = 0; ///< place in PatternProgram::patterns
  double stocks = 0;
};

/// The linear program over cutting patterns, which grows by the pattern that its own prices find best:
/// least cost so that each item is cut as often as demanded and no kind of stock is used up. Deterministic.
class PatternProgram {
public:
  /// upper: ranked cost of a known packing.
  PatternProgram(const Problem& problem, RankedCost upper);
  ~PatternProgram();
  PatternProgram(const PatternProgram&) = delete;
  PatternProgram& operator=(const PatternProgram&) = delete;

  /// Adds a pattern; one that is there already is left out.
  void add(const Pattern& pattern);

  /// What is still to be cut and still there. Patterns that would cut too many of an item are left aside.
  void set_rest(std::span<const std::int64_t> demand, std::span<const std::int64_t> available);

  /// Solves for the rest, adding patterns until none betters it, its bound reaches `enough` (a ranked
  /// cost), or `steps` is spent; what it spends is taken from `steps`.
  Prices generate(RankedCost enough, std::int64_t& steps);

  /// The solution of the last generate, most used first (ties: the older pattern). Skipped pieces are not
  /// in it.
  std::vector<FractionalUse> uses() const;

  const std::vector<Pattern>& patterns() const { return patterns_; }

private:
  void append(const Pattern& pattern);
  bool fits_rest(const Pattern& pattern) const;
  void solve();
  Prices price(std::vector<Pattern>& better, std::int64_t& steps);

  const Problem& problem_;
  std::vector<Pattern> patterns_;
  std::vector<Pattern> sorted_; ///< to find one again
  std::vector<std::int64_t> demand_;
  std::vector<std::int64_t> available_;
  Knapsack whole_;
  Knapsack as_cut_;
  std::unique_ptr<ClpSimplex> clp_;
  double cost_unit_ = 1; ///< ranked cost that is 1 in the linear program, so that its numbers stay near 1
  std::int64_t scale_ = 1;
  bool rest_changed_ = true;
};

/// Every pattern that can stand in a packing of ranked cost `most` or less: those whose cost exceeds the
/// prices of their pieces by no more than `most` exceeds the bound. Of the patterns of a kind that counts
/// whole only those are listed to which no further piece can be added; a packing may cut one too many
/// instead. Nothing when there are more than `most_patterns` or listing them takes more than `steps`; what
/// it takes is taken from `steps`. Source: variable fixing by reduced costs, textbook method.
std::optional<std::vector<Pattern>> patterns_within(const Problem& problem, const Prices& prices,
                                                    RankedCost most, std::int64_t most_patterns,
                                                    std::int64_t& steps);

} // namespace sheerpole::cutting
