#include "statics/softest_motion.hpp"

#include <algorithm>
#include <cmath>

namespace sheerpole::statics {

namespace {

/// N/mm below which a motion has no stiffness but that of rounding: a ten-thousandth of a newton for each
/// metre, and of the greatest stiffness what its last digits make.
constexpr double no_stiffness = 1e-7;
constexpr double rounding_share = 1e-13;
constexpr int most_iterations = 40;
constexpr double near_share = 1e-3;

} // namespace

Softest softest_motion(const Mesh& mesh, const Structure& structure, TangentMatrix& tangent,
                       bool positive) {
  // Where the tangent has a negative or no stiffness, the least shift with which it can be factored.
  if (!positive) {
    double shift = 1e-12 * std::max(tangent.greatest_stiffness(), 1e-12);
    for (int tries = 0; tries < 60 && !tangent.factorise(shift); ++tries)
      shift *= 4.0;
  }
  std::vector<double> moves(mesh.unknowns(), 0.0), along(mesh.unknowns(), 0.0);
  // A start that no symmetry is square to. What stands is measured at its nodes, whatever number of pieces
  // lies between; where something gives way, that may be between two nodes.
  const std::size_t looked_at = positive ? structure.nodes.size() : mesh.places();
  double seed = 0.3;
  for (std::size_t place = 0; place < looked_at; ++place)
    for (std::size_t axis = 0; axis < 3; ++axis)
      if (const int unknown = mesh.unknowns_of(place)[axis]; unknown != held) {
        seed = std::fmod(seed * 997.0 + 0.1234, 1.0);
        moves[static_cast<std::size_t>(unknown)] = seed - 0.4;
        along[static_cast<std::size_t>(unknown)] = 1.0;
      }
  Softest softest;
  double last = 0.0;
  for (int i = 0; i < most_iterations; ++i) {
    for (std::size_t k = 0; k < moves.size(); ++k)
      moves[k] *= along[k];
    tangent.solve(moves);
    double square = 0.0;
    for (std::size_t k = 0; k < moves.size(); ++k)
      square += along[k] * moves[k] * moves[k];
    if (!(square > 0.0) || !std::isfinite(square))
      break;
    for (double& move : moves)
      move /= std::sqrt(square);
    const std::vector<double> forces = tangent.times(moves);
    double stiffness = 0.0;
    for (std::size_t k = 0; k < moves.size(); ++k)
      stiffness += moves[k] * forces[k];
    softest.stiffness_newtons_per_mm = stiffness;
    if (i > 0 && std::abs(stiffness - last) <= near_share * std::abs(stiffness))
      break;
    last = stiffness;
  }
  double most = -1.0, most_of_nodes = -1.0;
  for (std::size_t place = 0; place < mesh.places(); ++place) {
    std::array<double, 3> move{};
    for (std::size_t axis = 0; axis < 3; ++axis)
      if (const int unknown = mesh.unknowns_of(place)[axis]; unknown != held)
        move[axis] = moves[static_cast<std::size_t>(unknown)];
    const Vector way = from_axes(move);
    const double size = length(way);
    if (size > most) {
      most = size;
      if (size > 0.0)
        softest.direction = (1.0 / size) * way;
    }
    if (place < structure.nodes.size() && size > most_of_nodes && size > 0.0) {
      most_of_nodes = size;
      softest.node = NodeId{static_cast<std::uint32_t>(place)};
    }
  }
  return softest;
}

Outcome outcome_of(const Softest& softest, const TangentMatrix& tangent, bool positive) {
  const double least = std::max(no_stiffness, rounding_share * tangent.greatest_stiffness());
  if (softest.stiffness_newtons_per_mm < -least)
    return Outcome::unstable;
  if (softest.stiffness_newtons_per_mm <= least || !positive)
    return Outcome::mechanism;
  return Outcome::equilibrium;
}

} // namespace sheerpole::statics
