#include "statics/solver.hpp"

#include "statics/softest_motion.hpp"
#include "statics/state_report.hpp"
#include "statics/tangent_matrix.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

namespace sheerpole::statics {

struct Solver::Parts {
  explicit Parts(Structure given) : structure(std::move(given)), mesh(structure), tangent(mesh) {}

  Structure structure;
  Mesh mesh;
  TangentMatrix tangent;
};

namespace {

/// A turning of more than this in one step, in radians, says little about where it leads.
constexpr double longest_turn = 0.2;
/// Of the structure's size, for a movement in one step.
constexpr double longest_move_share = 0.05;
constexpr double armijo = 1e-4;
constexpr int most_halvings = 40;
/// Newtons; below it nothing is out of balance that anybody could see.
constexpr double balanced_newtons = 1e-6;
constexpr double first_shift_share = 1e-10; ///< of the greatest stiffness

class Search {
public:
  Search(const Mesh& mesh, TangentMatrix& tangent, std::span<const double> unstressed,
         const SearchBounds& bounds, Configuration from)
      : mesh_(mesh), tangent_(tangent), unstressed_(unstressed), bounds_(bounds), at_(std::move(from)),
        forces_(mesh.unknowns()), step_(mesh.unknowns()) {
    lever_mm_ = mesh.shortest_piece_mm() > 0.0 ? mesh.shortest_piece_mm() : 1.0;
    // What rounding a place by its last digits costs in force.
    rounding_newtons_ = 4.0 * std::numeric_limits<double>::epsilon() * mesh.stiffest_newtons_per_mm();
  }

  /// Where it came to rest, if it did.
  bool run() {
    for (steps_ = 0; steps_ <= bounds_.most_steps; ++steps_) {
      evaluate();
      if (!std::isfinite(energy_) || !std::isfinite(residual_))
        return false;
      if (residual_ <= tolerance())
        return true;
      if (steps_ == bounds_.most_steps || !find_step() || !go())
        return residual_ <= 1e3 * tolerance();
    }
    return false;
  }

  Configuration& at() { return at_; }
  std::size_t steps() const { return steps_; }
  double residual() const { return residual_; }

private:
  double tolerance() const {
    double moved = 0.0;
    for (const Vector& place : at_.moved_mm)
      moved = std::max({moved, std::abs(place.x), std::abs(place.y), std::abs(place.z)});
    return balanced_newtons + rounding_newtons_ * std::max(moved, 1.0);
  }

  void evaluate() {
    tangent_.clear();
    energy_ = mesh_.derivatives(unstressed_, at_, forces_, tangent_);
    residual_ = 0.0;
    for (std::size_t place = 0; place < mesh_.places(); ++place)
      for (std::size_t movement = 0; movement < movements_of_end; ++movement)
        if (const int unknown = mesh_.unknowns_of(place)[movement]; unknown != held)
          residual_ = std::max(residual_, std::abs(forces_[static_cast<std::size_t>(unknown)]) /
                                              (movement < 3 ? 1.0 : lever_mm_));
  }

  /// The Newton step, shifted while the tangent is not positive definite, shortened to where it says
  /// anything.
  bool find_step() {
    const double greatest = tangent_.greatest_stiffness();
    shift_ *= 0.25;
    if (shift_ < first_shift_share * greatest)
      shift_ = 0.0;
    for (int tries = 0; !tangent_.factorise(shift_); ++tries) {
      if (tries == 60)
        return false;
      shift_ = shift_ > 0.0 ? 8.0 * shift_ : first_shift_share * std::max(greatest, 1e-12);
    }
    std::ranges::transform(forces_, step_.begin(), [](double force) { return -force; });
    tangent_.solve(step_);
    double share = 1.0;
    const double longest_move = longest_move_share * mesh_.size_mm();
    for (std::size_t place = 0; place < mesh_.places(); ++place)
      for (std::size_t movement = 0; movement < movements_of_end; ++movement)
        if (const int unknown = mesh_.unknowns_of(place)[movement]; unknown != held) {
          const double size = std::abs(step_[static_cast<std::size_t>(unknown)]);
          const double most = movement < 3 ? longest_move : longest_turn;
          if (!std::isfinite(size))
            return false;
          if (size * share > most)
            share = most / size;
        }
    slope_ = 0.0;
    for (std::size_t i = 0; i < step_.size(); ++i) {
      step_[i] *= share;
      slope_ += step_[i] * forces_[i];
    }
    return slope_ < 0.0;
  }

  /// Goes the step, or half of it, and so on, until the energy has fallen.
  bool go() {
    double share = 1.0;
    // What the energy cannot tell apart.
    const double rounding = 1e-13 * std::abs(energy_) + 1e-15;
    for (int halving = 0; halving < most_halvings; ++halving, share *= 0.5) {
      Configuration there = mesh_.moved_by(at_, step_, share);
      const double energy = mesh_.energy(unstressed_, there);
      if (std::isfinite(energy) && energy <= energy_ + armijo * share * slope_ + rounding) {
        at_ = std::move(there);
        // A step that had to be cut short was too bold: the next keeps nearer to the slope.
        if (halving > 2)
          shift_ = 32.0 * std::max(shift_, first_shift_share * tangent_.greatest_stiffness());
        return true;
      }
    }
    return false;
  }

  const Mesh& mesh_;
  TangentMatrix& tangent_;
  std::span<const double> unstressed_;
  const SearchBounds& bounds_;
  Configuration at_;
  std::vector<double> forces_, step_;
  double lever_mm_ = 1.0, rounding_newtons_ = 0.0;
  double energy_ = 0.0, residual_ = 0.0, shift_ = 0.0, slope_ = 0.0;
  std::size_t steps_ = 0;
};

bool can_be_lengths(std::span<const double> unstressed, std::size_t stays) {
  return unstressed.size() == stays && std::ranges::all_of(unstressed, can_be_unstressed);
}

} // namespace

Solver::Solver(std::unique_ptr<Parts> parts) : parts_(std::move(parts)) {}
Solver::~Solver() = default;
Solver::Solver(Solver&&) noexcept = default;
Solver& Solver::operator=(Solver&&) noexcept = default;

const Structure& Solver::structure() const {
  return parts_->structure;
}

Result<Solver, std::vector<Fault>> Solver::make(Structure structure) {
  if (std::vector<Fault> faults = faults_of(structure); !faults.empty())
    return faults;
  return Solver(std::make_unique<Parts>(std::move(structure)));
}

State Solver::settle(const SearchBounds& bounds) {
  std::vector<double> unstressed;
  for (const Stay& stay : parts_->structure.stays)
    unstressed.push_back(stay.unstressed_mm);
  return settle(unstressed, bounds);
}

State Solver::settle(std::span<const double> unstressed_mm, const SearchBounds& bounds,
                     const Configuration* from) {
  const Mesh& mesh = parts_->mesh;
  State state;
  if (!can_be_lengths(unstressed_mm, mesh.lines().size())) {
    state.stays.resize(mesh.lines().size());
    state.moved_mm.resize(parts_->structure.nodes.size());
    state.configuration = mesh.as_drawn();
    return state;
  }
  const bool fits = from && from->moved_mm.size() == mesh.places() && from->turned.size() == mesh.places();
  Search search(mesh, parts_->tangent, unstressed_mm, bounds, fits ? *from : mesh.as_drawn());
  const bool at_rest = search.run();
  state.unstressed_mm.assign(unstressed_mm.begin(), unstressed_mm.end());
  state.steps = search.steps();
  state.residual_newtons = std::isfinite(search.residual()) ? search.residual() : 0.0;
  state.configuration = std::move(search.at());
  report_state(mesh, parts_->structure, state);
  if (!at_rest)
    return state;
  // The tangent that the search left is that of where it is.
  const bool positive = parts_->tangent.factorise(0.0);
  state.outcome = Outcome::equilibrium;
  if (!positive || bounds.look_for_softest) {
    state.softest = softest_motion(mesh, parts_->structure, parts_->tangent, positive);
    state.outcome = outcome_of(*state.softest, parts_->tangent, positive);
  }
  const std::optional<NodeId> farthest = moved_beyond(state, bounds.farthest_share * mesh.size_mm());
  if (farthest) {
    state.farthest = farthest;
    state.outcome = Outcome::far_away;
  }
  return state;
}

std::optional<Influence> Solver::influence(const State& state) {
  const Mesh& mesh = parts_->mesh;
  if (state.outcome != Outcome::equilibrium || state.configuration.moved_mm.size() != mesh.places())
    return std::nullopt;
  std::vector<double> forces(mesh.unknowns());
  parts_->tangent.clear();
  mesh.derivatives(state.unstressed_mm, state.configuration, forces, parts_->tangent);
  if (!parts_->tangent.factorise(0.0))
    return std::nullopt;
  const std::size_t stays = mesh.lines().size();
  std::vector<std::vector<double>> length_by(stays);
  std::vector<double> stretch(stays); // EA / L0, 0 of a slack stay
  for (std::size_t i = 0; i < stays; ++i) {
    length_by[i] = mesh.length_by_unknown(i, state.configuration);
    if (state.stays[i].tension_newtons > 0.0)
      stretch[i] = mesh.lines()[i].axial_stiffness_newtons / state.unstressed_mm[i];
  }
  Influence influence;
  for (std::size_t i = 0; i < stays; ++i) {
    std::vector<double> step(mesh.unknowns(), 0.0);
    // T = EA (l / L0 - 1), so T grows by EA l / L0^2 for each mm less of L0.
    const double l_over_l0 = 1.0 + state.stays[i].tension_newtons / mesh.lines()[i].axial_stiffness_newtons;
    const double pulled = stretch[i] * l_over_l0;
    const Unknowns& own = mesh.elements()[i];
    for (std::size_t k = 0; k < own.size(); ++k)
      if (own[k] != held)
        step[static_cast<std::size_t>(own[k])] -= pulled * length_by[i][k];
    parts_->tangent.solve(step);
    std::vector<double>& tensions = influence.tension_newtons_per_mm.emplace_back(stays, 0.0);
    for (std::size_t j = 0; j < stays; ++j) {
      const Unknowns& other = mesh.elements()[j];
      double longer = 0.0;
      for (std::size_t k = 0; k < other.size(); ++k)
        if (other[k] != held)
          longer += length_by[j][k] * step[static_cast<std::size_t>(other[k])];
      tensions[j] = stretch[j] * longer + (i == j ? pulled : 0.0);
    }
    std::vector<Vector>& moves = influence.moved_mm_per_mm.emplace_back();
    for (std::size_t node = 0; node < parts_->structure.nodes.size(); ++node) {
      std::array<double, 3> move{};
      for (std::size_t axis = 0; axis < 3; ++axis)
        if (const int unknown = mesh.unknowns_of(node)[axis]; unknown != held)
          move[axis] = step[static_cast<std::size_t>(unknown)];
      moves.push_back(from_axes(move));
    }
  }
  return influence;
}

} // namespace sheerpole::statics
