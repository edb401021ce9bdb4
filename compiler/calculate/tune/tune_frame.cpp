#include "calculate/tune/tune_frame.hpp"

#include "calculate/facts.hpp"
#include "calculate/geometry/spar_lines.hpp"
#include "calculate/tune/spar_sections.hpp"
#include "model/kind_words.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace sheerpole {

namespace {

using statics::NodeId;
using statics::Vector;

constexpr double mm_per_newton = 1000.0; ///< of m/N
/// A fitting nearer to the line of a spar than this is on it.
constexpr double on_the_line_mm = 0.5;
/// An arm from the line of a spar to a fitting is as much stiffer than the spar: it is a plate or a
/// section's own width. A choice of the project; 10 and 100 come to the same.
constexpr double stiffer_arm = 10.0;
/// Elements in each stretch of a tapered spar between two fittings: each has one section, so twice as many
/// as of a spar that is alike all along (tests/unit/calculate/tune/tapered_spar_test.cpp).
constexpr std::size_t pieces_when_tapered = 8;
/// What is near a mast only, and not stated to be on it, is on the hull below this height.
constexpr double foot_of_mast_m = 1.0;

Vector axis_of(const Spar& spar, std::size_t which) {
  return {spar.axes[which][0], spar.axes[which][1], spar.axes[which][2]};
}

bool is_in_model(SparSort sort) {
  return sort == SparSort::mast || sort == SparSort::mizzen || sort == SparSort::bowsprit ||
         sort == SparSort::boomkin;
}

Vector unit(Vector a) {
  return (1.0 / statics::length(a)) * a;
}

/// The mast on which a spar is stepped or fidded, by its sort or by where its heel is; null when it stands
/// in the boat.
const Spar* stepped_on(const Rig& rig, const Spar& spar) {
  if (const Spar& carrier = carrier_of(rig, spar); &carrier != &spar)
    return &carrier;
  if (!stands(spar))
    return nullptr;
  for (const Spar& other : rig.spars) {
    if (&other == &spar || !stands(other))
      continue;
    const FromSpar heel = from_spar(spar_line(other), space_point(spar.heel));
    if (heel.off.metres() <= fitting_from_mast_metres && heel.along.metres() >= foot_of_mast_m)
      return &other;
  }
  return nullptr;
}

/// The one of the directions that is most square to a spar.
Vector squarest(Vector along, std::initializer_list<Vector> directions) {
  return *std::ranges::min_element(directions, {}, [&](Vector direction) {
    return std::abs(statics::dot(along, direction)) / statics::length(direction);
  });
}

statics::Section times(double factor, const statics::Section& section) {
  return {factor * section.axial_stiffness_newtons, factor * section.bending_in_side_newton_mm2,
          factor * section.bending_square_newton_mm2, factor * section.torsion_newton_mm2};
}

} // namespace

Vector millimetres_of(const Vector3& place) {
  return {place.x.millimetres(), place.y.millimetres(), place.z.millimetres()};
}

TuneFrame::TuneFrame(const Rig& rig, TuneInputs& inputs, TuneModel& model)
    : rig_(rig), inputs_(inputs), model_(model) {}

NodeId TuneFrame::new_node(Vector place) {
  model_.structure.nodes.push_back({place});
  return NodeId{static_cast<std::uint32_t>(model_.structure.nodes.size() - 1)};
}

std::optional<std::size_t> TuneFrame::spreader_with_tip(PointId point) const {
  for (std::size_t i = 0; i < rig_.spreaders.size(); ++i)
    if (rig_.spreaders[i].tip == point)
      return i;
  return std::nullopt;
}

std::optional<std::size_t> TuneFrame::spar_of(PointId id) const {
  const Point& point = rig_[id];
  const Spar* spar = point.spar.empty() ? nullptr : find_spar(rig_, point.spar);
  if (spar == nullptr) {
    const auto near = mast_of(rig_, point);
    if (!near ||
        from_spar(spar_line(*near->mast), space_point(point.position)).along.metres() < foot_of_mast_m)
      return std::nullopt;
    spar = near->mast;
  }
  return static_cast<std::size_t>(spar - rig_.spars.data());
}

bool TuneFrame::is_junction(PointId point) const {
  const auto ends_in_junction = [&](const Stay& stay, const PathStop& stop, const StackItem& item) {
    return stop.point == point && item.kind == StackItem::Kind::part &&
           rig_[item.part].kind == PartKind::junction && !stay.stack.empty();
  };
  return std::ranges::any_of(rig_.stays, [&](const Stay& stay) {
    return !stay.path.empty() && !stay.stack.empty() &&
           (ends_in_junction(stay, stay.path.front(), stay.stack.front()) ||
            ends_in_junction(stay, stay.path.back(), stay.stack.back()));
  });
}

void TuneFrame::add(PointId point) {
  if (!nodes_.emplace(point, std::nullopt).second)
    return;
  if (const auto spreader = spreader_with_tip(point)) {
    spreaders_.push_back(*spreader);
    add(rig_.spreaders[*spreader].root);
    return;
  }
  const auto spar = spar_of(point);
  if (!spar) {
    hull_.push_back(point);
    return;
  }
  const Vector heel = millimetres_of(rig_.spars[*spar].heel);
  const SpaceVector line = spar_line(rig_.spars[*spar]).along;
  const Vector along{line.x, line.y, line.z};
  on_spars_[*spar].push_back({point, statics::dot(millimetres_of(rig_[point].position) - heel, along)});
}

bool TuneFrame::carries_fixed_spreader(std::size_t spar) const {
  return std::ranges::any_of(spreaders_, [&](std::size_t i) {
    return rig_.spreaders[i].hold == "fixed" && spar_of(rig_.spreaders[i].root) == spar;
  });
}

void TuneFrame::hold_heel(const Spar& spar, const Remark& of, NodeId heel, Vector along) {
  statics::Support support = statics::pinned_heel(heel);
  if (inputs_.needed_word(of, spar.particulars, fact_names.hold) == "built-in")
    support.turning = statics::Turning::held;
  if (const auto gives = inputs_.if_stated(of, spar.particulars, fact_names.gives); gives && *gives > 0.0) {
    // Along the axis that the spar is nearest to.
    const std::array<double, 3> parts = statics::by_axis(along);
    const auto axis = static_cast<std::size_t>(std::distance(
        parts.begin(), std::ranges::max_element(parts, {}, [](double part) { return std::abs(part); })));
    support.along[axis]->stiffness_newtons_per_mm = 1.0 / (*gives * mm_per_newton);
  }
  model_.structure.supports.push_back(support);
}

std::optional<double> TuneFrame::partners_mm(const Spar& spar, const Remark& of, Vector along,
                                             double head_mm) {
  if (!stands(spar))
    return std::nullopt;
  const bool on_keel = inputs_.needed_word(of, spar.particulars, fact_names.step) == "keel";
  const auto height = on_keel ? inputs_.needed(of, spar.particulars, fact_names.partners)
                              : inputs_.if_stated(of, spar.particulars, fact_names.partners);
  if (!height)
    return std::nullopt;
  const double at = (*height * mm_per_m - spar.heel.z.millimetres()) / along.z;
  if (!(at > same_height_mm) || !(at < head_mm - same_height_mm)) {
    inputs_.lacks({TunePhrase::partners_off_mast, {Words{spar.name}}});
    return std::nullopt;
  }
  return at;
}

void TuneFrame::make_spar(std::size_t number, std::vector<OnSpar>& fittings) {
  const Spar& spar = rig_.spars[number];
  const Remark of{TunePhrase::spar, {Words{spar.name}}};
  if (const Spar* below = stepped_on(rig_, spar)) {
    inputs_.lacks({TunePhrase::stands_on_spar, {Words{spar.name}, Words{below->name}}});
    return;
  }
  if (!is_in_model(spar.sort)) {
    inputs_.lacks({TunePhrase::sort_not_in_model, {Words{spar.name}}});
    return;
  }
  const Vector heel = millimetres_of(spar.heel);
  const SpaceVector line = spar_line(spar).along;
  const Vector along{line.x, line.y, line.z};
  std::ranges::stable_sort(fittings, {}, &OnSpar::along_mm);
  double head = fittings.back().along_mm;
  if (const auto length = fact_length(spar.particulars, fact_names.length);
      length && length->value.millimetres() > head + same_height_mm)
    head = length->value.millimetres();
  const std::optional<double> partners = partners_mm(spar, of, along, head);

  statics::Spar made;
  made.side = stands(spar) ? axis_of(spar, 0) : axis_of(spar, 2);
  made.stations = spar_sections(rig_, spar, carries_fixed_spreader(number), head, inputs_);
  if (made.stations.size() > 1) {
    made.pieces_a_panel = pieces_when_tapered;
    inputs_.note({TunePhrase::tapered_evenly, {Words{spar.name}}});
  }
  made.nodes = {new_node(heel)};
  hold_heel(spar, of, made.nodes.front(), along);

  std::vector<double> at{0.0};
  const auto place_at = [&](double height) {
    if (height > at.back() + same_height_mm) {
      made.nodes.push_back(new_node(heel + height * along));
      at.push_back(height);
    }
    return made.nodes.back();
  };
  TuneSpar tuned{.spar = number,
                 .element = statics::SparId{static_cast<std::uint32_t>(model_.structure.spars.size())},
                 .forward = stands(spar) ? axis_of(spar, 0) : axis_of(spar, 2),
                 .starboard = axis_of(spar, 1)};
  struct Arm {
    NodeId from, to;
    statics::Section section;
  };
  std::vector<Arm> arms;
  std::optional<NodeId> at_partners;
  const auto pass_partners = [&](double height) {
    if (partners && !at_partners && height > *partners - same_height_mm)
      at_partners = place_at(*partners);
  };
  for (const OnSpar& fitting : fittings) {
    pass_partners(fitting.along_mm);
    const NodeId on_line = place_at(fitting.along_mm);
    const Vector place = millimetres_of(rig_[fitting.point].position);
    const Vector off = place - model_.structure.nodes[on_line.index()].place_mm;
    NodeId node = on_line;
    if (statics::length(off) > on_the_line_mm) {
      // The twin on the other side, or a fitting of the same place, has a node of its own.
      node = new_node(place);
      arms.push_back({on_line, node, statics::section_at(made.stations, at.back())});
    }
    nodes_[fitting.point] = node;
    tuned.fittings.emplace_back(fitting.point, on_line);
  }
  pass_partners(head);
  tuned.head = place_at(head);
  if (at_partners) {
    statics::Hold hold;
    hold.play_mm =
        mm_per_m * inputs_.if_stated(of, spar.particulars, fact_names.partners_play).value_or(0.0);
    if (hold.play_mm == 0.0)
      inputs_.note({TunePhrase::wedged_in_partners, {Words{spar.name}}});
    model_.structure.supports.push_back({*at_partners, {hold, hold, std::nullopt}, statics::Turning::free});
  }
  if (made.nodes.size() < 2) {
    inputs_.lacks({TunePhrase::no_stay, {Words{spar.name}}});
    return;
  }
  model_.structure.spars.push_back(std::move(made));
  for (const Arm& arm : arms) {
    const Vector way =
        model_.structure.nodes[arm.to.index()].place_mm - model_.structure.nodes[arm.from.index()].place_mm;
    model_.structure.spars.push_back({.nodes = {arm.from, arm.to},
                                      .stations = {{0.0, times(stiffer_arm, arm.section)}},
                                      .side = squarest(way, {along, axis_of(spar, 0), axis_of(spar, 1)}),
                                      .root = {},
                                      .pieces_a_panel = 1});
  }
  model_.spars.push_back(std::move(tuned));
}

void TuneFrame::make_spreader(const Spreader& spreader) {
  const Remark of{TunePhrase::spreader, {Words{spreader.name}}};
  const std::optional<NodeId> root = nodes_.at(spreader.root);
  const auto spar = spar_of(spreader.root);
  if (!spar) {
    inputs_.lacks({TunePhrase::root_on_no_spar, {Words{spreader.name}}});
    return;
  }
  inputs_.needed_word(of, fact_names.hold, spreader.hold);
  const bool swings = spreader.hold == "swinging";
  const std::string droop = inputs_.needed_word(of, spreader.particulars, fact_names.droop);
  const bool droops = droop == "hinged";
  const auto axial = inputs_.needed(of, spreader.particulars, fact_names.axial_stiffness);
  // While nobody says how its root holds it, nobody knows which stiffness is needed.
  const auto level = spreader.hold == "fixed"
                         ? inputs_.needed(of, spreader.particulars, fact_names.bending_stiffness)
                         : inputs_.if_stated(of, spreader.particulars, fact_names.bending_stiffness);
  const auto upright =
      droop == "built-in"
          ? inputs_.needed(of, spreader.particulars, fact_names.bending_stiffness_upright)
          : inputs_.if_stated(of, spreader.particulars, fact_names.bending_stiffness_upright);
  if (!root)
    return;
  const NodeId tip = new_node(millimetres_of(rig_[spreader.tip].position));
  nodes_[spreader.tip] = tip;
  const Vector way =
      model_.structure.nodes[tip.index()].place_mm - model_.structure.nodes[root->index()].place_mm;
  // A fixed one is held level, a hinged one lets its tip up and down: by the boat's upright, not the
  // spar's.
  Vector side = statics::cross({0.0, 0.0, 1.0}, way);
  if (!(statics::length(side) > 0.0))
    side = squarest(way, {axis_of(rig_.spars[*spar], 0), axis_of(rig_.spars[*spar], 1)});
  // A hinged root keeps the bending in its plane at nothing, whatever the stiffness: the other one will do.
  const double in_side = level.value_or(upright.value_or(0.0));
  const double square = upright.value_or(level.value_or(0.0));
  model_.structure.spars.push_back(
      {.nodes = {*root, tip},
       .stations = {{0.0, statics::Section{axial.value_or(0.0), mm2_per_m2 * in_side, mm2_per_m2 * square,
                                           mm2_per_m2 * (in_side + square)}}},
       .side = statics::length(side) > 0.0 ? unit(side) : side,
       .root = {.swings_in_side = swings, .swings_square = droops, .twists = swings && droops},
       .pieces_a_panel = 2});
  for (TuneSpar& on : model_.spars)
    if (on.spar == *spar)
      for (const auto& [point, node] : on.fittings)
        if (point == spreader.root &&
            std::ranges::find(on.spreaders, node, &TuneSpar::Place::node) == on.spreaders.end())
          on.spreaders.push_back({spreader.root, node,
                                  statics::length(model_.structure.nodes[node.index()].place_mm -
                                                  millimetres_of(rig_.spars[*spar].heel))});
}

void TuneFrame::make() {
  for (auto& [spar, fittings] : on_spars_)
    make_spar(spar, fittings);
  for (const std::size_t spreader : spreaders_)
    make_spreader(rig_.spreaders[spreader]);
  for (TuneSpar& spar : model_.spars)
    std::ranges::stable_sort(spar.spreaders, {}, &TuneSpar::Place::along_mm);
  for (const PointId point : hull_) {
    const NodeId node = new_node(millimetres_of(rig_[point].position));
    nodes_[point] = node;
    if (!is_junction(point))
      model_.structure.supports.push_back(statics::fixed_point(node));
  }
  for (const auto& [point, node] : nodes_)
    if (node)
      model_.places.emplace_back(point, *node);
  if (model_.spars.empty())
    inputs_.lacks(TunePhrase::no_mast);
}

std::optional<NodeId> TuneFrame::node_of(PointId point) const {
  const auto found = nodes_.find(point);
  return found == nodes_.end() ? std::nullopt : found->second;
}

} // namespace sheerpole
