#pragma once

#include "statics/mesh.hpp"

#include <cstddef>
#include <memory>
#include <span>
#include <vector>

namespace sheerpole::statics {

/// The second derivatives of the energy of a mesh, sparse and symmetric, N/mm and the like, with its
/// factors L D L^T. Where its numbers stand is worked out once; each state fills them anew. The sparse
/// factors are Eigen's, which is named in the .cpp and nowhere else.
class TangentMatrix final : public StiffnessSink {
public:
  explicit TangentMatrix(const Mesh& mesh);
  ~TangentMatrix() override;
  TangentMatrix(TangentMatrix&&) noexcept;
  TangentMatrix& operator=(TangentMatrix&&) noexcept;

  void clear();
  void add(std::size_t element, std::span<const double> block) override;

  /// Factors the matrix with `shift` (N/mm) on the diagonal of each movement along an axis, and that times
  /// the square of a length typical of the mesh on each turning. Whether it is positive definite so.
  bool factorise(double shift_newtons_per_mm);
  /// Solves with the last factors, in place.
  void solve(std::span<double> right_side) const;
  /// The matrix itself, without shift, times a vector.
  std::vector<double> times(std::span<const double> vector) const;
  /// The greatest number on the diagonal that belongs to a movement along an axis.
  double greatest_stiffness() const;

private:
  struct Sparse;
  std::unique_ptr<Sparse> sparse_;
};

} // namespace sheerpole::statics
