// Boats worked with CalculiX and with another solver: tests/reference/statics/README.md.

#include "unit/statics/reference_case.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace sheerpole::reference_cases_test {
namespace {

using nlohmann::json;
using statics::Influence;
using statics::Outcome;
using statics::Solver;
using statics::SparPlace;
using statics::SparState;
using statics::State;
using statics::Vector;

struct Boat {
  const char* name;
  const char* file;
  bool spreaders_rigid;
};

class ReferenceBoat : public testing::TestWithParam<Boat> {
protected:
  ReferenceBoat()
      : boat_(test::reference_case(std::string(SHEERPOLE_REFERENCE_DIR) + "/statics/" + GetParam().file +
                                       ".json",
                                   GetParam().spreaders_rigid)),
        solver_(std::move(Solver::make(boat_.structure).value())), state_(solver_.settle()) {}

  const json& results() const {
    return GetParam().spreaders_rigid
               ? boat_.json.at("variants").at("spreaders rigid in all directions").at("results")
               : boat_.json.at("results");
  }

  void expect_tensions(const json& expected) const {
    for (std::size_t i = 0; i < boat_.legs.size(); ++i) {
      const json& legs = expected.at(boat_.legs[i].stay);
      const double tension = legs.at(boat_.legs[i].leg).get<double>();
      EXPECT_NEAR(state_.stays[i].tension_newtons, tension, std::max(0.5, 0.002 * tension))
          << boat_.legs[i].stay;
    }
  }

  void expect_displacements(const json& expected) const {
    for (const auto& [name, moved] : expected.items()) {
      const Vector own = state_.moved_mm[boat_.nodes.at(name).index()];
      EXPECT_NEAR(own.x, moved[0].get<double>(), 0.05) << name;
      EXPECT_NEAR(own.y, moved[1].get<double>(), 0.05) << name;
      EXPECT_NEAR(own.z, moved[2].get<double>(), 0.05) << name;
    }
  }

  test::ReferenceCase boat_;
  Solver solver_;
  State state_;
};

/// The variant has the other solver's numbers of its state, and no more.
class WholeReferenceBoat : public ReferenceBoat {};

TEST_P(ReferenceBoat, StandsAsTheOtherSolverSays) {
  ASSERT_EQ(state_.outcome, Outcome::equilibrium);
  expect_tensions(results().at("tensions_N"));
  expect_displacements(results().at("displacements_mm"));
  EXPECT_LT(state_.residual_newtons, 1e-5);
  EXPECT_GT(state_.softest->stiffness_newtons_per_mm, 0.5);
}

TEST_P(WholeReferenceBoat, StandsAsCalculixSays) {
  expect_tensions(boat_.json.at("results_calculix").at("tensions_N"));
  expect_displacements(boat_.json.at("results_calculix").at("displacements_mm"));
}

TEST_P(ReferenceBoat, MastIsBentAndPushed) {
  const json& bends = results().at("bend_mm_xy").at("mast");
  const SparState& mast = state_.spars[0];
  for (const auto& [name, bend] : bends.items()) {
    const Vector moved = state_.moved_mm[boat_.nodes.at(name).index()];
    const auto place =
        std::ranges::find_if(mast.places, [&](const SparPlace& p) { return p.moved_mm == moved; });
    ASSERT_NE(place, mast.places.end());
    EXPECT_NEAR(place->bend_mm.x, bend[0].get<double>(), 0.05) << name;
    EXPECT_NEAR(place->bend_mm.y, bend[1].get<double>(), 0.05) << name;
  }
  const json& nodes = boat_.json.at("spars").at(0).at("nodes");
  const json& forces = results().at("spar_forces_N");
  for (std::size_t i = 0; i + 1 < nodes.size(); ++i) {
    const std::string panel = nodes[i].get<std::string>() + " - " + nodes[i + 1].get<std::string>();
    const double expected = forces.at("mast").at("compression_by_panel").at(panel).get<double>();
    EXPECT_NEAR(mast.compression_newtons[i], expected, std::max(0.5, 2e-4 * expected)) << panel;
  }
  for (std::size_t i = 1; i < state_.spars.size(); ++i) {
    const std::string name = boat_.json.at("spars").at(i).at("name").get<std::string>();
    EXPECT_NEAR(state_.spars[i].compression_newtons[0], forces.at(name).at("compression").get<double>(),
                0.5);
  }
  const json& heel = forces.at("mast").at("heel_reaction_xyz");
  EXPECT_NEAR(state_.reactions[0][0].x, heel[0].get<double>(), 0.5);
  EXPECT_NEAR(state_.reactions[0][0].y, heel[1].get<double>(), 0.5);
  EXPECT_NEAR(state_.reactions[0][0].z, heel[2].get<double>(), 5.0);
  if (forces.at("mast").contains("partners_reaction_xy")) {
    EXPECT_NEAR(state_.reactions[1][0].x, forces.at("mast").at("partners_reaction_xy")[0].get<double>(),
                0.5);
  }
}

TEST_P(WholeReferenceBoat, OneMillimetreDoesWhatTheDifferenceSays) {
  const std::optional<Influence> influence = solver_.influence(state_);
  ASSERT_TRUE(influence);
  for (std::size_t i = 0; i < boat_.legs.size(); ++i) {
    if (!boat_.legs[i].adjusted)
      continue;
    const json& row = boat_.json.at("influence").at(boat_.legs[i].stay);
    for (std::size_t j = 0; j < boat_.legs.size(); ++j) {
      const double expected =
          row.at("tensions_N_per_mm").at(boat_.legs[j].stay).at(boat_.legs[j].leg).get<double>();
      EXPECT_NEAR(influence->tension_newtons_per_mm[i][j], expected,
                  std::max(0.02, 0.005 * std::abs(expected)))
          << boat_.legs[i].stay << " on " << boat_.legs[j].stay;
    }
    for (const auto& [name, moved] : row.at("heads_xy_mm_per_mm").items()) {
      const Vector own = influence->moved_mm_per_mm[i][boat_.nodes.at(name).index()];
      EXPECT_NEAR(own.x, moved[0].get<double>(), std::max(0.001, 0.005 * std::abs(moved[0].get<double>())));
      EXPECT_NEAR(own.y, moved[1].get<double>(), std::max(0.001, 0.005 * std::abs(moved[1].get<double>())));
    }
  }
}

TEST_P(ReferenceBoat, PortAndStarboardAreAlike) {
  for (std::size_t i = 0; i < boat_.legs.size(); ++i)
    for (std::size_t j = 0; j < boat_.legs.size(); ++j) {
      const std::string& name = boat_.legs[i].stay;
      if (boat_.legs[j].leg == boat_.legs[i].leg && name.ends_with("-s") &&
          boat_.legs[j].stay == name.substr(0, name.size() - 1) + "p") {
        EXPECT_NEAR(state_.stays[i].tension_newtons, state_.stays[j].tension_newtons,
                    1e-7 * state_.stays[i].tension_newtons);
      }
    }
  EXPECT_NEAR(state_.moved_mm[boat_.nodes.at("masthead").index()].y, 0.0, 1e-6);
}

constexpr Boat boat_a{"A", "case-a", false}, boat_b{"B", "case-b", false}, boat_c{"C", "case-c", false},
    boat_g{"G", "case-g", false}, boat_c_rigid{"CWithRigidSpreaders", "case-c", true};

std::string name_of(const testing::TestParamInfo<Boat>& info) {
  return info.param.name;
}

INSTANTIATE_TEST_SUITE_P(Boats, ReferenceBoat,
                         testing::Values(boat_a, boat_b, boat_c, boat_c_rigid, boat_g), name_of);
INSTANTIATE_TEST_SUITE_P(Boats, WholeReferenceBoat, testing::Values(boat_a, boat_b, boat_c, boat_g),
                         name_of);

} // namespace
} // namespace sheerpole::reference_cases_test
