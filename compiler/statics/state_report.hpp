#pragma once

#include "statics/mesh.hpp"
#include "statics/solver.hpp"

#include <optional>

namespace sheerpole::statics {

/// Fills in what a state says of stays, nodes, spars and supports, from its configuration and its
/// unstressed lengths.
void report_state(const Mesh& mesh, const Structure& structure, State& state);

/// The node that moved furthest, where that is more than `most_mm`.
std::optional<NodeId> moved_beyond(const State& state, double most_mm);

} // namespace sheerpole::statics
