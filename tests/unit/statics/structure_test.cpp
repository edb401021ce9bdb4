#include "statics/solver.hpp"
#include "unit/statics/random_rig.hpp"
#include "unit/statics/reference_case.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <limits>

namespace sheerpole::structure_test {
namespace {

using statics::cross;
using statics::Fault;
using statics::FaultKind;
using statics::faults_of;
using statics::Influence;
using statics::length;
using statics::NodeId;
using statics::Outcome;
using statics::Solver;
using statics::Spar;
using statics::State;
using statics::Stay;
using statics::Structure;
using statics::Vector;

Structure boat_a() {
  return test::reference_case(std::string(SHEERPOLE_REFERENCE_DIR) + "/statics/case-a.json").structure;
}

/// What is wrong after a change.
template <class Change>
std::vector<Fault> faults_after(Change&& change) {
  Structure structure = boat_a();
  change(structure);
  std::vector<Fault> faults = faults_of(structure);
  EXPECT_EQ(Solver::make(structure).ok(), faults.empty());
  return faults;
}

using Faults = std::vector<Fault>;

TEST(StructureFaults, BoatHasNone) {
  EXPECT_EQ(faults_of(boat_a()), Faults{});
}

TEST(StructureFaults, StiffnessThatIsNotStated) {
  EXPECT_EQ(faults_after([](Structure& s) { s.stays[2].axial_stiffness_newtons = 0.0; }),
            (Faults{{FaultKind::stay_stiffness, 2}}));
  EXPECT_EQ(
      faults_after([](Structure& s) { s.spars[0].stations[0].section.axial_stiffness_newtons = 0.0; }),
      (Faults{{FaultKind::spar_axial_stiffness, 0}}));
  EXPECT_EQ(
      faults_after([](Structure& s) { s.spars[0].stations[0].section.bending_square_newton_mm2 = -1.0; }),
      (Faults{{FaultKind::spar_bending, 0}}));
  EXPECT_EQ(faults_after([](Structure& s) { s.spars[0].stations[0].section.torsion_newton_mm2 = 0.0; }),
            (Faults{{FaultKind::spar_torsion, 0}}));
  // A bar neither bends nor twists, but is pushed.
  EXPECT_EQ(
      faults_after([](Structure& s) { s.spars[1].stations[0].section.axial_stiffness_newtons = 0.0; }),
      (Faults{{FaultKind::spar_axial_stiffness, 1}}));
  EXPECT_EQ(faults_after([](Structure& s) { s.spars[1].root = {}; }),
            (Faults{{FaultKind::spar_bending, 1}, {FaultKind::spar_torsion, 1}}));
}

TEST(StructureFaults, PathsAndPlaces) {
  EXPECT_EQ(faults_after([](Structure& s) { s.nodes[3].place_mm.y = std::nan(""); }).front(),
            (Fault{FaultKind::not_a_number, 3}));
  EXPECT_EQ(faults_after([](Structure& s) { s.nodes[3].place_mm.y = 1e200; }).front(),
            (Fault{FaultKind::not_a_number, 3}));
  EXPECT_EQ(faults_after([](Structure& s) { s.stays[4].axial_stiffness_newtons = 1e300; }),
            (Faults{{FaultKind::stay_stiffness, 4}}));
  EXPECT_EQ(faults_after([](Structure& s) { s.stays[4].unstressed_mm = 1e-300; }),
            (Faults{{FaultKind::stay_length, 4}}));
  EXPECT_EQ(faults_after([](Structure& s) { s.stays[0].path.pop_back(); }),
            (Faults{{FaultKind::stay_path, 0}}));
  EXPECT_EQ(faults_after([](Structure& s) { s.stays[0].path[1] = s.stays[0].path[0]; }),
            (Faults{{FaultKind::stay_path, 0}}));
  EXPECT_EQ(faults_after([](Structure& s) { s.stays[0].path[1] = NodeId{999}; }),
            (Faults{{FaultKind::no_such_node, 0}}));
  EXPECT_EQ(faults_after([](Structure& s) { s.stays[1].unstressed_mm = 0.0; }),
            (Faults{{FaultKind::stay_length, 1}}));
  EXPECT_EQ(faults_after([](Structure& s) { s.spars[0].nodes.resize(1); }),
            (Faults{{FaultKind::spar_nodes, 0}}));
  EXPECT_EQ(faults_after([](Structure& s) { s.spars[0].stations.clear(); }),
            (Faults{{FaultKind::spar_stations, 0}}));
  EXPECT_EQ(faults_after([](Structure& s) {
              s.spars[0].side = {0.0, 0.0, 0.0};
            }),
            (Faults{{FaultKind::spar_side, 0}}));
  EXPECT_EQ(faults_after([](Structure& s) {
              s.spars[0].root = {true, true, true};
            }),
            (Faults{{FaultKind::spar_pinned_with_more, 0}}));
  EXPECT_EQ(faults_after([](Structure& s) { s.supports.push_back(s.supports[0]); }),
            (Faults{{FaultKind::support_twice, boat_a().supports.size()}}));
  EXPECT_EQ(faults_after([](Structure& s) { s.supports[1].along[0]->play_mm = -1.0; }),
            (Faults{{FaultKind::support_hold, 1}}));
  EXPECT_EQ(faults_after([](Structure& s) { s = Structure{}; }), (Faults{{FaultKind::nothing_to_move, 0}}));
}

TEST(Solver, LengthsThatAreNone) {
  Solver solver = std::move(Solver::make(boat_a()).value());
  std::vector<double> lengths = solver.settle().unstressed_mm;
  for (const double wrong :
       {0.0, -5.0, 1e-300, 1e300, std::nan(""), std::numeric_limits<double>::infinity()}) {
    std::vector<double> some = lengths;
    some[0] = wrong;
    const State state = solver.settle(some);
    EXPECT_EQ(state.outcome, Outcome::not_converged);
    EXPECT_TRUE(test::all_finite(state));
    EXPECT_FALSE(solver.influence(state));
  }
  lengths.pop_back();
  EXPECT_EQ(solver.settle(lengths).outcome, Outcome::not_converged);
}

// A slack stay: how slack, and zeros; the others as if it were not there.
TEST(Solver, SlackStay) {
  Structure structure = boat_a();
  const State tight = Solver::make(structure).value().settle();
  const std::size_t slack = 6; // a lower
  structure.stays[slack].unstressed_mm += 80.0;
  Solver solver = std::move(Solver::make(structure).value());
  const State state = solver.settle();
  ASSERT_EQ(state.outcome, Outcome::equilibrium);
  EXPECT_GT(tight.stays[slack].tension_newtons, 0.0);
  EXPECT_EQ(state.stays[slack].tension_newtons, 0.0);
  EXPECT_GT(state.stays[slack].slack_mm, 0.1);
  const Influence influence = *solver.influence(state);
  for (std::size_t i = 0; i < state.stays.size(); ++i) {
    EXPECT_EQ(influence.tension_newtons_per_mm[slack][i], 0.0);
    EXPECT_EQ(influence.tension_newtons_per_mm[i][slack], 0.0);
  }
  Structure without = structure;
  without.stays.erase(without.stays.begin() + static_cast<std::ptrdiff_t>(slack));
  const State gone = Solver::make(without).value().settle();
  for (std::size_t i = 0; i < gone.stays.size(); ++i)
    EXPECT_NEAR(gone.stays[i].tension_newtons, state.stays[i < slack ? i : i + 1].tension_newtons, 1e-5);
}

// Caps that run free over tips which hinge up and down: the tips run off along the caps.
TEST(Solver, FreeTipThatHingesIsFarAway) {
  Structure structure =
      test::reference_case(std::string(SHEERPOLE_REFERENCE_DIR) + "/statics/case-g.json").structure;
  for (std::size_t i = 1; i < structure.spars.size(); ++i)
    structure.spars[i].root.swings_in_side = true;
  const State state = Solver::make(structure).value().settle();
  EXPECT_EQ(state.outcome, Outcome::far_away);
  ASSERT_TRUE(state.farthest);
  EXPECT_GT(length(state.moved_mm[state.farthest->index()]), 450.0);
  // A joint that cannot hold a moment: both legs pull alike, so they lean from the spreader alike.
  const Stay& cap = structure.stays[2];
  ASSERT_EQ(cap.path.size(), 3u);
  const auto place = [&](NodeId node) {
    return structure.nodes[node.index()].place_mm + state.moved_mm[node.index()];
  };
  const Vector tip = place(cap.path[1]);
  const auto towards = [&](NodeId node) { return (1.0 / length(place(node) - tip)) * (place(node) - tip); };
  const Vector pull = towards(cap.path[0]) + towards(cap.path[2]);
  const auto spreader = std::ranges::find_if(
      structure.spars, [&](const Spar& spar) { return spar.nodes.back() == cap.path[1]; });
  const Vector inwards = towards(spreader->nodes.front());
  EXPECT_NEAR(cross(pull, inwards).x / length(pull), 0.0, 1e-3);
}

// A cap that is slack in both legs leaves the tip of a pinned spreader to swing.
TEST(Solver, SlackCapOnPinnedSpreaderIsAMechanism) {
  Structure structure = boat_a();
  for (Stay& stay : structure.stays)
    if (stay.path.size() == 2 && structure.nodes[stay.path[1].index()].place_mm.y == 1180.0)
      stay.unstressed_mm += 120.0;
  const State state = Solver::make(structure).value().settle();
  EXPECT_NE(state.outcome, Outcome::equilibrium);
  EXPECT_TRUE(test::all_finite(state));
}

} // namespace
} // namespace sheerpole::structure_test
