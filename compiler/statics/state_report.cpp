#include "statics/state_report.hpp"

#include <algorithm>
#include <cmath>

namespace sheerpole::statics {

namespace {

SparState report_spar(const Mesh& mesh, const Mesh::SparPieces& pieces, const Configuration& at) {
  SparState spar;
  const Vector first = at.moved_mm[pieces.places.front()], last = at.moved_mm[pieces.places.back()];
  const double whole_mm = pieces.at_mm.back();
  for (std::size_t i = 0; i < pieces.places.size(); ++i) {
    const Vector moved = at.moved_mm[pieces.places[i]];
    const double share = pieces.at_mm[i] / whole_mm;
    const Vector straight = (1.0 - share) * first + share * last;
    spar.places.push_back({pieces.at_mm[i], moved, moved - straight});
  }
  if (pieces.beams.empty()) {
    spar.compression_newtons.push_back(mesh.bar_compression_newtons(pieces.bar, at));
    spar.bending_newton_mm.push_back(0.0);
    return spar;
  }
  const std::size_t panels = pieces.panels.back() + 1;
  std::vector<double> lengths(panels, 0.0);
  spar.compression_newtons.assign(panels, 0.0);
  spar.bending_newton_mm.assign(panels, 0.0);
  for (std::size_t i = 0; i < pieces.beams.size(); ++i) {
    const Mesh::Beam& beam = mesh.beams()[pieces.beams[i]];
    const std::size_t panel = pieces.panels[i];
    const BeamElement::Carried carried = beam.element.carried(mesh.ends_of(beam, at));
    lengths[panel] += beam.element.drawn_mm;
    spar.compression_newtons[panel] += beam.element.drawn_mm * carried.compression_newtons;
    for (const auto& moments : {carried.bending_in_side, carried.bending_square})
      for (const double moment : moments)
        spar.bending_newton_mm[panel] = std::max(spar.bending_newton_mm[panel], std::abs(moment));
  }
  for (std::size_t panel = 0; panel < panels; ++panel)
    spar.compression_newtons[panel] /= lengths[panel];
  return spar;
}

} // namespace

void report_state(const Mesh& mesh, const Structure& structure, State& state) {
  const Configuration& at = state.configuration;
  for (std::size_t i = 0; i < mesh.lines().size(); ++i) {
    const double extension = mesh.extension_mm(i, state.unstressed_mm[i], at);
    const double stiffness = mesh.lines()[i].axial_stiffness_newtons / state.unstressed_mm[i];
    state.stays.push_back({stiffness * std::max(extension, 0.0), std::max(-extension, 0.0)});
  }
  state.moved_mm.assign(at.moved_mm.begin(),
                        at.moved_mm.begin() + static_cast<std::ptrdiff_t>(structure.nodes.size()));
  for (const Mesh::SparPieces& pieces : mesh.spars())
    state.spars.push_back(report_spar(mesh, pieces, at));
  const std::vector<std::array<Vector, 2>> holding = mesh.holding_forces(state.unstressed_mm, at);
  for (const Support& support : structure.supports)
    state.reactions.push_back(holding[support.node.index()]);
}

std::optional<NodeId> moved_beyond(const State& state, double most_mm) {
  std::optional<NodeId> farthest;
  for (std::size_t i = 0; i < state.moved_mm.size(); ++i)
    if (const double moved = length(state.moved_mm[i]); moved > most_mm) {
      most_mm = moved;
      farthest = NodeId{static_cast<std::uint32_t>(i)};
    }
  return farthest;
}

} // namespace sheerpole::statics
