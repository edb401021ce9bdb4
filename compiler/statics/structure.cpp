#include "statics/structure.hpp"

#include <algorithm>
#include <utility>

namespace sheerpole::statics {

namespace {

bool over_zero(double value) {
  return value > 0.0 && value <= most_stated;
}

bool within_reach(Vector a) {
  return is_finite(a) && length(a) <= farthest_mm;
}

/// Whether a path has two places or more and none that is as drawn where the one before is.
bool leads_on(const Structure& structure, const std::vector<NodeId>& path) {
  for (std::size_t i = 1; i < path.size(); ++i)
    if (structure.nodes[path[i - 1].index()].place_mm == structure.nodes[path[i].index()].place_mm)
      return false;
  return path.size() >= 2;
}

class FaultFinder {
public:
  explicit FaultFinder(const Structure& structure) : structure_(structure) {}

  std::vector<Fault> found() {
    for (std::size_t i = 0; i < structure_.nodes.size(); ++i)
      unless(within_reach(structure_.nodes[i].place_mm), FaultKind::not_a_number, i);
    for (std::size_t i = 0; i < structure_.stays.size(); ++i)
      look_at_stay(structure_.stays[i], i);
    for (std::size_t i = 0; i < structure_.spars.size(); ++i)
      look_at_spar(structure_.spars[i], i);
    look_at_supports();
    for (std::size_t i = 0; i < structure_.loads.size(); ++i) {
      unless(known(structure_.loads[i].node), FaultKind::no_such_node, i);
      unless(within_reach(structure_.loads[i].force_newtons), FaultKind::not_a_number, i);
    }
    if (faults_.empty())
      unless(something_is_free(), FaultKind::nothing_to_move, 0);
    return std::move(faults_);
  }

private:
  bool known(NodeId node) const { return node.index() < structure_.nodes.size(); }
  bool known(const std::vector<NodeId>& path) const {
    return std::ranges::all_of(path, [this](NodeId node) { return known(node); });
  }
  bool unless(bool right, FaultKind kind, std::size_t index) {
    if (!right)
      faults_.push_back({kind, index});
    return right;
  }

  void look_at_stay(const Stay& stay, std::size_t index) {
    if (unless(known(stay.path), FaultKind::no_such_node, index))
      unless(leads_on(structure_, stay.path), FaultKind::stay_path, index);
    unless(over_zero(stay.axial_stiffness_newtons), FaultKind::stay_stiffness, index);
    unless(can_be_unstressed(stay.unstressed_mm), FaultKind::stay_length, index);
  }

  void look_at_spar(const Spar& spar, std::size_t index) {
    const bool bends = !(spar.root.pinned());
    if (!unless(known(spar.nodes), FaultKind::no_such_node, index) ||
        !unless(leads_on(structure_, spar.nodes), FaultKind::spar_nodes, index))
      return;
    unless(bends || spar.nodes.size() == 2, FaultKind::spar_pinned_with_more, index);
    const auto rises = [](const Station& a, const Station& b) { return !(a.at_mm <= b.at_mm); };
    unless(!spar.stations.empty() &&
               std::ranges::adjacent_find(spar.stations, rises) == spar.stations.end() &&
               std::ranges::all_of(spar.stations, [](const Station& s) { return std::isfinite(s.at_mm); }),
           FaultKind::spar_stations, index);
    const auto all = [&](auto member) {
      return std::ranges::all_of(
          spar.stations, [&](const Station& station) { return over_zero(station.section.*member); });
    };
    unless(all(&Section::axial_stiffness_newtons), FaultKind::spar_axial_stiffness, index);
    if (!bends)
      return;
    unless(all(&Section::bending_in_side_newton_mm2) && all(&Section::bending_square_newton_mm2),
           FaultKind::spar_bending, index);
    unless(all(&Section::torsion_newton_mm2), FaultKind::spar_torsion, index);
    bool across = is_finite(spar.side);
    for (std::size_t i = 1; across && i < spar.nodes.size(); ++i) {
      const Vector along = structure_.nodes[spar.nodes[i].index()].place_mm -
                           structure_.nodes[spar.nodes[i - 1].index()].place_mm;
      // Less than a thousandth of a radian off the spar is no direction of its own.
      across = length(cross(along, spar.side)) > 1e-3 * length(along) * length(spar.side);
    }
    unless(across, FaultKind::spar_side, index);
  }

  void look_at_supports() {
    std::vector<bool> held(structure_.nodes.size(), false);
    for (std::size_t i = 0; i < structure_.supports.size(); ++i) {
      const Support& support = structure_.supports[i];
      if (!unless(known(support.node), FaultKind::no_such_node, i))
        continue;
      unless(!held[support.node.index()], FaultKind::support_twice, i);
      held[support.node.index()] = true;
      for (const std::optional<Hold>& hold : support.along)
        if (hold)
          unless((hold->stiffness_newtons_per_mm == std::numeric_limits<double>::infinity() ||
                  over_zero(hold->stiffness_newtons_per_mm)) &&
                     hold->play_mm >= 0.0 && std::isfinite(hold->play_mm),
                 FaultKind::support_hold, i);
    }
  }

  /// Whether some place is not held stiffly every way.
  bool something_is_free() const {
    std::size_t fixed = 0;
    for (const Support& support : structure_.supports)
      fixed += std::ranges::all_of(support.along, [](const std::optional<Hold>& hold) {
        return hold && std::isinf(hold->stiffness_newtons_per_mm) && hold->play_mm == 0.0;
      });
    return fixed < structure_.nodes.size();
  }

  const Structure& structure_;
  std::vector<Fault> faults_;
};

double between(double a, double b, double share) {
  return a + share * (b - a);
}

} // namespace

Section section_at(const std::vector<Station>& stations, double at_mm) {
  const auto above = std::ranges::find_if(stations, [&](const Station& s) { return s.at_mm > at_mm; });
  if (above == stations.begin())
    return stations.front().section;
  if (above == stations.end())
    return stations.back().section;
  const Station& low = *(above - 1);
  const double share = (at_mm - low.at_mm) / (above->at_mm - low.at_mm);
  const auto mix = [&](auto member) { return between(low.section.*member, above->section.*member, share); };
  return {mix(&Section::axial_stiffness_newtons), mix(&Section::bending_in_side_newton_mm2),
          mix(&Section::bending_square_newton_mm2), mix(&Section::torsion_newton_mm2)};
}

Support fixed_point(NodeId node) {
  return {node, {Hold{}, Hold{}, Hold{}}, Turning::free};
}

Support giving_point(NodeId node, Vector mm_per_kilonewton) {
  Support support = fixed_point(node);
  const std::array<double, 3> gives = by_axis(mm_per_kilonewton);
  for (std::size_t axis = 0; axis < 3; ++axis)
    if (gives[axis] > 0.0)
      support.along[axis]->stiffness_newtons_per_mm = 1000.0 / gives[axis];
  return support;
}

Support pinned_heel(NodeId node) {
  Support support = fixed_point(node);
  support.turning = Turning::twist_held;
  return support;
}

std::vector<Fault> faults_of(const Structure& structure) {
  return FaultFinder(structure).found();
}

bool can_be_unstressed(double unstressed_mm) {
  return unstressed_mm >= shortest_unstressed_mm && unstressed_mm <= farthest_mm;
}

double drawn_length_mm(const Structure& structure, const Stay& stay) {
  double sum = 0.0;
  for (std::size_t i = 1; i < stay.path.size(); ++i)
    sum += length(structure.nodes[stay.path[i].index()].place_mm -
                  structure.nodes[stay.path[i - 1].index()].place_mm);
  return sum;
}

std::optional<double> unstressed_length_mm(double stretched_mm, double tension_newtons,
                                           double axial_stiffness_newtons) {
  if (!over_zero(stretched_mm) || !over_zero(axial_stiffness_newtons) || !(tension_newtons >= 0.0) ||
      !std::isfinite(tension_newtons))
    return std::nullopt;
  return stretched_mm / (1.0 + tension_newtons / axial_stiffness_newtons);
}

} // namespace sheerpole::statics
