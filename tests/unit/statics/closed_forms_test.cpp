// Small structures whose answer is known in closed form; the source stands with each.

#include "statics/solver.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <cstdint>
#include <numbers>

namespace sheerpole::closed_forms_test {
namespace {

using statics::drawn_length_mm;
using statics::fixed_point;
using statics::giving_point;
using statics::Hold;
using statics::NodeId;
using statics::Outcome;
using statics::pinned_heel;
using statics::SearchBounds;
using statics::Solver;
using statics::Spar;
using statics::State;
using statics::Stay;
using statics::StayState;
using statics::Structure;
using statics::Support;
using statics::Turning;
using statics::unstressed_length_mm;

constexpr double pi = std::numbers::pi;
const SearchBounds anywhere{.farthest_share = 10.0};

NodeId id(std::size_t index) {
  return {static_cast<std::uint32_t>(index)};
}

Support held_along(NodeId node, bool x, bool y, bool z) {
  Support support{node, {}, Turning::free};
  const std::array<bool, 3> holds{x, y, z};
  for (std::size_t axis = 0; axis < 3; ++axis)
    if (holds[axis])
      support.along[axis] = Hold{};
  return support;
}

Solver solver_of(const Structure& structure) {
  auto made = Solver::make(structure);
  EXPECT_TRUE(made.ok());
  return std::move(made.value());
}

State settled(const Structure& structure, const SearchBounds& bounds = {}) {
  return solver_of(structure).settle(bounds);
}

/// Two wires in line between stiff ends, of 689.5 N/mm each, so 344.75 N/mm together.
Structure wire_between_stiff_ends(double shorter_mm) {
  Structure wire;
  wire.nodes = {{{0, 0, 0}}, {{5000, 0, 0}}, {{10000, 0, 0}}};
  for (std::size_t i = 0; i < 2; ++i) {
    const double unstressed = 5000.0 - (i == 0 ? shorter_mm : 0.0);
    wire.stays.push_back({{id(i), id(i + 1)}, 689.5 * unstressed, unstressed});
  }
  wire.supports = {fixed_point(id(0)), fixed_point(id(2))};
  return wire;
}

// One turn of a 1/2-20 pair is 2.54 mm; 344.75 N/mm times that. Exact.
TEST(ClosedForms, OneTurnOfHalfInchTwenty) {
  const State state = settled(wire_between_stiff_ends(2.54));
  ASSERT_EQ(state.outcome, Outcome::equilibrium);
  for (const StayState& stay : state.stays)
    EXPECT_NEAR(stay.tension_newtons, 875.665, 1e-6);
  EXPECT_NEAR(state.reactions[0][0].x, -875.665, 1e-6);
}

// A taut string pulled aside in the middle: 2 T / l each side (elementary statics; what Mersenne's law
// rests on).
TEST(ClosedForms, TautStringIsAsStiffAsItsTension) {
  const State state = settled(wire_between_stiff_ends(2.54));
  EXPECT_NEAR(state.softest->stiffness_newtons_per_mm, 2.0 * 875.665 / 5000.0, 1e-6);
  EXPECT_NEAR(state.softest->direction.x, 0.0, 1e-6);
}

// Hooke's law: springs in series. The end gives 2 mm for each kN.
TEST(ClosedForms, HullThatGives) {
  Structure wire = wire_between_stiff_ends(2.54);
  wire.supports[1] = giving_point(id(2), {2.0, 0.0, 0.0});
  const State state = settled(wire);
  ASSERT_EQ(state.outcome, Outcome::equilibrium);
  const double tension = 2.54 / (1.0 / 344.75 + 2.0 / 1000.0);
  EXPECT_NEAR(state.stays[1].tension_newtons, tension, 1e-6);
  EXPECT_NEAR(state.moved_mm[2].x, -0.002 * tension, 1e-9);
}

// A chock with play holds nothing until the mast is at it.
TEST(ClosedForms, SupportWithPlay) {
  Structure wire = wire_between_stiff_ends(2.54);
  wire.supports[1].along[0] = Hold{500.0, 1.0};
  const State state = settled(wire);
  ASSERT_EQ(state.outcome, Outcome::equilibrium);
  EXPECT_NEAR(state.stays[0].tension_newtons, (2.54 - 1.0) / (1.0 / 344.75 + 1.0 / 500.0), 1e-6);
  wire.supports[1].along[0] = Hold{500.0, 3.0};
  const State loose = settled(wire);
  EXPECT_EQ(loose.outcome, Outcome::mechanism);
  EXPECT_EQ(loose.stays[0].tension_newtons, 0.0);
  wire.supports[1].along[0] = Hold{std::numeric_limits<double>::infinity(), 1.0};
  EXPECT_NEAR(settled(wire).stays[0].tension_newtons, (2.54 - 1.0) * 344.75, 0.2);
}

struct SideLoad {
  double newtons = 3200, mast = 11400, spreader_at = 5500, half_beam = 1250, spreader = 1000;
};

/// One side of a mast with a pinned spreader, held fore and aft, pulled at its head; next to nothing
/// stretches.
Structure mast_pulled_aside(const SideLoad& of) {
  Structure mast;
  mast.nodes = {{{0, 0, 0}},
                {{0, 0, of.spreader_at}},
                {{0, 0, of.mast}},
                {{0, of.spreader, of.spreader_at}},
                {{0, of.half_beam, 0}}};
  const double axial = 1e14;
  for (const auto& path : {std::vector{id(2), id(3)}, {id(3), id(4)}, {id(1), id(4)}}) {
    Stay stay{path, axial, 0.0};
    stay.unstressed_mm = drawn_length_mm(mast, stay);
    mast.stays.push_back(stay);
  }
  const double bending = 1e12;
  mast.spars.push_back({{id(0), id(1), id(2)}, {{0, {axial, bending, bending, bending}}}, {1, 0, 0}, {}});
  mast.spars.push_back({{id(1), id(3)}, {{0, {axial, 0, 0, 0}}}, {1, 0, 0}, {true, true, true}});
  mast.supports = {pinned_heel(id(0)), fixed_point(id(4)), held_along(id(1), true, false, false),
                   held_along(id(2), true, false, false), held_along(id(3), true, false, false)};
  mast.loads = {{id(2), {0, -of.newtons, 0}}};
  return mast;
}

/// Joint equilibrium, no stretch; elementary statics, and the table of a worked set (19 149, 18 899, 10
/// 567, 2342 and 29 184 N for the sizes above).
void expect_joint_equilibrium(const SideLoad& of, const State& state, double within) {
  ASSERT_EQ(state.outcome, Outcome::equilibrium);
  const double upper = std::atan2(of.spreader, of.mast - of.spreader_at);
  const double lean = std::atan2(of.half_beam - of.spreader, of.spreader_at);
  const double lower = std::atan2(of.half_beam, of.spreader_at);
  const double d2 = of.newtons / std::sin(upper), v1 = d2 * std::cos(upper) / std::cos(lean);
  const double thrust = d2 * std::sin(upper) - v1 * std::sin(lean), d1 = thrust / std::sin(lower);
  EXPECT_NEAR(state.stays[0].tension_newtons, d2, within * d2);
  EXPECT_NEAR(state.stays[1].tension_newtons, v1, within * v1);
  EXPECT_NEAR(state.stays[2].tension_newtons, d1, within * d1);
  EXPECT_NEAR(state.spars[1].compression_newtons[0], thrust, within * thrust);
  // T H / b, whatever is between.
  EXPECT_NEAR(state.spars[0].compression_newtons[0], of.newtons * of.mast / of.half_beam,
              within * of.newtons * of.mast / of.half_beam);
  EXPECT_NEAR(state.reactions[1][0].z, -of.newtons * of.mast / of.half_beam,
              within * of.newtons * of.mast / of.half_beam);
}

TEST(ClosedForms, MastPulledAside) {
  const SideLoad of;
  const State state = settled(mast_pulled_aside(of));
  expect_joint_equilibrium(of, state, 1e-6);
  EXPECT_NEAR(state.stays[0].tension_newtons, 19149, 0.5);
  EXPECT_NEAR(state.stays[1].tension_newtons, 18899, 0.5);
  EXPECT_NEAR(state.stays[2].tension_newtons, 10567, 0.5);
  EXPECT_NEAR(state.spars[1].compression_newtons[0], 2342, 0.5);
  EXPECT_NEAR(state.spars[0].compression_newtons[0], 29184, 0.5);
}

TEST(ClosedForms, MastPulledAsideOtherwise) {
  for (const SideLoad& of : {SideLoad{900, 8700, 4300, 1100, 700}, SideLoad{5200, 15300, 9100, 1900, 1500}})
    expect_joint_equilibrium(of, settled(mast_pulled_aside(of)), 1e-6);
}

/// A column from the heel up, loaded on its head, which is held aside or not.
Structure column(double push_newtons, bool built_in, bool head_held, std::size_t pieces = 8) {
  Structure column;
  column.nodes = {{{0, 0, 0}}, {{0, 0, 6000}}};
  Spar spar{{id(0), id(1)}, {{0, {1e10, 2e11, 3e11, 1e11}}}, {1, 0, 0}, {}};
  spar.pieces_a_panel = pieces;
  column.spars.push_back(spar);
  column.supports = {pinned_heel(id(0))};
  if (built_in)
    column.supports[0].turning = Turning::held;
  if (head_held)
    column.supports.push_back(held_along(id(1), true, true, false));
  column.loads = {{id(1), {0, 0, -push_newtons}}};
  return column;
}

void expect_buckles_at(double newtons, bool built_in, bool head_held) {
  EXPECT_EQ(settled(column(0.999 * newtons, built_in, head_held)).outcome, Outcome::equilibrium);
  const State beyond = settled(column(1.001 * newtons, built_in, head_held));
  EXPECT_EQ(beyond.outcome, Outcome::unstable);
  EXPECT_LT(beyond.softest->stiffness_newtons_per_mm, 0.0);
  // The weaker way.
  EXPECT_NEAR(std::abs(beyond.softest->direction.x), 1.0, 1e-3);
}

// Euler: pi^2 EI / l^2 pinned, a quarter of it with a free head.
TEST(ClosedForms, ColumnsBuckleAtEulersLoad) {
  const double pinned = pi * pi * 2e11 / (6000.0 * 6000.0);
  expect_buckles_at(pinned, false, true);
  expect_buckles_at(0.25 * pinned, true, false);
}

// A column in two steps, built in below and free above: tan(k1 l1) tan(k2 l2) = k1 / k2 with k = sqrt(P /
// EI), 1 the upper part. Source: Timoshenko and Gere, Theory of Elastic Stability, bars with changes of
// cross section; worked out again from the two sines that meet at the step.
TEST(ClosedForms, SteppedColumnBuckles) {
  const double upper = 2000.0, lower = 4000.0, thin = 0.6e11, thick = 2e11;
  double low = 0.0, high = 0.25 * pi * pi * thick / (6000.0 * 6000.0);
  for (int i = 0; i < 80; ++i) {
    const double push = 0.5 * (low + high);
    const double k1 = std::sqrt(push / thin), k2 = std::sqrt(push / thick);
    (std::tan(k1 * upper) * std::tan(k2 * lower) < k1 / k2 && k1 * upper < 0.5 * pi ? low : high) = push;
  }
  for (const double share : {0.998, 1.002}) {
    Structure column;
    column.nodes = {{{0, 0, 0}}, {{0, 0, lower}}, {{0, 0, upper + lower}}};
    const statics::Section below{1e10, thick, 3.0 * thick, 1e11}, above{1e10, thin, 3.0 * thin, 1e11};
    column.spars.push_back(
        {{id(0), id(1), id(2)}, {{0.0, below}, {lower, below}, {lower, above}}, {1, 0, 0}, {}, 8});
    column.supports = {fixed_point(id(0))};
    column.supports[0].turning = Turning::held;
    column.loads = {{id(2), {0, 0, -share * low}}};
    EXPECT_EQ(settled(column).outcome, share < 1.0 ? Outcome::equilibrium : Outcome::unstable) << share;
  }
}

// A column pinned at both ends whose EI falls evenly to half at its head: with z = EI / EI0 the deflection
// is sqrt(z) times a sum of J1 and Y1 of a sqrt(z), a = 4 l sqrt(P / EI0), and 0 at z = 1 and 1/2. Source:
// Timoshenko and Gere, Theory of Elastic Stability, bars of variable cross section; worked out again from
// Bessel's equation.
TEST(ClosedForms, TaperedColumnBuckles) {
  const double length = 6000.0, stout = 2e11, thin = 1e11;
  const auto off = [](double a) {
    const double b = a * std::sqrt(0.5);
    return std::cyl_bessel_j(1, a) * std::cyl_neumann(1, b) -
           std::cyl_neumann(1, a) * std::cyl_bessel_j(1, b);
  };
  double low = 8.0, high = 13.0; // of a: pi^2 times half of EI0 and all of it lie within
  ASSERT_LT(off(low) * off(high), 0.0);
  for (int i = 0; i < 80; ++i) {
    const double middle = 0.5 * (low + high);
    (off(low) * off(middle) > 0.0 ? low : high) = middle;
  }
  const double buckles = stout * std::pow(low / (4.0 * length), 2);
  EXPECT_GT(buckles, pi * pi * thin / (length * length));
  EXPECT_LT(buckles, pi * pi * stout / (length * length));
  for (const double share : {0.998, 1.002}) {
    Structure column;
    column.nodes = {{{0, 0, 0}}, {{0, 0, length}}};
    column.spars.push_back(
        {{id(0), id(1)},
         {{0.0, {1e10, stout, 3.0 * stout, 1e11}}, {length, {1e10, thin, 3.0 * thin, 1e11}}},
         {1, 0, 0},
         {},
         16});
    column.supports = {pinned_heel(id(0)), held_along(id(1), true, true, false)};
    column.loads = {{id(1), {0, 0, -share * buckles}}};
    EXPECT_EQ(settled(column).outcome, share < 1.0 ? Outcome::equilibrium : Outcome::unstable) << share;
  }
}

// A cantilever whose EI falls evenly to half at its tip, P at the tip: P l^3 / EI0 times the integral of
// (1 - u)^2 / (1 - u / 2), which is 2 ln 2 - 1; of a straight one it is 1/3. Source: the unit load, of
// textbooks of strength of materials; the integral worked out here.
TEST(ClosedForms, TaperedCantilever) {
  Structure cantilever;
  cantilever.nodes = {{{0, 0, 0}}, {{0, 0, 6000}}};
  cantilever.spars.push_back({{id(0), id(1)},
                              {{0.0, {1e10, 2e11, 2e11, 1e11}}, {6000.0, {1e10, 1e11, 1e11, 1e11}}},
                              {1, 0, 0},
                              {},
                              16});
  cantilever.supports = {fixed_point(id(0))};
  cantilever.supports[0].turning = Turning::held;
  cantilever.loads = {{id(1), {1.0, 0, 0}}};
  const double expected = std::pow(6000.0, 3) / 2e11 * (2.0 * std::log(2.0) - 1.0);
  EXPECT_NEAR(settled(cantilever).moved_mm[1].x, expected, 1e-3 * expected);
}

// Of a column pushed by P and loaded aside by Q at mid-length: Q l^3 / (48 EI) times 3 (tan u - u) / u^3, u
// = l/2 sqrt(P / EI). Source: Timoshenko and Gere, Theory of Elastic Stability, beam-columns; from memory.
TEST(ClosedForms, BeamColumn) {
  Structure beam;
  beam.nodes = {{{0, 0, 0}}, {{0, 0, 3000}}, {{0, 0, 6000}}};
  beam.spars.push_back({{id(0), id(1), id(2)}, {{0, {1e10, 2e11, 3e11, 1e11}}}, {1, 0, 0}, {}});
  beam.supports = {pinned_heel(id(0)), held_along(id(2), true, true, false)};
  for (const double share : {0.2, 0.5, 0.9}) {
    const double push = share * pi * pi * 2e11 / (6000.0 * 6000.0), aside = 10.0;
    beam.loads = {{id(2), {0, 0, -push}}, {id(1), {aside, 0, 0}}};
    const State state = settled(beam);
    ASSERT_EQ(state.outcome, Outcome::equilibrium);
    const double u = 3000.0 * std::sqrt(push / 2e11);
    const double expected =
        aside * std::pow(6000.0, 3) / (48.0 * 2e11) * 3.0 * (std::tan(u) - u) / (u * u * u);
    EXPECT_NEAR(state.moved_mm[1].x, expected, 1e-3 * expected) << share;
    EXPECT_NEAR(state.spars[0].places[4].bend_mm.x, expected, 1e-3 * expected) << share;
    // Moment in the middle: Q l / 4 tan(u) / u.
    const double moment = aside * 6000.0 / 4.0 * std::tan(u) / u;
    EXPECT_NEAR(state.spars[0].bending_newton_mm[0], moment, 5e-3 * moment) << share;
  }
}

// A cantilever bent far: for P l^2 / EI = 1 the tip goes 0.30172 l aside and 0.05643 l back. Source: the
// elastica by elliptic integrals, table of Mattiasson, International Journal for Numerical Methods in
// Engineering 17 (1981); from memory.
TEST(ClosedForms, CantileverBentFar) {
  Structure cantilever = column(0.0, true, false, 32);
  cantilever.loads = {{id(1), {2e11 / (6000.0 * 6000.0), 0, 0}}};
  const State state = settled(cantilever, anywhere);
  ASSERT_EQ(state.outcome, Outcome::equilibrium);
  EXPECT_NEAR(state.moved_mm[1].x, 0.30172 * 6000.0, 1.0);
  EXPECT_NEAR(state.moved_mm[1].z, -0.05643 * 6000.0, 1.0);
  EXPECT_EQ(settled(cantilever).outcome, Outcome::far_away);
}

// A shaft twisted by two forces a lever apart: M l / GJ. Elementary.
TEST(ClosedForms, ShaftTwisted) {
  Structure shaft;
  shaft.nodes = {{{0, 0, 0}}, {{0, 0, 2000}}, {{100, 0, 2000}}, {{-100, 0, 2000}}};
  shaft.spars.push_back({{id(0), id(1)}, {{0, {1e9, 1e12, 1e12, 4e9}}}, {1, 0, 0}, {}});
  for (const std::size_t arm : {2, 3})
    shaft.spars.push_back({{id(1), id(arm)}, {{0, {1e9, 1e14, 1e14, 1e12}}}, {0, 0, 1}, {}});
  shaft.supports = {fixed_point(id(0))};
  shaft.supports[0].turning = Turning::held;
  shaft.loads = {{id(2), {0, 50, 0}}, {id(3), {0, -50, 0}}};
  const State state = settled(shaft);
  ASSERT_EQ(state.outcome, Outcome::equilibrium);
  const double angle = 50.0 * 200.0 * 2000.0 / 4e9;
  // The lever gets shorter by angle^2 / 2, 1.2e-5 of it.
  EXPECT_NEAR(state.moved_mm[2].y, 100.0 * std::sin(angle * std::cos(angle)), 1e-6);
  EXPECT_NEAR(state.reactions[0][1].z, -50.0 * 200.0 * std::cos(angle), 1e-3);
}

// A line of many short links, its weight on the joints, against the elastic catenary: H = 1000 N, V = 700
// N, 125 m, 4 N/m, EA 5e5 N: 113.74411393 m across, 50.32541471 m down. Source: Irvine, Cable Structures,
// closed form.
TEST(ClosedForms, LinksHangAsTheElasticCatenary) {
  constexpr std::size_t links = 200;
  constexpr double across = 113744.11393, down = 50325.41471, whole = 125000.0;
  Structure line;
  for (std::size_t i = 0; i <= links; ++i) {
    const double t = static_cast<double>(i) / links;
    line.nodes.push_back({{t * across, 0.0, -t * down - 4.0 * 6000.0 * t * (1.0 - t)}});
    if (i > 0)
      line.stays.push_back({{id(i - 1), id(i)}, 5e5, whole / links});
    if (i > 0 && i < links)
      line.loads.push_back({id(i), {0.0, 0.0, -4.0 * whole / 1000.0 / links}});
  }
  line.supports = {fixed_point(id(0)), fixed_point(id(links))};
  const State state = settled(line, anywhere);
  ASSERT_EQ(state.outcome, Outcome::equilibrium);
  EXPECT_NEAR(-state.reactions[0][0].x, 1000.0, 0.1);
  // The weight of half a link hangs on the end itself.
  EXPECT_NEAR(state.reactions[0][0].z + 0.5 * 4.0 * 125.0 / links, 700.0, 0.1);
}

// What is measured under tension goes back to Hooke's law.
TEST(ClosedForms, LengthWithoutTension) {
  const double unstressed = *unstressed_length_mm(10000.0, 5000.0, 2e6);
  EXPECT_NEAR(2e6 * (10000.0 - unstressed) / unstressed, 5000.0, 1e-9);
  EXPECT_FALSE(unstressed_length_mm(10000.0, -1.0, 2e6));
  EXPECT_FALSE(unstressed_length_mm(10000.0, 5000.0, 0.0));
  EXPECT_FALSE(unstressed_length_mm(std::nan(""), 5000.0, 2e6));
}

TEST(ClosedForms, MastWithoutStaysFalls) {
  const State state = settled(column(0.0, false, false));
  EXPECT_EQ(state.outcome, Outcome::mechanism);
  EXPECT_EQ(state.softest->node, id(1));
  EXPECT_EQ(settled(column(1000.0, false, false)).outcome, Outcome::unstable);
}

} // namespace
} // namespace sheerpole::closed_forms_test
