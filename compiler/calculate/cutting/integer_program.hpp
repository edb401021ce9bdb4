#pragma once

#include "calculate/cutting/problem.hpp"

#include <cstdint>
#include <optional>
#include <span>
#include <vector>

namespace sheerpole::cutting {

/// An unknown of an integer program: a whole number from 0 to `most`.
struct WholeColumn {
  std::vector<int> rows; ///< ascending
  std::vector<double> factors;
  double most = 0;
  double cost = 0;
};

/// An integer program: the least total cost with every row between its bounds.
struct WholeProgram {
  std::vector<WholeColumn> columns;
  std::vector<double> row_least;
  std::vector<double> row_most;
  double cutoff = 0;      ///< solutions that cost more do not count
  double good_enough = 0; ///< a solution that costs no more ends the search
  int nodes = 0;          ///< of branching, at most
};

struct WholeAnswer {
  std::vector<std::int64_t> amounts; ///< one for each column; empty when nothing was found
  bool finished = false;             ///< ended because there is nothing better, not by a limit
};

/// By COIN-OR CBC with cuts, in one thread, silent; limits are counts of nodes, never time.
WholeAnswer solve(const WholeProgram& program);

/// What no bound of a row limits.
double unlimited();

/// What an integer program makes smallest.
enum class Aim {
  cost,        ///< mm
  stocks_begun ///< their number, at no more than a given cost
};

struct IntegerSolution {
  std::optional<Packing> packing; ///< nothing when there is none within the cost, or none was found
  bool finished = false; ///< every choice was looked at: there is no better one from these patterns
};

/// The best whole numbers of the given patterns: each item cut or skipped as often as demanded or oftener,
/// no kind of stock used up, the cost at most `most_cost`. By COIN-OR CBC, in one thread, silent, at most
/// `nodes` of branching. `good_enough`: stop at the first solution whose aim is no greater.
IntegerSolution solve_integer(const Problem& problem, std::span<const Pattern> patterns, Aim aim,
                              std::int64_t most_cost, std::int64_t good_enough, int nodes);

} // namespace sheerpole::cutting
