#include "statics/tangent_matrix.hpp"

#include <Eigen/SparseCholesky>
#include <Eigen/SparseCore>

#include <algorithm>
#include <cmath>
#include <utility>

namespace sheerpole::statics {

namespace {

using SparseMatrix = Eigen::SparseMatrix<double>;

} // namespace

struct TangentMatrix::Sparse {
  SparseMatrix matrix;  ///< lower half
  SparseMatrix shifted; ///< what is factored
  Eigen::SimplicialLDLT<SparseMatrix, Eigen::Lower> factors;
  /// For each element and each number of its block, by rows: where it goes in the values, or `held`.
  std::vector<std::vector<int>> targets;
  std::vector<int> diagonal;
  std::vector<double> weight; ///< of the shift, by unknown
  std::vector<bool> along;    ///< by unknown: a movement along an axis
};

TangentMatrix::TangentMatrix(const Mesh& mesh) : sparse_(std::make_unique<Sparse>()) {
  const auto size = static_cast<Eigen::Index>(mesh.unknowns());
  std::vector<Eigen::Triplet<double>> entries;
  for (Eigen::Index i = 0; i < size; ++i)
    entries.emplace_back(i, i, 0.0);
  for (const Unknowns& unknowns : mesh.elements())
    for (const int row : unknowns)
      for (const int column : unknowns)
        if (row >= column && column != held)
          entries.emplace_back(row, column, 0.0);
  SparseMatrix& matrix = sparse_->matrix;
  matrix.resize(size, size);
  matrix.setFromTriplets(entries.begin(), entries.end());
  matrix.makeCompressed();
  const auto position = [&](int row, int column) {
    const int* begin = matrix.innerIndexPtr() + matrix.outerIndexPtr()[column];
    const int* end = matrix.innerIndexPtr() + matrix.outerIndexPtr()[column + 1];
    return static_cast<int>(std::lower_bound(begin, end, row) - matrix.innerIndexPtr());
  };
  for (const Unknowns& unknowns : mesh.elements()) {
    std::vector<int> targets;
    for (const int row : unknowns)
      for (const int column : unknowns)
        targets.push_back(row >= column && column != held ? position(row, column) : held);
    sparse_->targets.push_back(std::move(targets));
  }
  for (Eigen::Index i = 0; i < size; ++i)
    sparse_->diagonal.push_back(position(static_cast<int>(i), static_cast<int>(i)));
  sparse_->weight.resize(mesh.unknowns());
  sparse_->along.resize(mesh.unknowns());
  const double lever_mm = mesh.shortest_piece_mm();
  for (std::size_t place = 0; place < mesh.places(); ++place)
    for (std::size_t movement = 0; movement < movements_of_end; ++movement)
      if (const int unknown = mesh.unknowns_of(place)[movement]; unknown != held) {
        sparse_->along[static_cast<std::size_t>(unknown)] = movement < 3;
        sparse_->weight[static_cast<std::size_t>(unknown)] = movement < 3 ? 1.0 : lever_mm * lever_mm;
      }
  sparse_->shifted = matrix;
  sparse_->factors.analyzePattern(matrix);
}

TangentMatrix::~TangentMatrix() = default;
TangentMatrix::TangentMatrix(TangentMatrix&&) noexcept = default;
TangentMatrix& TangentMatrix::operator=(TangentMatrix&&) noexcept = default;

void TangentMatrix::clear() {
  std::fill_n(sparse_->matrix.valuePtr(), sparse_->matrix.nonZeros(), 0.0);
}

void TangentMatrix::add(std::size_t element, std::span<const double> block) {
  const std::vector<int>& targets = sparse_->targets[element];
  double* values = sparse_->matrix.valuePtr();
  for (std::size_t i = 0; i < targets.size(); ++i)
    if (targets[i] != held)
      values[targets[i]] += block[i];
}

bool TangentMatrix::factorise(double shift_newtons_per_mm) {
  Sparse& own = *sparse_;
  std::copy_n(own.matrix.valuePtr(), own.matrix.nonZeros(), own.shifted.valuePtr());
  for (std::size_t i = 0; i < own.diagonal.size(); ++i)
    own.shifted.valuePtr()[own.diagonal[i]] += shift_newtons_per_mm * own.weight[i];
  own.factors.factorize(own.shifted);
  if (own.factors.info() != Eigen::Success)
    return false;
  const auto& pivots = own.factors.vectorD();
  for (Eigen::Index i = 0; i < pivots.size(); ++i)
    if (!(pivots[i] > 0.0) || !std::isfinite(pivots[i]))
      return false;
  return true;
}

void TangentMatrix::solve(std::span<double> right_side) const {
  Eigen::Map<Eigen::VectorXd> map(right_side.data(), static_cast<Eigen::Index>(right_side.size()));
  map = sparse_->factors.solve(map).eval();
}

std::vector<double> TangentMatrix::times(std::span<const double> vector) const {
  std::vector<double> product(vector.size());
  const Eigen::Map<const Eigen::VectorXd> from(vector.data(), static_cast<Eigen::Index>(vector.size()));
  Eigen::Map<Eigen::VectorXd>(product.data(), static_cast<Eigen::Index>(product.size())) =
      sparse_->matrix.selfadjointView<Eigen::Lower>() * from;
  return product;
}

double TangentMatrix::greatest_stiffness() const {
  double greatest = 0.0;
  for (std::size_t i = 0; i < sparse_->diagonal.size(); ++i)
    if (sparse_->along[i])
      greatest = std::max(greatest, std::abs(sparse_->matrix.valuePtr()[sparse_->diagonal[i]]));
  return greatest;
}

} // namespace sheerpole::statics
