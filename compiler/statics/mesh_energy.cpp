#include "statics/mesh.hpp"

#include <algorithm>
#include <cmath>

namespace sheerpole::statics {

namespace {

/// Two places and the straight line between them.
struct Leg {
  Vector chord;           ///< unit vector
  double now_mm = 0.0;    ///< length
  double longer_mm = 0.0; ///< than drawn, without the difference of two long lengths
};

Leg leg(Vector drawn, Vector apart) {
  const Vector now = drawn + apart;
  const double drawn_mm = length(drawn), now_mm = length(now);
  Leg result;
  result.now_mm = std::max(now_mm, 1e-6 * drawn_mm);
  result.chord = now_mm > 0.0 ? (1.0 / now_mm) * now : (1.0 / drawn_mm) * drawn;
  result.longer_mm = dot(2.0 * drawn + apart, apart) / (now_mm + drawn_mm);
  return result;
}

/// The forces and the stiffness of one element, a square block by rows.
struct ElementWork {
  std::vector<double> forces, stiffness;

  void clear(std::size_t size) {
    forces.assign(size, 0.0);
    stiffness.assign(size * size, 0.0);
  }
  double& at(std::size_t row, std::size_t column) { return stiffness[row * forces.size() + column]; }
};

/// A straight leg under a tension: what turning it costs, (1 - n n^T) T / l between its places a and b.
void add_turning(const Leg& leg, double tension, std::size_t a, std::size_t b, ElementWork& work) {
  const std::array<double, 3> n = by_axis(leg.chord);
  const double k = tension / leg.now_mm;
  for (std::size_t i = 0; i < 3; ++i)
    for (std::size_t j = 0; j < 3; ++j) {
      const double p = k * ((i == j ? 1.0 : 0.0) - n[i] * n[j]);
      work.at(a + i, a + j) += p;
      work.at(b + i, b + j) += p;
      work.at(a + i, b + j) -= p;
      work.at(b + i, a + j) -= p;
    }
}

void add_length_change(Vector chord, double factor, std::size_t a, std::size_t b,
                       std::vector<double>& into) {
  const std::array<double, 3> n = by_axis(chord);
  for (std::size_t i = 0; i < 3; ++i) {
    into[a + i] -= factor * n[i];
    into[b + i] += factor * n[i];
  }
}

/// A line pulled to `extension` beyond its unstressed length, or a bar pushed or pulled: energy in N mm.
template <class Legs>
double stretched(const Legs& legs, double axial, double unstressed_mm, double extension_mm,
                 ElementWork& work) {
  const double stiffness = axial / unstressed_mm, tension = stiffness * extension_mm;
  for (std::size_t i = 0; i < legs.size(); ++i) {
    add_length_change(legs[i].chord, 1.0, 3 * i, 3 * i + 3, work.forces);
    add_turning(legs[i], tension, 3 * i, 3 * i + 3, work);
  }
  const std::size_t size = work.forces.size();
  for (std::size_t i = 0; i < size; ++i)
    for (std::size_t j = 0; j < size; ++j)
      work.at(i, j) += stiffness * work.forces[i] * work.forces[j];
  for (double& force : work.forces)
    force *= tension;
  return 0.5 * tension * extension_mm;
}

double pushed(const Mesh::Contact& contact, double moved_mm, ElementWork& work) {
  const double beyond = std::abs(moved_mm) - contact.play_mm;
  if (beyond <= 0.0 && contact.play_mm > 0.0)
    return 0.0;
  work.forces[0] = std::copysign(contact.stiffness_newtons_per_mm * beyond, moved_mm);
  work.stiffness[0] = contact.stiffness_newtons_per_mm;
  return 0.5 * contact.stiffness_newtons_per_mm * beyond * beyond;
}

double twisted(const Mesh::TwistHold& hold, const Rotation& turned, ElementWork& work) {
  const Vector u = turned.of(hold.side), v = turned.of(hold.square);
  const double twist = 0.5 * (dot(hold.side, v) - dot(hold.square, u));
  const std::array<double, 3> by = by_axis(0.5 * (cross(v, hold.side) - cross(u, hold.square)));
  const std::array<double, 3> u_now = by_axis(u), v_now = by_axis(v), side = by_axis(hold.side),
                              square = by_axis(hold.square);
  const double straight = dot(hold.side, v) - dot(hold.square, u);
  for (std::size_t i = 0; i < 3; ++i) {
    work.forces[i] = hold.stiffness_newton_mm * twist * by[i];
    for (std::size_t j = 0; j < 3; ++j) {
      const double curved =
          0.5 * (v_now[i] * side[j] + side[i] * v_now[j] - u_now[i] * square[j] - square[i] * u_now[j]) -
          (i == j ? straight : 0.0);
      work.at(i, j) = hold.stiffness_newton_mm * (by[i] * by[j] + 0.5 * twist * curved);
    }
  }
  return 0.5 * hold.stiffness_newton_mm * twist * twist;
}

} // namespace

double Mesh::extension_mm(std::size_t line, double unstressed_mm, const Configuration& at) const {
  const Line& pulled = lines_[line];
  double longer = pulled.drawn_mm - unstressed_mm;
  for (std::size_t i = 0; i < pulled.legs_mm.size(); ++i)
    longer +=
        leg(pulled.legs_mm[i], at.moved_mm[pulled.places[i + 1]] - at.moved_mm[pulled.places[i]]).longer_mm;
  return longer;
}

std::vector<double> Mesh::length_by_unknown(std::size_t line, const Configuration& at) const {
  const Line& pulled = lines_[line];
  std::vector<double> by(3 * pulled.places.size(), 0.0);
  for (std::size_t i = 0; i < pulled.legs_mm.size(); ++i) {
    const Vector apart = at.moved_mm[pulled.places[i + 1]] - at.moved_mm[pulled.places[i]];
    add_length_change(leg(pulled.legs_mm[i], apart).chord, 1.0, 3 * i, 3 * i + 3, by);
  }
  return by;
}

double Mesh::bar_compression_newtons(std::size_t bar, const Configuration& at) const {
  const Bar& pushed = bars_[bar];
  const Vector apart = at.moved_mm[pushed.second] - at.moved_mm[pushed.first];
  return -pushed.axial_stiffness_newtons * leg(pushed.along_mm, apart).longer_mm / pushed.drawn_mm;
}

template <class Add>
double Mesh::visit(std::span<const double> unstressed_mm, const Configuration& at, Add&& add) const {
  double energy = 0.0;
  std::size_t element = 0;
  ElementWork work;
  std::vector<Leg> legs;
  for (std::size_t i = 0; i < lines_.size(); ++i, ++element) {
    const Line& line = lines_[i];
    legs.clear();
    double extension = line.drawn_mm - unstressed_mm[i];
    for (std::size_t k = 0; k < line.legs_mm.size(); ++k) {
      legs.push_back(leg(line.legs_mm[k], at.moved_mm[line.places[k + 1]] - at.moved_mm[line.places[k]]));
      extension += legs.back().longer_mm;
    }
    if (!(extension > 0.0))
      continue;
    work.clear(3 * line.places.size());
    energy += stretched(legs, line.axial_stiffness_newtons, unstressed_mm[i], extension, work);
    add(element, line.places, 0, work.forces, work.stiffness);
  }
  for (const Bar& bar : bars_) {
    work.clear(6);
    const std::array legs_of_bar{leg(bar.along_mm, at.moved_mm[bar.second] - at.moved_mm[bar.first])};
    energy +=
        stretched(legs_of_bar, bar.axial_stiffness_newtons, bar.drawn_mm, legs_of_bar[0].longer_mm, work);
    add(element++, std::array{bar.first, bar.second}, 0, work.forces, work.stiffness);
  }
  for (const Beam& beam : beams_) {
    BeamForces forces{};
    BeamStiffness stiffness{};
    energy += beam.element.add_derivatives(ends_of(beam, at), forces, stiffness);
    add(element++, std::array{beam.first, beam.second}, 0, forces, stiffness.values);
  }
  for (const Contact& contact : contacts_) {
    work.clear(1);
    energy += pushed(contact, by_axis(at.moved_mm[contact.place])[contact.axis], work);
    add(element++, std::array{contact.place}, contact.axis, work.forces, work.stiffness);
  }
  for (const TwistHold& hold : twist_holds_) {
    work.clear(3);
    energy += twisted(hold, at.turned[hold.place], work);
    add(element++, std::array{hold.place}, 3, work.forces, work.stiffness);
  }
  for (const Load& load : loads_)
    energy -= dot(load.force_newtons, at.moved_mm[load.node.index()]);
  return energy;
}

double Mesh::energy(std::span<const double> unstressed_mm, const Configuration& at) const {
  double energy = 0.0;
  for (std::size_t i = 0; i < lines_.size(); ++i)
    if (const double extension = extension_mm(i, unstressed_mm[i], at); extension > 0.0)
      energy += 0.5 * lines_[i].axial_stiffness_newtons / unstressed_mm[i] * extension * extension;
  for (const Bar& bar : bars_) {
    const double longer = leg(bar.along_mm, at.moved_mm[bar.second] - at.moved_mm[bar.first]).longer_mm;
    energy += 0.5 * bar.axial_stiffness_newtons / bar.drawn_mm * longer * longer;
  }
  for (const Beam& beam : beams_)
    energy += beam.element.energy(ends_of(beam, at));
  for (const Contact& contact : contacts_) {
    const double beyond = std::abs(by_axis(at.moved_mm[contact.place])[contact.axis]) - contact.play_mm;
    if (beyond > 0.0)
      energy += 0.5 * contact.stiffness_newtons_per_mm * beyond * beyond;
  }
  for (const TwistHold& hold : twist_holds_) {
    const Rotation& turned = at.turned[hold.place];
    const double twist =
        0.5 * (dot(hold.side, turned.of(hold.square)) - dot(hold.square, turned.of(hold.side)));
    energy += 0.5 * hold.stiffness_newton_mm * twist * twist;
  }
  for (const Load& load : loads_)
    energy -= dot(load.force_newtons, at.moved_mm[load.node.index()]);
  return energy;
}

double Mesh::derivatives(std::span<const double> unstressed_mm, const Configuration& at,
                         std::span<double> forces, StiffnessSink& sink) const {
  std::ranges::fill(forces, 0.0);
  for (const Load& load : loads_)
    for (std::size_t axis = 0; axis < 3; ++axis)
      if (const int unknown = numbers_[load.node.index()][axis]; unknown != held)
        forces[static_cast<std::size_t>(unknown)] -= by_axis(load.force_newtons)[axis];
  return visit(unstressed_mm, at,
               [&](std::size_t element, const auto& /*places*/, std::size_t /*from*/,
                   std::span<const double> element_forces, std::span<const double> stiffness) {
                 const Unknowns& unknowns = elements_[element];
                 for (std::size_t i = 0; i < unknowns.size(); ++i)
                   if (unknowns[i] != held)
                     forces[static_cast<std::size_t>(unknowns[i])] += element_forces[i];
                 sink.add(element, stiffness);
               });
}

std::vector<std::array<Vector, 2>> Mesh::holding_forces(std::span<const double> unstressed_mm,
                                                        const Configuration& at) const {
  std::vector<std::array<double, movements_of_end>> sums(drawn_mm_.size());
  for (const Load& load : loads_)
    for (std::size_t axis = 0; axis < 3; ++axis)
      sums[load.node.index()][axis] -= by_axis(load.force_newtons)[axis];
  const std::size_t before_contacts = lines_.size() + bars_.size() + beams_.size();
  visit(unstressed_mm, at,
        [&](std::size_t element, const auto& places, std::size_t from, std::span<const double> forces,
            std::span<const double> /*stiffness*/) {
          // What holds is not part of what it holds.
          if (element >= before_contacts)
            return;
          const std::size_t each = forces.size() / places.size();
          for (std::size_t i = 0; i < forces.size(); ++i)
            sums[places[i / each]][from + i % each] += forces[i];
        });
  std::vector<std::array<Vector, 2>> result;
  for (const auto& sum : sums)
    result.push_back({Vector{sum[0], sum[1], sum[2]}, Vector{sum[3], sum[4], sum[5]}});
  return result;
}

} // namespace sheerpole::statics
