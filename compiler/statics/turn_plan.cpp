#include "statics/turn_plan.hpp"

#include "statics/turn_search.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

namespace sheerpole::statics {

namespace {

constexpr int most_plans = 60;
constexpr Merit anything{std::numeric_limits<double>::infinity(), std::numeric_limits<double>::infinity()};

bool is_understood(const Structure& structure, const Screw& screw) {
  return !screw.pulls.empty() && std::isfinite(screw.least_turns) && std::isfinite(screw.most_turns) &&
         screw.least_turns <= 0.0 && screw.most_turns >= 0.0 && screw.step_turns > 0.0 &&
         std::isfinite(screw.step_turns) && std::ranges::all_of(screw.pulls, [&](const Screw::Pull& pull) {
           return pull.stay.index() < structure.stays.size() && std::isfinite(pull.mm_per_turn);
         });
}

bool is_understood(const Structure& structure, const Wish& wish) {
  return is_known(structure, wish.what) && wish.least <= wish.most && wish.one_off > 0.0 &&
         std::isfinite(wish.one_off);
}

std::vector<double> lengths_after(const State& now, std::span<const Screw> screws,
                                  std::span<const double> turns) {
  std::vector<double> lengths = now.unstressed_mm;
  for (std::size_t k = 0; k < screws.size(); ++k)
    for (const Screw::Pull& pull : screws[k].pulls)
      lengths[pull.stay.index()] -= pull.mm_per_turn * turns[k];
  return lengths;
}

class Planner {
public:
  Planner(Solver& solver, const State& now, std::span<const Screw> screws, std::span<const Wish> wishes,
          const SearchBounds& bounds)
      : solver_(solver), now_(now), screws_(screws), wishes_(wishes), bounds_(bounds) {}

  TurnPlan run() {
    TurnPlan best = worked(std::vector<double>(screws_.size(), 0.0), now_);
    Merit merit = merit_of(screws_, wishes_, best.turns, best.values);
    TurnsNearState near_best = near(best);
    TurnsNearState from = near_best;
    std::vector<std::vector<double>> tried{best.turns};
    State at = now_;
    for (int plan = 0; plan < most_plans; ++plan) {
      auto turns = better_turns_near(screws_, wishes_, from, tried, merit);
      // Where this state shows nothing better, the best one may.
      if (!turns && from.turns != near_best.turns)
        turns = better_turns_near(screws_, wishes_, near_best, tried, merit);
      // While wishes are off, a straight line that shows nothing better may be wrong: on with the best that
      // was not worked out, as long as states may be spent on it.
      if (!turns && merit.off > 0.0)
        turns = better_turns_near(screws_, wishes_, near_best, tried, anything);
      if (!turns)
        break;
      tried.push_back(*turns);
      std::optional<TurnPlan> there = reach(*turns, from.turns, at);
      if (!there)
        continue;
      tried.push_back(there->turns);
      at = there->state;
      from = near(*there);
      if (const Merit other = merit_of(screws_, wishes_, there->turns, there->values);
          other.better_than(merit)) {
        merit = other;
        near_best = from;
        best = std::move(*there);
      }
    }
    for (std::size_t i = 0; i < wishes_.size(); ++i)
      if (const double off = off_wish(wishes_[i], best.values[i]);
          std::abs(off) > 1e-9 * wishes_[i].one_off)
        best.unmet.push_back({i, off});
    best.outcome = best.unmet.empty() ? PlanOutcome::reached : PlanOutcome::not_reached;
    if (!best.unmet.empty())
      best.at_end = screws_at_end(screws_, wishes_, near_best);
    best.states = states_;
    return best;
  }

private:
  TurnPlan worked(std::vector<double> turns, State state) const {
    TurnPlan plan;
    plan.turns = std::move(turns);
    for (const Wish& wish : wishes_)
      plan.values.push_back(value_of(solver_.structure(), wish.what, state));
    plan.state = std::move(state);
    return plan;
  }

  TurnsNearState near(const TurnPlan& plan) {
    TurnsNearState near{plan.turns, plan.values, {}};
    const Influence influence = *solver_.influence(plan.state);
    for (const Wish& wish : wishes_) {
      std::vector<double>& row = near.by_turn.emplace_back(screws_.size(), 0.0);
      for (std::size_t k = 0; k < screws_.size(); ++k)
        for (const Screw::Pull& pull : screws_[k].pulls)
          row[k] += pull.mm_per_turn * change_of(solver_.structure(), wish.what, influence, pull.stay);
    }
    return near;
  }

  /// The state with the turns; where the rig does not stand so, half way there, and so on.
  std::optional<TurnPlan> reach(std::vector<double> turns, const std::vector<double>& before,
                                const State& at) {
    for (int halving = 0; halving < 6; ++halving) {
      State state = solver_.settle(lengths_after(now_, screws_, turns), bounds_, &at.configuration);
      ++states_;
      if (state.outcome == Outcome::equilibrium)
        return worked(std::move(turns), std::move(state));
      for (std::size_t k = 0; k < turns.size(); ++k) {
        const double half = 0.5 * (turns[k] + before[k]);
        turns[k] = screws_[k].step_turns * std::round(half / screws_[k].step_turns);
      }
    }
    return std::nullopt;
  }

  Solver& solver_;
  const State& now_;
  std::span<const Screw> screws_;
  std::span<const Wish> wishes_;
  const SearchBounds& bounds_;
  std::size_t states_ = 0;
};

} // namespace

Wish about(Quantity what, double value, double within) {
  return {what, value - within, value + within, within};
}

TurnPlan plan_turns(Solver& solver, const State& now, std::span<const Screw> screws,
                    std::span<const Wish> wishes, const SearchBounds& bounds) {
  const Structure& structure = solver.structure();
  const auto understood = [&](const auto& one) { return is_understood(structure, one); };
  // A state of another structure has no influence here.
  if (now.outcome != Outcome::equilibrium || now.stays.size() != structure.stays.size() ||
      !solver.influence(now) || !std::ranges::all_of(screws, understood) ||
      !std::ranges::all_of(wishes, understood))
    return {};
  return Planner(solver, now, screws, wishes, bounds).run();
}

namespace {

/// The slackest of the stays that count, in a state.
PlannedTurn slackest_of(const State& state, const std::vector<bool>& counts, std::size_t screw,
                        double turns) {
  PlannedTurn turn{screw, turns, std::numeric_limits<double>::infinity(), std::nullopt};
  for (std::size_t i = 0; i < counts.size(); ++i)
    if (counts[i] && state.stays[i].tension_newtons < turn.least_tension_newtons) {
      turn.least_tension_newtons = state.stays[i].tension_newtons;
      turn.slackest = StayId{static_cast<std::uint32_t>(i)};
    }
  if (!turn.slackest)
    turn.least_tension_newtons = 0.0;
  return turn;
}

} // namespace

std::optional<std::vector<PlannedTurn>> order_turns(Solver& solver, const State& now,
                                                    std::span<const Screw> screws, const TurnPlan& plan,
                                                    double least_newtons, const SearchBounds& bounds) {
  if (now.outcome != Outcome::equilibrium || plan.outcome == PlanOutcome::no_state ||
      plan.turns.size() != screws.size())
    return std::nullopt;
  std::vector<bool> counts;
  for (std::size_t i = 0; i < now.stays.size(); ++i)
    counts.push_back(now.stays[i].tension_newtons > 0.0 && plan.state.stays[i].tension_newtons > 0.0);
  std::vector<PlannedTurn> order;
  std::vector<double> done(screws.size(), 0.0);
  State at = now;
  const auto tightest = [&](bool all_of_it) {
    std::optional<std::pair<PlannedTurn, State>> best;
    for (std::size_t k = 0; k < screws.size(); ++k) {
      const double left = plan.turns[k] - done[k];
      if (std::abs(left) < 0.5 * screws[k].step_turns)
        continue;
      const double turns = all_of_it ? left : std::copysign(screws[k].step_turns, left);
      std::vector<double> then = done;
      then[k] += turns;
      State state = solver.settle(lengths_after(now, screws, then), bounds, &at.configuration);
      if (state.outcome != Outcome::equilibrium)
        continue;
      const PlannedTurn turn = slackest_of(state, counts, k, turns);
      if (!best || turn.least_tension_newtons > best->first.least_tension_newtons)
        best.emplace(turn, std::move(state));
    }
    return best;
  };
  const auto left = [&] {
    for (std::size_t k = 0; k < screws.size(); ++k)
      if (std::abs(plan.turns[k] - done[k]) >= 0.5 * screws[k].step_turns)
        return true;
    return false;
  };
  while (left()) {
    auto next = tightest(true);
    if (!next || next->first.least_tension_newtons < least_newtons)
      next = tightest(false);
    if (!next)
      return std::nullopt;
    done[next->first.screw] += next->first.turns;
    at = std::move(next->second);
    if (!order.empty() && order.back().screw == next->first.screw) {
      next->first.turns += order.back().turns;
      next->first.least_tension_newtons =
          std::min(next->first.least_tension_newtons, order.back().least_tension_newtons);
      order.pop_back();
    }
    order.push_back(next->first);
  }
  return order;
}

} // namespace sheerpole::statics
