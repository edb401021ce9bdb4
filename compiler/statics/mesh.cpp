#include "statics/mesh.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace sheerpole::statics {

namespace {

/// A hold against twisting is so many times as stiff as the piece of spar that it holds.
constexpr double twist_hold_over_piece = 1e4;

} // namespace

Mesh::Mesh(const Structure& structure) : loads_(structure.loads) {
  for (const Node& node : structure.nodes)
    drawn_mm_.push_back(node.place_mm);
  std::array<double, 3> least{}, most{};
  for (std::size_t i = 0; i < drawn_mm_.size(); ++i) {
    const std::array<double, 3> place = by_axis(drawn_mm_[i]);
    for (std::size_t axis = 0; axis < 3; ++axis) {
      least[axis] = i == 0 ? place[axis] : std::min(least[axis], place[axis]);
      most[axis] = i == 0 ? place[axis] : std::max(most[axis], place[axis]);
      size_mm_ = std::max(size_mm_, most[axis] - least[axis]);
    }
  }
  turns_.assign(drawn_mm_.size(), false);
  for (const Stay& stay : structure.stays) {
    Line line;
    line.axial_stiffness_newtons = stay.axial_stiffness_newtons;
    for (const NodeId node : stay.path)
      line.places.push_back(node.index());
    for (std::size_t i = 1; i < line.places.size(); ++i)
      line.legs_mm.push_back(drawn_mm_[line.places[i]] - drawn_mm_[line.places[i - 1]]);
    line.drawn_mm = drawn_length_mm(structure, stay);
    stiffest_ =
        std::max(stiffest_, stay.axial_stiffness_newtons / std::min(stay.unstressed_mm, line.drawn_mm));
    lines_.push_back(std::move(line));
  }
  for (const Spar& spar : structure.spars)
    cut_spar(structure, spar);
  hold(structure);
  number();
}

void Mesh::cut_spar(const Structure& structure, const Spar& spar) {
  SparPieces pieces;
  pieces.places.push_back(spar.nodes.front().index());
  pieces.at_mm.push_back(0.0);
  const std::size_t cuts = std::clamp<std::size_t>(spar.pieces_a_panel, 1, 64);
  for (std::size_t panel = 0; panel + 1 < spar.nodes.size(); ++panel) {
    const std::size_t below = spar.nodes[panel].index(), above = spar.nodes[panel + 1].index();
    const Vector along = structure.nodes[above].place_mm - structure.nodes[below].place_mm;
    const double panel_mm = length(along), from_mm = pieces.at_mm.back();
    const Vector axis = (1.0 / panel_mm) * along;
    if (spar.root.pinned()) {
      const double axial = section_at(spar.stations, 0.5 * panel_mm).axial_stiffness_newtons;
      pieces.bar = bars_.size();
      pieces.places.push_back(above);
      pieces.at_mm.push_back(panel_mm);
      bars_.push_back({below, above, along, panel_mm, axial});
      stiffest_ = std::max(stiffest_, axial / panel_mm);
      break;
    }
    Vector side = square_to(axis, spar.side);
    side = (1.0 / length(side)) * side;
    for (std::size_t cut = 1; cut <= cuts; ++cut) {
      std::size_t place = above;
      if (cut < cuts) {
        place = drawn_mm_.size();
        drawn_mm_.push_back(structure.nodes[below].place_mm + (static_cast<double>(cut) / cuts) * along);
        turns_.push_back(false);
      }
      const double piece_mm = panel_mm / static_cast<double>(cuts);
      const double middle_mm = from_mm + (static_cast<double>(cut) - 0.5) * piece_mm;
      Beam beam{pieces.places.back(),
                place,
                {.along_mm = (1.0 / static_cast<double>(cuts)) * along,
                 .drawn_mm = piece_mm,
                 .side = side,
                 .square = cross(axis, side),
                 .section = section_at(spar.stations, middle_mm),
                 .root = beams_.size() && !pieces.beams.empty() ? RootJoint{} : spar.root}};
      turns_[beam.first] = turns_[beam.second] = true;
      shortest_piece_mm_ = shortest_piece_mm_ > 0.0 ? std::min(shortest_piece_mm_, piece_mm) : piece_mm;
      stiffest_ = std::max(stiffest_, beam.element.section.axial_stiffness_newtons / piece_mm);
      pieces.beams.push_back(beams_.size());
      pieces.panels.push_back(panel);
      pieces.places.push_back(place);
      pieces.at_mm.push_back(cut < cuts ? from_mm + static_cast<double>(cut) * piece_mm
                                        : from_mm + panel_mm);
      beams_.push_back(beam);
    }
  }
  spars_.push_back(std::move(pieces));
}

void Mesh::hold(const Structure& structure) {
  fixed_.assign(drawn_mm_.size(), {});
  for (const Support& support : structure.supports) {
    const std::size_t place = support.node.index();
    for (std::size_t axis = 0; axis < 3; ++axis) {
      if (!support.along[axis])
        continue;
      const Hold& hold = *support.along[axis];
      const bool stiff = std::isinf(hold.stiffness_newtons_per_mm);
      if (stiff && hold.play_mm == 0.0)
        fixed_[place][axis] = true;
      else
        contacts_.push_back({place, axis,
                             stiff ? stiff_contact_newtons_per_mm : hold.stiffness_newtons_per_mm,
                             hold.play_mm});
    }
    if (support.turning == Turning::held)
      fixed_[place][3] = fixed_[place][4] = fixed_[place][5] = true;
    if (support.turning != Turning::twist_held)
      continue;
    const auto ends_here = [&](const Beam& beam) { return beam.first == place || beam.second == place; };
    if (const auto beam = std::ranges::find_if(beams_, ends_here); beam != beams_.end())
      twist_holds_.push_back(
          {place, beam->element.side, beam->element.square,
           twist_hold_over_piece * beam->element.section.torsion_newton_mm2 / beam->element.drawn_mm});
  }
}

void Mesh::number() {
  numbers_.assign(drawn_mm_.size(), {});
  for (std::size_t place = 0; place < drawn_mm_.size(); ++place)
    for (std::size_t movement = 0; movement < movements_of_end; ++movement) {
      const bool moves = !fixed_[place][movement] && (movement < 3 || turns_[place]);
      numbers_[place][movement] = moves ? static_cast<int>(unknowns_++) : held;
    }
  const auto places_of = [this](std::span<const std::size_t> places, std::size_t first, std::size_t last) {
    Unknowns unknowns;
    for (const std::size_t place : places)
      unknowns.insert(unknowns.end(), numbers_[place].begin() + static_cast<std::ptrdiff_t>(first),
                      numbers_[place].begin() + static_cast<std::ptrdiff_t>(last));
    return unknowns;
  };
  for (const Line& line : lines_)
    elements_.push_back(places_of(line.places, 0, 3));
  for (const Bar& bar : bars_)
    elements_.push_back(places_of(std::array{bar.first, bar.second}, 0, 3));
  for (const Beam& beam : beams_)
    elements_.push_back(places_of(std::array{beam.first, beam.second}, 0, movements_of_end));
  for (const Contact& contact : contacts_)
    elements_.push_back({numbers_[contact.place][contact.axis]});
  for (const TwistHold& hold : twist_holds_)
    elements_.push_back(places_of(std::array{hold.place}, 3, movements_of_end));
}

Configuration Mesh::as_drawn() const {
  return {std::vector<Vector>(drawn_mm_.size()), std::vector<Rotation>(drawn_mm_.size())};
}

Configuration Mesh::moved_by(const Configuration& from, std::span<const double> step, double share) const {
  Configuration to = from;
  for (std::size_t place = 0; place < numbers_.size(); ++place) {
    std::array<double, movements_of_end> by{};
    for (std::size_t movement = 0; movement < movements_of_end; ++movement)
      if (const int unknown = numbers_[place][movement]; unknown != held)
        by[movement] = share * step[static_cast<std::size_t>(unknown)];
    to.moved_mm[place] = from.moved_mm[place] + Vector{by[0], by[1], by[2]};
    if (const Vector spin{by[3], by[4], by[5]}; spin != Vector{})
      to.turned[place] = turned_further(from.turned[place], spin);
  }
  return to;
}

BeamElement::Ends Mesh::ends_of(const Beam& beam, const Configuration& at) const {
  return {at.moved_mm[beam.second] - at.moved_mm[beam.first], at.turned[beam.first],
          at.turned[beam.second]};
}

} // namespace sheerpole::statics
