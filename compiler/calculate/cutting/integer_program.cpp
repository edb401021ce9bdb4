#include "calculate/cutting/integer_program.hpp"

#include <algorithm>
#include <cmath>
#include <coin/CbcHeuristic.hpp>
#include <coin/CbcModel.hpp>
#include <coin/CglGomory.hpp>
#include <coin/CglKnapsackCover.hpp>
#include <coin/CglMixedIntegerRounding2.hpp>
#include <coin/CglProbing.hpp>
#include <coin/CoinPackedMatrix.hpp>
#include <coin/OsiClpSolverInterface.hpp>
#include <numeric>

namespace sheerpole::cutting {
namespace {

/// The cutoff becomes a row: CBC takes one of its own for the cost of a known solution, and from that for
/// as much less as it thinks the next better solution must cost.
OsiClpSolverInterface load(const WholeProgram& program) {
  const int rows = static_cast<int>(program.row_least.size()) + 1;
  CoinPackedMatrix matrix(true, 0, 0);
  matrix.setDimensions(rows, 0);
  std::vector<double> least(program.columns.size(), 0);
  std::vector<double> most;
  std::vector<double> cost;
  std::vector<double> row_least = program.row_least;
  std::vector<double> row_most = program.row_most;
  row_least.push_back(-unlimited());
  row_most.push_back(program.cutoff);
  std::vector<int> column_rows;
  std::vector<double> factors;
  for (const WholeColumn& column : program.columns) {
    column_rows = column.rows;
    factors = column.factors;
    if (column.cost != 0) {
      column_rows.push_back(rows - 1);
      factors.push_back(column.cost);
    }
    matrix.appendCol(static_cast<int>(column_rows.size()), column_rows.data(), factors.data());
    most.push_back(column.most);
    cost.push_back(column.cost);
  }
  OsiClpSolverInterface solver;
  solver.messageHandler()->setLogLevel(0);
  solver.getModelPtr()->setLogLevel(0);
  solver.setHintParam(OsiDoReducePrint, true, OsiHintTry);
  solver.loadProblem(matrix, least.data(), most.data(), cost.data(), row_least.data(), row_most.data());
  for (int c = 0; c < static_cast<int>(program.columns.size()); ++c)
    solver.setInteger(c);
  return solver;
}

} // namespace

double unlimited() {
  return COIN_DBL_MAX;
}

WholeAnswer solve(const WholeProgram& program) {
  WholeAnswer answer;
  OsiClpSolverInterface solver = load(program);
  solver.initialSolve();
  if (solver.isProvenPrimalInfeasible()) {
    answer.finished = true;
    return answer;
  }
  CbcModel model(solver);
  model.setLogLevel(0);
  model.messageHandler()->setLogLevel(0);
  model.solver()->messageHandler()->setLogLevel(0);
  CglProbing probing;
  probing.setUsingObjective(1);
  probing.setMaxPass(1);
  probing.setMaxProbe(50);
  probing.setMaxLook(20);
  CglGomory gomory;
  gomory.setLimit(200);
  CglKnapsackCover cover;
  CglMixedIntegerRounding2 rounding;
  model.addCutGenerator(&probing, -1, "probing");
  model.addCutGenerator(&gomory, -1, "gomory");
  model.addCutGenerator(&cover, -1, "cover");
  model.addCutGenerator(&rounding, -1, "rounding");
  CbcRounding round(model);
  model.addHeuristic(&round);
  model.setMaximumNodes(program.nodes);
  if (program.cutoff <= program.good_enough)
    model.setMaximumSolutions(1);
  model.branchAndBound();

  answer.finished = model.status() == 0;
  if (const double* best = model.bestSolution())
    for (std::size_t c = 0; c < program.columns.size(); ++c)
      answer.amounts.push_back(std::llround(best[c]));
  if (!answer.amounts.empty() && model.getObjValue() <= program.good_enough + 0.5)
    answer.finished = true;
  return answer;
}

namespace {

/// What divides the cost of every column.
std::int64_t common_cost(const Problem& problem, std::span<const Pattern> patterns,
                         std::int64_t most_cost) {
  std::int64_t common = 0;
  for (const Pattern& pattern : patterns)
    common = std::gcd(common, cost_of(problem, pattern));
  for (const Item& item : problem.items)
    if (item.skip_cost <= most_cost)
      common = std::gcd(common, item.skip_cost);
  return std::max<std::int64_t>(common, 1);
}

/// Whether the packing is what it should be; the solver works in floating point.
bool holds(const Problem& problem, const Packing& packing, std::int64_t most_cost) {
  std::vector<std::int64_t> cut = packing.skipped;
  std::vector<std::int64_t> used(problem.kinds.size());
  for (const Pattern& pattern : packing.stocks) {
    ++used[pattern.kind];
    for (const auto& [item, count] : pattern.counts)
      cut[item] += count;
  }
  for (std::size_t i = 0; i < problem.items.size(); ++i)
    if (cut[i] < problem.items[i].demand)
      return false;
  for (std::size_t k = 0; k < problem.kinds.size(); ++k)
    if (used[k] > problem.kinds[k].available)
      return false;
  return cost_of(problem, packing) <= most_cost;
}

} // namespace

IntegerSolution solve_integer(const Problem& problem, std::span<const Pattern> patterns, Aim aim,
                              std::int64_t most_cost, std::int64_t good_enough, int nodes) {
  const std::size_t items = problem.items.size();
  const std::int64_t common = common_cost(problem, patterns, most_cost);
  const auto in_common = [&](std::int64_t cost) {
    const std::int64_t units = cost / common;
    return static_cast<double>(units);
  };

  WholeProgram program;
  program.nodes = nodes;
  for (const Item& item : problem.items) {
    program.row_least.push_back(static_cast<double>(item.demand));
    program.row_most.push_back(unlimited());
  }
  for (const Kind& kind : problem.kinds) {
    program.row_least.push_back(-unlimited());
    program.row_most.push_back(static_cast<double>(kind.available));
  }
  const int cost_row = static_cast<int>(program.row_least.size());
  if (aim == Aim::stocks_begun) {
    program.row_least.push_back(-unlimited());
    program.row_most.push_back(in_common(most_cost));
    program.cutoff = static_cast<double>(problem.rank);
    program.good_enough = static_cast<double>(good_enough);
  } else {
    program.cutoff = in_common(most_cost);
    program.good_enough = in_common(good_enough);
  }
  const auto priced = [&](WholeColumn column, std::int64_t cost, double stocks) {
    if (aim == Aim::stocks_begun) {
      column.rows.push_back(cost_row);
      column.factors.push_back(in_common(cost));
      column.cost = stocks;
    } else {
      column.cost = in_common(cost);
    }
    program.columns.push_back(std::move(column));
  };
  for (const Pattern& pattern : patterns) {
    WholeColumn column;
    std::int64_t most = 0;
    for (const auto& [item, count] : pattern.counts) {
      column.rows.push_back(static_cast<int>(item));
      column.factors.push_back(static_cast<double>(count));
      most = std::max(most, (problem.items[item].demand + count - 1) / count);
    }
    column.rows.push_back(static_cast<int>(items + pattern.kind));
    column.factors.push_back(1);
    column.most = static_cast<double>(std::min(most, problem.kinds[pattern.kind].available));
    priced(std::move(column), cost_of(problem, pattern), 1);
  }
  std::vector<std::size_t> skipping;
  for (std::size_t i = 0; i < items; ++i)
    if (problem.items[i].skip_cost <= most_cost) {
      skipping.push_back(i);
      priced({{static_cast<int>(i)}, {1}, static_cast<double>(problem.items[i].demand), 0},
             problem.items[i].skip_cost, 0);
    }

  const WholeAnswer answer = solve(program);
  IntegerSolution solution;
  solution.finished = answer.finished;
  if (answer.amounts.empty())
    return solution;
  Packing packing;
  packing.skipped.assign(items, 0);
  for (std::size_t p = 0; p < patterns.size(); ++p)
    packing.stocks.insert(packing.stocks.end(), static_cast<std::size_t>(answer.amounts[p]), patterns[p]);
  for (std::size_t s = 0; s < skipping.size(); ++s)
    packing.skipped[skipping[s]] = answer.amounts[patterns.size() + s];
  if (!holds(problem, packing, most_cost)) {
    solution.finished = false;
    return solution;
  }
  tidy(problem, packing);
  solution.packing = std::move(packing);
  return solution;
}

} // namespace sheerpole::cutting
