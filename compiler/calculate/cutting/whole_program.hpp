#pragma once

#include <cstdint>
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

} // namespace sheerpole::cutting
