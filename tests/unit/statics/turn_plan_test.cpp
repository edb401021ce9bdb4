#include "statics/measured_state.hpp"
#include "statics/turn_plan.hpp"
#include "unit/statics/reference_case.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <array>
#include <cmath>

namespace sheerpole::turn_plan_test {
namespace {

using statics::about;
using statics::Bend;
using statics::DoubtfulLength;
using statics::fit_measured;
using statics::FittedState;
using statics::least_within_bounds;
using statics::Measured;
using statics::Movement;
using statics::order_turns;
using statics::Outcome;
using statics::plan_turns;
using statics::PlannedTurn;
using statics::PlanOutcome;
using statics::Quantity;
using statics::Screw;
using statics::Solver;
using statics::SparId;
using statics::State;
using statics::StayId;
using statics::StayState;
using statics::Tension;
using statics::TurnPlan;
using statics::value_of;
using statics::Wish;

/// Boat A of tests/reference/statics with its screws: 2.54 mm a turn, caps and lowers in pairs.
class BoatA {
public:
  BoatA()
      : boat(test::reference_case(std::string(SHEERPOLE_REFERENCE_DIR) + "/statics/case-a.json")),
        solver(std::move(Solver::make(boat.structure).value())), now(solver.settle()) {
    for (const auto& names : {std::vector{"forestay"},
                              {"backstay"},
                              {"cap-s", "cap-p"},
                              {"lower-fwd-s", "lower-fwd-p"},
                              {"lower-aft-s", "lower-aft-p"}}) {
      Screw screw{{}, -6.0, 6.0, 1.0};
      for (const char* name : names)
        screw.pulls.push_back({stay(name), 2.54});
      screws.push_back(screw);
    }
  }

  /// The leg of a stay that has the adjuster.
  StayId stay(const std::string& name) const {
    for (std::size_t i = 0; i < boat.legs.size(); ++i)
      if (boat.legs[i].stay == name && boat.legs[i].adjusted)
        return {static_cast<std::uint32_t>(i)};
    throw std::out_of_range(name);
  }
  Quantity masthead_fore() const { return Movement{boat.nodes.at("masthead"), {1.0, 0.0, 0.0}}; }
  Quantity prebend() const { return Bend{SparId{0}, boat.nodes.at("root"), {1.0, 0.0, 0.0}}; }
  State with(const std::vector<double>& turns) {
    std::vector<double> lengths = now.unstressed_mm;
    for (std::size_t k = 0; k < screws.size(); ++k)
      for (const Screw::Pull& pull : screws[k].pulls)
        lengths[pull.stay.index()] -= pull.mm_per_turn * turns[k];
    return solver.settle(lengths);
  }

  test::ReferenceCase boat;
  Solver solver;
  State now;
  std::vector<Screw> screws;
};

double hands(const std::vector<Screw>& screws, const std::vector<double>& turns) {
  double sum = 0.0;
  for (std::size_t k = 0; k < screws.size(); ++k)
    sum += static_cast<double>(screws[k].pulls.size()) * std::abs(turns[k]);
  return sum;
}

TEST(TurnPlan, NothingToDo) {
  BoatA a;
  const TurnPlan plan =
      plan_turns(a.solver, a.now, a.screws, std::vector{about(a.masthead_fore(), -10.0, 1.0)});
  EXPECT_EQ(plan.outcome, PlanOutcome::reached);
  EXPECT_EQ(plan.turns, std::vector<double>(5, 0.0));
}

TEST(TurnPlan, MastheadAftAndPrebend) {
  BoatA a;
  const std::vector wishes{about(a.masthead_fore(), -30.0, 2.0), about(a.prebend(), 25.0, 2.0),
                           Wish{Tension{a.stay("lower-fwd-s")}, 500.0},
                           Wish{Tension{a.stay("forestay")}, 3000.0, 7000.0, 100.0}};
  const TurnPlan plan = plan_turns(a.solver, a.now, a.screws, wishes);
  ASSERT_EQ(plan.outcome, PlanOutcome::reached);
  EXPECT_TRUE(plan.at_end.empty());
  // What is said is what a search from the drawn rig finds.
  const State again = a.with(plan.turns);
  ASSERT_EQ(again.outcome, Outcome::equilibrium);
  for (std::size_t i = 0; i < wishes.size(); ++i) {
    EXPECT_NEAR(plan.values[i], value_of(a.boat.structure, wishes[i].what, again), 1e-4);
    EXPECT_GE(plan.values[i], wishes[i].least);
    EXPECT_LE(plan.values[i], wishes[i].most);
  }
  for (std::size_t k = 0; k < a.screws.size(); ++k) {
    EXPECT_EQ(plan.turns[k], std::round(plan.turns[k]));
    EXPECT_LE(std::abs(plan.turns[k]), 6.0);
    // None of them can be left out.
    if (plan.turns[k] != 0.0) {
      std::vector<double> without = plan.turns;
      without[k] = 0.0;
      const State state = a.with(without);
      EXPECT_TRUE(std::ranges::any_of(wishes, [&](const Wish& wish) {
        const double value = value_of(a.boat.structure, wish.what, state);
        return value < wish.least || value > wish.most;
      })) << k;
    }
  }
}

TEST(TurnPlan, SaysWhichThreadEnds) {
  BoatA a;
  a.screws[1].most_turns = 2.0; // the backstay
  const TurnPlan plan = plan_turns(a.solver, a.now, std::vector{a.screws[1]},
                                   std::vector{about(a.masthead_fore(), -100.0, 2.0)});
  EXPECT_EQ(plan.outcome, PlanOutcome::not_reached);
  EXPECT_EQ(plan.turns, std::vector{2.0});
  EXPECT_EQ(plan.at_end, std::vector<std::size_t>{0});
  ASSERT_EQ(plan.unmet.size(), 1u);
  EXPECT_NEAR(plan.unmet[0].off, plan.values[0] - -98.0, 1e-9);
  EXPECT_GT(plan.unmet[0].off, 50.0);
}

TEST(TurnPlan, HalfTurns) {
  BoatA a;
  a.screws[1].step_turns = 0.5;
  const State half = a.with({0.0, 1.5, 0.0, 0.0, 0.0});
  const TurnPlan plan = plan_turns(
      a.solver, a.now, std::vector{a.screws[1]},
      std::vector{about(a.masthead_fore(), value_of(a.boat.structure, a.masthead_fore(), half), 0.1)});
  EXPECT_EQ(plan.outcome, PlanOutcome::reached);
  EXPECT_EQ(plan.turns, std::vector{1.5});
}

TEST(TurnPlan, WishesAgainstEachOther) {
  BoatA a;
  const std::vector wishes{about(a.masthead_fore(), -30.0, 1.0), about(a.masthead_fore(), 10.0, 1.0)};
  const TurnPlan plan = plan_turns(a.solver, a.now, a.screws, wishes);
  EXPECT_EQ(plan.outcome, PlanOutcome::not_reached);
  EXPECT_EQ(plan.unmet.size(), 2u);
  EXPECT_TRUE(plan.at_end.empty());
}

TEST(TurnPlan, WhatIsNotUnderstoodIsNotPlanned) {
  BoatA a;
  const std::vector good{about(a.masthead_fore(), -30.0, 1.0)};
  EXPECT_EQ(
      plan_turns(a.solver, a.now, a.screws, std::vector{about(Tension{StayId{99}}, 1.0, 1.0)}).outcome,
      PlanOutcome::no_state);
  EXPECT_EQ(plan_turns(a.solver, a.now, a.screws, std::vector{Wish{a.masthead_fore(), 2.0, 1.0}}).outcome,
            PlanOutcome::no_state);
  a.screws[0].step_turns = 0.0;
  EXPECT_EQ(plan_turns(a.solver, a.now, a.screws, good).outcome, PlanOutcome::no_state);
  EXPECT_EQ(plan_turns(a.solver, State{}, {}, good).outcome, PlanOutcome::no_state);
}

TEST(TurnPlan, OrderKeepsTheStaysTight) {
  BoatA a;
  const std::vector wishes{about(a.masthead_fore(), -30.0, 2.0), about(a.prebend(), 25.0, 2.0)};
  const TurnPlan plan = plan_turns(a.solver, a.now, a.screws, wishes);
  const auto order = order_turns(a.solver, a.now, a.screws, plan, 300.0);
  ASSERT_TRUE(order);
  ASSERT_FALSE(order->empty());
  std::vector<double> done(a.screws.size(), 0.0);
  for (const PlannedTurn& turn : *order) {
    done[turn.screw] += turn.turns;
    const State state = a.with(done);
    const double least = std::ranges::min(state.stays, {}, &StayState::tension_newtons).tension_newtons;
    EXPECT_LE(turn.least_tension_newtons, least + 1e-3);
    EXPECT_GE(least, 300.0);
  }
  EXPECT_EQ(done, plan.turns);
}

// Wishes that some turns meet are met, by no more turns, as long as every stay pulls: a slack one hides
// what its screw does.
RC_GTEST_PROP(TurnPlans, WhatCanBeReachedIsReached, ()) {
  static BoatA a;
  std::vector<double> turns;
  for (std::size_t k = 0; k < a.screws.size(); ++k)
    // Few turns first: that is where a small example begins.
    turns.push_back(std::array{0.0, 1.0, -1.0, 2.0, -2.0}[*rc::gen::inRange<std::size_t>(0, 5)]);
  const State wanted = a.with(turns);
  RC_PRE(wanted.outcome == Outcome::equilibrium);
  RC_PRE(std::ranges::all_of(wanted.stays,
                             [](const StayState& stay) { return stay.tension_newtons > 300.0; }));
  std::vector<Wish> wishes;
  for (const auto& [what, within] : {std::pair<Quantity, double>{a.masthead_fore(), 2.0},
                                     {a.prebend(), 2.0},
                                     {Tension{a.stay("cap-s")}, 250.0},
                                     {Tension{a.stay("forestay")}, 250.0}})
    wishes.push_back(about(what, value_of(a.boat.structure, what, wanted), within));
  const TurnPlan plan = plan_turns(a.solver, a.now, a.screws, wishes);
  RC_ASSERT(plan.outcome == PlanOutcome::reached);
  RC_ASSERT(hands(a.screws, plan.turns) <= hands(a.screws, turns));
}

// B is A with the forestay 10 mm longer and the backstay 20 mm shorter; the other solver's tensions of B,
// measured on A.
TEST(MeasuredState, FindsWhatWasTurned) {
  BoatA a;
  const test::ReferenceCase b =
      test::reference_case(std::string(SHEERPOLE_REFERENCE_DIR) + "/statics/case-b.json");
  std::vector<Measured> measured;
  std::vector<DoubtfulLength> doubtful;
  for (std::size_t i = 0; i < b.legs.size(); ++i) {
    const StayId stay{static_cast<std::uint32_t>(i)};
    const double tension =
        b.json.at("results").at("tensions_N").at(b.legs[i].stay).at(b.legs[i].leg).get<double>();
    measured.push_back({Tension{stay}, tension, 2.0});
    if (b.legs[i].adjusted)
      doubtful.push_back({stay, 30.0});
  }
  const FittedState fitted = fit_measured(a.solver, measured, doubtful);
  ASSERT_TRUE(fitted.converged);
  for (std::size_t k = 0; k < doubtful.size(); ++k) {
    const std::string& name = b.legs[doubtful[k].stay.index()].stay;
    EXPECT_NEAR(fitted.shorter_mm[k],
                name == "forestay"   ? -10.0
                : name == "backstay" ? 20.0
                                     : 0.0,
                0.2)
        << name;
    EXPECT_GT(fitted.deviation_mm[k], 0.0);
  }
  EXPECT_NEAR(fitted.state.moved_mm[b.nodes.at("masthead").index()].x, -58.45925, 0.5);
  for (const double off : fitted.off_bounds)
    EXPECT_LT(std::abs(off), 0.5);
}

// A reading that is a tenth too high beside others that agree is the one that stays off.
TEST(MeasuredState, TheReadingThatSlippedStandsOut) {
  BoatA a;
  std::vector<Measured> measured;
  std::vector<DoubtfulLength> doubtful;
  for (std::size_t i = 0; i < a.now.stays.size(); ++i) {
    const StayId stay{static_cast<std::uint32_t>(i)};
    measured.push_back(
        {Tension{stay}, a.now.stays[i].tension_newtons, 0.03 * a.now.stays[i].tension_newtons});
    if (a.boat.legs[i].adjusted)
      doubtful.push_back({stay, 1.0});
  }
  const std::size_t slipped = a.stay("forestay").index();
  measured[slipped].value *= 1.3;
  const FittedState fitted = fit_measured(a.solver, measured, doubtful);
  ASSERT_TRUE(fitted.converged);
  const auto worst =
      std::ranges::max_element(fitted.off_bounds, {}, [](double off) { return std::abs(off); });
  EXPECT_EQ(static_cast<std::size_t>(worst - fitted.off_bounds.begin()), slipped);
  EXPECT_LT(*worst, -1.0);
}

TEST(MeasuredState, WithoutMeasurementsItIsAsStated) {
  BoatA a;
  const FittedState fitted = fit_measured(a.solver, {}, std::vector{DoubtfulLength{StayId{0}, 5.0}});
  EXPECT_TRUE(fitted.converged);
  EXPECT_EQ(fitted.shorter_mm[0], 0.0);
  EXPECT_NEAR(fitted.deviation_mm[0], 5.0, 1e-9);
  EXPECT_EQ(fitted.sum_of_squares, 0.0);
}

TEST(LeastWithinBounds, StopsAtTheBound) {
  // x^2 + y^2 + x y - 3 x - 3 y has its least at (1, 1); with x at most 0.5, at y = 1.25. By hand.
  const std::vector<std::vector<double>> a{{2.0, 1.0}, {1.0, 2.0}};
  const std::vector<double> b{-3.0, -3.0};
  const std::vector<double> far{10.0, 10.0}, low{-10.0, -10.0}, near{0.5, 10.0};
  const std::vector<double> free = least_within_bounds(a, b, low, far);
  EXPECT_NEAR(free[0], 1.0, 1e-9);
  EXPECT_NEAR(free[1], 1.0, 1e-9);
  const std::vector<double> bound = least_within_bounds(a, b, low, near);
  EXPECT_NEAR(bound[0], 0.5, 1e-12);
  EXPECT_NEAR(bound[1], 1.25, 1e-9);
}

} // namespace
} // namespace sheerpole::turn_plan_test
