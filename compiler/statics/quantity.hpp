#pragma once

#include "statics/solver.hpp"
#include "statics/structure.hpp"

#include <cstddef>
#include <optional>
#include <span>
#include <variant>
#include <vector>

namespace sheerpole::statics {

/// The tension of a stay, N. Of a slack one 0, and the turns of others do not change it until it is taut.
struct Tension {
  StayId stay;
};

/// How far a node has moved from its drawn place along a direction, mm: rake, masthead athwart.
struct Movement {
  NodeId node;
  Vector along; ///< a unit vector
};

/// How far a node of a spar lies from the straight line between the ends of the spar, along a direction,
/// beyond what it does as drawn, mm: prebend.
struct Bend {
  SparId spar;
  NodeId node; ///< one of the spar's
  Vector along;
};

/// Something of a state that can be wished for or measured.
using Quantity = std::variant<Tension, Movement, Bend>;

/// Whether what it speaks of is in the structure.
bool is_known(const Structure& structure, const Quantity& quantity);

/// Its value in a state, N or mm. The quantity is known.
double value_of(const Structure& structure, const Quantity& quantity, const State& state);

/// How it changes with each mm that the stay is made shorter, N/mm or mm/mm.
double change_of(const Structure& structure, const Quantity& quantity, const Influence& influence,
                 StayId stay);

/// The least of x A x / 2 + b x with each x between its bounds, A symmetric and positive semidefinite, by
/// rows. One number after the other is put at its best until none moves by more than a 1e-12 of the
/// largest, or after 20 000 rounds. Source: coordinate descent, which for such a function ends at its
/// least.
std::vector<double> least_within_bounds(const std::vector<std::vector<double>>& a,
                                        std::span<const double> b, std::span<const double> least,
                                        std::span<const double> most);

} // namespace sheerpole::statics
