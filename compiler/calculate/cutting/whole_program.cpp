#include "calculate/cutting/whole_program.hpp"

#include <coin/CbcHeuristic.hpp>
#include <coin/CbcModel.hpp>
#include <coin/CglGomory.hpp>
#include <coin/CglKnapsackCover.hpp>
#include <coin/CglMixedIntegerRounding2.hpp>
#include <coin/CglProbing.hpp>
#include <coin/CoinPackedMatrix.hpp>
#include <coin/OsiClpSolverInterface.hpp>

#include <cmath>

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

} // namespace sheerpole::cutting
