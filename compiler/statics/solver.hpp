#pragma once

#include "base/result.hpp"
#include "statics/mesh.hpp"
#include "statics/structure.hpp"

#include <array>
#include <cstddef>
#include <memory>
#include <optional>
#include <span>
#include <vector>

namespace sheerpole::statics {

/// How a search for equilibrium ended. The numbers of a state are of where it ended, whatever the outcome,
/// and always finite; they are those of a rig that stands only with `equilibrium`.
enum class Outcome {
  equilibrium,   ///< forces balance, and every small push is pushed back
  mechanism,     ///< forces balance, but something moves without resistance: a slack spreader tip, no stays
  unstable,      ///< forces balance as on a knife's edge: a column beyond its Euler load
  far_away,      ///< something moved further than SearchBounds allows: the drawn rig does not hold itself
  not_converged, ///< no balance within the steps allowed
};

struct SearchBounds {
  std::size_t most_steps = 200; ///< each one factorisation or a few
  /// A move beyond this share of the structure's size is no tune of the drawn rig.
  double farthest_share = 0.03;
  /// Whether the softest motion is worked out; without it a rig that balances on positive pivots is taken
  /// to stand, and `softest` stays empty.
  bool look_for_softest = true;
};

struct StayState {
  double tension_newtons = 0.0; ///< 0 when slack
  double slack_mm = 0.0;        ///< how much longer the line is than its path, 0 when taut
};

/// A place of a spar.
struct SparPlace {
  double at_mm = 0.0; ///< along the spar as drawn
  Vector moved_mm;
  /// From the straight line between where the first and the last place of the spar are now, less what it
  /// was as drawn.
  Vector bend_mm;
};

struct SparState {
  std::vector<SparPlace> places; ///< all nodes and what is between them, in order
  /// By panel, the stretch between two nodes: the mean compression, positive when pushed.
  std::vector<double> compression_newtons;
  /// By panel: the greatest bending moment of either way, its size, at an end of one of its pieces.
  std::vector<double> bending_newton_mm;
};

/// The softest motion: one with the shape that meets the least resistance.
struct Softest {
  /// Force for a movement of 1 mm in the root of the sum of squares over all nodes. Below 0: it runs off.
  double stiffness_newtons_per_mm = 0.0;
  std::optional<NodeId> node; ///< the node that moves most
  Vector direction;           ///< the way it goes, a unit vector; which sign is of no account
};

struct State {
  Outcome outcome = Outcome::not_converged;
  std::vector<double> unstressed_mm; ///< by stay: what it was worked out for
  std::vector<StayState> stays;
  std::vector<Vector> moved_mm; ///< by node, from its drawn place
  std::vector<SparState> spars;
  /// By support: the force of the support on the structure, and the moment in N mm.
  std::vector<std::array<Vector, 2>> reactions;
  double residual_newtons = 0.0; ///< the largest force out of balance, moments over the shortest piece
  std::size_t steps = 0;
  std::optional<Softest> softest;
  std::optional<NodeId> farthest; ///< with far_away: what moved so far
  Configuration configuration;    ///< where a later search may begin
};

/// What 1 mm less of one stay's unstressed length does, all others as they are. Of the state it was taken
/// at; elsewhere it is another. A stay that is slack there moves nothing: zeros in its row and its column.
struct Influence {
  /// [stay made shorter][stay]: N for each mm
  std::vector<std::vector<double>> tension_newtons_per_mm;
  /// [stay made shorter][node]: mm for each mm
  std::vector<std::vector<Vector>> moved_mm_per_mm;
};

/// Finds how a structure stands. Not for two threads at once; a solver of its own for each.
class Solver {
public:
  /// The structure made ready, or all that is wrong with it.
  static Result<Solver, std::vector<Fault>> make(Structure structure);
  ~Solver();
  Solver(Solver&&) noexcept;
  Solver& operator=(Solver&&) noexcept;

  const Structure& structure() const;

  /// The state with the unstressed lengths of the structure, looked for from the drawn geometry.
  State settle(const SearchBounds& bounds = {});
  /// With other unstressed lengths, by stay, each as `can_be_unstressed` (otherwise not_converged at once).
  /// `from`: where the search begins, the drawn geometry without it. From a near state it takes 2 to 4
  /// steps.
  ///
  /// The least of the elastic energy is looked for by Newton's method with the exact second derivatives of
  /// the stays that pull at each step. Where these are not positive definite a shift is added to the
  /// diagonal, as small as will do; a step is halved until the energy falls (Armijo's rule). Source:
  /// textbooks of unconstrained minimisation, from memory of Nocedal and Wright, Numerical Optimization,
  /// chapter 3.
  State settle(std::span<const double> unstressed_mm, const SearchBounds& bounds = {},
               const Configuration* from = nullptr);

  /// By the tangent of the stays that pull in `state`: one factorisation, one solution for each stay.
  /// Nothing unless the outcome is `equilibrium`. N and mm for each mm.
  std::optional<Influence> influence(const State& state);

private:
  struct Parts;
  explicit Solver(std::unique_ptr<Parts> parts);
  std::unique_ptr<Parts> parts_;
};

} // namespace sheerpole::statics
