#include "statics/quantity.hpp"

#include <algorithm>
#include <cmath>

namespace sheerpole::statics {

namespace {

template <class... Visitors>
struct Each : Visitors... {
  using Visitors::operator()...;
};
template <class... Visitors>
Each(Visitors...) -> Each<Visitors...>;

/// Where along the spar a node is as drawn, as a share of its length.
double share_along(const Structure& structure, const Spar& spar, NodeId node) {
  double sum = 0.0, at = 0.0;
  for (std::size_t i = 0; i < spar.nodes.size(); ++i) {
    if (i > 0)
      sum += length(structure.nodes[spar.nodes[i].index()].place_mm -
                    structure.nodes[spar.nodes[i - 1].index()].place_mm);
    if (spar.nodes[i] == node)
      at = sum;
  }
  return at / sum;
}

/// The bend by how the nodes move, whether that is a state or an influence.
double bend_of(const Structure& structure, const Bend& bend, const std::vector<Vector>& moved) {
  const Spar& spar = structure.spars[bend.spar.index()];
  const double share = share_along(structure, spar, bend.node);
  const Vector first = moved[spar.nodes.front().index()], last = moved[spar.nodes.back().index()];
  return dot(bend.along, moved[bend.node.index()] - ((1.0 - share) * first + share * last));
}

} // namespace

bool is_known(const Structure& structure, const Quantity& quantity) {
  return std::visit(
      Each{[&](const Tension& tension) { return tension.stay.index() < structure.stays.size(); },
           [&](const Movement& movement) {
             return movement.node.index() < structure.nodes.size() && is_finite(movement.along);
           },
           [&](const Bend& bend) {
             return bend.spar.index() < structure.spars.size() && is_finite(bend.along) &&
                    std::ranges::find(structure.spars[bend.spar.index()].nodes, bend.node) !=
                        structure.spars[bend.spar.index()].nodes.end();
           }},
      quantity);
}

double value_of(const Structure& structure, const Quantity& quantity, const State& state) {
  return std::visit(
      Each{[&](const Tension& tension) { return state.stays[tension.stay.index()].tension_newtons; },
           [&](const Movement& movement) {
             return dot(movement.along, state.moved_mm[movement.node.index()]);
           },
           [&](const Bend& bend) { return bend_of(structure, bend, state.moved_mm); }},
      quantity);
}

double change_of(const Structure& structure, const Quantity& quantity, const Influence& influence,
                 StayId stay) {
  const std::vector<Vector>& moved = influence.moved_mm_per_mm[stay.index()];
  return std::visit(
      Each{[&](const Tension& tension) {
             return influence.tension_newtons_per_mm[stay.index()][tension.stay.index()];
           },
           [&](const Movement& movement) { return dot(movement.along, moved[movement.node.index()]); },
           [&](const Bend& bend) { return bend_of(structure, bend, moved); }},
      quantity);
}

std::vector<double> least_within_bounds(const std::vector<std::vector<double>>& a,
                                        std::span<const double> b, std::span<const double> least,
                                        std::span<const double> most) {
  constexpr int most_rounds = 20'000;
  std::vector<double> x(b.size());
  for (std::size_t k = 0; k < x.size(); ++k)
    x[k] = std::clamp(0.0, least[k], most[k]);
  for (int round = 0; round < most_rounds; ++round) {
    double moved = 0.0, largest = 0.0;
    for (std::size_t k = 0; k < x.size(); ++k) {
      if (!(a[k][k] > 0.0))
        continue;
      double slope = b[k];
      for (std::size_t j = 0; j < x.size(); ++j)
        slope += a[k][j] * x[j];
      const double better = std::clamp(x[k] - slope / a[k][k], least[k], most[k]);
      moved = std::max(moved, std::abs(better - x[k]));
      x[k] = better;
      largest = std::max(largest, std::abs(better));
    }
    if (moved <= 1e-12 * largest)
      break;
  }
  return x;
}

} // namespace sheerpole::statics
