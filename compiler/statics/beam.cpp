#include "statics/beam.hpp"

#include <algorithm>
#include <cmath>

namespace sheerpole::statics {

namespace {

/// One of the two ways in which a beam bends.
struct Way {
  double a = 0.0, b = 0.0;       ///< leans of the first and the second end
  double energy = 0.0;           ///< N mm
  double by_a = 0.0, by_b = 0.0; ///< derivatives of the energy
  double aa = 0.0, ab = 0.0, bb = 0.0;
  double bow = 0.0; ///< of the strain
  double bow_by_a = 0.0, bow_by_b = 0.0, bow_aa = 0.0, bow_ab = 0.0, bow_bb = 0.0;
};

/// k = EI / L.
Way bent(double a, double b, double k, bool hinged) {
  Way way{.a = a, .b = b};
  if (hinged) {
    way.energy = 1.5 * k * b * b;
    way.by_b = 3.0 * k * b;
    way.bb = 3.0 * k;
    way.bow = b * b / 10.0;
    way.bow_by_b = b / 5.0;
    way.bow_bb = 1.0 / 5.0;
    return way;
  }
  way.energy = 2.0 * k * (a * a + a * b + b * b);
  way.by_a = k * (4.0 * a + 2.0 * b);
  way.by_b = k * (2.0 * a + 4.0 * b);
  way.aa = way.bb = 4.0 * k;
  way.ab = 2.0 * k;
  way.bow = (2.0 * a * a - a * b + 2.0 * b * b) / 30.0;
  way.bow_by_a = (4.0 * a - b) / 30.0;
  way.bow_by_b = (4.0 * b - a) / 30.0;
  way.bow_aa = way.bow_bb = 4.0 / 30.0;
  way.bow_ab = -1.0 / 30.0;
  return way;
}

/// The beam as it stands.
struct Standing {
  Vector chord; ///< unit vector
  double now_mm = 0.0;
  Vector side_first, side_second, square_first, square_second;
  Way in_side, across;
  double twist = 0.0, torsion_stiffness = 0.0;
  double strain = 0.0;
};

Standing standing(const BeamElement& beam, const BeamElement::Ends& ends) {
  Standing now;
  const Vector between = beam.along_mm + ends.apart_mm;
  now.now_mm = length(between);
  // Two ends in one place have no chord; any direction will do to get away from there.
  now.chord = now.now_mm > 0.0 ? (1.0 / now.now_mm) * between : beam.side;
  now.now_mm = std::max(now.now_mm, 1e-6 * beam.drawn_mm);
  now.side_first = ends.first.of(beam.side);
  now.side_second = ends.second.of(beam.side);
  now.square_first = ends.first.of(beam.square);
  now.square_second = ends.second.of(beam.square);
  now.in_side = bent(-dot(now.chord, now.side_first), -dot(now.chord, now.side_second),
                     beam.section.bending_in_side_newton_mm2 / beam.drawn_mm, beam.root.swings_in_side);
  now.across = bent(-dot(now.chord, now.square_first), -dot(now.chord, now.square_second),
                    beam.section.bending_square_newton_mm2 / beam.drawn_mm, beam.root.swings_square);
  if (!beam.root.twists) {
    now.torsion_stiffness = beam.section.torsion_newton_mm2 / beam.drawn_mm;
    now.twist = 0.5 * (dot(now.side_first, now.square_second) - dot(now.square_first, now.side_second));
  }
  // l - L without the difference of two long lengths.
  const double longer =
      dot(2.0 * beam.along_mm + ends.apart_mm, ends.apart_mm) / (now.now_mm + beam.drawn_mm);
  now.strain = longer / beam.drawn_mm + now.in_side.bow + now.across.bow;
  return now;
}

double energy_of(const BeamElement& beam, const Standing& now) {
  return 0.5 * beam.section.axial_stiffness_newtons * beam.drawn_mm * now.strain * now.strain +
         now.in_side.energy + now.across.energy + 0.5 * now.torsion_stiffness * now.twist * now.twist;
}

/// The places of the movements in the arrays.
constexpr std::size_t place_first = 0, turn_first = 3, place_second = 6, turn_second = 9;

void put(BeamForces& into, std::size_t from, Vector value) {
  into[from] = value.x;
  into[from + 1] = value.y;
  into[from + 2] = value.z;
}

using Block = std::array<std::array<double, 3>, 3>;

/// Adds p a b^T to a block.
void add_outer(Block& block, double p, Vector a, Vector b) {
  const std::array<double, 3> rows = by_axis(p * a), columns = by_axis(b);
  for (std::size_t i = 0; i < 3; ++i)
    for (std::size_t j = 0; j < 3; ++j)
      block[i][j] += rows[i] * columns[j];
}

void add_unit(Block& block, double p) {
  for (std::size_t i = 0; i < 3; ++i)
    block[i][i] += p;
}

void add_block(BeamStiffness& into, std::size_t row, std::size_t column, double p, const Block& block) {
  for (std::size_t i = 0; i < 3; ++i)
    for (std::size_t j = 0; j < 3; ++j)
      into.at(row + i, column + j) += p * block[i][j];
}

void add_transposed(BeamStiffness& into, std::size_t row, std::size_t column, double p,
                    const Block& block) {
  for (std::size_t i = 0; i < 3; ++i)
    for (std::size_t j = 0; j < 3; ++j)
      into.at(row + i, column + j) += p * block[j][i];
}

void add_product(BeamStiffness& into, double p, const BeamForces& a, const BeamForces& b) {
  for (std::size_t i = 0; i < movements_of_beam; ++i) {
    const double row = p * a[i];
    for (std::size_t j = 0; j < movements_of_beam; ++j)
      into.at(i, j) += row * b[j];
  }
}

/// Derivatives of the lean of one end, -n.u, by all movements.
BeamForces lean_by(const Standing& now, Vector side, std::size_t turn) {
  BeamForces by{};
  const Vector across = (1.0 / now.now_mm) * square_to(now.chord, side);
  put(by, place_first, across);
  put(by, place_second, -across);
  put(by, turn, cross(now.chord, side));
  return by;
}

/// Second derivatives of the leans, each times what belongs to it: `weighted_first` and `weighted_second`
/// are the sums of f u over the leans of each end, f the derivative of the energy by the lean.
void add_curvature_of_leans(const Standing& now, Vector weighted_first, Vector weighted_second,
                            BeamStiffness& stiffness) {
  const Vector n = now.chord;
  const Vector all = weighted_first + weighted_second;
  const double shorter = 1.0 / now.now_mm;
  Block places{};
  const Vector across = square_to(n, all);
  add_outer(places, shorter * shorter, n, across);
  add_outer(places, shorter * shorter, across, n);
  const double along = shorter * shorter * dot(n, all);
  add_unit(places, along);
  add_outer(places, -along, n, n);
  add_block(stiffness, place_first, place_first, 1.0, places);
  add_block(stiffness, place_second, place_second, 1.0, places);
  add_block(stiffness, place_first, place_second, -1.0, places);
  add_block(stiffness, place_second, place_first, -1.0, places);
  const auto turning = [&](Vector weighted, std::size_t turn) {
    Block turns{};
    add_outer(turns, -0.5, weighted, n);
    add_outer(turns, -0.5, n, weighted);
    add_unit(turns, dot(n, weighted));
    add_block(stiffness, turn, turn, 1.0, turns);
    // -[w]x P / l, the cross product as a matrix after the part square to the chord.
    Block mixed{};
    const std::array<Vector, 3> axes{Vector{1, 0, 0}, Vector{0, 1, 0}, Vector{0, 0, 1}};
    for (std::size_t j = 0; j < 3; ++j) {
      const std::array<double, 3> column = by_axis(-shorter * cross(weighted, square_to(n, axes[j])));
      for (std::size_t i = 0; i < 3; ++i)
        mixed[i][j] = column[i];
    }
    add_block(stiffness, turn, place_second, 1.0, mixed);
    add_block(stiffness, turn, place_first, -1.0, mixed);
    add_transposed(stiffness, place_second, turn, 1.0, mixed);
    add_transposed(stiffness, place_first, turn, -1.0, mixed);
  };
  turning(weighted_first, turn_first);
  turning(weighted_second, turn_second);
}

/// Second derivatives of p u.v, u turning with the first end and v with the second.
void add_curvature_of_product(double p, Vector u, Vector v, BeamStiffness& stiffness) {
  Block own{};
  add_outer(own, 0.5 * p, u, v);
  add_outer(own, 0.5 * p, v, u);
  add_unit(own, -p * dot(u, v));
  add_block(stiffness, turn_first, turn_first, 1.0, own);
  add_block(stiffness, turn_second, turn_second, 1.0, own);
  Block mixed{};
  add_unit(mixed, p * dot(u, v));
  add_outer(mixed, -p, v, u);
  add_block(stiffness, turn_first, turn_second, 1.0, mixed);
  add_transposed(stiffness, turn_second, turn_first, 1.0, mixed);
}

} // namespace

double BeamElement::energy(const Ends& ends) const {
  return energy_of(*this, standing(*this, ends));
}

double BeamElement::add_derivatives(const Ends& ends, BeamForces& forces, BeamStiffness& stiffness) const {
  const Standing now = standing(*this, ends);
  const double axial = section.axial_stiffness_newtons;
  const double tension = axial * now.strain;
  BeamForces longer{}; // how the length changes with the movements
  put(longer, place_first, -now.chord);
  put(longer, place_second, now.chord);
  BeamForces strained{};
  for (std::size_t i = 0; i < movements_of_beam; ++i)
    strained[i] = longer[i] / drawn_mm;

  Vector weighted_first, weighted_second;
  const auto bend = [&](const Way& way, Vector first, Vector second) {
    const BeamForces by_a = lean_by(now, first, turn_first), by_b = lean_by(now, second, turn_second);
    const double pulled = tension * drawn_mm;
    const double f_a = way.by_a + pulled * way.bow_by_a, f_b = way.by_b + pulled * way.bow_by_b;
    for (std::size_t i = 0; i < movements_of_beam; ++i) {
      forces[i] += f_a * by_a[i] + f_b * by_b[i];
      strained[i] += way.bow_by_a * by_a[i] + way.bow_by_b * by_b[i];
    }
    // f_aa a a^T + f_ab (a b^T + b a^T) + f_bb b b^T, as two products.
    const double aa = way.aa + pulled * way.bow_aa, ab = way.ab + pulled * way.bow_ab,
                 bb = way.bb + pulled * way.bow_bb;
    BeamForces beside_a{}, beside_b{};
    for (std::size_t i = 0; i < movements_of_beam; ++i) {
      beside_a[i] = aa * by_a[i] + ab * by_b[i];
      beside_b[i] = ab * by_a[i] + bb * by_b[i];
    }
    add_product(stiffness, 1.0, by_a, beside_a);
    add_product(stiffness, 1.0, by_b, beside_b);
    weighted_first = weighted_first + f_a * first;
    weighted_second = weighted_second + f_b * second;
  };
  bend(now.in_side, now.side_first, now.side_second);
  bend(now.across, now.square_first, now.square_second);

  for (std::size_t i = 0; i < movements_of_beam; ++i)
    forces[i] += tension * longer[i];
  add_product(stiffness, axial * drawn_mm, strained, strained);
  add_curvature_of_leans(now, weighted_first, weighted_second, stiffness);
  Block sideways{}; // of the length itself: (1 - n n^T) / l
  add_unit(sideways, tension / now.now_mm);
  add_outer(sideways, -tension / now.now_mm, now.chord, now.chord);
  add_block(stiffness, place_first, place_first, 1.0, sideways);
  add_block(stiffness, place_second, place_second, 1.0, sideways);
  add_block(stiffness, place_first, place_second, -1.0, sideways);
  add_block(stiffness, place_second, place_first, -1.0, sideways);

  if (now.torsion_stiffness > 0.0) {
    const Vector moment =
        0.5 * (cross(now.side_first, now.square_second) - cross(now.square_first, now.side_second));
    BeamForces twisted{};
    put(twisted, turn_first, moment);
    put(twisted, turn_second, -moment);
    const double f = now.torsion_stiffness * now.twist;
    for (std::size_t i = turn_first; i < movements_of_beam; ++i)
      forces[i] += f * twisted[i];
    add_product(stiffness, now.torsion_stiffness, twisted, twisted);
    add_curvature_of_product(0.5 * f, now.side_first, now.square_second, stiffness);
    add_curvature_of_product(-0.5 * f, now.square_first, now.side_second, stiffness);
  }
  return energy_of(*this, now);
}

BeamElement::Carried BeamElement::carried(const Ends& ends) const {
  const Standing now = standing(*this, ends);
  // With the bow's part, without which the moments of two pieces that meet would not balance.
  const double pulled = section.axial_stiffness_newtons * now.strain * drawn_mm;
  const auto moments = [&](const Way& way) {
    return std::array{-(way.by_a + pulled * way.bow_by_a), way.by_b + pulled * way.bow_by_b};
  };
  return {.compression_newtons = -section.axial_stiffness_newtons * now.strain,
          .bending_in_side = moments(now.in_side),
          .bending_square = moments(now.across),
          .torsion_newton_mm = now.torsion_stiffness * now.twist};
}

} // namespace sheerpole::statics
